using CastBook.Planning.Findings;
using CastBook.Workbooks.Columns;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>How a finding names its place, and what of it stands in the list.</summary>
public sealed class PlacesTests
{
    // 'Alloy "silver" is' and row 3: the name of the question ends in a word that would read on.
    [Fact]
    public void Fill_QuestionWithAQuotedName_KeepsItsMarks()
    {
        var filled = Filled.From(BookBuilder.Pieces(["Piece", "Qty", "Wax weight (g)", "Alloy"], ["Otter ring", 1, 1.5, "silver"], ["Heron pin", 1, 2, "silver"]));

        var at = filled.Result.Findings.ToList().FindIndex(f => f.Id == "alloy-ambiguous");
        filled.Result.Places[at].Text.ShouldMatch("^Shop!B[0-9]+ 'Alloy \"silver\" is' and rows 2–3$");
    }

    // A sentence of 140 characters runs onto a page of its own; the rest of it stands in the note and on Checks.
    [Theory]
    [InlineData("Pin", "it reaches 114.4 mm out from the middle of the trunk, and the largest flask, \"100 × 150\", leaves 42 mm", "stop: length. \"Pin\" fits no flask.")]
    [InlineData("Pin: long", "it reaches 114.4 mm out from the middle of the trunk, and the largest flask, \"100 × 150\", leaves 42 mm", "stop: length. \"Pin: long\" fits no flask.")]
    [InlineData("Pin", "it reaches 114.4 mm", "stop: length. \"Pin\" fits no flask: it reaches 114.4 mm.")]
    public void Say_LongSentence_EndsAtItsColon(string piece, string why, string said) =>
        ChecksColumn.Say(Catalogue.PieceFitsNoFlask.At(Subject.Piece(0, PieceField.Length), $"\"{piece}\"", why, "", ""), PieceField.Length).ShouldBe(said);
}
