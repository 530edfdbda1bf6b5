using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Tests.Reading.Values;

public sealed class NumberTextTests
{
    [Theory]
    [InlineData("12.4", 12.4)]
    [InlineData(" 12,4 ", 12.4)]
    [InlineData("12,40", 12.4)]
    [InlineData(",5", 0.5)]
    [InlineData("1234", 1234)]
    [InlineData("1 234,5", 1234.5)]
    [InlineData("1\u00A0234.5", 1234.5)]
    [InlineData("1\u202F234", 1234)]
    [InlineData("12.4\u00A0", 12.4)]
    [InlineData("\uFEFF12.4\u200B", 12.4)]
    [InlineData("1.234,5", 1234.5)]
    [InlineData("1,234.5", 1234.5)]
    [InlineData("1,234,567", 1234567)]
    [InlineData("1.234.567", 1234567)]
    [InlineData("1'234.5", 1234.5)]
    [InlineData("1’234", 1234)]
    [InlineData("1'234.567", 1234.567)]
    [InlineData("0.520", 0.52)]
    [InlineData("0,520", 0.52)]
    [InlineData("1234,567", 1234.567)]
    [InlineData("-2.5", -2.5)]
    [InlineData("\u22122.5", -2.5)]
    [InlineData("1.25E-7", 1.25e-7)]
    public void Read_NumberAsText_GivesIt(string text, double expected)
    {
        var number = NumberText.Read(text, NumberSigns.None);

        number.Outcome.ShouldBe(NumberOutcome.Read);
        number.Value.ShouldBe(expected);
    }

    // "1,234" alone is 1.234 or 1234: to guess is to be a thousandfold wrong.
    [Theory]
    [InlineData("1,234", "")]
    [InlineData("1.234", "")]
    [InlineData("1,234", "2.5")]
    [InlineData("1.234", "2,5")]
    [InlineData("1,234", "4,567")]
    [InlineData("1,234", "2.5|2,5")]
    [InlineData("1,234", "2.5.2026")]
    public void Read_ThreeDigitsAfterTheSign_IsUndecided(string text, string elsewhereInTheColumn) =>
        NumberText.Read(text, Settled(elsewhereInTheColumn)).Outcome.ShouldBe(NumberOutcome.Undecided);

    [Theory]
    [InlineData("1,234", "2,5", 1.234)]
    [InlineData("1.234", "2.5", 1.234)]
    [InlineData("1.234", "0.520", 1.234)]
    [InlineData("1.234", "1.000,5", 1234)]
    [InlineData("1,234", "1,000.5", 1234)]
    [InlineData("1.234", "1.000.000", 1234)]
    [InlineData("1,234", "1.000.000", 1.234)]
    [InlineData("1.234", "1'000.5", 1.234)]
    [InlineData("1,234", "2,5 g", 1.234)]
    public void Read_ColumnThatSettlesItsSigns_IsReadByThem(string text, string elsewhereInTheColumn, double expected) =>
        NumberText.Read(text, Settled(elsewhereInTheColumn)).ShouldSatisfyAllConditions(
            n => n.Outcome.ShouldBe(NumberOutcome.Read), n => n.Value.ShouldBe(expected));

    [Theory]
    [InlineData("12.4 g", 12.4, "g")]
    [InlineData("0.5oz", 0.5, "oz")]
    [InlineData("3,5 dwt", 3.5, "dwt")]
    [InlineData("1 in", 1, "in")]
    [InlineData("1 1/2\"", 1.5, "in")]
    [InlineData("7/8 in", 0.875, "in")]
    [InlineData("2-1/2\"", 2.5, "in")]
    [InlineData("1½ in", 1.5, "in")]
    [InlineData("2 ¼″", 2.25, "in")]
    [InlineData("3⁄4 in.", 0.75, "in")]
    public void Read_NumberWithUnit_GivesBoth(string text, double value, string unit)
    {
        var number = NumberText.Read(text, NumberSigns.None);

        (number.Value, number.Unit!.Name).ShouldBe((value, unit));
    }

    // 24 grains to a pennyweight, 20 pennyweights to a troy ounce, 16 ounces to a pound: NIST Handbook 44, Appendix C.
    [Theory]
    [InlineData("1 dwt 6 gr", 1.25, "dwt")]
    [InlineData("3dwt 18gr", 3.75, "dwt")]
    [InlineData("2 dwt 1 1/2 grains", 2.0625, "dwt")]
    [InlineData("1 ozt 4 dwt", 1.2, "ozt")]
    [InlineData("1 oz 4 dwt 12 gr", 1.225, "ozt")]
    [InlineData("2 lb 8 oz", 2.5, "lb")]
    [InlineData("1 lb 3500 gr", 1.5, "lb")]
    [InlineData("1 h 30 min", 1.5, "h")]
    public void Read_SeveralUnits_GivesTheWholeInTheFirst(string text, double value, string unit)
    {
        var number = NumberText.Read(text, NumberSigns.None);

        (number.Outcome, number.Value, number.Unit!.Name).ShouldBe((NumberOutcome.Read, value, unit));
    }

    // A grain is none of grams, ounces with grains alone may be of either kind, and what the larger unit holds already is a slip.
    [Theory]
    [InlineData("1 g 6 gr")]
    [InlineData("1 dwt 24 gr")]
    [InlineData("1.5 dwt 6 gr")]
    [InlineData("6 gr 1 dwt")]
    [InlineData("1 oz 6 gr")]
    [InlineData("1 dwt 6")]
    [InlineData("1 dwt 6 mm")]
    public void Read_UnitsThatDoNotGoTogether_IsNoNumber(string text) =>
        NumberText.Read(text, NumberSigns.None).Outcome.ShouldBe(NumberOutcome.NotANumber);

    [Theory]
    [InlineData("12O.5")]
    [InlineData("12.4.5")]
    [InlineData("1,2,3")]
    [InlineData("1,23.456,7")]
    [InlineData("1'23.4")]
    [InlineData("about 12")]
    [InlineData("12 bananas")]
    [InlineData("=1.1*2")]
    [InlineData("NaN")]
    [InlineData("1E400")]
    [InlineData("g")]
    [InlineData(".")]
    [InlineData("")]
    [InlineData("12/5")]
    [InlineData("1/2/2026")]
    [InlineData("2-3")]
    [InlineData("3 pcs")]
    [InlineData("1234567890123456789012345678901234567890123456789012345678901234567890")]
    public void Read_NoNumber_SaysSo(string text) =>
        NumberText.Read(text, NumberSigns.None).Outcome.ShouldBe(NumberOutcome.NotANumber);

    [Theory]
    [InlineData("3", 3)]
    [InlineData("3 pcs", 3)]
    [InlineData("3 Stk.", 3)]
    [InlineData("3 pièces", 3)]
    [InlineData("6 off", 6)]
    [InlineData("x4", 4)]
    [InlineData("4x", 4)]
    [InlineData("× 4", 4)]
    [InlineData("2 pr", 4)]
    [InlineData("2 Paar", 4)]
    [InlineData("1 paio", 2)]
    [InlineData("1 dz", 12)]
    [InlineData("2 douzaines", 24)]
    public void ReadCount_QuantityWithAWord_CountsPieces(string text, double expected) =>
        NumberText.ReadCount(text, NumberSigns.None).ShouldSatisfyAllConditions(
            n => n.Outcome.ShouldBe(NumberOutcome.Read), n => n.Value.ShouldBe(expected));

    [Theory]
    [InlineData("2 sets")]
    [InlineData("3 g")]
    [InlineData("2+1")]
    [InlineData("a pair")]
    public void ReadCount_UnclearQuantity_IsNoNumber(string text) =>
        NumberText.ReadCount(text, NumberSigns.None).Outcome.ShouldBe(NumberOutcome.NotANumber);

    private static NumberSigns Settled(string column) =>
        column.Split('|').Aggregate(NumberSigns.None, (signs, text) => signs | NumberText.SignsOf(text));
}
