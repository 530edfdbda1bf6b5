using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Metals;

public sealed class MetalOfPiecesTests
{
    // By hand: 1.9 g of wax at 0.95 is 2 ml, × 10.4 = 20.8 g.
    [Fact]
    public void Compute_MeaningUnknown_WorksTheFirstRowBothWays()
    {
        var night = Wrenmoor.Night(Wrenmoor.Ring() with { Alloy = "Bench silver" }, Wrenmoor.Ring()) with { WeightsAreOf = WeightMeaning.Unknown };

        var finding = NightPlanner.Plan(night).The("weight-meaning-unknown");

        finding.Subjects.ShouldBe([Subject.Setting(SettingName.WeightsAreOf)]);
        finding.Text().ShouldBe(
            "Nothing says what the weights are of. \"Signet\" is 1.9 g: as a pattern it takes 20.8 g of Bench silver, as finished metal it is 1.9 g. "
            + "The two differ 9 to 20 times, so no metal is worked out from a weight until this is answered. "
            + "Type \"pattern\" or \"finished metal\" as \"Weights are of\" on the Shop sheet.");
    }

    [Fact]
    public void Compute_MeaningUnknownButVolumeGiven_NeedsNoWeight()
    {
        var night = Wrenmoor.Night(Wrenmoor.Ring() with { Weight = null, PatternVolume = Wrenmoor.Ml(3) }) with { WeightsAreOf = WeightMeaning.Unknown };

        var plan = NightPlanner.Plan(night);

        plan.Stops().ShouldBeEmpty();
        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(31.2, 1e-9);
    }

    // By hand: 1.9 g of wax is 20.8 g of metal; the shop says 22 g, which answers what the weight is of, too.
    [Fact]
    public void Compute_MetalByTheShop_StandsOverTheWeight()
    {
        var night = Wrenmoor.Night(Wrenmoor.Ring(2) with { MetalEach = Mass.FromGrams(22) });

        var plan = NightPlanner.Plan(night);

        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(22, 1e-9);
        plan.Pieces[0].MetalWorkedOut!.Value.Grams.ShouldBe(20.8, 1e-9);
        plan.Flasks[0].PiecesMetal.Grams.ShouldBe(44, 1e-9);
        var unsure = NightPlanner.Plan(night with { WeightsAreOf = WeightMeaning.Unknown });
        unsure.Stops().ShouldBeEmpty();
        unsure.Flasks[0].PiecesMetal.Grams.ShouldBe(44, 1e-9);
    }

    [Fact]
    public void Compute_FinishedMetal_IsTheMetal()
    {
        var night = Wrenmoor.Night(Wrenmoor.Ring(2) with { Weight = Mass.FromGrams(20.8) }) with { WeightsAreOf = WeightMeaning.FinishedMetal };

        var plan = NightPlanner.Plan(night);

        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(20.8, 1e-9);
        plan.Flasks[0].PiecesMetal.Grams.ShouldBe(41.6, 1e-9);
    }

    // By hand: 2.3 g at 1.20 to 1.10 g/cm³ is 1.917 to 2.091 ml, × 10.4 = 19.93 to 21.75 g; three are 59.8 to 65.2 g.
    [Fact]
    public void Compute_DensityMissing_AsksOnceAMaterialAndSaysTheSpan()
    {
        var piece = Wrenmoor.Ring(3) with { Material = "Green resin", Weight = Mass.FromGrams(2.3) };

        var plan = NightPlanner.Plan(Wrenmoor.Night(piece, piece with { Quantity = 1 }, Wrenmoor.Ring()));

        var finding = plan.The("pattern-density-missing");
        finding.Subjects.ShouldBe(
            [
                new Subject(SubjectKind.Material, "Green resin", ShopField.Density),
                Subject.Piece(0, PieceField.Material), Subject.Piece(1, PieceField.Material),
            ]);
        finding.Text().ShouldBe(
            "No density is known for \"Green resin\". Such material runs from 1.10 g/cm³ to 1.20 g/cm³: 2 rows take from 79.7 g to 87.0 g of metal. "
            + "Weigh a solid cube of it, divide by its measured volume, and type the result as the density of \"Green resin\" on the Materials sheet.");
        plan.Metal[0].Pieces.ShouldBeNull();
        plan.Metal[0].PiecesLeast!.Value.Grams.ShouldBe((4 * 2.3 / 1.2 * 10.4) + 20.8, 1e-9);
        plan.Metal[0].PiecesMost!.Value.Grams.ShouldBe((4 * 2.3 / 1.1 * 10.4) + 20.8, 1e-9);
        plan.Pieces.Select(p => p.Status).ShouldBe([PieceStatus.NotPlanned, PieceStatus.NotPlanned, PieceStatus.Planned]);
    }

    [Fact]
    public void Compute_NoMaterialNamed_AsksTheSetting()
    {
        var shop = Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { PatternMaterial = null } };

        var finding = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring())).The("pattern-density-missing");

        finding.Subjects.ShouldBe([Subject.Setting(SettingName.PatternDensity)]);
        finding.Seen.ShouldBe("No density is known for the pattern material.");
    }

    [Fact]
    public void Compute_SettingsDensity_ServesRowsOfTheUsualMaterialOnly()
    {
        var shop = Wrenmoor.Shop with
        {
            Materials = [],
            Settings = Wrenmoor.Answered with { PatternMaterial = "resin", PatternDensity = Density.FromGramsPerCubicCentimeter(1.14) },
        };
        var piece = Wrenmoor.Ring() with { Weight = Mass.FromGrams(1.14) };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, piece, piece with { Material = "Resin" }, piece with { Material = "carving wax" }));

        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(10.4, 1e-9);
        plan.Pieces[1].MetalEach!.Value.Grams.ShouldBe(10.4, 1e-9);
        plan.Pieces[2].MetalEach.ShouldBeNull();
        plan.The("pattern-density-missing").Seen.ShouldBe("No density is known for \"carving wax\".");
    }

    [Fact]
    public void Compute_UnreadableMaterial_DoesNotBecomeTheUsualOne()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring() with { Unreadable = [PieceField.Material] }));

        plan.Pieces[0].MetalEach.ShouldBeNull();
        plan.Findings.ShouldBeEmpty();
    }

    // By hand: 15 % of 1.9 g are supports; 1.615 g of wax at 0.95 are 1.7 ml, and 17.68 g of bench silver at 10.4.
    [Fact]
    public void Compute_SupportsInTheWeight_TakesThemOff()
    {
        var shop = Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { SupportsShare = Ratio.FromPercent(15) } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring()));

        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(17.68, 1e-9);
    }

    // Finished metal has no supports on it.
    [Fact]
    public void Compute_SupportsAndFinishedMetal_LeavesTheWeight()
    {
        var shop = Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { SupportsShare = Ratio.FromPercent(15) } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring()) with { WeightsAreOf = WeightMeaning.FinishedMetal });

        plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(1.9, 1e-9);
    }

    // By hand: a gate of 3 mm and 7 mm is 0.0495 ml, 0.515 g of bench silver; the trunk of 8 mm is as long as height less base and clearance, 63.25 mm.
    [Theory]
    [InlineData(false, 0.515)]
    [InlineData(true, 0)]
    public void Compute_GatesInTheWeight_AreNotAddedAgain(bool areIn, double gateGrams)
    {
        var shop = Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Small], Settings = Wrenmoor.Answered with { WeightsIncludeGates = areIn } };
        var trunk = Math.PI / 4 * 0.8 * 0.8 * ((100 - 18 - 18.75) / 10) * 10.4;

        var flask = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring())).Flasks.ShouldHaveSingleItem();

        flask.PiecesMetal.Grams.ShouldBe(20.8, 1e-9);
        flask.TreeMetal.Grams.ShouldBe(trunk + gateGrams, 0.001);
    }

    // A volume is of the piece as drawn: it has no gates, whatever the weights include.
    [Fact]
    public void Compute_GatesInTheWeightButAVolumeGiven_AreAdded()
    {
        var shop = Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Small], Settings = Wrenmoor.Answered with { WeightsIncludeGates = true } };
        var drawn = Wrenmoor.Ring() with { PatternVolume = Wrenmoor.Ml(2) };

        var with = NightPlanner.Plan(Wrenmoor.Night(shop, drawn)).Flasks[0].TreeMetal;
        var without = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring())).Flasks[0].TreeMetal;

        (with - without).Grams.ShouldBe(0.515, 0.001);
    }
}
