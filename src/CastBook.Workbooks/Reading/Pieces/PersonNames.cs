using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Asks whose names stand under <c>Name</c> where another column, such as <c>Item</c> or <c>Design</c>, may name the pieces.</summary>
internal static class PersonNames
{
    // Surer words would have been taken themselves; less sure ones head numbers and codes.
    private const int Surest = 4;
    private const int LeastSure = 6;

    /// <summary>The question; missing where there is none.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="fields">The list's columns.</param>
    /// <param name="headings">The headings.</param>
    /// <param name="rows">The rows that are pieces.</param>
    public static Finding? Ask(SheetGrid grid, IReadOnlyDictionary<string, FieldColumn> fields, ListHeadings headings, IReadOnlyList<int> rows)
    {
        if (fields.GetValueOrDefault(PieceField.Piece) is not { Word.IsPerson: true } name || headings.Has(PieceField.Customer))
        {
            return null;
        }

        var (_, other) = headings.Texts.FirstOrDefault(t => fields.Values.All(f => f.Column != t.Column) && MayNamePieces(t.Heading) && HoldsNames(grid, t.Column, rows));
        return other is null ? null : Catalogue.NameOfPieceOrPerson.At(Subject.Column(PieceField.Piece), name.Heading.Text, other.Text);
    }

    private static bool MayNamePieces(Heading heading) => heading.Senses(HeadingWords.PieceIndex)
        .Exists(s => HeadingWords.PieceIndex.Fields[s.Known.FieldAt].Field == PieceField.Piece && s.Known.Word.Rank is >= Surest and <= LeastSure);

    // Words in half of the rows; with a digit in it, it is the number of a model or of an order.
    private static bool HoldsNames(SheetGrid grid, int column, IReadOnlyList<int> rows) => rows.Count(row =>
        grid.Cell(row, column) is { Kind: CellKind.Text } cell && !CellValues.IsBlank(cell) && CellValues.Clean(cell.Text) is var text
        && text.Any(char.IsLetter) && !text.Any(char.IsAsciiDigit)) * 2 >= rows.Count;
}
