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
