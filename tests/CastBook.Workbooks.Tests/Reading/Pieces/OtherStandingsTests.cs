using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Tests.Reading.Pieces;

/// <summary>Columns that say of rows that they are done or not to be cast, under a heading that nothing knows.</summary>
public sealed class OtherStandingsTests
{
    private const string Id = "standing-not-read";

    private static readonly string[] Usual = ["Piece", "Qty", "Pattern weight (g)", "Alloy"];

    [Fact]
    public void Read_DoneAndCancelledUnderAnUnknownHeading_AreSaidWithTheirRows()
    {
        var check = Read("Shop state", "open", "Fulfilled", "cancelled", "Fulfilled").Findings.Single(f => f.Id == Id);

        check.Severity.ShouldBe(Severity.Check);
        $"{check.Seen} {check.Why} {check.Remedy}".ShouldBe(
            "Column E \"Shop state\" is not read, and says of rows that they are done or not to be cast: \"cancelled\" in row 4; \"Fulfilled\" in rows 3, 5. "
            + "They are planned and their metal is counted all the same. "
            + "If it says which rows are to be cast, change its heading to Status; if not, nothing need be done.");
    }

    [Theory]
    [InlineData("Shipped", "Done")]
    [InlineData("Versandt", "Done")]
    [InlineData("Storniert", "Leave out")]
    public void Read_CrossesUnderSuchAWord_AreSaid(string heading, string right) =>
        Read(heading, "x", "no", true, null).Findings.Single(f => f.Id == Id).Remedy.ShouldContain($"change its heading to {right};");

    [Theory]
    [InlineData("Process", "cast", "cast", "cast", "cast")]
    [InlineData("Customer's words", "open", "cast in place", "cancelled my visit", null)]
    [InlineData("Shipped", 3, 1, 2, 4)]
    [InlineData("Price", 12.5, 3, "closed", 4)]
    public void Read_OtherColumns_AreNotAskedAbout(string heading, params object?[] cells) =>
        Read(heading, cells).Findings.ShouldNotContain(f => f.Id == Id);

    [Fact]
    public void Read_RowsThatAreDoneOrLeftOut_AreNotSaid()
    {
        var reading = TestBooks.Read(BookBuilder.Pieces(
            [.. Usual, "Done", "Leave out", "Parcel"],
            ["Pin", 2, 1.5, "Bronze", "x", null, "shipped"], ["Bell", 1, 2.5, "Bronze", null, "x", "cancelled"], ["Stud", 1, 2.5, "Bronze", null, null, "open"]));

        reading.Findings.ShouldNotContain(f => f.Id == Id);
    }

    private static BookReading Read(string heading, params object?[] cells) =>
        TestBooks.Read(BookBuilder.Pieces([[.. Usual, heading], .. cells.Select((cell, i) => new[] { $"Band {i}", 1, 1.5, "Bronze", cell })]));
}
