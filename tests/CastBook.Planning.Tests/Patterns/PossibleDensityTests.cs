using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Patterns;

public sealed class PossibleDensityTests
{
    [Fact]
    public void Density_OfNoWax_IsAStopAtItsCellAndNotUsed()
    {
        var plan = Plan(Wrenmoor.Shop with { Materials = [Wrenmoor.Wax with { Density = Density.FromGramsPerCubicCentimeter(95) }] });

        var finding = plan.The("pattern-density-impossible");
        finding.Severity.ShouldBe(Severity.Stop);
        finding.Text().ShouldBe(
            "A density of 95.00 g/cm³ is given for \"Injection wax\", which no wax or resin has. The metal follows from it. "
            + "Correct the density of \"Injection wax\" on the Materials sheet, in g/cm³: about 1. Until then it counts as not given.");
        finding.Subjects[0].ShouldBe(new Subject(SubjectKind.Material, "Injection wax", ShopField.Density));
        plan.Pieces[0].MetalEach.ShouldBeNull();
        plan.Ids().ShouldNotContain("pattern-density-missing");
    }

    [Fact]
    public void Density_OfTheShopSheet_IsAskedForThere()
    {
        var plan = Plan(Wrenmoor.Shop with
        {
            Materials = [],
            Settings = Wrenmoor.Answered with { PatternMaterial = "wax", PatternDensity = Density.FromKilogramsPerCubicMeter(95) },
        });

        plan.The("pattern-density-impossible").Subjects[0].ShouldBe(Subject.Setting(SettingName.PatternDensity));
    }

    // A trunk is waxed for every tree, but only a weighed one is reckoned by its density.
    [Fact]
    public void SprueWax_OfNoWax_IsAStopWhereATreeIsWeighed()
    {
        var shop = Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { SprueWaxDensity = Density.FromGramsPerCubicCentimeter(9.5) } };
        var planned = Plan(shop);
        planned.Ids().ShouldNotContain("pattern-density-impossible");

        var flask = planned.Flasks[0];
        var tree = new TreeInHand(flask.Letter, flask.Size.Name, Mass.FromGrams(50), Mass.FromGrams(58), null, FlaskState.Planned);
        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring() with { LastFlasks = [new(flask.Letter, 1)] }) with { Trees = [tree] });

        plan.The("pattern-density-impossible").Seen.ShouldBe("A density of 9.50 g/cm³ is given for the sprue wax, which no wax or resin has.");
    }

    private static NightPlan Plan(Shop shop) => NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring()));
}
