using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Undoing;

/// <summary>What was taken out of a book.</summary>
/// <param name="Changed">Whether the book differs from before.</param>
/// <param name="IsExact">Whether it is, byte for byte, the book as it was before CastBook first filled it.</param>
/// <param name="Taken">What was taken out, in words, where it is not.</param>
/// <param name="Findings">What a person should know of it.</param>
public sealed record UndoResult(bool Changed, bool IsExact, IReadOnlyList<string> Taken, IReadOnlyList<Finding> Findings);
