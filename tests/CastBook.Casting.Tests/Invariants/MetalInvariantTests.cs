using CastBook.Casting.Alloying;
using CastBook.Casting.Metals;
using UnitsNet;

namespace CastBook.Casting.Tests.Invariants;

public class MetalInvariantTests
{
    [Fact]
    public void Compute_RaisedAlloy_KeepsWhatIsNotPrecious() => RandomCases.Of(202, (random, says) =>
    {
        var from = random.Between(0.1, 0.8);
        var to = random.Between(from, 0.9);
        var with = random.Between(to + 0.01, 1);
        var metal = random.Between(0, 500);

        var added = RaiseFineness.Compute(Mass.FromGrams(metal), Share(from), Share(to), Share(with)).Grams;

        added.ShouldBeGreaterThanOrEqualTo(0, says);
        ((metal + added) * (1 - to)).ShouldBe((metal * (1 - from)) + (added * (1 - with)), 1e-6 * (metal + added + 1), says);
    });

    [Fact]
    public void Density_OfAnyComposition_LiesBetweenItsElements() => RandomCases.Of(204, (random, says) =>
    {
        var elements = Enumerable.Range(0, random.Next(1, 5)).Select(_ => Elements.All[random.Next(Elements.All.Count)]).DistinctBy(e => e.Symbol).ToList();
        var composition = Composition.Of(string.Join(' ', elements.Select((element, i) => $"{element.Symbol} {Part(i, elements.Count)}")));

        var density = DensityFromComposition.Compute(composition).Density;

        density.GramsPerCubicCentimeter.ShouldBeInRange(
            elements.Min(e => e.Density.GramsPerCubicCentimeter) - 1e-9, elements.Max(e => e.Density.GramsPerCubicCentimeter) + 1e-9, says);
    });

    [Fact]
    public void Density_PartsInAnotherOrder_IsTheSame() => RandomCases.Of(205, (random, says) =>
    {
        var gold = random.Next(1, 900);
        var silver = random.Next(1, 1000 - gold);
        var one = DensityFromComposition.Compute(Composition.Of($"Au {gold} Ag {silver} Cu {1000 - gold - silver}"));
        var other = DensityFromComposition.Compute(Composition.Of($"Cu {1000 - gold - silver} Au {gold} Ag {silver}"));

        other.Density.GramsPerCubicCentimeter.ShouldBe(one.Density.GramsPerCubicCentimeter, 1e-12, says);
    });

    [Fact]
    public void Density_MoreGold_IsDenser() => RandomCases.Of(206, (random, says) =>
    {
        var gold = random.Next(1, 990);

        var less = DensityFromComposition.Compute(Composition.Of($"Au {gold} Cu {1000 - gold}")).Density;

        DensityFromComposition.Compute(Composition.Of($"Au {gold + 10} Cu {990 - gold}")).Density.ShouldBeGreaterThan(less, says);
    });

    [Fact]
    public void Composition_Written_ReadsBack() => RandomCases.Of(207, (random, says) =>
    {
        var gold = Math.Round(random.Between(1, 900), 2);
        var composition = Composition.Of(FormattableString.Invariant($"Au {gold} Cu {Math.Round(1000 - gold, 2)}"));

        Composition.Of(composition.ToString()).Parts.ShouldBe(composition.Parts, says);
    });

    // A mark in thousandths never promises more than there is.
    [Fact]
    public void Mark_OfAnyFineness_PromisesNoMore() => RandomCases.Of(208, (random, says) =>
    {
        var fineness = random.Between(0, 1000);
        foreach (var symbol in (string[])["Au", "Ag", "Pt", "Pd"])
        {
            if (MarkScheme.Iso.MarkFor(symbol, Ratio.FromPartsPerThousand(fineness)) is { } mark)
            {
                double.Parse(mark, System.Globalization.CultureInfo.InvariantCulture).ShouldBeLessThanOrEqualTo(fineness + 1e-6, says);
            }
        }
    });

    private static string Part(int index, int count)
    {
        var share = 1000 / count;
        return $"{(index == 0 ? 1000 - (share * (count - 1)) : share)}";
    }

    private static Ratio Share(double fraction) => Ratio.FromDecimalFractions(fraction);
}
