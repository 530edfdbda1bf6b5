using CastBook.Casting.Metals;
using CastBook.Casting.Tests.Published;
using UnitsNet;

namespace CastBook.Casting.Tests.Metals;

public class MarkSchemeTests
{
    [Fact]
    public void MarkFor_AgreesWithPublishedMarks()
    {
        foreach (var row in PublishedTable.Rows("marks.csv", 4))
        {
            var mark = Scheme(row[0]).MarkFor(row[1], Ratio.FromPartsPerThousand(PublishedNumber.Parse(row[2]).Value));

            (mark ?? "none").ShouldBe(row[3], string.Join(' ', row));
        }
    }

    // Each mark of a scheme stands for its own fineness, and a hair below it only the next one down may be used.
    [Theory]
    [InlineData("Ag", new[] { 800, 925, 999 })]
    [InlineData("Au", new[] { 375, 585, 750, 916, 990, 999 })]
    [InlineData("Pd", new[] { 500, 950, 999 })]
    [InlineData("Pt", new[] { 850, 900, 950, 999 })]
    public void MarkFor_JustBelowAMark_IsTheNextOneDown(string symbol, int[] marks)
    {
        string? below = null;
        foreach (var perMille in marks)
        {
            var mark = $"{perMille}";
            MarkScheme.Iso.MarkFor(symbol, Ratio.FromPartsPerThousand(perMille)).ShouldBe(mark);
            MarkScheme.Iso.MarkFor(symbol, Ratio.FromPartsPerThousand(perMille - 0.01)).ShouldBe(below);
            below = mark;
        }
    }

    // By the definition of the carat, with the three thousandths of the law: a hair below them it is the next one down.
    [Fact]
    public void MarkFor_CaratsOfTheUnitedStates_AreTwentyFourths()
    {
        string? below = null;
        foreach (var carats in (int[])[9, 10, 14, 18, 22])
        {
            var least = Fineness.FromCarats(carats).PartsPerThousand - 3;
            MarkScheme.UnitedStates.MarkFor("Au", Ratio.FromPartsPerThousand(least)).ShouldBe($"{carats}K");
            MarkScheme.UnitedStates.MarkFor("Au", Ratio.FromPartsPerThousand(least - 0.01)).ShouldBe(below);
            below = $"{carats}K";
        }
    }

    [Fact]
    public void Of_Names_AgreeWithPublishedMarks()
    {
        foreach (var row in PublishedTable.Rows("carat-marks.csv", 2))
        {
            FinenessClaim.Of(row[0])!.PerMille.ShouldBe(PublishedNumber.Parse(row[1]).Value, row[0]);
        }
    }

    [Theory]
    [InlineData("house 18k yellow", "Au", 750)]
    [InlineData("585", "Au", 585)]
    [InlineData("Sterling", "Ag", 925)]
    [InlineData("Silber 835", "Ag", 835)]
    [InlineData("Pt950", "Pt", 950)]
    [InlineData("palladium 500", "Pd", 500)]
    public void Of_NameWithAPromise_IsRead(string name, string symbol, double perMille) =>
        FinenessClaim.Of(name).ShouldBe(new FinenessClaim(symbol, perMille));

    [Theory]
    [InlineData("bronze")]
    [InlineData("white gold")]
    [InlineData("silver")]
    [InlineData("silver 12")]
    [InlineData("silver 499")]
    [InlineData("silver 7500")]
    [InlineData("brass 850")]
    [InlineData("silver 75")]
    [InlineData("platinum")]
    [InlineData("CuSn10")]
    public void Of_NameWithoutAPromise_IsMissing(string name) => FinenessClaim.Of(name).ShouldBeNull();

    private static MarkScheme Scheme(string name) => name == "US" ? MarkScheme.UnitedStates : MarkScheme.Iso;
}
