using CastBook.Planning.Findings;
using UnitsNet;

namespace CastBook.Planning.Tests.Patterns;

public sealed class PrintLimitsTests
{
    [Fact]
    public void Compare_OutsideTheMaterialsLimits_ChecksEachStep()
    {
        var plan = NightPlanner.Plan(Printed(24, 4, 3));

        plan.The("printed-too-cold").Seen.ShouldBe("Printed at 24 °C, but \"Castable resin\" wants at least 28 °C.");
        plan.The("washed-too-long").Seen.ShouldBe("Washed 4 min, but \"Castable resin\" allows 1.5 min at most.");
        plan.The("cured-too-short").Seen.ShouldBe("Cured 3 min a side, but \"Castable resin\" wants 5 min.");
        plan.The("cured-too-short").Subjects.ShouldBe([Subject.Piece(0, PieceField.Cured)]);
    }

    [Fact]
    public void Compare_OnTheLimits_SaysNothing()
    {
        var ids = NightPlanner.Plan(Printed(28, 1.5, 5)).Ids();

        ids.ShouldNotContain("printed-too-cold");
        ids.ShouldNotContain("washed-too-long");
        ids.ShouldNotContain("cured-too-short");
    }

    // One number is one bath; of several baths the longest counts, and all of them for the wash.
    [Theory]
    [InlineData(3, null, "Washed 3 min in one bath, but \"Castable resin\" allows 1.5 min in a bath.")]
    [InlineData(3, 1.5, null)]
    [InlineData(3, 2.0, "Washed 2 min in one bath, but \"Castable resin\" allows 1.5 min in a bath.")]
    public void Compare_LimitOfABath_LooksAtTheLongestBath(double washed, double? longest, string? seen)
    {
        var night = Printed(28, washed, 5);
        var resin = night.Shop.Materials[1] with { WashAtMost = Duration.FromMinutes(3), BathAtMost = Duration.FromMinutes(1.5) };
        var print = night.Pieces[0].Print! with { LongestBath = longest is { } bath ? Duration.FromMinutes(bath) : null };

        var plan = NightPlanner.Plan(night with
        {
            Shop = night.Shop with { Materials = [Wrenmoor.Wax, resin] },
            Pieces = [night.Pieces[0] with { Print = print }],
        });

        plan.Ids().ShouldNotContain("washed-too-long");
        plan.Findings.Where(f => f.Id == "bath-too-long").Select(f => f.Seen).ShouldBe(seen is null ? [] : [seen]);
    }

    [Theory]
    [InlineData(false, true, "\"Castable resin\" wants no rinse in water and a roughened surface where sprue wax is to hold, by its line on the Materials sheet.")]
    [InlineData(false, null, "\"Castable resin\" wants no rinse in water, by its line on the Materials sheet.")]
    [InlineData(true, true, "\"Castable resin\" wants a roughened surface where sprue wax is to hold, by its line on the Materials sheet.")]
    [InlineData(true, false, null)]
    [InlineData(null, null, null)]
    public void Plan_WhatAMaterialWantsBeforeTheTree_IsSaidOnce(bool? rinse, bool? roughen, string? seen)
    {
        var resin = Wrenmoor.Resin with { WaterRinse = rinse, Roughen = roughen };
        var piece = Wrenmoor.Ring() with { Material = "castable resin" };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Materials = [Wrenmoor.Wax, resin] }, piece, piece));

        plan.Findings.Where(f => f.Id == "material-before-tree").Select(f => f.Seen).ShouldBe(seen is null ? [] : [seen]);
    }

    [Fact]
    public void Compare_LongBath_SaysHowBathsAreTyped() =>
        Catalogue.BathTooLong.At(Subject.Book, "3 min", "\"Castable resin\"", "1.5 min").Text().ShouldBe(
            "Washed 3 min in one bath, but \"Castable resin\" allows 1.5 min in a bath. A long bath draws wax out of the surface and swells fine sections; "
            + "one number counts as one bath. Look at the parts before they go on a tree, or type the baths one by one, such as 1.5 + 1.5.");

    private static Night Printed(double at, double washed, double cured)
    {
        var resin = Wrenmoor.Resin with
        {
            PrintAtLeast = Wrenmoor.Celsius(28),
            WashAtMost = Duration.FromMinutes(1.5),
            CureEachSide = Duration.FromMinutes(5),
        };
        return Wrenmoor.Night(Wrenmoor.Shop with { Materials = [Wrenmoor.Wax, resin] }, Wrenmoor.Ring() with
        {
            Material = "castable resin",
            Print = new PiecePrint(Wrenmoor.Celsius(at), Duration.FromMinutes(washed), Duration.FromMinutes(cured)),
        });
    }
}
