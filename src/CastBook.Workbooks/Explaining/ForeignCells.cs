using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Explaining;

/// <summary>What to say of cells in which nothing is worked out.</summary>
/// <param name="written">The book as written.</param>
/// <param name="cells">Where the subjects of the book stand.</param>
internal sealed class ForeignCells(WrittenBook written, CellMap cells)
{
    /// <summary>A cell of a sheet of the shop's.</summary>
    /// <param name="cell">The cell.</param>
    public CellExplanation Of(CellRef cell) => new(cell)
    {
        Note = IsOurHeading(cell) ? ExplanationWords.HeadingOfOurs
            : cells.Holds(cell) ? ExplanationWords.YoursAndRead
            : ExplanationWords.Yours,
    };

    /// <summary>A cell of a sheet of ours that answers nothing.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="cell">The cell.</param>
    public static CellExplanation OfOwn(OwnedSheet sheet, CellRef cell)
    {
        OwnedCell? owned = sheet.Rows.TryGetValue(cell.Row, out var row) && row.TryGetValue(cell.Column, out var found) ? found : null;
        return new(cell)
        {
            Number = owned?.Value.Number,
            Text = owned?.Value.Text ?? "",
            Note = owned switch
            {
                { Look.Border: Line.Frame } => ExplanationWords.YoursToFillIn,
                null or { Value.IsEmpty: true } => ExplanationWords.NeverWritten,
                _ => ExplanationWords.OnlyWords,
            },
        };
    }

    private bool IsOurHeading(CellRef cell) =>
        written.Lists.Any(l => l.List.Sheet.Name == cell.Sheet && l.List.HeadingRow == cell.Row && l.Standing.Any(s => s.At == cell.Column));
}
