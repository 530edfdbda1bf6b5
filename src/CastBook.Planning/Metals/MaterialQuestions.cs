using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Planning.Patterns;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>Asks once for each pattern material that is open or lacks its density, and notes those that were inferred.</summary>
internal static class MaterialQuestions
{
    // An edge of 20 mm that is read a fifth of a millimetre wrong makes 3 %.
    private const double CubeFarApart = 0.03;

    /// <summary>Adds a question or a note for each material.</summary>
    /// <param name="all">The metal of every row; nothing for rows that are not asked for.</param>
    /// <param name="findings">Takes what is found.</param>
    public static void Ask(IReadOnlyList<PieceMetal?> all, FindingList findings)
    {
        // Rows of one material share what is known of it.
        foreach (var material in MetalOfPieces.Asked(all).Select(m => m.Material).Distinct(ReferenceEqualityComparer.Instance).Cast<KnownMaterial>())
        {
            if (material.TakenFrom is { } written)
            {
                findings.Add(Catalogue.MaterialTakenAs.At(Subject.Column(PieceField.Material), written, material.Name));
            }

            if (material.Row is { Kind: PatternKind.Wax } row && MaterialWords.KindIn(row.Name) == PatternKind.Resin)
            {
                findings.Add(Catalogue.ResinCalledWax.At(new Subject(SubjectKind.Material, row.Name, ShopField.Kind), material.Said));
            }

            if (BeforeTheTree(material) is { Count: > 0 } wants)
            {
                findings.Add(Catalogue.MaterialBeforeTree.At(
                    new Subject(SubjectKind.Material, material.Row!.Name, material.Row.WaterRinse == false ? ShopField.WaterRinse : ShopField.Roughen),
                    material.Said, Say.Together(wants)));
            }

            if (material.Impossible is null || material.Row?.Density is null)
            {
                CompareCube(material, findings);
            }
        }

        foreach (var rows in MetalOfPieces.Asked(all).Where(m => m.WantsDensity).GroupBy(m => MaterialWords.Key(m.Material.Name), StringComparer.Ordinal))
        {
            findings.Add(Question([.. rows], findings.Units));
        }
    }

    private static List<string> BeforeTheTree(KnownMaterial material)
    {
        var wants = new List<string>();
        if (material.Row?.WaterRinse == false)
        {
            wants.Add(MaterialFindingWords.NoRinse);
        }

        if (material.Row?.Roughen == true)
        {
            wants.Add(MaterialFindingWords.Roughened);
        }

        return wants;
    }

    // A cube tells the density where the shop gives none; where it gives one, the two must agree.
    private static void CompareCube(KnownMaterial material, FindingList findings)
    {
        if (material.Row is not { CubeDensity: { } cube } row)
        {
            return;
        }

        var subject = new Subject(SubjectKind.Material, row.Name, ShopField.CubeMass);
        var (least, most) = (material with { Density = null }).Range;
        if (cube < least * (1 - CubeFarApart) || cube > most * (1 + CubeFarApart))
        {
            findings.Add(Catalogue.CubeUnlikely.At(subject, material.Said, Say.Dense(cube), Say.Dense(least), Say.Dense(most)));
        }
        else if (row.Density is not { } given)
        {
            findings.Add(Catalogue.DensityFromCube.At(subject, material.Said, Say.Dense(cube)));
        }
        else if (Math.Abs((cube / given) - 1) > CubeFarApart)
        {
            findings.Add(Catalogue.CubeDiffers.At(subject, material.Said, Say.Dense(given), Say.Dense(cube)));
        }
    }

    private static Finding Question(List<PieceMetal> rows, ShopUnits units)
    {
        var material = rows[0].Material;
        var said = Say.Together([.. rows.Select(r => r.Material.Said).Distinct(StringComparer.OrdinalIgnoreCase)]);
        var places = rows.Select(r => Subject.Piece(r.Piece.Id, PieceField.Material));
        if (material.Choices.Count > 0)
        {
            return Catalogue.MaterialAmbiguous.At([.. places], said, Say.Choice([.. material.Choices.Select(Quoted)]));
        }

        if (material.Nearest.Count > 0)
        {
            return Catalogue.MaterialUnknown.At([.. places], said, Say.Nearest(material.Nearest));
        }

        // A density of the whole shop is one question; that of one material is said at its rows too.
        Subject[] subjects = material.AskTheSetting
            ? [Subject.Setting(SettingName.PatternDensity)]
            : [new(SubjectKind.Material, material.Name, ShopField.Density), .. places];
        var where = material.AskTheSetting
            ? MaterialFindingWords.PatternDensityOnShop
            : MaterialFindingWords.DensityOnMaterials(material.Said);
        if (material.Impossible is { } density)
        {
            return Catalogue.PatternDensityImpossible.At(subjects, said, Say.Dense(density), where);
        }

        return Catalogue.PatternDensityMissing.At(subjects, said, Span(material, rows, units), where);
    }

    private static string Quoted(string name) => $"\"{name}\"";

    private static string Span(KnownMaterial material, List<PieceMetal> rows, ShopUnits units)
    {
        var (least, most) = material.Range;
        var counted = rows.Where(r => r is { Least: not null, Most: not null, Piece.Quantity: not null }).ToList();
        if (counted.Count == 0)
        {
            return MaterialFindingWords.RunsAndMetalFollows(Say.Dense(least), Say.Dense(most));
        }

        var low = counted.Aggregate(Mass.Zero, (sum, r) => sum + (r.Least!.Value * r.Piece.Quantity!.Value));
        var high = counted.Aggregate(Mass.Zero, (sum, r) => sum + (r.Most!.Value * r.Piece.Quantity!.Value));
        return MaterialFindingWords.RunsAndRowsTake(Say.Dense(least), Say.Dense(most), CountWords.RowsTake(counted.Count), units.Metal.Say(low), units.Metal.Say(high));
    }
}
