using CastBook.Planning.Shops;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Settings;

public sealed class WishWordsTests
{
    // What is not named follows in the usual order.
    [Theory]
    [InlineData("investment", new[] { Wish.Investment, Wish.Flasks, Wish.KilnLoads, Wish.Metal, Wish.LikeThicknesses })]
    [InlineData("Due pieces; least investment; fewest flasks", new[] { Wish.Investment, Wish.Flasks, Wish.KilnLoads, Wish.Metal, Wish.LikeThicknesses })]
    [InlineData("metal > powder > flasks", new[] { Wish.Metal, Wish.Investment, Wish.Flasks, Wish.KilnLoads, Wish.LikeThicknesses })]
    [InlineData("flasks then metal", new[] { Wish.Flasks, Wish.Metal, Wish.Investment, Wish.KilnLoads, Wish.LikeThicknesses })]
    [InlineData("Kiln loads; like thicknesses", new[] { Wish.KilnLoads, Wish.LikeThicknesses, Wish.Flasks, Wish.Investment, Wish.Metal })]
    [InlineData(
        "due pieces placed; fewest flasks; least investment; fewest kiln loads and hours; buttons and sprues; like thicknesses together; fewest changes",
        new[] { Wish.Flasks, Wish.Investment, Wish.KilnLoads, Wish.Metal, Wish.LikeThicknesses })]
    public void Wishes_WordsOfTheBench_AreAnOrder(string text, Wish[] order) => ShopWords.Wishes(text).ShouldBe(order);

    [Theory]
    [InlineData("hours of sleep")]
    [InlineData("flasks; flasks")]
    [InlineData("changes; flasks")]
    [InlineData("changes")]
    [InlineData("flasks; due")]
    [InlineData(";")]
    public void Wishes_UnknownTwiceOrTooLate_AreNone(string text) => ShopWords.Wishes(text).ShouldBeNull();

    [Theory]
    [InlineData("flaks; metal", "flasks")]
    [InlineData("flasks; investmnt", "investment")]
    [InlineData("due; klin loads", "kiln loads")]
    [InlineData("xyz", null)]
    public void NearWish_Misspelt_IsTheWordMeant(string text, string? word) => ShopWords.NearWish(text).ShouldBe(word);

    [Fact]
    public void Read_MisspeltWish_SaysWhichIsMeant()
    {
        var filled = Filling.Filled.From(Filling.Nights.Whole()).AfterTyping(("Shop", "A21", "Order of wishes"), ("Shop", "B21", "investmnt; flasks"));

        filled.Result.Findings.Select(f => f.Seen + " " + f.Remedy).ShouldContain(s => s.Contains("investmnt; flasks") && s.Contains("Most likely investment is meant."));
    }
}
