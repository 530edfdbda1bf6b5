namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Rows that are not cast tonight.</summary>
public sealed class RowsLeftAloneTests
{
    [Theory]
    [InlineData("Done")]
    [InlineData("Leave out")]
    public void Fill_WeightThatCannotBeReadInARowLeftAlone_IsNotAskedFor(string heading)
    {
        Ids(heading, "yes").ShouldNotContain("number-not-exact");
        Ids(heading, null).ShouldContain("number-not-exact");
    }

    [Fact]
    public void Fill_WeightThatCannotBeReadInARowOfAnotherNight_IsNotAskedFor()
    {
        Filled.From(BookBuilder.Pieces(
            ["Piece", "Qty", "Pattern weight (g)", "Alloy", "Night"],
            ["Otter ring", 2, 1.5, "14k", "2026-12-03"],
            ["Heron pin", 1, "~2", "14k", null])).Ids.ShouldNotContain("number-not-exact");
    }

    [Theory]
    [InlineData("Done")]
    [InlineData("Leave out")]
    public void Fill_NumbersReadWithACommaInARowLeftAlone_AreNotCounted(string heading) =>
        Filled.From(BookBuilder.Pieces(
            ["Piece", "Qty", "Pattern weight (g)", "Alloy", heading],
            ["Otter ring", 2, "1,5", "14k", null],
            ["Heron pin", 1, "2,75", "14k", "yes"])).Result.Findings.Single(f => f.Id == "decimal-comma").Seen.ShouldEndWith(", in row 2.");

    private static IReadOnlyList<string> Ids(string heading, string? said) => Filled.From(BookBuilder.Pieces(
        ["Piece", "Qty", "Pattern weight (g)", "Alloy", heading],
        ["Otter ring", 2, 1.5, "14k", null],
        ["Heron pin", 1, "~2", "14k", said])).Ids;
}
