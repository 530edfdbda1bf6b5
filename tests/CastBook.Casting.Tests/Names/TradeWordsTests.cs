using CastBook.Casting.Names;

namespace CastBook.Casting.Tests.Names;

public class TradeWordsTests
{
    private static readonly TradeWords Table = new(
        """
        = of, the
        bell metal = glockenspeise, bronze of bells
        bronze = bronce
        """);

    [Theory]
    [InlineData("Bronce", "BRONZE")]
    [InlineData("the bronce of the church", "BRONZE CHURCH")]
    [InlineData("BRONZE  OF-BELLS", "BELL METAL")]
    [InlineData("glockenspeise", "BELL METAL")]
    [InlineData("bronce bronze", "BRONZE")]
    [InlineData("of", "")]
    public void Of_Name_GivesWhatItsWordsMean(string name, string expected) => string.Join(' ', Table.Of(name)).ShouldBe(expected);

    [Theory]
    [InlineData("Weißgold", "WEISSGOLD")]
    [InlineData("latão-crème", "LATAO CREME")]
    [InlineData("rose\u0301", "ROSE")]
    [InlineData("plu\u0300s", "PLUS")]
    [InlineData("plu\u036Fs", "PLUS")]
    [InlineData("Àpure", "APURE")]
    [InlineData("B12a", "B 12 A")]
    [InlineData("92,5", "925")]
    [InlineData("0.925", "925")]
    [InlineData("585/000", "585")]
    [InlineData("5.", "5")]
    [InlineData("鋳造", "鋳造")]
    public void Split_Text_GivesPlainWordsAndNumbers(string text, string expected) => string.Join(' ', TradeWords.Split(text)).ShouldBe(expected);
}
