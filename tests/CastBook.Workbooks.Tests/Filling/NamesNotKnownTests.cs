namespace CastBook.Workbooks.Tests.Filling;

/// <summary>A list whose column of names has a heading that nothing knows.</summary>
public sealed class NamesNotKnownTests
{
    private const string Id = "names-not-known";

    [Fact]
    public void Fill_NoHeadingForNames_TheColumnOfMostTextsIsProposed()
    {
        var found = Filled.From(List("Gizmo")).Result.Findings.Single(f => f.Id == Id);

        $"{found.Seen} {found.Why} {found.Remedy}".ShouldBe(
            "No column is known to name the pieces; E \"Gizmo\" may. Without names trees and cards can only say unnamed. "
            + "If it names them, change its heading to Piece, or write \"columns\": { \"piece\": [\"Gizmo\"] } into castbook.json.");
    }

    [Fact]
    public void Fill_WhatItSaysInTheSettings_NamesThePieces()
    {
        var filled = Filled.From(List("Gizmo"), settings: new() { Columns = new Dictionary<string, IReadOnlyList<string>> { ["piece"] = ["Gizmo"] } });

        filled.Ids.ShouldNotContain(Id);
        filled.Result.Night.Pieces.Select(p => p.Name).ShouldBe(["Leaf ring", "Signet", "Otter"]);
    }

    [Theory]
    [InlineData("What")]
    [InlineData("Was")]
    [InlineData("Quoi")]
    [InlineData("Qué")]
    [InlineData("Cosa")]
    [InlineData("O quê")]
    public void Fill_PlainWordsForNames_AreKnown(string heading) =>
        Filled.From(List(heading)).Result.Night.Pieces.Select(p => p.Name).ShouldBe(["Leaf ring", "Signet", "Otter"]);

    [Fact]
    public void Fill_NoColumnOfTexts_NothingIsProposed() =>
        Filled.From(BookBuilder.Pieces(["Qty", "Pattern weight (g)", "Alloy", "Finger"], [2, 1.5, "14k", 54], [1, 2.5, "14k", 60])).Ids.ShouldNotContain(Id);

    private static MemoryStream List(string heading) => BookBuilder.Pieces(
        ["Qty", "Pattern weight (g)", "Alloy", "Bench", heading],
        [2, 1.5, "14k", "left", "Leaf ring"], [1, 2.5, "14k", null, "Signet"], [1, 2.5, "14k", null, "Otter"]);
}
