namespace CastBook.Workbooks.Tests.Filling;

public sealed class KilnSheetTests
{
    [Fact]
    public void Fill_PlannedNight_HasTheProgrammeInBothScalesAndItsChart()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Shop", "A21", "Start at"), ("Shop", "B21", "2026-11-25 20:00"));

        filled["Kiln", "A1"].ShouldBe("Kiln: night");
        filled["Kiln", "A4"].ShouldBe("Load 1: the kiln, flasks A, \"resin by the maker\", 11 h 56 to the first pour, next load after 15 h 59");
        filled.Row("Kiln", 5).ShouldBe(
            ["Stage", "Target (°C)", "Target (°F)", "Rate (°C/h)", "Rate (°F/h)", "Hold (h:min)", "From", "Until", "Core then, slow (°C)", "Core then, fast (°C)",
                "Core there after, slow (h:min)", "Core there after, fast (h:min)"]);
        new[] { "B8", "C8", "D8", "F8", "G8", "H8" }.Select(c => filled["Kiln", c]).ShouldBe([732.0, 1350.0, null, "4:00", "Thu 26 Nov 02:24", "Thu 26 Nov 06:24"]);
        new[] { "B9", "C9", "F9" }.Select(c => filled["Kiln", c]).ShouldBe([538.0, 1000.0, "2:00"]);
        filled["Kiln", "J8"].ShouldBeOfType<double>().ShouldBeInRange(725, 732);
        filled["Kiln", "I8"].ShouldBeOfType<double>().ShouldBeLessThanOrEqualTo((double)filled["Kiln", "J8"]!);
        filled["Kiln", "L8"].ShouldBeOfType<string>().ShouldMatch("^[123]:[0-5][05]$");
        using var zip = new System.IO.Compression.ZipArchive(new MemoryStream(filled.Bytes));
        using var chart = new StreamReader(zip.Entries.Single(e => e.FullName.StartsWith("xl/charts/", StringComparison.Ordinal)).Open());
        var xml = chart.ReadToEnd();
        new[] { "core, slow case", "core, fast case", "<c:v>kiln</c:v>", "Load 1: kiln, and the core of flask A" }.ShouldAllBe(w => xml.Contains(w));

        // The numbers behind the chart are drawn although nobody sees or prints them.
        xml.ShouldContain("<c:plotVisOnly val=\"0\"/>");
        var numbers = Enumerable.Range(10, 60).Where(r => filled["Kiln", $"A{r}"] is "1").ToList();
        numbers.Count.ShouldBeGreaterThan(20);
        var sheet = filled.SheetXml("Kiln");
        numbers.ShouldAllBe(r => sheet.Contains($"<row r=\"{r}\" hidden=\"1\">"));
        sheet.ShouldNotContain("<row r=\"9\" hidden");
    }

    // One small flask and one larger: the chart is of the slower, and a line says when the other's core is there.
    [Fact]
    public void Fill_TwoSizesInOneLoad_SaysWhenEachCoreIsThere()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Flasks", "D2", 1), ("Flasks", "D3", 1), ("Harbour list", "C6", 45));

        var heat = filled.Result.Plan.Clock!.Loads.ShouldHaveSingleItem().Heat;
        heat.Moulds.Select(m => m.Size).ShouldBe(["90 × 125", "75 × 100"]);
        var line = filled["Kiln", "A10"].ShouldBeOfType<string>();
        line.ShouldMatch($"^Flask {heat.Moulds[1].Flasks[0]} \\(75 × 100\\) follows sooner\\. Core there after, slow and fast: stage 1 (not yet|\\d:\\d\\d) and \\d:\\d\\d; stage 2 \\d:\\d\\d and \\d:\\d\\d; stage 3 \\d:\\d\\d and \\d:\\d\\d; stage 4 \\d:\\d\\d and \\d:\\d\\d\\.$");
    }

    // The programme says what must be inside; by a display that stands above it, 732 °C would be 717 °C and carbon would stay.
    [Theory]
    [InlineData(15, "the kiln reads 15 °C high: set its controller 15 °C higher than each target here, 747 °C for 732 °C.")]
    [InlineData(-8, "the kiln reads 8 °C low: set its controller 8 °C lower than each target here, 724 °C for 732 °C.")]
    [InlineData(0, null)]
    public void Fill_DisplayReadsOff_SaysWhatToSet(double high, string? line)
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Kilns", "E1", "Reads high by (°C)"), ("Kilns", "E2", high));

        filled["Kiln", "A10"].ShouldBe(line);
        filled["Kiln", "B8"].ShouldBe(732.0);
    }

    [Fact]
    public void Fill_DisplayReadsOffByWhatNobodyCanRead_SaysSoBesideTheTargets() =>
        Filled.From(Nights.Whole()).AfterTyping(("Kilns", "E1", "Reads high by (°C)"), ("Kilns", "E2", "a little"))["Kiln", "A10"].ShouldBe(
            "The Kilns sheet says by how much the kiln reads wrong, and nobody can read it: mend it there before the controller is set by these targets.");

    // What stands on the sheet is dialled in. At 780 °C gypsum breaks down, and the usual schedules are not the maker's.
    [Theory]
    [InlineData("F4", 780)]
    [InlineData("G4", "four")]
    public void Fill_ProgrammeThatMustNotBeRun_IsNotPrinted(string cell, object typed)
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(("Schedules", cell, typed));

        filled["Kiln", "A4"].ShouldBe("Flask A has no programme. Checks says why.");
        Enumerable.Range(5, 60).Select(r => filled["Kiln", $"B{r}"]).ShouldAllBe(v => v == null);
        filled.Result.Plan.Clock!.Loads.ShouldBeEmpty();
    }

    [Fact]
    public void Fill_FilledBook_LeavesTheKilnSheetAsItIs()
    {
        var once = Filled.From(Nights.Whole());

        once.Again().Bytes.ShouldBe(once.Bytes);
    }
}
