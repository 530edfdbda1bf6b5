using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Metals;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Metals;

public sealed class AlloyDensitiesTests
{
    public static TheoryData<string> BuiltIn => [.. BuiltInAlloys.All.Where(a => a.Density is not null).Select(a => a.Name)];

    [Theory]
    [MemberData(nameof(BuiltIn))]
    public void WhyNot_BuiltInAlloy_HasAPossibleDensity(string name) =>
        AlloyDensities.WhyNot(BuiltInAlloys.All.Single(a => a.Name == name)).ShouldBeNull();

    // By hand: 1 / (0.925 / 10.49 + 0.075 / 8.96) = 10.36 g/cm³.
    [Fact]
    public void Density_FarFromItsComposition_IsAStopAndNotUsed()
    {
        Composition.TryParse("Ag 925 Cu 75", out var parts, out _).ShouldBeTrue();

        var plan = Plan(Wrenmoor.Silver.Alloy with { Composition = parts, Density = Density.FromGramsPerCubicCentimeter(13.6) });

        var finding = plan.The("alloy-density-impossible");
        finding.Severity.ShouldBe(Severity.Stop);
        finding.Text().ShouldBe(
            "Bench silver cannot have a density of 13.60 g/cm³: its composition makes 10.36 g/cm³. The metal follows from it. "
            + "Correct it on the Alloys sheet in g/cm³, or clear it there to have it worked out from the composition. Until then it counts as not given.");
        finding.Subjects.ShouldBe([new Subject(SubjectKind.Alloy, "Bench silver", ShopField.Density), Subject.Piece(0, PieceField.Alloy)]);
        plan.Pieces[0].MetalEach.ShouldBeNull();
        plan.Ids().ShouldNotContain("alloy-density-missing");
    }

    [Theory]
    [InlineData(0.95)]
    [InlineData(103.6)]
    public void Density_OfNoMetal_IsAStop(double gramsPerMl) =>
        Plan(Wrenmoor.Silver.Alloy with { Density = Density.FromGramsPerCubicCentimeter(gramsPerMl) }).The("alloy-density-impossible").Seen
            .ShouldEndWith("alloys that are cast run from 2.6 to 22.6 g/cm³.");

    private static NightPlan Plan(Alloy alloy) =>
        NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [new ShopAlloy { Alloy = alloy }] }, Wrenmoor.Ring()));
}
