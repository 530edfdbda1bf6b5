using CastBook.Casting.Alloying;
using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>What an alloy's composition gives cause to say.</summary>
internal static class AlloyCautions
{
    // What a sum of doubles may be off, far below what a scale shows.
    private const double Dust = 1e-9;

    /// <summary>Says what is unknown scrap, what fumes, and what the shop's own composition does not hold of its name's promise.</summary>
    /// <param name="alloy">An alloy of tonight.</param>
    /// <param name="findings">Takes what is found.</param>
    public static void Add(KnownAlloy alloy, FindingList findings)
    {
        if (alloy.Refused)
        {
            return;
        }

        var subject = new Subject(SubjectKind.Alloy, alloy.Name, ShopField.Composition);
        if (alloy.Alloy.Composition is not { } composition)
        {
            if (AlloyWords.Of(alloy.Name).Contains("SCRAP"))
            {
                findings.Add(Catalogue.AlloyIsScrap.At(subject, alloy.Name));
            }

            return;
        }

        var fuming = composition.With(ElementHazard.Fume);
        if (fuming.Count > 0)
        {
            findings.Add(Catalogue.AlloyFumes.At(subject, alloy.Name, Say.Together([.. fuming.Select(element => element.Name)])));
        }

        if (alloy.Row?.Alloy.Composition is not null && FinenessClaim.Of(alloy.Name) is { } claim)
        {
            // As written: a sum that is a little off by rounding is no reason to doubt the fine part.
            Promise(alloy.Name, claim, Ratio.FromPartsPerThousand(composition.PerMille(claim.Symbol)), subject, findings);
        }
    }

    /// <summary>The names of elements: <c>zinc and tin</c>.</summary>
    /// <param name="symbols">Their symbols.</param>
    public static string Names(IReadOnlyList<string> symbols) =>
        Say.Together([.. symbols.Select(symbol => Elements.TryGet(symbol, out var element) ? element.Name : symbol)]);

    /// <summary>How far a density by the mixing rule may be off.</summary>
    /// <param name="estimate">The density.</param>
    public static string HowLow(DensityEstimate estimate) => estimate.LowBy is { } most
        ? MetalFindingWords.DenserThanMixed(Say.Percent(most))
        : MetalFindingWords.NeverCompared;

    private static void Promise(string name, FinenessClaim claim, Ratio fineness, Subject subject, FindingList findings)
    {
        if (fineness >= claim.Fineness)
        {
            return;
        }

        _ = Elements.TryGet(claim.Symbol, out var element);
        string promised = Say.Plain(claim.PerMille), held = Say.Plain(fineness.PartsPerThousand);
        var american = MarkScheme.UnitedStates.MarkFor(claim.Symbol, fineness);
        if (american is not null && american == MarkScheme.UnitedStates.MarkFor(claim.Symbol, claim.Fineness))
        {
            var thousandths = MarkScheme.Iso.MarkFor(claim.Symbol, fineness) ?? MetalFindingWords.NoMark;
            findings.Add(Catalogue.AlloyMarkInAmericaOnly.At(subject, name, promised, element!.Name, held, american, thousandths));
        }
        else
        {
            findings.Add(Catalogue.AlloyBelowItsMark.At(subject, name, promised, element!.Name, held, Raised(claim, fineness, element.Name)));
        }
    }

    // Rounded up, so that the mark is reached. Where it takes more than there is of the alloy, nobody would do that.
    private static string Raised(FinenessClaim claim, Ratio fineness, string element)
    {
        if (claim.Fineness >= Fineness.Fine)
        {
            return "";
        }

        var grams = RaiseFineness.Compute(Mass.FromGrams(100), fineness, claim.Fineness, Fineness.Fine).Grams;
        return grams <= 100 ? MetalFindingWords.RaisedWith(Say.Plain(Math.Ceiling((grams * 10) - Dust) / 10), element) : "";
    }
}
