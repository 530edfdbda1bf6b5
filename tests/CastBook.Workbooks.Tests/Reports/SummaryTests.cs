using CastBook.Planning;
using CastBook.Workbooks.Reports;
using CastBook.Workbooks.Tests.Filling;
using UnitsNet;

namespace CastBook.Workbooks.Tests.Reports;

public sealed class SummaryTests
{
    [Fact]
    public void Lines_PlannedNight_CountRowsFlasksMetalAndPowder() => Summary.Lines("harbour-night.xlsx", Filled.From(Nights.Whole()).Result).ShouldBe(
    [
        "harbour-night.xlsx: 3 rows read, 3 planned; 0 stop, 0 check, 0 note",
        "20 pieces in 1 flask (proved fewest)",
        "house sterling 425 g (have 1,200 g)",
        "powder 1,025 g, water 390 ml in 1 mix; longest burnout 11 h 56",
    ]);

    // 0 g of powder would be read as an answer.
    [Fact]
    public void Lines_PowderThatStaysOpen_SayNoGrams() =>
        Summary.Lines("harbour-night.xlsx", Filled.From(Nights.Whole()).AfterTyping(("Investments", "C2", "forty")).Result)[3]
            .ShouldBe("powder and water are open; longest burnout 11 h 56");

    [Fact]
    public void Lines_WhatIsLeftAsItStands_IsToldBesideWhatMoves()
    {
        var result = Filled.From(Nights.Whole()).Result;
        var change = new PlanChange(false, 1, 0, Volume.FromMilliliters(78.5)) { Left = new PlanChange(true, 2, 0, Volume.FromMilliliters(60)) };

        Summary.Lines("harbour-night.xlsx", result with { Plan = result.Plan with { Change = change } })[2].ShouldBe(
            "1 piece moves and 78.5 ml of investment is saved (\"When little changed\": keep leaves them); with best, 2 pieces would move and 60.0 ml of investment would be saved too");
    }

    // "In 4 flasks (no plan needs fewer than 9)" would say that fewer flasks are taken than any plan can do with.
    [Fact]
    public void Lines_MorePiecesThanFlasks_SayThatNotAllFoundRoom()
    {
        var night = Nights.WholeBuilder(s => s.Row("Tarn", "Whale tooth", 200, 6, "harbour resin", "house sterling", 24, 12, 6, null)).Build();

        Summary.Lines("harbour-night.xlsx", Filled.From(night).Result)[1].ShouldMatch("^[0-9]+ pieces in [1-4] flasks? \\(not everything found room\\)$");
    }

    [Fact]
    public void Lines_PlainList_SayWhatIsKnownAndWhatToType()
    {
        var lines = Summary.Lines("list.xlsx", Filled.From(Nights.Plain()).Result);

        lines[0].ShouldStartWith("list.xlsx: 3 rows read, 0 planned, 3 not planned; ");
        // By hand: 6 × 2.1 g + 20 × 0.3 g + 4 × 1.8 g = 25.8 g, if those are the weights of finished metal.
        lines[1].ShouldEndWith(", 25.8 g if of finished metal");
        lines.Skip(2).ShouldAllBe(l => l.StartsWith("stop  ", StringComparison.Ordinal) && !l.Contains("   ", StringComparison.Ordinal));
        lines.ShouldContain("stop  Shop!B7 Casting method  Nothing says how the shop casts. Type \"vacuum perforated\", \"vacuum solid\", \"spin\" or \"gravity\" as \"Casting method\" on the Shop sheet.");
    }

    [Fact]
    public void Lines_ManyStops_ShowTwelveAndCountTheRest()
    {
        using var book = BookBuilder.Pieces(
            [["Piece", "Qty", "Wax weight (g)", "Alloy"], .. Enumerable.Range(1, 20).Select(i => new object?[] { $"Piece {i}", 1, $"{i} or so", "sterling" })]);
        var result = Filled.From(book).Result;
        var stops = result.Findings.Count(f => f.Severity == CastBook.Planning.Findings.Severity.Stop);

        var lines = Summary.Lines("list.xlsx", result);

        stops.ShouldBeGreaterThanOrEqualTo(20);
        lines[^2].ShouldBe("stop  Pieces!C13 Piece 12  \"12 or so\" is not a number. Type the weight as a number, such as 12.4.");
        lines[^1].ShouldBe($"and {stops - 12} more; all of them stand on the sheet Checks");
    }
}
