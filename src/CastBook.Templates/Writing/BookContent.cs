using CastBook.Templates.Sheets;

namespace CastBook.Templates.Writing;

/// <summary>What a book shows when it is opened.</summary>
/// <param name="Title">The book's title, kept in its properties.</param>
/// <param name="ReadMe">Lines of the first sheet, the heading first; none for a book without that sheet.</param>
/// <param name="Sheets">The sheets, in order.</param>
internal sealed record BookContent(string Title, IReadOnlyList<string> ReadMe, IReadOnlyList<SheetContent> Sheets)
{
    /// <summary>Whether it is printed on Letter instead of A4.</summary>
    public bool IsOnLetter { get; init; }
}

/// <summary>A sheet and its lines.</summary>
/// <param name="Spec">The sheet; its columns may be fewer or more than those of a new book.</param>
/// <param name="Rows">A value for each column: a word, a number, a day or nothing.</param>
internal sealed record SheetContent(SheetSpec Spec, IReadOnlyList<IReadOnlyList<object?>> Rows)
{
    /// <summary>Title lines above the headings, with an empty line after them.</summary>
    public IReadOnlyList<string> TitleLines { get; init; } = [];

    /// <summary>The row of the headings.</summary>
    public int HeadingRow => TitleLines.Count == 0 ? 1 : TitleLines.Count + 2;
}
