using CastBook.Casting.Burnout;
using UnitsNet;

namespace CastBook.Casting.Tests.Burnout;

public class KilnProgramTests
{
    // By hand: up 130 °C at 65 an hour is 2 h; the printed stage has its way inside its 3 h; down 200 °C at 100 an hour is 2 h.
    [Fact]
    public void Of_RiseHoldAndFall_TakesTheKilnsTime()
    {
        var stages = KilnProgram.Of(new BurnoutSchedule("x", null, [Stage(150, 65, 1), Stage(740, null, 3), Stage(540, null, 1)]), 100);

        stages.Select(s => s.Takes.Hours).ShouldBe([3, 3, 3]);
        stages.Select(s => s.Way.Hours).ShouldBe([2, 0, 2]);
        stages.Select(s => s.WayInHold).ShouldBe([false, true, false]);
        stages.Select(s => s.From.DegreesCelsius).ShouldBe([20, 150, 740]);
    }

    // A schedule that asks for 400 an hour downwards does not get it from a kiln that loses 80; one that asks for 40 does.
    [Theory]
    [InlineData(400, 2.5)]
    [InlineData(40, 5)]
    public void Of_Fall_IsTheSlowerOfKilnAndSchedule(double rate, double hours) =>
        KilnProgram.Of(new BurnoutSchedule("x", null, [Stage(740, 300, 0), Stage(540, rate, 0)]), 80)[1].Way.Hours.ShouldBe(hours, 1e-9);

    // A way of its own comes before the hold; one inside the hold is at most as long as it.
    [Fact]
    public void WayUp_OfItsOwnOrInsideTheHold_IsTold()
    {
        var own = new ProgramStage(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(320), Duration.FromHours(2), Duration.FromHours(0.5), WayInHold: false);
        var inside = own with { WayInHold = true };

        (own.WayUp.Hours, own.Takes.Hours).ShouldBe((2, 2.5));
        (inside.WayUp.Hours, inside.Takes.Hours).ShouldBe((0.5, 0.5));
    }

    // At the same temperature there is no way to go, and nothing falls.
    [Fact]
    public void Of_StageAtTheSameTemperature_HasItsWayInItsHold() =>
        KilnProgram.Of(new BurnoutSchedule("x", null, [Stage(732, null, 1), Stage(732, null, 2)]), 100)[1].WayInHold.ShouldBeTrue();

    [Fact]
    public void Of_HotLoading_BeginsThere() =>
        KilnProgram.Of(new BurnoutSchedule("x", Temperature.FromDegreesCelsius(150), [Stage(350, 100, 0)]), 100)[0].Takes.Hours.ShouldBe(2, 1e-9);

    [Fact]
    public void Of_KilnThatNeverCools_Throws() =>
        Should.Throw<ArgumentOutOfRangeException>(() => KilnProgram.Of(new BurnoutSchedule("x", null, [Stage(350, 100, 0)]), 0));

    [Fact]
    public void PouringAt_LastStageIsAFall_MovesItsTarget()
    {
        var schedule = KilnProgram.PouringAt(new BurnoutSchedule("x", null, [Stage(732, 200, 3), Stage(538, null, 2)]), Temperature.FromDegreesCelsius(480), Duration.FromHours(1));

        schedule.Stages.Select(s => s.Target.DegreesCelsius).ShouldBe([732, 480]);
        schedule.Stages[1].Hold.Hours.ShouldBe(2);
    }

    // The top is never taken for the flask temperature: wax would stay in the mould.
    [Fact]
    public void PouringAt_ScheduleEndsAtItsTop_AddsTheFall()
    {
        var schedule = KilnProgram.PouringAt(new BurnoutSchedule("x", null, [Stage(370, 200, 2), Stage(732, 200, 3)]), Temperature.FromDegreesCelsius(480), Duration.FromHours(1));

        schedule.Stages.Select(s => s.Target.DegreesCelsius).ShouldBe([370, 732, 480]);
        schedule.Stages[2].Hold.Hours.ShouldBe(1);
    }

    private static BurnoutStage Stage(double celsius, double? rate, double hours) =>
        new(Temperature.FromDegreesCelsius(celsius), rate, Duration.FromHours(hours));
}
