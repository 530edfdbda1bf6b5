using CastBook.Planning;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Reading;

/// <summary>Which rows of a running list are tonight's.</summary>
public sealed class NightTests
{
    [Theory]
    [InlineData(null, "2026-12-10", new[] { PieceStatus.OtherNight, PieceStatus.NotPlanned })]
    [InlineData("2026-12-03", "2026-12-10", new[] { PieceStatus.NotPlanned, PieceStatus.OtherNight })]
    [InlineData("3 Dec 2026", "2026-12-10", new[] { PieceStatus.NotPlanned, PieceStatus.OtherNight })]
    [InlineData(null, "10.12.2026", new[] { PieceStatus.OtherNight, PieceStatus.NotPlanned })]
    [InlineData(null, null, new[] { PieceStatus.NotPlanned, PieceStatus.OtherNight })]
    public void Night_AskedFor_BeatsTheShopSheetAndThatTheCalendar(string? asked, object? onShopSheet, object expected)
    {
        var plan = NightPlanner.Plan(Read(onShopSheet, new BookSettings { Night = asked, Today = new DateOnly(2026, 12, 1) }).Night);

        plan.Pieces.Select(p => p.Status).ShouldBe((PieceStatus[])expected);
    }

    // A cell of the Shop sheet that an office program has made a date names the same night as text does.
    [Fact]
    public void Night_ThatIsADateOnTheShopSheet_IsFound() =>
        Read(new DateOnly(2026, 12, 10), BookSettings.None).Night.Shop.Settings.Night.ShouldBe("2026-12-10");

    private static BookReading Read(object? night, BookSettings settings)
    {
        using var book = new BookBuilder()
            .Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Alloy", "Night", "Done")
                .Row("Pin", 2, 1.5, "Bronze", new DateOnly(2026, 12, 3))
                .Row("Bell", 2, 1.5, "Bronze", "10.12.2026"))
            .Sheet("Shop", s => s.Row("Setting", "Value", "Unit").Row("Night", night)).Build();
        return BookReader.Read(book, settings);
    }
}
