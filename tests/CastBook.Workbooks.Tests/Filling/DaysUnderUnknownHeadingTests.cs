namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Days under a heading that nothing knows may be the nights of the rows.</summary>
public sealed class DaysUnderUnknownHeadingTests
{
    private const string Id = "days-not-read-as-night";

    [Fact]
    public void Fill_TwoDaysUnderAnUnknownHeading_AreSaidWithTheirRows()
    {
        var found = Filled.From(List("Gussrunde")).Result.Findings.Single(f => f.Id == Id);

        $"{found.Seen} {found.Why} {found.Remedy}".ShouldBe(
            "Column E \"Gussrunde\" holds days that were not read as casting nights: 2026-12-03 in rows 2, 3; 11.12.2026 in row 4. "
            + "All these rows were planned as one night. "
            + "If they are casting nights, change the heading to Casting night, or write \"columns\": { \"night\": [\"Gussrunde\"] } into castbook.json; "
            + "if not, name them in the heading, such as Ordered or Received.");
    }

    [Fact]
    public void Fill_ItsWordInTheSettings_MakesItTheNight()
    {
        var filled = Filled.From(List("Gussrunde"), settings: new()
        {
            Night = "2026-12-03",
            Columns = new Dictionary<string, IReadOnlyList<string>> { ["night"] = ["Gussrunde"] },
        });

        filled.Ids.ShouldNotContain(Id);
        filled.Ids.ShouldContain("rows-of-other-nights");
    }

    [Fact]
    public void Fill_DaysWithoutHeading_AreSaid() =>
        Filled.From(BookBuilder.Pieces(
            ["Stück", "Modellgewicht (g)", null, "Teil", "Legierung"],
            [2, 1.5, new DateOnly(2026, 12, 3), "Otter", "14k"],
            [2, 1.5, new DateOnly(2026, 12, 11), "Fern", "14k"])).Result.Findings.Single(f => f.Id == "days-without-heading").Seen.ShouldBe(
            "Column C has no heading and holds days, which were not read as casting nights: 2026-12-03 in row 2; 2026-12-11 in row 3.");

    [Theory]
    [InlineData("Gussabend")]
    [InlineData("Gießabend")]
    [InlineData("Giessabend")]
    [InlineData("Gießtag")]
    [InlineData("Gießdatum")]
    [InlineData("Gusstag")]
    [InlineData("Cast date")]
    [InlineData("Date coulée")]
    [InlineData("Fecha de colada")]
    [InlineData("Data di colata")]
    [InlineData("Data de vazamento")]
    public void Fill_WordsForTheNight_AreKnown(string heading)
    {
        var filled = Filled.From(List(heading), settings: new() { Night = "2026-12-03" });

        filled.Ids.ShouldNotContain(Id);
        filled.Result.Findings.Single(f => f.Id == "rows-of-other-nights").Seen.ShouldBe("Left alone: 1 row of another night than \"2026-12-03\".");
    }

    [Theory]
    [InlineData("Bestellt am")]
    [InlineData("Termin")]
    [InlineData("Order date")]
    [InlineData("Created at")]
    [InlineData("Reçu le")]
    public void Fill_OtherDays_AreNotAskedFor(string heading) => Filled.From(List(heading)).Ids.ShouldNotContain(Id);

    [Fact]
    public void Fill_OneDayForAllRowsToCast_IsNotAskedFor() =>
        Filled.From(BookBuilder.Pieces(
            ["Teil", "Stück", "Modellgewicht (g)", "Legierung", "Gussrunde", "Fertig"],
            ["Otter", 2, 1.5, "14k", new DateOnly(2026, 12, 3), null],
            ["Fern", 2, 1.5, "14k", new DateOnly(2026, 12, 3), null],
            ["Bell", 2, 1.5, "14k", new DateOnly(2026, 11, 3), "ja"])).Ids.ShouldNotContain(Id);

    [Fact]
    public void Fill_NumbersUnderAnUnknownHeading_AreNoDays() =>
        Filled.From(BookBuilder.Pieces(
            ["Teil", "Stück", "Modellgewicht (g)", "Legierung", "Preis"],
            ["Otter", 2, 1.5, "14k", 46000], ["Fern", 2, 1.5, "14k", 46010], ["Bell", 2, 1.5, "14k", 3.12])).Ids.ShouldNotContain(Id);

    private static MemoryStream List(string heading) => BookBuilder.Pieces(
        ["Teil", "Stück", "Modellgewicht (g)", "Legierung", heading],
        ["Otter", 2, 1.5, "14k", new DateOnly(2026, 12, 3)],
        ["Fern", 2, 1.5, "14k", new DateOnly(2026, 12, 3)],
        ["Bell", 2, 1.5, "14k", "11.12.2026"]);
}
