using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>A list whose only column of material holds the alloys: many shops call silver and gold the material.</summary>
internal static class AlloyUnderMaterial
{
    // So many cells tell what a column holds.
    private const int CellsLookedAt = 200;

    /// <summary>The columns, with the material's read as the alloy's where the list has none for alloys and most of its cells name some.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="judged">What the headings came to.</param>
    /// <param name="headingRow">The last row of the headings.</param>
    /// <param name="shop">The shop's alloys.</param>
    public static HeadingJudgement Settle(SheetGrid grid, HeadingJudgement judged, int headingRow, IReadOnlyList<ShopAlloy> shop)
    {
        if (judged.Fields.ContainsKey(PieceField.Alloy) || judged.Unread.ContainsKey(PieceField.Alloy)
            || !judged.Fields.TryGetValue(PieceField.Material, out var material) || !HoldsAlloys(grid, material.Column, headingRow, shop))
        {
            return judged;
        }

        var fields = judged.Fields.Where(f => f.Key != PieceField.Material).ToDictionary(f => f.Key, f => f.Value, StringComparer.Ordinal);
        fields[PieceField.Alloy] = material with { Field = PieceField.Alloy };
        return judged with
        {
            Fields = fields,
            Findings = [.. judged.Findings, Catalogue.MaterialReadAsAlloy.At(Subject.Column(PieceField.Alloy), material.Heading.Text)],
        };
    }

    /// <summary>Whether a text names an alloy.</summary>
    /// <param name="name">The text, cleaned.</param>
    /// <param name="shop">The shop's alloys.</param>
    public static bool IsAlloy(string name, IReadOnlyList<ShopAlloy> shop) =>
        name.Length > 0 && (shop.Any(a => AlloyWords.Key(a.Alloy.Name) == AlloyWords.Key(name)) || BuiltInAlloys.Named(name).Count > 0);

    private static bool HoldsAlloys(SheetGrid grid, int column, int headingRow, IReadOnlyList<ShopAlloy> shop)
    {
        var (alloys, others) = (0, 0);
        foreach (var row in grid.Rows)
        {
            if (row > headingRow && grid.Cell(row, column) is { Kind: CellKind.Text } cell && !CellValues.IsBlank(cell))
            {
                _ = IsAlloy(CellValues.Clean(cell.Text), shop) ? alloys++ : others++;
                if (alloys + others == CellsLookedAt)
                {
                    break;
                }
            }
        }

        return alloys > others;
    }
}
