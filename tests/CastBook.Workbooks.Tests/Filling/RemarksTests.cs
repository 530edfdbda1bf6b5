namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Remarks are not read; where they say something else than the row's own columns, that is said.</summary>
public sealed class RemarksTests
{
    private static readonly string[] Kinds = ["remarks-speak-of-resin", "remarks-speak-of-wax", "remarks-speak-of-stones", "remarks-speak-of-several"];

    [Fact]
    public void Fill_RemarksThatSayWhatNoColumnDoes_AreEachCheckedOnce()
    {
        var filled = Filled.From(BookBuilder.Pieces(
            ["Piece", "Qty", "Wax weight (g)", "Alloy", "Remarks"],
            ["Otter ring", 1, 1.5, "14k", "resin print"],
            ["Heron pin", 1, 2, "14k", "polish the back"],
            ["Fern stud", 1, 0.5, "14k", "two of them"],
            ["Bell", 1, 2.5, "14k", "has a stone!"],
            ["Gull ring", 1, 2.5, "14k", "Resin print"],
            ["Moth ring", 1, 2.5, "14k", "with supports, 2x"]));

        Say(filled, "remarks-speak-of-resin").ShouldBe(
            "Column \"Remarks\" is not read, and speaks of resin or a print where nothing else does: \"resin print\" and \"with supports, 2x\". "
            + "Resin has another density than wax and wants a longer burnout; too short a one spoils the castings. "
            + "If these rows are resin, type so in a column \"Material\".");
        Place(filled, "remarks-speak-of-resin").ShouldBe("Pieces!A2 Otter ring and rows 6–7");
        Say(filled, "remarks-speak-of-stones").ShouldBe(
            "Column \"Remarks\" is not read, and speaks of stones where nothing else does: \"has a stone!\". "
            + "A flask with stones in must not be quenched, and is burnt out no hotter than they bear. "
            + "If the stones are in the pattern, type yes in a column \"Stones in\"; if they are set later, type no.");
        Say(filled, "remarks-speak-of-several").ShouldBe(
            "Column \"Remarks\" is not read, and speaks of more pieces than the quantity does: \"two of them\" and \"with supports, 2x\". "
            + "So many are cast as the quantity says. If it is to be more, type the number in a column \"Qty\".");
        Place(filled, "remarks-speak-of-several").ShouldBe("Pieces!B4 Fern stud and row 7");
        filled.Ids.ShouldNotContain("remarks-speak-of-wax");
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    [Theory]
    [InlineData("Notes", "DONE")]
    [InlineData("Notes", "cast 12 March, ok")]
    [InlineData("Bemerkung", "erledigt")]
    [InlineData("Bemerkung", "am 3.12. gegossen")]
    [InlineData("Remarque", "fait")]
    [InlineData("Nota", "ya fundido")]
    [InlineData("Note", "già fuso")]
    [InlineData("Observações", "concluída")]
    public void Fill_RemarkThatSaysDone_IsChecked(string heading, string remark) =>
        Say(Filled.From(BookBuilder.Pieces(["Piece", "Qty", "Wax weight (g)", "Alloy", heading], ["Otter ring", 1, 1.5, "14k", remark])), "remarks-say-done").ShouldBe(
            $"Column \"{heading}\" is not read, and says that rows are done: \"{remark}\". They are planned and their metal is counted all the same. "
            + "If these are cast already, type yes in a column \"Done\"; if they are still to be cast, type no there.");

    [Theory]
    [InlineData("engraving to be done", null)]
    [InlineData("cast in place", null)]
    [InlineData("not done", null)]
    [InlineData("done", "no")]
    [InlineData("done", "yes")]
    public void Fill_RemarkOfOtherThingsOrBesideAnAnswer_IsNotChecked(string remark, string? done) =>
        Filled.From(BookBuilder.Pieces(["Piece", "Qty", "Wax weight (g)", "Alloy", "Done", "Notes"], ["Otter ring", 1, 1.5, "14k", done, remark])).Ids.ShouldNotContain("remarks-say-done");

    [Theory]
    [InlineData("Notes", "HOLD - waiting on size")]
    [InlineData("Bemerkung", "noch nicht fertig, bitte weglassen")]
    [InlineData("Remarque", "ne pas couler")]
    public void Fill_RemarkThatSaysWait_IsChecked(string heading, string remark) =>
        Say(Filled.From(BookBuilder.Pieces(["Piece", "Qty", "Wax weight (g)", "Alloy", heading], ["Otter ring", 1, 1.5, "14k", remark])), "remarks-say-hold").ShouldBe(
            $"Column \"{heading}\" is not read, and says that rows are to wait: \"{remark}\". They are planned and their metal is counted all the same. "
            + "If these are not to be cast tonight, type yes in a column \"Leave out\"; if they are, type no there.");

    [Fact]
    public void Fill_RemarkThatSaysWaitBesideAnAnswer_IsNotChecked() =>
        Filled.From(BookBuilder.Pieces(["Piece", "Qty", "Wax weight (g)", "Alloy", "Leave out", "Notes"], ["Otter ring", 1, 1.5, "14k", "no", "on hold until May"])).Ids.ShouldNotContain("remarks-say-hold");

    [Fact]
    public void Fill_RemarkOfWaxInARowOfResin_IsChecked() =>
        Say(
            Filled.From(BookBuilder.Pieces(["Piece", "Qty", "Resin weight (g)", "Alloy", "Bench notes"], ["Otter ring", 1, 1.5, "14k", "this one is wax"])),
            "remarks-speak-of-wax").ShouldBe(
            "Column \"Bench notes\" is not read, and speaks of wax in rows read as resin: \"this one is wax\". "
            + "The metal follows from the material's density. If these rows are wax, type so in a column \"Material\".");

    // What the row's own columns say already is not said again.
    [Theory]
    [InlineData("resin", "yes", 2)]
    [InlineData("resin", "no", 2)]
    [InlineData("castable resin", "yes", 4)]
    public void Fill_RowsWhoseColumnsSaySo_AreNotChecked(string material, string stones, int quantity) =>
        Filled.From(BookBuilder.Pieces(
            ["Piece", "Qty", "Pattern weight (g)", "Alloy", "Material", "Stones in", "Notes"],
            ["Otter ring", quantity, 1.5, "14k", material, stones, "resin print, pair, with stones"])).Ids.Intersect(Kinds).ShouldBeEmpty();

    [Fact]
    public void Fill_PrintedWax_IsNoResin() =>
        Filled.From(BookBuilder.Pieces(
            ["Piece", "Qty", "Pattern weight (g)", "Alloy", "Material", "Notes"],
            ["Otter ring", 1, 1.5, "14k", "printed wax", "print with supports"])).Ids.Intersect(Kinds).ShouldBeEmpty();

    [Fact]
    public void Fill_RemarksOfRowsDoneOrOfAnotherNight_AreNotChecked() =>
        Filled.From(BookBuilder.Pieces(
            ["Piece", "Qty", "Wax weight (g)", "Alloy", "Night", "Done", "Notes"],
            ["Otter ring", 1, 1.5, "14k", "2026-12-03", null, null],
            ["Fern stud", 1, 1.5, "14k", "2026-12-03", "yes", "resin"],
            ["Bell", 1, 1.5, "14k", "2026-12-10", null, "2x, with stones"]), settings: new() { Night = "2026-12-03" }).Ids.Intersect(Kinds).ShouldBeEmpty();

    private static string Say(Filled filled, string id) => filled.Result.Findings.Single(f => f.Id == id) is var found ? $"{found.Seen} {found.Why} {found.Remedy}" : "";

    private static string Place(Filled filled, string id) =>
        filled.Result.Places[filled.Result.Findings.ToList().FindIndex(f => f.Id == id)].Text;
}
