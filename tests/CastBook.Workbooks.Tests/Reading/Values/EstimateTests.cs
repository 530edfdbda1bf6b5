using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Tests.Reading.Values;

public sealed class EstimateTests
{
    [Theory]
    [InlineData("~12", "an estimate", "12")]
    [InlineData("ca. 12", "an estimate", "12")]
    [InlineData("ca 12,5 g", "an estimate", "12,5 g")]
    [InlineData("etwa 12", "an estimate", "12")]
    [InlineData("env. 12", "an estimate", "12")]
    [InlineData("12?", "an estimate", "12")]
    [InlineData("~12-14", "an estimate", "12")]
    [InlineData("12-14", "a range", "12 or 14")]
    [InlineData("12 – 14 mm", "a range", "12 or 14 mm")]
    [InlineData("12 to 14", "a range", "12 or 14")]
    [InlineData("3 bis 4 Stk", "a range", "3 or 4 Stk")]
    [InlineData("12±1", "a number with a tolerance", "12")]
    [InlineData("12 +/- 0.5", "a number with a tolerance", "12")]
    [InlineData("<3", "a limit", "3")]
    [InlineData("≥ 2.5", "a limit", "2.5")]
    [InlineData("max. 3", "a limit", "3")]
    [InlineData("minimum 3", "a limit", "3")]
    [InlineData("12+", "a limit", "12")]
    public void Of_NumberThatIsNotExact_SaysWhatItIs(string text, string what, string example) =>
        Estimate.Of(text).ShouldBe(new Estimate(what, example));

    [Theory]
    [InlineData("-")]
    [InlineData("two rubies")]
    [InlineData("about")]
    [InlineData("12O.5")]
    [InlineData("A-12")]
    [InlineData("1-2-2026")]
    [InlineData("circle 12")]
    public void Of_AnythingElse_IsNone(string text) => Estimate.Of(text).ShouldBeNull();
}
