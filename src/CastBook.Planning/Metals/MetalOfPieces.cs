using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Planning.Patterns;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>Works out the metal of each row that is asked for.</summary>
/// <param name="night">The night.</param>
/// <param name="alloys">Its alloys.</param>
/// <param name="materials">Its pattern materials.</param>
/// <param name="findings">Takes what is found.</param>
/// <param name="lessons">What weighed castings taught.</param>
internal sealed class MetalOfPieces(Night night, AlloyBook alloys, MaterialBook materials, FindingList findings, CastingLessons lessons)
{
    private readonly WeightMeaning meaning =
        night.WeightsAreOf != WeightMeaning.Unknown ? night.WeightsAreOf : night.Shop.Settings.WeightsAreOf;

    /// <summary>The metal of every row, by row; nothing for rows that are not asked for.</summary>
    /// <param name="isAsked">Whether a row is asked for.</param>
    public IReadOnlyList<PieceMetal?> Compute(Func<int, bool> isAsked)
    {
        var all = new PieceMetal?[night.Pieces.Count];
        foreach (var piece in night.Pieces)
        {
            all[piece.Id] = isAsked(piece.Id) ? Of(piece) : null;
        }

        alloys.Ask();
        MaterialQuestions.Ask(all, findings);
        AskMeaning(Asked(all));
        return all;
    }

    /// <summary>The metal of the rows that are asked for; not put into a list of their own, as there may be very many.</summary>
    /// <param name="all">The metal of every row; nothing for the others.</param>
    public static IEnumerable<PieceMetal> Asked(IReadOnlyList<PieceMetal?> all)
    {
        for (var i = 0; i < all.Count; i++)
        {
            if (all[i] is { } metal)
            {
                yield return metal;
            }
        }
    }

    /// <summary>Whether a row's metal follows from a pattern, and not from an earlier casting.</summary>
    /// <param name="piece">The row.</param>
    public bool IsOfPattern(Piece piece) => piece.PatternVolume is not null || (piece.Weight is not null && MeaningOf(piece) == WeightMeaning.Pattern);

    private WeightMeaning MeaningOf(Piece piece) => piece.WeightIsOf != WeightMeaning.Unknown ? piece.WeightIsOf : meaning;

    private PieceMetal Of(Piece piece)
    {
        Missing(piece);
        var material = materials.Of(piece);
        PrintLimits.Compare(piece, material, findings);
        var alloy = string.IsNullOrWhiteSpace(piece.Alloy) ? AlloyAnswer.Nothing : alloys.Resolve(piece.Alloy, piece.Id);
        var metal = new PieceMetal(piece, alloy, material);
        var worked = piece.PatternVolume is { } volume ? FromVolume(metal, volume)
            : piece.Weight is not { } weight ? metal
            : MeaningOf(piece) switch
            {
                WeightMeaning.Pattern => FromPattern(metal, weight),
                WeightMeaning.FinishedMetal => FromFinished(metal, weight),
                _ => Unsure(FromPattern(metal, weight)),
            };
        return piece.MetalEach is { } each ? ByTheShop(worked, each) : worked;
    }

    // The shop's word leaves nothing open about the metal; what is known of the pattern stays.
    private static PieceMetal ByTheShop(PieceMetal metal, Mass each)
    {
        var volume = metal.Alloy.Known?.Density is { } density ? each / density : metal.VolumeEach;
        return metal with
        {
            WorkedOut = metal.Each,
            Each = each,
            VolumeEach = volume,
            PatternMass = metal.PatternMass ?? volume * metal.Material.Density,
            WantsDensity = false,
            WantsMeaning = false,
        };
    }

    // Taken as a pattern the span is known; taken as finished metal the weight is. Which of them holds is not.
    private static PieceMetal Unsure(PieceMetal metal) => metal with
    {
        Each = null,
        Least = metal.Least,
        Most = metal.Most,
        VolumeEach = null,
        PatternMass = null,
        WantsMeaning = true,
    };

    private PieceMetal FromVolume(PieceMetal pattern, Volume volume)
    {
        var metal = pattern with
        {
            VolumeEach = volume,
            PatternMass = pattern.Piece.Weight is { } weight && pattern.Material.Density is null ? OnTheTree(weight) : volume * pattern.Material.Density,
        };
        if (metal.Alloy.Known?.Density is not { } density)
        {
            return metal with { Least = volume * metal.Alloy.Least, Most = volume * metal.Alloy.Most };
        }

        var learnt = lessons.For(metal);
        var cast = volume * (learnt?.Factor.DecimalFractions ?? 1);
        return metal with { Learnt = learnt, VolumeEach = cast, Each = cast * density };
    }

    private static PieceMetal FromFinished(PieceMetal metal, Mass weight)
    {
        var volume = metal.Alloy.Known?.Density is { } density ? weight / density : metal.VolumeEach;
        return metal with { Each = weight, VolumeEach = volume, PatternMass = volume * metal.Material.Density };
    }

    // Supports are weighed with the pattern and cut off before the tree.
    private Mass OnTheTree(Mass weight) => weight * (1 - (night.Shop.Settings.SupportsShare?.DecimalFractions ?? 0));

    private PieceMetal FromPattern(PieceMetal metal, Mass weighed)
    {
        var weight = OnTheTree(weighed);
        if (metal.Piece.Unreadable.Contains(PieceField.Material))
        {
            // The usual material must not stand in for a word that could not be read.
            return metal with { PatternMass = weight };
        }

        if (metal.Material.Density is { } density)
        {
            return FromVolume(metal, PatternVolume.Compute(weight, density)) with { PatternMass = weight };
        }

        var (least, most) = metal.Material.Range;
        return metal with
        {
            PatternMass = weight,
            WantsDensity = true,
            Least = metal.Alloy.Least is { } light ? MetalForPattern.Compute(weight, most, light) : null,
            Most = metal.Alloy.Most is { } heavy ? MetalForPattern.Compute(weight, least, heavy) : null,
        };
    }

    private void Missing(Piece piece)
    {
        if (piece.Quantity is null && !piece.Unreadable.Contains(PieceField.Quantity))
        {
            findings.Add(Catalogue.QuantityMissing.At(Subject.Piece(piece.Id, PieceField.Quantity)));
        }

        if (piece.Weight is null && piece.PatternVolume is null && piece.MetalEach is null
            && !piece.Unreadable.Contains(PieceField.PatternMass) && !piece.Unreadable.Contains(PieceField.PatternVolume))
        {
            findings.Add(Catalogue.WeightMissing.At(Subject.Piece(piece.Id, PieceField.PatternMass)));
        }

        if (string.IsNullOrWhiteSpace(piece.Alloy) && !piece.Unreadable.Contains(PieceField.Alloy))
        {
            findings.Add(Catalogue.AlloyMissing.At(Subject.Piece(piece.Id, PieceField.Alloy)));
        }
    }

    private void AskMeaning(IEnumerable<PieceMetal> asked)
    {
        var open = asked.Where(m => m.WantsMeaning).ToList();
        if (open.Count == 0)
        {
            return;
        }

        var first = open[Math.Max(0, open.FindIndex(m => m.Alloy.Least is not null))];
        var weight = first.Piece.Weight!.Value;
        var (thin, dense) = first.Material.Range;
        var said = MetalFindingWords.TimesItsWeight;
        if (first.Alloy is { Least: { } light, Most: { } heavy })
        {
            var least = findings.Units.Metal.Say(MetalForPattern.Compute(OnTheTree(weight), dense, light));
            var most = findings.Units.Metal.Say(MetalForPattern.Compute(OnTheTree(weight), thin, heavy));
            said = MetalFindingWords.OfAlloy(least == most ? least : SentenceWords.FromTo(least, most), first.Alloy.Known?.Name ?? first.Piece.Alloy!.Trim());
        }

        var name = first.Piece.Name.Length == 0 ? SentenceWords.FirstRow : $"\"{first.Piece.Name}\"";
        findings.Add(Catalogue.WeightMeaningUnknown.At(
            Subject.Setting(SettingName.WeightsAreOf), name, findings.Units.Metal.Say(weight), said, findings.Units.Metal.Say(weight)));
    }
}
