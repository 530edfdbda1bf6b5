using CastBook.Planning.Shops;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Settings;

public sealed class HoursOfWorkTextTests
{
    // The days as one letter each from Monday on, with their hours; a day that is not there is closed.
    [Theory]
    [InlineData("08:00-12:00, 13:30-19:00", "MTWTFSS 08:00-12:00 13:30-19:00")]
    [InlineData("8-12 and 13.30-19", "MTWTFSS 08:00-12:00 13:30-19:00")]
    [InlineData("from 8am to 12pm, 1:30 pm to 7 pm", "MTWTFSS 08:00-12:00 13:30-19:00")]
    [InlineData("08:00–12:00, 13:30–19:00; Friday 08:00–14:00; Saturday, Sunday closed", "MTWT... 08:00-12:00 13:30-19:00|....F.. 08:00-14:00")]
    [InlineData("Mon-Fri 07:00-23:00", "MTWTF.. 07:00-23:00")]
    [InlineData("Montag bis Donnerstag: 8 Uhr bis 17 Uhr; freitags 8h30 - 14h", "MTWT... 08:00-17:00|....F.. 08:30-14:00")]
    [InlineData("Wed 20:00-02:00", "..W.... 20:00-02:00")]
    [InlineData("weekend 18:00-24:00\nMon 6:00-9:00\nMon 17:00-20:00", "M...... 06:00-09:00 17:00-20:00|.....SS 18:00-00:00")]
    public void Read_HoursAsTyped_GivesThemByDay(string typed, string expected) =>
        Told(HoursOfWorkText.Read(typed).ShouldNotBeNull()).ShouldBe(expected);

    // Nothing at all, a word that is no day, an hour that is none, a day and a half of a night, and words among hours.
    [Theory]
    [InlineData("")]
    [InlineData("most evenings")]
    [InlineData("Fryday 08:00-12:00")]
    [InlineData("08:00-25:00")]
    [InlineData("08:00")]
    [InlineData("9-5")]
    [InlineData("08:00-12:00 or 13:00-17:00")]
    [InlineData("08:00-12:00-17:00")]
    [InlineData("closed")]
    [InlineData("Monday closed")]
    [InlineData("Monday; Tuesday 08:00-12:00")]
    [InlineData("none 08:00-12:00")]
    public void Read_WhatMayMeanAnything_IsNothing(string typed) => HoursOfWorkText.Read(typed).ShouldBeNull();

    private static string Told(WeekHours week)
    {
        const string Letters = "MTWTFSS";
        DayOfWeek[] days = [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday, DayOfWeek.Saturday, DayOfWeek.Sunday];
        var groups = days.GroupBy(day => string.Join(' ', week.On(day).Select(h => $"{h.From:HH:mm}-{h.Until:HH:mm}"))).Where(g => g.Key.Length > 0);
        return string.Join('|', groups.Select(g => $"{string.Concat(days.Select((day, i) => g.Contains(day) ? Letters[i] : '.'))} {g.Key}"));
    }
}
