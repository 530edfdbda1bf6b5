using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;
using CastBook.Workbooks;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;

namespace CastBook.Templates.Tests;

public sealed class StarterBooksTests
{
    public static TheoryData<StarterKind, UnitHabit> All
    {
        get
        {
            var all = new TheoryData<StarterKind, UnitHabit>();
            foreach (var kind in Enum.GetValues<StarterKind>())
            {
                all.Add(kind, UnitHabit.Metric);
                all.Add(kind, UnitHabit.Us);
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Write_ReadMe_IsATitleAndTenLines(StarterKind kind, UnitHabit units)
    {
        var book = SavedBook.Starter(kind, units);

        Enumerable.Range(2, 10).ShouldAllBe(row => book.Cell("Read me", $"A{row}").StartsWith($"{row - 1}. ", StringComparison.Ordinal));
        book.Cell("Read me", "A9").ShouldContain("castbook clear-examples");
        book.Cell("Read me", "A12").ShouldBe("");
    }

    // A letter is about as wide as a digit, which is what a column's width counts, or a little less; a line is 13 points high.
    [Fact]
    public void Write_WhatSettingsAreFor_IsNotCutByTheRow()
    {
        var book = SavedBook.Starter(StarterKind.Night, UnitHabit.Metric);
        var sheet = book.Sheets["Shop"];
        var width = sheet.Descendants(SavedBook.Main + "col").Where(c => (int)c.Attribute("min")! <= 4 && (int)c.Attribute("max")! >= 4).Select(c => (double)c.Attribute("width")!).Single();

        foreach (var row in sheet.Descendants(SavedBook.Main + "row").Skip(1))
        {
            var words = book.Row("Shop", (int)row.Attribute("r")!)[3];
            var lines = Math.Ceiling(words.Length / (width * 1.12));
            ((double?)row.Attribute("ht") ?? 13).ShouldBeGreaterThanOrEqualTo(13 * lines, words);
        }
    }

    /// <summary>A temperature, a density or a limit without that word in a new book would be taken for the shop's own.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Write_EveryRowWithANumber_SaysThatItIsAnExample(StarterKind kind, UnitHabit units)
    {
        var rows = SavedBook.Starter(kind, units).Sheets.Values.SelectMany(s => s.Descendants(SavedBook.Main + "row")).ToList();
        var book = SavedBook.Starter(kind, units);

        foreach (var (name, sheet) in book.Sheets)
        {
            foreach (var row in sheet.Descendants(SavedBook.Main + "row").Where(r => r.Elements(SavedBook.Main + "c").Any(c => c.Element(SavedBook.Main + "v") is not null && (string?)c.Attribute("t") != "s")))
            {
                book.Row(name, (int)row.Attribute("r")!)[0].ShouldStartWith(ExampleName.Start, Case.Sensitive, name);
            }
        }

        rows.ShouldNotBeEmpty();
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Write_WithoutExamples_HoldsNone(StarterKind kind, UnitHabit units)
    {
        var book = SavedBook.Starter(kind, units, withExamples: false);

        var cells = from sheet in book.Sheets
                    from row in sheet.Value.Descendants(SavedBook.Main + "row")
                    from text in book.Row(sheet.Key, (int)row.Attribute("r")!)
                    select text;
        cells.ShouldNotContain(text => text.StartsWith(ExampleName.Start, StringComparison.Ordinal));
        book.Cell("Read me", "A9").ShouldBe("8. Point at a cell to read what belongs into it; where a list opens, choose from it.");
    }

    [Fact]
    public void Write_UsUnits_AskInThem()
    {
        var book = SavedBook.Starter(units: UnitHabit.Us);

        string.Join('|', book.Row("Flasks", 1)).ShouldBe(
            "Size|Inside diameter (in)|Height (in)|Owned|Method|Holds (ml)|Powder (lb)|Water (ml)|Sprue diameter (in)|Base height (in)|Cup (ml)|Above tree (in)|To wall (in)|Per tree");
        string.Join('|', book.Row("Alloys", 1)).ShouldBe(
            "Alloy|Composition|Density (g/cm³)|Solidus (°F)|Liquidus (°F)|Metal temp (°F)|Flask temp fine (°F)|Flask temp ordinary (°F)|Flask temp heavy (°F)"
            + "|Quench after (min)|Loss (%)|Fresh (ozt)|Re-melt (ozt)|Price (per ozt)");
        string.Join('|', book.Row("Schedules", 1)).ShouldBe("Schedule|For|Up to diameter (in)|Up to height (in)|Load at (°F)|Stage|Target (°F)|Rate (°F/h)|Hold (h)");
        book.Row("Pieces", 1).ShouldContain("Pattern weight (dwt)");
        book.Row("Pieces", 1).ShouldContain("Length (in)");
        book.Row("Materials", 1).ShouldContain("Cube edge (mm)");
        book.Under("Pieces", 1, "Length (in)").ShouldContain("0.874");
        (book.Cell("Flasks", "A2"), book.Cell("Flasks", "B2"), book.Cell("Flasks", "C2")).ShouldBe(("Example: 3 × 4", "3", "4"));

        // 1350 °F is the usual top of a burnout in these units, 732 °C (rounded) in the others.
        book.Under("Schedules", 1, "Target (°F)").ShouldContain("1350");
        string.Concat(ShopSheets.All.Select(s => UsUnits.Of(s, []).Spec).SelectMany(s => s.Columns).Select(c => c.Meaning)).ShouldNotContain("75 × 100");
    }

    // Whoever works in inches and °F is told no usual value in millimetres or °C; where a size or a temperature is named both ways, it is a choice.
    [Fact]
    public void Write_UsUnits_TellsNoUsualValueInOthers()
    {
        var book = SavedBook.Starter(units: UnitHabit.Us);
        string[] units = ["mm", "°C", "°C/h", "g"];

        Enumerable.Range(2, SettingGuide.All.Count).ShouldAllBe(row => !units.Contains(book.Cell("Shop", $"C{row}")));
        book.Cell("Shop", $"D{2 + SettingGuide.All.ToList().FindIndex(g => g.Name == SettingName.GapInKiln)}").ShouldEndWith("Empty: 0.79.");
        ShopSheets.All.Select(s => UsUnits.Of(s, []).Spec).SelectMany(s => s.Columns).Where(c => c.Meaning.Contains(" mm", StringComparison.Ordinal) || c.Meaning.Contains("°C", StringComparison.Ordinal))
            .Select(c => c.Heading).ShouldBe(["Cube edge (mm)"]);
    }

    [Theory]
    [InlineData(StarterKind.Night, UnitHabit.Metric, 0, "examples-left")]
    [InlineData(StarterKind.Night, UnitHabit.Us, 0, "examples-left")]
    [InlineData(StarterKind.List, UnitHabit.Metric, 9, "casting-method-unknown")]
    [InlineData(StarterKind.List, UnitHabit.Us, 9, "casting-method-unknown")]
    public void Write_ThenFill_AsksOrPlansAndASecondFillChangesNothing(StarterKind kind, UnitHabit units, int stops, string finding)
    {
        using var book = new MemoryStream(SavedBook.Starter(kind, units).Bytes);
        using var filled = new MemoryStream();
        using var again = new MemoryStream();

        var first = BookFiller.Fill(book, filled, "new.xlsx", BookSettings.None);
        var second = BookFiller.Fill(filled, again, "new.xlsx", BookSettings.None);

        first.Findings.Count(f => f.Severity == Planning.Findings.Severity.Stop).ShouldBe(stops, string.Join('\n', first.Findings.Select(f => f.Id)));
        first.Findings.Select(f => f.Id).ShouldContain(finding);
        first.Changed.ShouldBeTrue();
        second.Changed.ShouldBeFalse();
    }

    // A list has no Shop sheet: the units of its own columns are those of the answers, and of what is asked.
    [Fact]
    public void Write_UsList_IsAnsweredAndAskedInUsUnits()
    {
        using var book = new MemoryStream(SavedBook.Starter(StarterKind.List, UnitHabit.Us).Bytes);
        using var filled = new MemoryStream();

        var result = BookFiller.Fill(book, filled, "list.xlsx", BookSettings.None);

        var units = result.Night.Shop.Settings.Units;
        (units.Metal.Name, units.Length.Name, units.Temperature.Name).ShouldBe(("dwt", "in", "°F"));
        var sheets = new SavedBook(filled.ToArray());
        sheets.Row("Pieces", 1).ShouldContain("Metal each (dwt)");
        sheets.Row("Flasks", 4).ShouldContain("Inside diameter (in)");
        result.Findings.Where(f => f.Severity > Planning.Findings.Severity.Note)
            .ShouldAllBe(f => !$"{f.Seen} {f.Why} {f.Remedy}".Contains(" g ", StringComparison.Ordinal) && !$"{f.Seen} {f.Why}".Contains("°C", StringComparison.Ordinal));
    }

    [Fact]
    public void Write_NightWithExamples_FillSaysWhichNumbersAreNobodysDataSheet()
    {
        using var book = new MemoryStream(SavedBook.Starter().Bytes);

        var said = BookFiller.Fill(book, new MemoryStream(), "new.xlsx", BookSettings.None).Findings.Single(f => f.Id == "examples-left");

        $"{said.Seen} {said.Why} {said.Remedy}".ShouldBe(
            "Lines called \"Example: …\" still stand there: Alloys 3, Flasks 2, Crucibles 3, Kilns 1, Materials 2, Investments 1, Schedules 2, pieces 6. "
            + "Their numbers are an invented shop's and nobody's data sheet: nothing may be poured by them. "
            + "Type your own in their place, or run castbook clear-examples on the book.");
    }

    [Fact]
    public void Write_ShopFile_FillRefusesAndSaysWhatItIs()
    {
        using var book = new MemoryStream(SavedBook.Starter(StarterKind.Shop).Bytes);

        Should.Throw<BookRefusedException>(() => BookFiller.Fill(book, new MemoryStream(), "shop.xlsx", BookSettings.None)).Message.ShouldBe(
            "The workbook has sheets of the shop (Flasks, Crucibles, Kilns, Alloys, Materials, Investments, Schedules, Shop) and no list of pieces. "
            + "It is a shop file: other books use it, and there is nothing in it to fill. Nothing was written. "
            + "Fill a book that names it in castbook.json, or add a sheet with the columns Piece, Qty, Pattern weight (g), Alloy.");
    }
}
