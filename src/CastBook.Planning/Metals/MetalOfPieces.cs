using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Planning.Patterns;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>Works out the metal of each row that is asked for.</summary>
internal sealed class MetalOfPieces(Night night, AlloyBook alloys, MaterialBook materials, FindingList findings)
{
    private readonly WeightMeaning meaning =
        night.WeightsAreOf != WeightMeaning.Unknown ? night.WeightsAreOf : night.Shop.Settings.WeightsAreOf;

    /// <summary>The metal of every row, by row; nothing for rows that are not asked for.</summary>
    /// <param name="isAsked">Whether a row is asked for.</param>
    public IReadOnlyList<PieceMetal?> Compute(Func<int, bool> isAsked)
    {
        var all = night.Pieces.Select(p => isAsked(p.Id) ? Of(p) : null).ToList();
        var asked = all.OfType<PieceMetal>().ToList();
        alloys.Ask();
        MaterialQuestions.Ask(asked, findings);
        AskMeaning(asked);
        return all;
    }

    private PieceMetal Of(Piece piece)
    {
        Missing(piece);
        var material = materials.Of(piece);
        PrintLimits.Compare(piece, material, findings);
        var alloy = string.IsNullOrWhiteSpace(piece.Alloy) ? AlloyAnswer.Nothing : alloys.Resolve(piece.Alloy, piece.Id);
        var metal = new PieceMetal(piece, alloy, material);
        return piece.PatternVolume is { } volume ? FromVolume(metal, volume)
            : piece.Weight is not { } weight ? metal
            : meaning switch
            {
                WeightMeaning.Pattern => FromPattern(metal, weight),
                WeightMeaning.FinishedMetal => FromFinished(metal, weight),
                _ => Unsure(FromPattern(metal, weight)),
            };
    }

    // Taken as a pattern the span is known; taken as finished metal the weight is. Which of them holds is not.
    private static PieceMetal Unsure(PieceMetal metal) =>
        metal with { Each = null, VolumeEach = null, PatternMass = null, WantsMeaning = true };

    private static PieceMetal FromVolume(PieceMetal metal, Volume volume)
    {
        var pattern = metal.Piece.Weight is { } weight && metal.Material.Density is null ? weight : volume * metal.Material.Density;
        metal = metal with { VolumeEach = volume, PatternMass = pattern };
        return metal.Alloy.Known?.Density is { } density
            ? Exactly(metal, volume * density)
            : metal with { Least = volume * metal.Alloy.Least, Most = volume * metal.Alloy.Most };
    }

    private static PieceMetal FromFinished(PieceMetal metal, Mass weight)
    {
        metal = Exactly(metal, weight);
        if (metal.Alloy.Known?.Density is not { } density)
        {
            return metal;
        }

        var volume = weight / density;
        return metal with { VolumeEach = volume, PatternMass = volume * metal.Material.Density };
    }

    private static PieceMetal FromPattern(PieceMetal metal, Mass weight)
    {
        metal = metal with { PatternMass = weight };
        if (metal.Piece.Unreadable.Contains(PieceField.Material))
        {
            // The usual material must not stand in for a word that could not be read.
            return metal;
        }

        if (metal.Material.Density is { } density)
        {
            return FromVolume(metal, PatternVolume.Compute(weight, density)) with { PatternMass = weight };
        }

        var (least, most) = metal.Material.Range;
        return metal with
        {
            WantsDensity = true,
            Least = metal.Alloy.Least is { } light ? MetalForPattern.Compute(weight, most, light) : null,
            Most = metal.Alloy.Most is { } heavy ? MetalForPattern.Compute(weight, least, heavy) : null,
        };
    }

    private static PieceMetal Exactly(PieceMetal metal, Mass each) => metal with { Each = each, Least = each, Most = each };

    private void Missing(Piece piece)
    {
        if (piece.Quantity is null && !piece.Unreadable.Contains(PieceField.Quantity))
        {
            findings.Add(Catalogue.QuantityMissing.At(Subject.Piece(piece.Id, PieceField.Quantity)));
        }

        if (piece.Weight is null && piece.PatternVolume is null
            && !piece.Unreadable.Contains(PieceField.PatternMass) && !piece.Unreadable.Contains(PieceField.PatternVolume))
        {
            findings.Add(Catalogue.WeightMissing.At(Subject.Piece(piece.Id, PieceField.PatternMass)));
        }

        if (string.IsNullOrWhiteSpace(piece.Alloy) && !piece.Unreadable.Contains(PieceField.Alloy))
        {
            findings.Add(Catalogue.AlloyMissing.At(Subject.Piece(piece.Id, PieceField.Alloy)));
        }
    }

    private void AskMeaning(List<PieceMetal> asked)
    {
        var open = asked.Where(m => m.WantsMeaning).ToList();
        if (open.Count == 0)
        {
            return;
        }

        var first = open.FirstOrDefault(m => m.Alloy.Least is not null) ?? open[0];
        var weight = first.Piece.Weight!.Value;
        var (thin, dense) = first.Material.Range;
        var said = "9 to 16 times its weight in silver or gold";
        if (first.Alloy is { Least: { } light, Most: { } heavy })
        {
            var least = Say.Grams(MetalForPattern.Compute(weight, dense, light));
            var most = Say.Grams(MetalForPattern.Compute(weight, thin, heavy));
            said = (least == most ? least : $"{least} to {most}") + $" of {first.Alloy.Known?.Name ?? first.Piece.Alloy!.Trim()}";
        }

        var name = first.Piece.Name.Length == 0 ? "The first row" : $"\"{first.Piece.Name}\"";
        findings.Add(Catalogue.WeightMeaningUnknown.At(
            Subject.Setting(SettingName.WeightsAreOf), name, Say.Grams(weight), said, Say.Grams(weight)));
    }
}
