using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Tests.Reading.Values;

public sealed class NumberTextTests
{
    [Theory]
    [InlineData("12.4", 12.4)]
    [InlineData(" 12,4 ", 12.4)]
    [InlineData("12,40", 12.4)]
    [InlineData("1234", 1234)]
    [InlineData("1 234,5", 1234.5)]
    [InlineData("1\u00A0234.5", 1234.5)]
    [InlineData("1.234,5", 1234.5)]
    [InlineData("1,234.5", 1234.5)]
    [InlineData("1,234,567", 1234567)]
    [InlineData("-2.5", -2.5)]
    [InlineData("\u22122.5", -2.5)]
    [InlineData("1.25E-7", 1.25e-7)]
    [InlineData("1.234", 1.234)]
    public void Read_NumberAsText_GivesIt(string text, double expected)
    {
        var number = NumberText.Read(text, DecimalSign.Unknown);

        number.Outcome.ShouldBe(NumberOutcome.Read);
        number.Value.ShouldBe(expected);
    }

    // "1,234" alone is 1.234 or 1234: to guess is to be a thousandfold wrong.
    [Theory]
    [InlineData("1,234", "")]
    [InlineData("1,234", "2.5")]
    [InlineData("1.234", "2,5")]
    public void Read_ThreeDigitsAfterTheSign_IsUndecided(string text, string elsewhereInTheColumn) =>
        NumberText.Read(text, NumberText.SignOf(elsewhereInTheColumn)).Outcome.ShouldBe(NumberOutcome.Undecided);

    [Fact]
    public void Read_ColumnThatUsesCommas_SettlesTheThousands() =>
        NumberText.Read("1,234", DecimalSign.Comma).Value.ShouldBe(1.234);

    [Theory]
    [InlineData("12.4 g", 12.4, "g")]
    [InlineData("0.5oz", 0.5, "oz")]
    [InlineData("3,5 dwt", 3.5, "dwt")]
    [InlineData("1 in", 1, "in")]
    public void Read_NumberWithUnit_GivesBoth(string text, double value, string unit)
    {
        var number = NumberText.Read(text, DecimalSign.Unknown);

        (number.Value, number.Unit!.Name).ShouldBe((value, unit));
    }

    [Theory]
    [InlineData("12O.5")]
    [InlineData("12.4.5")]
    [InlineData("1,2,3")]
    [InlineData("1,23.456,7")]
    [InlineData("about 12")]
    [InlineData("12 bananas")]
    [InlineData("=1.1*2")]
    [InlineData("NaN")]
    [InlineData("1E400")]
    [InlineData("g")]
    public void Read_NoNumber_SaysSo(string text) =>
        NumberText.Read(text, DecimalSign.Unknown).Outcome.ShouldBe(NumberOutcome.NotANumber);
}
