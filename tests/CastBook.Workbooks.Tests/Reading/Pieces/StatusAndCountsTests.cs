using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Tests.Reading.Pieces;

/// <summary>Columns that lists of other programs have: how far a row is, what its quantity counts, and alloys under the heading of materials.</summary>
public sealed class StatusAndCountsTests
{
    private static readonly string[] Usual = ["Piece", "Qty", "Pattern weight (g)", "Alloy"];

    [Theory]
    [InlineData("Status", "done", "cancelled")]
    [InlineData("Job status", "Shipped", "On hold")]
    [InlineData("Stand", "gegossen", "storniert")]
    [InlineData("État", "livré", "annulée")]
    [InlineData("Estado", "fundido", "anulado")]
    [InlineData("Stato", "consegnato", "sospeso")]
    [InlineData("Situação", "entregue", "cancelada")]
    public void Read_Status_SaysWhatIsDoneAndWhatIsLeftOut(string heading, string done, string leftOut)
    {
        var reading = Read([.. Usual, heading], ["Pin", 2, 1.5, "Bronze", done], ["Bell", 1, 2.5, "Bronze", leftOut], ["Stud", 1, 2.5, "Bronze", null]);

        reading.Night.Pieces.Select(p => (p.Done, p.LeaveOut)).ShouldBe([(true, false), (false, true), (false, false)]);
        reading.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void Read_OtherWordsOfAStatus_AreStillToCastAndSaidOnceEach()
    {
        var reading = Read([.. Usual, "Status"], ["Pin", 2, 1.5, "Bronze", "open"], ["Bell", 1, 2.5, "Bronze", "wax ready"], ["Stud", 1, 2.5, "Bronze", "Open"]);

        reading.Night.Pieces.ShouldAllBe(p => !p.Done && !p.LeaveOut);
        reading.Findings.Select(Said).ShouldBe(
        [
            "status-still-to-cast: \"open\" under Status was read as still to cast. Type done there for what is cast already, and cancelled for what is not to be cast.",
            "status-still-to-cast: \"wax ready\" under Status was read as still to cast. Type done there for what is cast already, and cancelled for what is not to be cast.",
        ]);
    }

    [Fact]
    public void Read_DoneBesideAStatus_IsTheOneRead()
    {
        var reading = Read([.. Usual, "Status", "Done"], ["Pin", 2, 1.5, "Bronze", "done", null], ["Bell", 1, 2.5, "Bronze", "open", "x"]);

        reading.Night.Pieces.Select(p => p.Done).ShouldBe([false, true]);
    }

    [Theory]
    [InlineData("Unit", "PRS")]
    [InlineData("Einheit", "Paar")]
    [InlineData("Unidad", "pares")]
    public void Read_PairsUnderAHeadingOfTheirOwn_AreCounted(string heading, string pairs)
    {
        var reading = Read([.. Usual, heading], ["Pin", 4, 1.5, "Bronze", pairs], ["Bell", 3, 2.5, "Bronze", "pcs"], ["Stud", "2 pr", 0.4, "Bronze", pairs]);

        reading.Night.Pieces.Select(p => p.Quantity).ShouldBe([8, 3, 4]);
        reading.Findings.Select(Said).ShouldHaveSingleItem().ShouldBe(
            $"pairs-counted: Pairs under Qty were counted as two pieces each, such as 4 {pairs} as 8 pieces, in rows 2, 4. If that is wrong, type the number of pieces.");
    }

    [Fact]
    public void Read_AlloysUnderMaterial_AreRead()
    {
        var reading = Read(["Piece", "Qty", "Wax weight (g)", "Material"], ["Pin", 2, 1.5, "Sterling silver"], ["Bell", 1, 2.5, "tin bronze"], ["Stud", 1, 1, "moon metal"]);

        reading.Night.Pieces.Select(p => p.Alloy).ShouldBe(["Sterling silver", "tin bronze", "moon metal"]);
        reading.Night.Pieces.Select(p => p.Material).ShouldAllBe(m => m == "wax");
        Said(reading.Findings.ShouldHaveSingleItem()).ShouldBe(
            "material-read-as-alloy: \"Material\" was read as the alloy, because its cells name alloys. If that is wrong, add a column \"Alloy\" and type the alloys there.");
    }

    [Theory]
    [InlineData("Alloy", "Fine silver", "Sterling silver")]
    [InlineData("Shelf", "3", "castable wax")]
    public void Read_MaterialBesideAlloysOrOfPatterns_StaysTheMaterial(string other, string otherCell, string material) =>
        Read(["Piece", "Qty", "Weight of model (g)", "Material", other], ["Pin", 2, 1.5, material, otherCell]).Night.Pieces[0].Material.ShouldBe(material);

    private static BookReading Read(params object?[][] rows) => TestBooks.Read(BookBuilder.Pieces(rows));

    private static string Said(Finding finding) => $"{finding.Id}: {string.Join(' ', new[] { finding.Seen, finding.Why, finding.Remedy }.Where(t => t.Length > 0))}";
}
