using CastBook.Planning;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Tests.Reading.Headings;

public sealed class RemarkWordsTests
{
    [Theory]
    [InlineData("resin print", RemarkTopics.Resin, 0)]
    [InlineData("Harzdruck, bitte vorsichtig", RemarkTopics.Resin, 0)]
    [InlineData("Impression 3D", RemarkTopics.Resin, 0)]
    [InlineData("con soportes", RemarkTopics.Resin, 0)]
    [InlineData("stampa in resina", RemarkTopics.Resin, 0)]
    [InlineData("impresso em resina", RemarkTopics.Resin, 0)]
    [InlineData("has a stone!", RemarkTopics.Stones, 0)]
    [InlineData("zwei Steine", RemarkTopics.Stones, 0)]
    [InlineData("avec une pierre", RemarkTopics.Stones, 0)]
    [InlineData("lleva dos piedras", RemarkTopics.Stones, 0)]
    [InlineData("wax, carved by hand", RemarkTopics.Wax, 0)]
    [InlineData("aus Wachs", RemarkTopics.Wax, 0)]
    [InlineData("cera perdida", RemarkTopics.Wax, 0)]
    [InlineData("two of them", RemarkTopics.None, 2)]
    [InlineData("a pair of course", RemarkTopics.None, 2)]
    [InlineData("ein Paar", RemarkTopics.None, 2)]
    [InlineData("deux fois", RemarkTopics.None, 2)]
    [InlineData("un paio", RemarkTopics.None, 2)]
    [InlineData("três peças", RemarkTopics.None, 3)]
    [InlineData("2x", RemarkTopics.None, 2)]
    [InlineData("x4", RemarkTopics.None, 4)]
    [InlineData("3 × please", RemarkTopics.None, 3)]
    [InlineData("6 Stk.", RemarkTopics.None, 6)]
    [InlineData("HOLD - waiting on size", RemarkTopics.Hold, 0)]
    [InlineData("not ready yet", RemarkTopics.Hold, 0)]
    [InlineData("please do not cast before June", RemarkTopics.Hold, 0)]
    [InlineData("noch nicht fertig, bitte weglassen", RemarkTopics.Hold, 0)]
    [InlineData("ne pas couler", RemarkTopics.Hold, 0)]
    [InlineData("no fundir", RemarkTopics.Hold, 0)]
    [InlineData("in attesa della misura", RemarkTopics.Hold, 0)]
    [InlineData("não fundir", RemarkTopics.Hold, 0)]
    [InlineData("2x, resin, with stones", RemarkTopics.Resin | RemarkTopics.Stones, 2)]
    public void In_Remark_SpeaksOf(string text, RemarkTopics topics, int pieces) => RemarkWords.In(text).ShouldBe((topics, pieces));

    [Theory]
    [InlineData("no stones")]
    [InlineData("ohne Stein")]
    [InlineData("sans pierre")]
    [InlineData("senza pietre")]
    [InlineData("not a print")]
    [InlineData("Steinbock")]
    [InlineData("stoneware glaze")]
    [InlineData("2 x 3 mm hole")]
    [InlineData("hole 2x3")]
    [InlineData("polish the back")]
    [InlineData("claws must hold tight")]
    [InlineData("customer cannot wait")]
    [InlineData("")]
    public void In_RemarkOfOtherThings_SpeaksOfNothing(string text) => RemarkWords.In(text).ShouldBe((RemarkTopics.None, 0));
}
