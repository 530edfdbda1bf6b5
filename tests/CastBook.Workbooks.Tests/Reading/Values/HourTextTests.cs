using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Tests.Reading.Values;

public sealed class HourTextTests
{
    [Theory]
    [InlineData("18.16 Uhr", 18, 16)]
    [InlineData("7 Uhr", 7, 0)]
    [InlineData("19h30", 19, 30)]
    [InlineData("7:30 pm", 19, 30)]
    public void Read_HoursAsPeopleWriteThem_AreRead(string text, int hour, int minute) => HourText.Read(text).ShouldBe(new TimeOnly(hour, minute));

    [Theory]
    [InlineData("Uhr")]
    [InlineData("18.76 Uhr")]
    public void Read_WhatIsNoHour_IsNone(string text) => HourText.Read(text).ShouldBeNull();

    [Fact]
    public void ReadWithDay_GermanHour_IsRead() => HourText.ReadWithDay("25.11.2026 18.16 Uhr").ShouldBe(new DateTime(2026, 11, 25, 18, 16, 0));
}
