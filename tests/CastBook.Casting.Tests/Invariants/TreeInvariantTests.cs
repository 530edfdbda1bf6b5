using CastBook.Casting.Patterns;
using CastBook.Casting.Trees;
using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Tests.Invariants;

public class TreeInvariantTests
{
    [Fact]
    public void Charge_WithTheButton_IsNeverBelowPiecesTreeAndLeastButton() => RandomCases.Of(101, (random, says) =>
    {
        var alloy = Gcc(random.Between(7, 22));
        var (pieces, tree, least) = (Ml(random.Between(0, 80)), Ml(random.Between(0, 20)), Ml(random.Between(0, 5)));
        var loss = Ratio.FromPercent(random.Between(0, 5));
        var step = Mass.FromGrams(random.Between(0.01, 5));

        var button = Button.Volume(pieces + tree, Ratio.FromPercent(random.Between(0, 100)), least);
        var charge = Charge.Compute(pieces * alloy, tree * alloy, button * alloy, loss, step);

        charge.Grams.ShouldBeGreaterThanOrEqualTo(((pieces + tree + least) * alloy).Grams * (1 - 1e-9), says);
        charge.Grams.ShouldBeLessThan((((pieces + tree + button) * alloy).Grams * (1 + loss.DecimalFractions)) + step.Grams + 1e-6, says);
    });

    [Fact]
    public void Charge_MoreOfAnything_IsNeverLess() => RandomCases.Of(102, (random, says) =>
    {
        var amounts = Enumerable.Range(0, 3).Select(_ => Mass.FromGrams(random.Between(0, 300))).ToArray();
        var loss = Ratio.FromPercent(random.Between(0, 5));
        var before = Charge.Compute(amounts[0], amounts[1], amounts[2], loss, Mass.FromGrams(0.1));
        var more = random.Next(3);
        amounts[more] += Mass.FromGrams(random.Between(0, 50));

        Charge.Compute(amounts[0], amounts[1], amounts[2], loss, Mass.FromGrams(0.1)).ShouldBeGreaterThanOrEqualTo(before, says);
        Charge.Compute(amounts[0], amounts[1], amounts[2], loss + Ratio.FromPercent(1), Mass.FromGrams(0.1)).ShouldBeGreaterThanOrEqualTo(before, says);
    });

    [Fact]
    public void WeighedTree_TwoTrees_ArePouredAsOne() => RandomCases.Of(103, (random, says) =>
    {
        var (wax, resin) = (Gcc(random.Between(0.9, 1)), Gcc(random.Between(1.1, 1.2)));
        var (treeA, treeB) = (random.Between(1, 80), random.Between(1, 80));
        var (waxA, waxB) = (treeA * random.NextDouble(), treeB * random.NextDouble());

        var together = WeighedTree.MetalVolume(Mass.FromGrams(treeA + treeB), Mass.FromGrams(waxA + waxB), wax, resin);
        var apart = WeighedTree.MetalVolume(Mass.FromGrams(treeA), Mass.FromGrams(waxA), wax, resin)
            + WeighedTree.MetalVolume(Mass.FromGrams(treeB), Mass.FromGrams(waxB), wax, resin);

        together.Milliliters.ShouldBe(apart.Milliliters, 1e-9 * apart.Milliliters, says);
    });

    // Wax is the lighter of the two: the same weight of it leaves more room.
    [Fact]
    public void WeighedTree_MoreOfItWax_LeavesMoreRoom() => RandomCases.Of(104, (random, says) =>
    {
        var tree = Mass.FromGrams(random.Between(1, 100));
        var wax = tree * random.Between(0, 0.9);
        var room = WeighedTree.MetalVolume(tree, wax, Gcc(0.95), Gcc(1.15));

        WeighedTree.MetalVolume(tree, wax + (tree * 0.1), Gcc(0.95), Gcc(1.15)).ShouldBeGreaterThan(room, says);
    });

    [Fact]
    public void Button_MoreMetal_IsNeverSmaller() => RandomCases.Of(105, (random, says) =>
    {
        var share = Ratio.FromPercent(random.Between(0, 100));
        var least = Ml(random.Between(0, 5));
        var metal = Ml(random.Between(0, 60));

        var button = Button.Volume(metal, share, least);

        button.ShouldBeGreaterThanOrEqualTo(least, says);
        Button.Volume(metal + Ml(5), share, least).ShouldBeGreaterThanOrEqualTo(button, says);
    });

    [Fact]
    public void Gates_SplitInTwo_KeepTheVolume() => RandomCases.Of(106, (random, says) =>
    {
        var (one, other) = (random.Next(1, 9), random.Next(1, 9));
        var (diameter, length) = (Length.FromMillimeters(random.Between(0.5, 4)), Length.FromMillimeters(random.Between(1, 20)));

        var together = GateVolume.Compute(one + other, diameter, length);

        (GateVolume.Compute(one, diameter, length) + GateVolume.Compute(other, diameter, length)).Milliliters.ShouldBe(together.Milliliters, 1e-12, says);
        GateVolume.Compute(one + other, diameter * 2, length).Milliliters.ShouldBe(4 * together.Milliliters, 1e-9, says);
        TrunkVolume.Compute(diameter, length * 3).Milliliters.ShouldBe(3 * TrunkVolume.Compute(diameter, length).Milliliters, 1e-12, says);
    });

    [Fact]
    public void MetalForPattern_ByMassOrVolume_IsTheSame() => RandomCases.Of(107, (random, says) =>
    {
        var pattern = Mass.FromGrams(random.Between(0, 40));
        var (material, alloy) = (Gcc(random.Between(0.9, 1.2)), Gcc(random.Between(7, 22)));

        var byMass = MetalForPattern.Compute(pattern, material, alloy);

        MetalForPattern.Compute(PatternVolume.Compute(pattern, material), alloy).Grams.ShouldBe(byMass.Grams, 1e-9 * byMass.Grams, says);
        (byMass / alloy * material).Grams.ShouldBe(pattern.Grams, 1e-9, says);
    });

    [Fact]
    public void ScaleStep_OfARoundedMass_ChangesNothing() => RandomCases.Of(108, (random, says) =>
    {
        var step = Mass.FromGrams(random.Between(0.01, 10));
        var mass = Mass.FromGrams(random.Between(0, 2000));

        var rounded = ScaleStep.Up(mass, step);

        rounded.Grams.ShouldBeInRange(mass.Grams - 1e-6, mass.Grams + step.Grams + 1e-9, says);
        ScaleStep.Up(rounded, step).Grams.ShouldBe(rounded.Grams, 1e-9, says);
    });

    private static Density Gcc(double value) => Density.FromGramsPerCubicCentimeter(value);

    private static Volume Ml(double value) => Volume.FromMilliliters(value);
}
