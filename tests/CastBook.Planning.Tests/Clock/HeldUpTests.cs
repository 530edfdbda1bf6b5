using CastBook.Planning.Clock;
using CastBook.Planning.Explaining;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Tests.Clock;

/// <summary>What held a step of the clock up.</summary>
public sealed class HeldUpTests
{
    private static NightClock Plan(double side, int flasks) => NightPlanner.Plan(Wrenmoor.Night(
        Wrenmoor.Shop with
        {
            Kilns = [new Kiln { Name = "Front kiln", Shape = KilnShape.Square, InsideWidth = Wrenmoor.Mm(side), CoolsDegreesPerHour = 100 }],
            Settings = Wrenmoor.Answered,
        },
        Wrenmoor.Ring(flasks) with { Box = null, PerTree = new Dictionary<string, int> { [""] = 1 } }) with
    {
        Clock = new ClockQuestion(new DateTimeOffset(2026, 11, 25, 20, 0, 0, TimeSpan.Zero), IsPour: false, TimeZoneInfo.Utc),
    }).Clock!;

    private static (string Formula, string Input) HeldUp(NightClock clock, ClockStepKind kind, int which)
    {
        var account = new ClockAccounts(Wrenmoor.Answered, clock).Begins(clock.Steps.Where(s => s.Kind == kind).ElementAt(which))!;
        return (account.Words, account.Inputs[0].Name);
    }

    // Three flasks one after the other, ten minutes each, quenched fifteen minutes later: A is due five minutes before C is poured.
    [Fact]
    public void Begins_HandsAreBusyWhenAQuenchIsDue_NamesWhatKeepsThem()
    {
        var clock = Plan(300, 3);

        HeldUp(clock, ClockStepKind.Quench, 0).ShouldBe(("its wait of 15 min is over, and then when hands are free after what comes before it", "Pour C, flask at 540 °C"));
        HeldUp(clock, ClockStepKind.Quench, 1).ShouldBe(("after its pour, by the wait of the alloy in this size: 15 min", "Pour B, flask at 540 °C"));
        HeldUp(clock, ClockStepKind.Pour, 1).ShouldBe(("when what comes before it is done", "Pour A, flask at 540 °C"));
    }

    [Fact]
    public void Begins_KilnIsNotEmptyYet_NamesTheLastPourOfTheLoadBefore()
    {
        var clock = Plan(230, 5);
        var last = clock.Steps.Last(s => s is { Kind: ClockStepKind.Pour, Load: 1 });

        HeldUp(clock, ClockStepKind.BaseOff, 1).ShouldBe(("when its kiln has cooled after the load before; longer where hands are busy or nobody is there", ClockWords.Of(last)));
        HeldUp(clock, ClockStepKind.LoadKiln, 1).Formula.ShouldBe("when what comes before it is done");
    }
}
