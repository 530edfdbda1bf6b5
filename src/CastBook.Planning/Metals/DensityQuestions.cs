using CastBook.Planning.Findings;
using CastBook.Planning.Patterns;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>Asks once for the density of each pattern material that lacks it, and says what it means for the metal.</summary>
internal static class DensityQuestions
{
    /// <summary>Adds a question for each material.</summary>
    /// <param name="asked">The rows that are asked for.</param>
    /// <param name="findings">Takes what is found.</param>
    public static void Ask(IReadOnlyList<PieceMetal> asked, FindingList findings)
    {
        foreach (var rows in asked.Where(m => m.WantsDensity).GroupBy(m => m.Material.Name, StringComparer.OrdinalIgnoreCase))
        {
            var material = rows.First().Material;

            // A density of the whole shop is one question; that of one material is said at its rows too.
            Subject[] subjects = material.AskTheSetting
                ? [Subject.Setting(SettingName.PatternDensity)]
                :
                [
                    new(SubjectKind.Material, material.Name, ShopField.Density),
                    .. rows.Select(r => Subject.Piece(r.Piece.Id, PieceField.Material)),
                ];
            var where = material.AskTheSetting
                ? "\"Pattern density\" on the Shop sheet"
                : $"the density of {material.Said} on the Materials sheet";
            findings.Add(Catalogue.PatternDensityMissing.At(subjects, material.Said, Span(material, [.. rows]), where));
        }
    }

    private static string Span(KnownMaterial material, List<PieceMetal> rows)
    {
        var (least, most) = material.Range;
        var such = $"Such material runs from {Say.Dense(least)} to {Say.Dense(most)}";
        var counted = rows.Where(r => r is { Least: not null, Most: not null, Piece.Quantity: not null }).ToList();
        if (counted.Count == 0)
        {
            return such + ", and the metal follows from it.";
        }

        var low = counted.Aggregate(Mass.Zero, (sum, r) => sum + (r.Least!.Value * r.Piece.Quantity!.Value));
        var high = counted.Aggregate(Mass.Zero, (sum, r) => sum + (r.Most!.Value * r.Piece.Quantity!.Value));
        return $"{such}: {Say.Count(counted.Count, "row takes", "rows take")} from {Say.Grams(low)} to {Say.Grams(high)} of metal.";
    }
}
