using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Section lines that name an alloy, which is then the alloy of the rows below that name none.</summary>
internal sealed class AlloySections
{
    private readonly string?[] alloys;
    private readonly List<(int Row, string Name, List<int> Rows)> lines = [];

    private AlloySections(int pieces) => alloys = new string?[pieces];

    /// <summary>Rows of section lines that were taken so.</summary>
    public IEnumerable<int> Rows => lines.Select(l => l.Row);

    /// <summary>Finds them.</summary>
    /// <param name="rows">The rows of the list.</param>
    /// <param name="grid">The sheet.</param>
    /// <param name="fields">The list's columns.</param>
    /// <param name="shop">The shop's alloys.</param>
    public static AlloySections Of(ListRows rows, SheetGrid grid, IReadOnlyDictionary<string, FieldColumn> fields, IReadOnlyList<ShopAlloy> shop)
    {
        var sections = new AlloySections(rows.Sectioned.Count == 0 ? 0 : rows.Pieces.Count);
        if (!fields.ContainsKey(PieceField.Piece))
        {
            return sections;
        }

        var column = fields.TryGetValue(PieceField.Alloy, out var alloy) ? alloy.Column : 0;
        foreach (var (row, first, end) in rows.Sectioned)
        {
            var name = rows.TitleOf(row).TrimEnd(':').TrimEnd();
            if (AlloyUnderMaterial.IsAlloy(name, shop))
            {
                var below = Enumerable.Range(first, end - first).Where(at => column == 0 || CellValues.IsBlank(grid.Cell(rows.Pieces[at], column))).ToList();
                below.ForEach(at => sections.alloys[at] = name);
                sections.lines.Add((row, name, below.ConvertAll(at => rows.Pieces[at])));
            }
        }

        return sections;
    }

    /// <summary>The alloy that a section line gives a piece.</summary>
    /// <param name="at">The piece's place in the list.</param>
    public string? AlloyOf(int at) => alloys.Length == 0 ? null : alloys[at];

    /// <summary>A note for each line.</summary>
    public IEnumerable<Finding> Findings() => lines.Where(l => l.Rows.Count > 0).Select(l => Catalogue.SectionReadAsAlloy.At(
        Subject.Column(PieceField.Piece), l.Name, l.Row.ToString("#,0", CultureInfo.InvariantCulture), RowNumbers.Text(l.Rows)));
}
