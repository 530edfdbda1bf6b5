using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Files;

/// <summary>The filled workbook could not be put in its place. The file is as it was; the finding says why.</summary>
#pragma warning disable CA1032 // Implement standard exception constructors: it says nothing without its finding.
public sealed class BookNotWrittenException : Exception
#pragma warning restore CA1032
{
    /// <summary>A workbook not written.</summary>
    /// <param name="finding">Why, and what to do.</param>
    /// <param name="inner">What was thrown underneath, where something was.</param>
    public BookNotWrittenException(Finding finding, Exception? inner = null)
        : base(finding is null ? "" : $"{finding.Seen} {finding.Why} {finding.Remedy}".Trim(), inner) =>
        Finding = finding ?? throw new ArgumentNullException(nameof(finding));

    /// <summary>Why, and what to do.</summary>
    public Finding Finding { get; }

    internal static BookNotWrittenException For(FindingKind kind, Exception? inner, params string[] values) =>
        new(kind.At(Subject.Book, values), inner);
}
