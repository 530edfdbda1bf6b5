using CastBook.Casting.Burnout;
using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using UnitsNet;
using static CastBook.Planning.Tests.Clock.ClockPlanningTests;

namespace CastBook.Planning.Tests.Clock;

public sealed class ClockWordsTests
{
    // The third stage is the fifth once more.
    [Fact]
    public void Of_StagesSaidAlike_SayWhichTheyAre() =>
        Stages(WrittenTemperature.Celsius, (150, 2), (370, 1), (700, 2), (600, 1), (700, 2), (540, 1)).ShouldBe(
        [
            "Kiln of load 1 to 150 °C, held 2 h", "Kiln of load 1 to 370 °C, held 1 h", "Kiln of load 1 to 700 °C, held 2 h (stage 3 of 6)",
            "Kiln of load 1 to 600 °C, there after 1 h, then held 1 h", "Kiln of load 1 to 700 °C, held 2 h (stage 5 of 6)",
            "Kiln of load 1 falls to 540 °C, there after 1 h 36, then held 1 h",
        ]);

    // 700.4 and 700.6 °C are 1292.7 and 1293.1 °F: alike in the one unit only, and a shop may change its unit in the middle of a night.
    [Fact]
    public void Of_StagesSaidAlikeInOneUnit_SayWhichTheyAreInBoth()
    {
        Stages(WrittenTemperature.Celsius, (700.4, 1), (700.6, 1), (540, 1)).Take(2).ShouldBe(["Kiln of load 1 to 700 °C, held 1 h (stage 1 of 3)", "Kiln of load 1 to 701 °C, held 1 h (stage 2 of 3)"]);
        Stages(WrittenTemperature.Fahrenheit, (700.4, 1), (700.6, 1), (540, 1)).Take(2).ShouldBe(["Kiln of load 1 to 1,293 °F, held 1 h (stage 1 of 3)", "Kiln of load 1 to 1,293 °F, held 1 h (stage 2 of 3)"]);
    }

    public static TheoryData<ClockStepKind> Kinds => [.. Enum.GetValues<ClockStepKind>()];

    // What is done to a flask holds what is in it; what is done to a mix or a kiln names none, whatever letters its words have.
    [Theory]
    [MemberData(nameof(Kinds))]
    public void FlasksIn_WordsOfAStep_AreThoseOfItsFlasks(ClockStepKind kind)
    {
        var named = kind is ClockStepKind.Fill or ClockStepKind.FlaskVacuum or ClockStepKind.Set or ClockStepKind.BaseOff or ClockStepKind.Steam
            or ClockStepKind.LoadKiln or ClockStepKind.Pour or ClockStepKind.Quench or ClockStepKind.CoolAlone;
        foreach (var target in new Temperature?[] { null, Wrenmoor.Celsius(540) })
        {
            var step = new ClockStep
            {
                Kind = kind,
                Begins = Duration.Zero,
                Takes = Duration.FromMinutes(5),
                Hands = true,
                Load = 1,
                Mix = named ? null : 1,
                Flasks = ["C", "AB"],
                Target = target,
            };

            ClockWords.FlasksIn(ClockWords.Of(step)).ShouldBe(named ? ["C", "AB"] : []);
        }
    }

    private static IEnumerable<string> Stages(WrittenTemperature unit, params (double Celsius, double Hours)[] stages)
    {
        var shop = Kilned() with
        {
            Schedules = [new ShopSchedule { Name = "own", Stages = [.. stages.Select(s => new BurnoutStage(Wrenmoor.Celsius(s.Celsius), null, Duration.FromHours(s.Hours)))] }],
        };
        return Plan(shop, null, Wrenmoor.Ring()).Clock!.Steps.Where(s => s.Kind is ClockStepKind.Stage or ClockStepKind.Fall).Select(s => ClockWords.Of(s, unit));
    }
}
