using CastBook.Planning.Findings;
using CastBook.Workbooks.Columns;

namespace CastBook.Workbooks.Writing;

/// <summary>A book as written.</summary>
/// <param name="Findings">Everything found, writing included, repeats folded.</param>
/// <param name="Changed">Whether any part differs from the book as read.</param>
internal sealed record WrittenBook(IReadOnlyList<Finding> Findings, bool Changed)
{
    /// <summary>The lists, with the places of the computed columns.</summary>
    public required IReadOnlyList<ListColumns> Lists { get; init; }

    /// <summary>The rows of all lists.</summary>
    public required PieceLines Lines { get; init; }

    /// <summary>The sheets that CastBook made.</summary>
    public required IReadOnlyList<OwnedSheet> Sheets { get; init; }

    /// <summary>The one of them that takes the computed values of lists without room.</summary>
    public OwnedSheet? Computed { get; init; }
}
