using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>A list without a column of material that has the names of its waxes or resins under <c>Wax</c> or <c>Resin</c>, or says wax or resin in each cell of some other column.</summary>
internal static class MaterialNames
{
    // Kinds of wax are few and come again; what is different in most rows names moulds or models.
    private const int FewNames = 3;
    private const int RowsForAnother = 4;

    // A name such as "castable resin, grey"; what is longer is a remark.
    private const int MostWords = 4;

    /// <summary>The columns, with such a one read as the material's.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="judged">What the headings came to.</param>
    /// <param name="headings">The headings.</param>
    public static HeadingJudgement Settle(SheetGrid grid, HeadingJudgement judged, ListHeadings headings)
    {
        if (judged.Fields.ContainsKey(PieceField.Material) || judged.Unread.ContainsKey(PieceField.Material))
        {
            return judged;
        }

        var free = headings.Texts.Where(t => judged.Fields.Values.All(f => f.Column != t.Column) && !judged.Unread.Values.Contains(t.Column)).ToList();
        var named = free.FindAll(t => SmallWords.NamesMaterial.Contains(string.Concat(WordKey.Parts(t.Heading.Text))) && NamesIn(grid, t.Column, headings.Bottom, IsName) is not null);
        if (named.Count == 0)
        {
            // "wax" alone may say how far a row is; where that were wrong, resin would be burnt out too short.
            named = free.FindAll(t => !WordKey.Parts(t.Heading.Text).Exists(SmallWords.Remarks.Contains)
                && NamesIn(grid, t.Column, headings.Bottom, SaysWaxOrResin) is { } names && names.Any(SaysResin));
        }

        if (named is not [var (column, heading)])
        {
            return judged;
        }

        return judged with
        {
            Fields = new Dictionary<string, FieldColumn>(judged.Fields, StringComparer.Ordinal)
            {
                [PieceField.Material] = new FieldColumn(PieceField.Material, column, heading, heading.Text, null),
            },
            Findings = [.. judged.Findings, Catalogue.NamesReadAsMaterial.At(Subject.Column(PieceField.Material), heading.Text)],
        };
    }

    // Those that stand in a column; null where anything else does.
    private static HashSet<string>? NamesIn(SheetGrid grid, int column, int headingRow, Func<string, bool> isName)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var rows = 0;
        foreach (var row in grid.Rows)
        {
            var cell = grid.Cell(row, column);
            if (row <= headingRow || CellValues.IsBlank(cell))
            {
                continue;
            }

            var text = cell.Kind == CellKind.Text ? CellValues.Clean(cell.Text) : "";
            if (!isName(text))
            {
                return null;
            }

            rows++;
            names.Add(text);
        }

        return rows > 0 && names.Count <= FewNames + (rows / RowsForAnother) ? names : null;
    }

    private static bool IsName(string text) =>
        text.Any(char.IsLetter) && !text.Any(char.IsAsciiDigit) && !CellWords.Yes.Contains(text) && !CellWords.No.Contains(text)
        && !CellWords.Done.Contains(text) && !CellWords.LeftOut.Contains(text);

    private static bool SaysWaxOrResin(string text) =>
        IsName(text) && WordKey.Parts(text) is { Count: <= MostWords } words && words.Exists(SmallWords.NamesMaterial.Contains);

    private static bool SaysResin(string text) => (RemarkWords.In(text).Topics & RemarkTopics.Resin) != RemarkTopics.None;
}
