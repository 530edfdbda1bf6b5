using CastBook.Planning.Shops;

namespace CastBook.Planning.Tests;

public sealed class NightPlannerTests
{
    // By hand: 1.9 g of wax / 0.95 = 2 ml; × 10.4 = 20.8 g; three are 62.4 g.
    // Gates 3 × π/4 × 3² × 7 = 148.4 mm³; trunk in 75 × 100: rod = 100 − 18.75 − 18 = 63.25 mm, π/4 × 8² × 63.25 = 3179.3 mm³.
    // Tree 6 + 0.1484 + 3.1793 = 9.3277 ml; button 20 % = 1.8655 ml; charge 11.1933 × 10.4 × 1.01 = 117.57, up to 118 g.
    [Fact]
    public void Plan_ThreeRingsInAnAnsweredShop_FillsOneSmallFlask()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring(3)));

        plan.StopsAndChecks().ShouldBeEmpty();
        plan.Pieces[0].Status.ShouldBe(PieceStatus.Planned);
        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(20.8, 1e-9);
        plan.Pieces[0].Flasks.ShouldBe([new FlaskShare("A", 3)]);

        // Eight hours of schedule, and the fall from 732 to 540 °C at 100 °C an hour.
        plan.Pieces[0].Burnout!.Value.Hours.ShouldBe(8 + 1.92, 1e-9);
        plan.Clock!.Loads[0].Takes.Hours.ShouldBe(8 + 1.92, 1e-9);
        var flask = plan.Flasks.ShouldHaveSingleItem();
        flask.Size.Name.ShouldBe("75 × 100");
        flask.Alloy.ShouldBe("Bench silver");
        flask.PiecesMetal.Grams.ShouldBe(62.4, 1e-9);
        flask.TreeMetal.Grams.ShouldBe((0.148440 + 3.179302) * 10.4, 1e-3);
        flask.Button.Grams.ShouldBe(1.865548 * 10.4, 1e-3);
        flask.Charge.Grams.ShouldBe(118, 1e-9);
        flask.MetalTemperature!.Value.DegreesCelsius.ShouldBe(960, 1e-9);
        flask.FlaskTemperature!.Value.DegreesCelsius.ShouldBe(540, 1e-9);
        flask.QuenchAfter!.Value.Minutes.ShouldBe(15, 1e-9);
        plan.Bound.ShouldBe(new PlanBound(1, ProvedFewest: true) { ProvedLeastInvestment = true });
        var metal = plan.Metal.ShouldHaveSingleItem();
        metal.Pieces!.Value.Grams.ShouldBe(62.4, 1e-9);
        metal.Charges!.Value.Grams.ShouldBe(118, 1e-9);
    }

    [Fact]
    public void Plan_BareShop_AsksEachQuestionOnceAndPlansNothing()
    {
        var ring = Wrenmoor.Ring(3) with { Alloy = "sterling without deoxidant", Box = null };
        var night = Wrenmoor.Night(new Shop(), ring, ring, ring) with { WeightsAreOf = WeightMeaning.Unknown };

        var plan = NightPlanner.Plan(night);

        plan.Stops().ShouldBe(
            [
                "weight-meaning-unknown", "pattern-density-missing", "flasks-not-known", "casting-method-unknown", "crucible-unknown",
                "sizes-or-per-tree-missing",
            ],
            ignoreOrder: true);
        plan.The("sizes-or-per-tree-missing").Subjects.Count.ShouldBe(3);
        plan.Flasks.ShouldBeEmpty();
        plan.Pieces.ShouldAllBe(p => p.Status == PieceStatus.NotPlanned && !p.MetalEach.HasValue);
    }

    [Fact]
    public void Plan_NoFlasksButDensities_StillSaysTheMetal()
    {
        var shop = Wrenmoor.Shop with { FlaskSizes = [] };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring(3)));

        plan.Stops().ShouldBe(["flasks-not-known"]);
        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(20.8, 1e-9);
        plan.Metal[0].Pieces!.Value.Grams.ShouldBe(62.4, 1e-9);
        plan.Metal[0].Charges.ShouldBeNull();
    }

    [Fact]
    public void Plan_EmptyList_SaysNothing()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(new Shop()));

        plan.Findings.ShouldBeEmpty();
        plan.Flasks.ShouldBeEmpty();
        plan.Metal.ShouldBeEmpty();
    }

    [Fact]
    public void Plan_IdsThatAreNotPlaces_IsRefused()
    {
        var night = Wrenmoor.Night(Wrenmoor.Ring()) with { Pieces = [Wrenmoor.Ring() with { Id = 3 }] };

        Should.Throw<ArgumentException>(() => NightPlanner.Plan(night)).Message.ShouldStartWith("Bug in CastBook: piece 0 has the id 3");
    }

    [Fact]
    public void Plan_Defaults_AreEachNotedOnce()
    {
        var shop = Wrenmoor.Shop with
        {
            Settings = new Settings
            {
                PatternMaterial = "Injection wax",
                CastingMethod = Wrenmoor.Answered.CastingMethod,
            },
        };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring(3), Wrenmoor.Ring(20)));

        var notes = plan.Findings.Where(f => f.Id == "assumed-default").ToList();
        notes.Select(n => n.Subjects[0].Key).ShouldBe(
            [
                SettingName.ButtonShare, SettingName.ButtonAtLeast, SettingName.MeltLoss, SettingName.ChargeStep, SettingName.GateDiameter,
                SettingName.GateLength, SettingName.GapBetweenPieces, SettingName.GateAngle, SettingName.PowderStep,
            ],
            ignoreOrder: true);
        notes[0].Text().ShouldBe("Button share is taken as 20 %. To change it, type \"Button share\" on the Shop sheet.");
    }

    [Fact]
    public void Plan_UnreadableCells_HaveNoSecondFinding()
    {
        var piece = Wrenmoor.Ring() with
        {
            Quantity = null,
            Weight = null,
            Alloy = null,
            Box = null,
            Unreadable = ["quantity", "patternMass", "alloy", "length"],
        };

        var plan = NightPlanner.Plan(Wrenmoor.Night(piece));

        plan.Findings.ShouldBeEmpty();
        plan.Pieces[0].Status.ShouldBe(PieceStatus.NotPlanned);
    }

    [Fact]
    public void Plan_MissingNumbers_FoldOverRows()
    {
        var none = Wrenmoor.Ring() with { Quantity = null };

        var plan = NightPlanner.Plan(Wrenmoor.Night(none, none with { Name = "Other" }, Wrenmoor.Ring() with { Weight = null }, Wrenmoor.Ring() with { Alloy = " " }));

        plan.Stops().ShouldBe(["quantity-missing", "weight-missing", "alloy-missing"], ignoreOrder: true);
        plan.The("quantity-missing").Subjects.Count.ShouldBe(2);
        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(20.8, 1e-9);
        plan.Metal.ShouldBeEmpty();
    }

    [Fact]
    public void Plan_EnormousQuantities_StillEnd()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring(int.MaxValue), Wrenmoor.Stud(int.MaxValue)));

        plan.Stops().ShouldBe(["no-flask-left"]);
        plan.Flasks.Count.ShouldBe(7);
        plan.The("no-flask-left").Seen.ShouldStartWith("4,294,966,");
    }

    [Fact]
    public void Plan_SectionsNoTemperatureSuits_AreCheckedAndCastOrdinary()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Ring() with { FinestSection = Wrenmoor.Mm(0.6), HeaviestSection = Wrenmoor.Mm(9) }));

        plan.The("sections-far-apart").Seen.ShouldBe("The finest section is 0.6 mm and the heaviest 9 mm.");
        plan.Flasks[0].FlaskTemperature!.Value.DegreesCelsius.ShouldBe(540, 1e-9);
    }

    [Fact]
    public void Plan_GateAngleOutOfRange_IsCheckedAndFiftyIsUsed()
    {
        var odd = Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { GateAngle = UnitsNet.Angle.FromDegrees(5) } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(odd, Wrenmoor.Ring(30)));

        plan.The("gate-angle-out-of-range").Seen.ShouldBe("\"Gate angle\" is 5 degrees; it is the angle between trunk and piece, from 20 to 90 degrees.");
        plan.Flasks.Select(f => f.Count(0)).ShouldBe(NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring(30))).Flasks.Select(f => f.Count(0)));
    }

    // What a first fill of a bare list asks in one go: the shop's flasks and crucible, and what its alloy is poured at.
    [Fact]
    public void Plan_NothingKnownOfTheShop_AsksForFlasksAndTemperaturesTogether()
    {
        var night = Wrenmoor.Night(new Shop(), Wrenmoor.Ring() with { Alloy = "silicon bronze C87300", Quantity = null, Box = null });

        NightPlanner.Plan(night).Stops().ShouldBe(
            ["quantity-missing", "pattern-density-missing", "flasks-not-known", "casting-method-unknown", "crucible-unknown", "sizes-or-per-tree-missing", "metal-temperature-missing", "flask-temperature-missing"],
            ignoreOrder: true);
    }
}
