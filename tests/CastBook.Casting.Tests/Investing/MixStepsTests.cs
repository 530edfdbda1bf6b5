using CastBook.Casting.Investing;
using UnitsNet;

namespace CastBook.Casting.Tests.Investing;

public sealed class MixStepsTests
{
    // A published account of one mix: mixing 6 min, vacuum 1.5, then the pour, then vacuum 1.5, gloss-off at 13 min; 9 min and the pour.
    [Fact]
    public void Takes_PublishedMix_IsNineMinutesAndThePour()
    {
        var steps = Steps(6, 1.5, 1, 1.5, 1.5);

        steps.Takes(0).Minutes.ShouldBe(9, 1e-9);
        steps.Takes(2).Minutes.ShouldBe(11, 1e-9);
        steps.PourDoneBy(Duration.FromMinutes(13)).Minutes.ShouldBe(10, 1e-9);
        steps.MostFlasks(Duration.FromMinutes(13)).ShouldBe(2);
    }

    // By hand: 9.5 − 1.5 − 1.5 = 6.5 min; less 4 and 1.5 leaves 1 min, two flasks of half a minute.
    [Fact]
    public void MostFlasks_UsualTimes_IsTwo()
    {
        MixSteps.Usual.MostFlasks(MixSteps.UsualWorkingTime).ShouldBe(2);
        MixSteps.Usual.Takes(2).Minutes.ShouldBe(8, 1e-9);
        MixSteps.Usual.PourDoneBy(MixSteps.UsualWorkingTime).Minutes.ShouldBe(6.5, 1e-9);
    }

    [Theory]
    [InlineData(8.4, 0)]
    [InlineData(8.5, 0)]
    [InlineData(9.0, 1)]
    [InlineData(9.4, 1)]
    [InlineData(10.0, 3)]
    public void MostFlasks_WorkingTime_CountsWholeFlasks(double workingMinutes, int most) =>
        MixSteps.Usual.MostFlasks(Duration.FromMinutes(workingMinutes)).ShouldBe(most);

    [Fact]
    public void MostFlasks_FillingTakesNoTime_IsBoundByTheRestAlone()
    {
        Steps(4, 1.5, 0, 1.5, 1.5).MostFlasks(Duration.FromMinutes(8.5)).ShouldBe(int.MaxValue);
        Steps(4, 1.5, 0, 1.5, 1.5).MostFlasks(Duration.FromMinutes(8.4)).ShouldBe(0);
    }

    // Half, tenth and third minutes: as many as fit by hand, none lost to binary fractions.
    [Theory]
    [InlineData(0.1, 1.0, 10)]
    [InlineData(0.3, 0.9, 3)]
    [InlineData(0.7, 2.1, 3)]
    public void MostFlasks_TenthsOfMinutes_LosesNoneToDust(double fillingMinutes, double leftMinutes, int most) =>
        Steps(1, 1, fillingMinutes, 1, 1).MostFlasks(Duration.FromMinutes(4 + leftMinutes)).ShouldBe(most);

    [Fact]
    public void Takes_NegativeFlasks_IsRefused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => MixSteps.Usual.Takes(-1)).ParamName.ShouldBe("flasks");

    private static MixSteps Steps(double mixing, double bowl, double filling, double flask, double margin) => new(
        Duration.FromMinutes(mixing), Duration.FromMinutes(bowl), Duration.FromMinutes(filling), Duration.FromMinutes(flask), Duration.FromMinutes(margin));
}
