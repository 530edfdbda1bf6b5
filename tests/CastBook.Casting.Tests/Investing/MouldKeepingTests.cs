using CastBook.Casting.Investing;

namespace CastBook.Casting.Tests.Investing;

public class MouldKeepingTests
{
    // Common practice: a day in the open, a week when bagged damp.
    [Theory]
    [InlineData(false, 24)]
    [InlineData(true, 168)]
    public void AtMost_OpenOrKeptDamp_ADayOrAWeek(bool damp, double hours) => MouldKeeping.AtMost(damp).Hours.ShouldBe(hours, 1e-9);
}
