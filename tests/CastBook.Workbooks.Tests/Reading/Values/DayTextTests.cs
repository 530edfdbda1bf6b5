using System.Globalization;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Tests.Reading.Values;

public sealed class DayTextTests
{
    [Theory]
    [InlineData("2026-12-03")]
    [InlineData("2026/12/3")]
    [InlineData("2026.12.03")]
    [InlineData("20261203")]
    [InlineData("3.12.2026")]
    [InlineData("03.12.26")]
    [InlineData("3. 12. 2026")]
    [InlineData("2026-12-03 14:30")]
    [InlineData("2026-12-03T14:30:00Z")]
    [InlineData("3.12.2026, 14:30")]
    [InlineData("3 Dec 2026")]
    [InlineData("3-Dec-26")]
    [InlineData("Dec 3, 2026")]
    [InlineData("December 3rd, 2026")]
    [InlineData("the 3rd of December 2026")]
    [InlineData("Thu 3 Dec 2026")]
    [InlineData("Donnerstag, 3. Dezember 2026")]
    [InlineData("Do 3. Dez. 2026")]
    [InlineData("3 décembre 2026")]
    [InlineData("jeudi 3 déc. 2026")]
    [InlineData("3 de diciembre de 2026")]
    [InlineData("jueves, 3 dic 2026")]
    [InlineData("giovedì 3 dicembre 2026")]
    [InlineData("3 de dezembro de 2026")]
    [InlineData("quinta-feira, 3 dez 2026")]
    public void Read_DayThatCanMeanOnlyOne_GivesIt(string text) =>
        DayText.Read(text, DayOrders.None).Day.ShouldBe(new DateOnly(2026, 12, 3));

    [Theory]
    [InlineData("1 Jan 2026", 1)]
    [InlineData("1 enero 2026", 1)]
    [InlineData("1er févr. 2026", 2)]
    [InlineData("1. März 2026", 3)]
    [InlineData("mar 1 mar 2026", 3)]
    [InlineData("1 avr 2026", 4)]
    [InlineData("1 mayo 2026", 5)]
    [InlineData("1 giugno 2026", 6)]
    [InlineData("1 juillet 2026", 7)]
    [InlineData("1º agosto 2026", 8)]
    [InlineData("1 août 2026", 8)]
    [InlineData("1 set 2026", 9)]
    [InlineData("1 ottobre 2026", 10)]
    [InlineData("1 out 2026", 10)]
    [InlineData("1 Nov 2026", 11)]
    public void Read_MonthsInSixLanguages_AreKnown(string text, int month) =>
        DayText.Read(text, DayOrders.None).Day.ShouldBe(new DateOnly(2026, month, 1));

    // 24 cannot be a month, so one of the two orders is out.
    [Theory]
    [InlineData("24/12/2026", "2026-12-24", DayOrders.DayFirst)]
    [InlineData("12/24/2026", "2026-12-24", DayOrders.MonthFirst)]
    [InlineData("24-12-2026", "2026-12-24", DayOrders.DayFirst)]
    [InlineData("24/12/26", "2026-12-24", DayOrders.DayFirst)]
    [InlineData("4/4/2026", "2026-04-04", DayOrders.None)]
    [InlineData("24.12.2026", "2026-12-24", DayOrders.None)]
    public void Read_DayInDigits_SettlesTheOrderWhereItCan(string text, string day, object settles)
    {
        var read = DayText.Read(text, DayOrders.None);

        (read.Day, read.Settles).ShouldBe((DateOnly.Parse(day, CultureInfo.InvariantCulture), (DayOrders)settles));
    }

    [Fact]
    public void Read_DayOrMonthFirst_IsDecidedByTheColumn()
    {
        var (march, april) = (new DateOnly(2026, 3, 4), new DateOnly(2026, 4, 3));

        DayText.Read("3/4/2026", DayOrders.None).ShouldBe(new DayText(null, april, march));
        DayText.Read("3/4/2026", DayOrders.DayFirst | DayOrders.MonthFirst).Day.ShouldBeNull();
        DayText.Read("3/4/2026", DayOrders.DayFirst).ShouldBe(new DayText(april, Ordered: true));
        DayText.Read("3/4/2026", DayOrders.MonthFirst).ShouldBe(new DayText(march, Ordered: true));
    }

    [Theory]
    [InlineData("3 Dec")]
    [InlineData("26-12-24")]
    [InlineData("32.12.2026")]
    [InlineData("30 Feb 2026")]
    [InlineData("3 jui 2026")]
    [InlineData("next Friday")]
    [InlineData("before 3 Dec 2026")]
    [InlineData("12.5")]
    [InlineData("2026")]
    [InlineData("")]
    public void Read_NoDayOrNoYear_IsNone(string text) => DayText.Read(text, DayOrders.None).ShouldBe(default);
}
