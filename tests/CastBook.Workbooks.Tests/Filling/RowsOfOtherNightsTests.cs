using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>What stands in a row that is moved to another night.</summary>
public sealed class RowsOfOtherNightsTests
{
    private const string List = "Harbour list";

    [Fact]
    public void Fill_RowMovedToALaterNight_ShowsNothingOfTheOldPlan()
    {
        var before = Filled.From(Book(), settings: Tonight("2026-12-03"));
        before[List, "L6"].ShouldBe(20.72);

        var filled = before.AfterTyping((List, "K6", "2026-12-10"));

        new[] { "L6", "M6", "N6", "O6", "P6", "Q6" }.Select(a => filled[List, a]).ShouldAllBe(v => v == null);
        filled[List, "L5"].ShouldBe(20.72);
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_RowMovedToALaterNight_KeepsWhatAPersonTyped()
    {
        var filled = Filled.From(Book(), settings: Tonight("2026-12-03")).AfterTyping((List, "L6", 25.5), (List, "K6", "2026-12-10"));

        filled[List, "L6"].ShouldBe(25.5);
        filled[List, "M6"].ShouldBeNull();
        filled.Again()[List, "L6"].ShouldBe(25.5);
    }

    // What was cast on an earlier night is its record; only what was found about the row is nobody's question any more.
    [Fact]
    public void Fill_RowOfAnEarlierNight_KeepsItsPlanAndLosesItsChecks()
    {
        var before = Filled.From(Book("unobtainium"), settings: Tonight("2026-12-03")).AfterTyping((List, "K5", "2026-12-10"));
        var checks = before[List, "Q6"].ShouldBeOfType<string>();
        checks.ShouldStartWith("stop: alloy.");

        var filled = Filled.From(before.Bytes, settings: Tonight("2026-12-10"));

        filled[List, "Q6"].ShouldBeNull();
        filled[List, "L7"].ShouldBe(before[List, "L7"]);
        filled[List, "N7"].ShouldBe(before[List, "N7"]);
        filled[List, "N7"].ShouldNotBeNull();
    }

    [Fact]
    public void Fill_NightThatNoRowNames_IsRefusedAndLeavesTheBook()
    {
        var refusal = Should.Throw<CastBook.Workbooks.Files.BookRefusedException>(() => Filled.From(Book(), settings: Tonight("Sunday")));

        refusal.Message.ShouldBe(
            "No row that is still to be cast belongs to the night \"Sunday\" that was asked for. Nothing was written, and the plan in the book is left as it was. "
            + "The nights of the list are \"2026-12-03\": type one of them as \"Night\" on the Shop sheet or after --night, or leave it blank.");
    }

    private static BookSettings Tonight(string night) => new() { Night = night };

    // The night of 3 December with a column for the night; the second row may ask for another alloy.
    private static MemoryStream Book(string alloy = "house sterling") => new(Typed.Into(
        Nights.Whole().ToArray(),
        (List, "K4", "Night"), (List, "K5", "2026-12-03"), (List, "K6", "2026-12-03"), (List, "K7", "2026-12-03"),
        (List, "D6", 2.3), (List, "F6", alloy)));
}
