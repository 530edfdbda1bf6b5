using CastBook.Templates.Sheets;

namespace CastBook.Templates.Tests;

public sealed class StarterBooksTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void CastingNight_ExampleRows_AreAsManyAsAsked(int rows) =>
        SavedBook.Starter(rows).Under("Pieces", 1, "Piece").Count(p => p.StartsWith("Example:", StringComparison.Ordinal)).ShouldBe(rows);

    [Theory]
    [InlineData(-1)]
    [InlineData(3)]
    public void CastingNight_OtherNumbersOfRows_AreRefused(int rows) =>
        Should.Throw<ArgumentOutOfRangeException>(() => StarterBooks.CastingNight(Stream.Null, rows));

    [Fact]
    public void CastingNight_ExampleRows_NameWhatTheOtherSheetsList()
    {
        var book = SavedBook.Starter();

        book.Under("Pieces", 1, "Alloy").ShouldBeSubsetOf(book.Under("Alloys", 1, "Alloy"));
        book.Under("Pieces", 1, "Material").ShouldBeSubsetOf(book.Under("Materials", 1, "Material"));
    }

    /// <summary>A temperature, a density or a limit in a new book would be taken for the shop's own.</summary>
    [Fact]
    public void CastingNight_ShopSheets_HoldNoNumbers()
    {
        var book = SavedBook.Starter();

        foreach (var sheet in ShopSheets.All.Where(s => s.Name != PiecesSheet.Name))
        {
            book.Sheets[sheet.Name].Descendants(SavedBook.Main + "c").Where(c => c.Element(SavedBook.Main + "v") is not null)
                .ShouldAllBe(c => (string?)c.Attribute("t") == "s", sheet.Name);
        }
    }

    [Fact]
    public void CastingNight_ReadMe_IsATitleAndTenLines()
    {
        var book = SavedBook.Starter();

        book.Cell("Read me", "A11").ShouldStartWith("10. ");
        book.Cell("Read me", "A12").ShouldBe("");
    }
}
