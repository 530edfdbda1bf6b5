using CastBook.Casting.Metals;

namespace CastBook.Casting.Tests.Metals;

public class CompositionTests
{
    [Theory]
    [InlineData("Au 583 Ag 104 Cu 313")]
    [InlineData("  au583  AG 104, cu 313 ")]
    [InlineData("Au 583; Ag 104; Cu 313")]
    [InlineData("Au 583/Ag 104/Cu 313")]
    [InlineData("Au\u00A0583 Ag 104 Cu 313 Zn 0")]
    public void TryParse_WaysOfWriting_GiveTheSameParts(string text)
    {
        Composition.TryParse(text, out var composition, out var why).ShouldBeTrue(why);

        composition!.Parts.ShouldBe([("Au", 583), ("Ag", 104), ("Cu", 313)]);
        composition.PerMille("cu").ShouldBe(313);
        composition.PerMille("Zn").ShouldBe(0);
        why.ShouldBeNull();
    }

    [Fact]
    public void ToString_Composition_ReadsBack()
    {
        Composition.Of("Au 916.7; Ag 30; Cu 53.3").ToString().ShouldBe("Au 916.7 Ag 30 Cu 53.3");
        Composition.Of(Composition.Of("cu 1000").ToString()).PerMille("Cu").ShouldBe(1000);
    }

    [Theory]
    [InlineData("", "There is no element in it.")]
    [InlineData(" , ", "There is no element in it.")]
    [InlineData("Xx 1000", "\"Xx\" is not the symbol of an element known here.")]
    [InlineData("gold 1000", "\"gold\" is not the symbol of an element known here.")]
    [InlineData("Au 583 Cu 208 Cu 209", "Cu stands in it twice.")]
    [InlineData("Au 1010 Cu -10", "Cu is less than zero.")]
    [InlineData("Ag 925", "The parts add up to 925, not to 1000.")]
    [InlineData("Ag 92.5 Cu 10", "The parts add up to 102.5, not to 1000.")]    // too far from 100 to be percent
    [InlineData("Ag 0.1 Cu 0.2", "The parts add up to 0.3, not to 1000.")]      // and no dust of the sum is shown
    [InlineData("Ag 92.5 Cu 7.5", "The parts add up to 100, which looks like percent; parts per thousand add up to 1000.")]
    [InlineData("Ag 946,7 Cu 53,3", "Ag has no number that can be read after it.")]
    [InlineData("Ag Cu 1000", "Ag has no number that can be read after it.")]
    [InlineData("Ag ∞", "Ag has no number that can be read after it.")]
    [InlineData("1000", "\"1000\" stands without an element before it.")]
    [InlineData("Ag 5e2 Cu 500", "\"e\" is not the symbol of an element known here.")]
    [InlineData("Ag 1000 )", "\")\" stands without an element before it.")]
    public void TryParse_Refused_SaysWhy(string text, string expected)
    {
        Composition.TryParse(text, out var composition, out var why).ShouldBeFalse();

        composition.ShouldBeNull();
        why.ShouldBe(expected);
    }

    // Published rows that do not add up: Materials Chemistry 2e, Table 3.4 (14 k yellow, 110 %);
    // azom.com article 2372 (14 ct, 117.9 %); timezone.com 2002 (14 k white with copper twice).
    [Theory]
    [InlineData("Au 583 Ag 248 Cu 268 Zn 1.4")]
    [InlineData("Au 585 Ag 50 Cu 325 Zn 205 Ni 14")]
    [InlineData("Au 583 Cu 170 Cu 170 Zn 76")]
    public void TryParse_PublishedRowsThatAreWrong_AreRefused(string text) =>
        Composition.TryParse(text, out _, out _).ShouldBeFalse();

    [Theory]
    [InlineData("Au 750 Cu 245", true)]
    [InlineData("Au 750 Cu 255", true)]
    [InlineData("Au 750 Cu 244.9", false)]
    [InlineData("Au 750 Cu 255.1", false)]
    public void TryParse_SumOffByFive_IsTheLimit(string text, bool accepted) =>
        Composition.TryParse(text, out _, out _).ShouldBe(accepted);
}
