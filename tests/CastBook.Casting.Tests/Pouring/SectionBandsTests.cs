using CastBook.Casting.Pouring;
using UnitsNet;

namespace CastBook.Casting.Tests.Pouring;

public class SectionBandsTests
{
    [Theory]
    [InlineData(null, null, SectionBand.Heavy, SectionBand.Fine)]
    [InlineData(0.7, null, SectionBand.Fine, SectionBand.Fine)]
    [InlineData(0.8, null, SectionBand.Ordinary, SectionBand.Fine)]
    [InlineData(1.1, 3.0, SectionBand.Ordinary, SectionBand.Fine)]
    [InlineData(1.2, 5.0, SectionBand.Heavy, SectionBand.Fine)]
    [InlineData(1.1, 6.0, SectionBand.Ordinary, SectionBand.Ordinary)]
    [InlineData(1.5, 5.1, SectionBand.Heavy, SectionBand.Ordinary)]
    [InlineData(1.5, 8.0, SectionBand.Heavy, SectionBand.Ordinary)]
    [InlineData(1.5, 8.1, SectionBand.Heavy, SectionBand.Heavy)]
    [InlineData(null, 9.0, SectionBand.Heavy, SectionBand.Heavy)]
    [InlineData(null, 0.7, SectionBand.Fine, SectionBand.Fine)]         // nowhere thicker than 0.7 mm
    [InlineData(9.0, null, SectionBand.Heavy, SectionBand.Heavy)]       // nowhere thinner than 9 mm
    public void Of_Sections_GivesTheBands(double? finestMm, double? heaviestMm, SectionBand coldest, SectionBand hottest) =>
        Of(finestMm, heaviestMm).ShouldBe((coldest, hottest));

    [Theory]
    [InlineData(0.7, 9.0)]
    [InlineData(0.7, 6.0)]
    [InlineData(1.1, 9.0)]
    public void Of_TooThinAndTooThick_HasNoBand(double finestMm, double heaviestMm) => Of(finestMm, heaviestMm).ShouldBeNull();

    [Fact]
    public void Of_NotASection_Throws()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Of(0, 3)).ParamName.ShouldBe("finest");
        Should.Throw<ArgumentOutOfRangeException>(() => Of(1, -3)).ParamName.ShouldBe("heaviest");
    }

    private static (SectionBand Coldest, SectionBand Hottest)? Of(double? finestMm, double? heaviestMm) =>
        SectionBands.Of(Mm(finestMm), Mm(heaviestMm));

    private static Length? Mm(double? value) => value is { } mm ? Length.FromMillimeters(mm) : null;
}
