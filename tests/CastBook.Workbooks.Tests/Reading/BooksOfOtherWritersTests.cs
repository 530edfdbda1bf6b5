using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Tests.Reading;

/// <summary>What a careful reader concludes from each of the books, as written down when they were made.</summary>
public sealed class BooksOfOtherWritersTests
{
    [Theory]
    [InlineData("01_rich_excel365_like.xlsx")]
    [InlineData("03_chart_pivot_slicer_totals.xlsx")]
    [InlineData("04_strict_iso29500.xlsx")]
    public void Read_PatternList_FindsItsTwelvePieces(string name)
    {
        using var package = Read(name, out var reading);

        reading.Lists[0].Sheet.Name.ShouldBe("Pattern list");
        reading.Lists[0].HeadingRow.ShouldBe(4);
        reading.Lists[0].Rows.ShouldBe(Enumerable.Range(5, 12));
        reading.Lists[0].LastRow.ShouldBe(16);
        reading.Night.WeightsAreOf.ShouldBe(WeightMeaning.Unknown);
        var otter = reading.Night.Pieces[0];
        otter.Name.ShouldBe("Otter signet ring");
        otter.Quantity.ShouldBe(6);
        otter.Weight!.Value.Grams.ShouldBe(4.35);
        otter.Material.ShouldBe("wax");
        otter.Alloy.ShouldBe("Sterling 925");
        otter.Due.ShouldBe(new DateOnly(2026, 3, 3));
        otter.Done.ShouldBeTrue();
        reading.Night.Pieces[5].Quantity.ShouldBe(40);
        reading.Night.Pieces[6].Weight!.Value.Grams.ShouldBe(18.9);
        reading.Night.Pieces.ShouldAllBe(p => p.Unreadable.Count == 0);
    }

    [Theory]
    [InlineData("01_rich_excel365_like.xlsx", 4, 5, 16)]
    [InlineData("03_chart_pivot_slicer_totals.xlsx", 4, 5, 16)]
    [InlineData("04_strict_iso29500.xlsx", 4, 5, 16)]
    [InlineData("07_exceljs_webform.xlsx", 1, 2, 6)]
    [InlineData("09_sheetjs_export.xlsx", 1, 2, 5)]
    [InlineData("11_spreadcheetah_noref.xlsx", 1, 2, 4)]
    [InlineData("14_openxmlsdk_minimal.xlsx", 1, 2, 4)]
    public void Read_ListOfABook_StandsWhereItsMakerPutIt(string name, int headingRow, int firstRow, int lastRow)
    {
        using var package = Read(name, out var reading);

        reading.Lists[0].HeadingRow.ShouldBe(headingRow);
        reading.Lists[0].Rows.ShouldBe(Enumerable.Range(firstRow, lastRow - firstRow + 1));
    }

    [Fact]
    public void Read_RichBook_PlacesTableTotalsAndWhatStandsBeside()
    {
        using var package = Read("01_rich_excel365_like.xlsx", out var reading);

        reading.Lists[0].Table!.Range.ToString().ShouldBe("A4:M17");
        reading.Lists[0].Table!.HasTotalsRow.ShouldBeTrue();
        reading.Lists[0].Table!.IsPlain.ShouldBeTrue();
        reading.Lists[0].LastColumn.ShouldBe(13);
        reading.Lists[0].OccupiedFrom.ShouldBe(15);
        Ids(reading).ShouldContain("rows-hidden");
        reading.Lists[0].Grid.IsRowHidden(16).ShouldBeTrue();
        var grid = SheetReader.Read(reading.Package, reading.Lists[0].Sheet, SharedStrings.Read(reading.Package));
        grid.Cell(8, 13).Text.ShouldBe(" leading space kept");
        grid.Cell(14, 13).Text.ShouldBe("=not a formula");
        grid.Cell(15, 13).Text.ShouldBe("_x000D_ literal");
        grid.Cell(7, 15).Kind.ShouldBe(CellKind.Error);
    }

    [Fact]
    public void Read_GermanBook_KnowsItsWordsAndCommas()
    {
        using var package = Read("06b_libreoffice_macro_ext.xlsm", out var reading);

        reading.Lists[0].Rows.ShouldBe(Enumerable.Range(5, 5));
        reading.Night.WeightsAreOf.ShouldBe(WeightMeaning.Pattern);
        reading.Night.Pieces.Select(p => p.Name).ShouldBe(["Eulenbrosche", "Bergkristallfassung", "Glockenschlegel", "Türklinke klein", "Wappenring"]);
        reading.Night.Pieces.Select(p => p.Quantity).ShouldBe([3, 1, 12, 2, 1]);
        reading.Night.Pieces[1].Weight!.Value.Grams.ShouldBe(2.85);
        reading.Night.Pieces[1].Material.ShouldBe("Resin");
        reading.Night.Pieces[1].Alloy.ShouldBe("Gold 585");
        reading.Night.Pieces[3].Box!.Value.Length.Millimeters.ShouldBe(112);
        reading.Findings.ShouldContain(f => f.Id == "decimal-comma" && f.Seen.Contains("2,85 as 2.85", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_WebForm_TakesUnitsFromSnakeCaseAndLeavesItsMetalColumnAlone()
    {
        using var package = Read("07_exceljs_webform.xlsx", out var reading);

        reading.Lists[0].Sheet.Name.ShouldBe("Orders");
        reading.Lists[0].Rows.ShouldBe(Enumerable.Range(2, 5));
        reading.Night.WeightsAreOf.ShouldBe(WeightMeaning.Pattern);
        reading.Night.Pieces.ShouldAllBe(p => p.Material == "wax");
        reading.Night.Pieces[3].Weight!.Value.Grams.ShouldBe(3.1);
        reading.Night.Pieces[3].Due.ShouldBeNull();
        reading.Night.Pieces[4].Due.ShouldBe(new DateOnly(2026, 3, 23));
        Ids(reading).ShouldNotContain("formula-without-value");
    }

    [Fact]
    public void Read_Export_SaysWhatIsWrongWithATypedFormula()
    {
        using var package = Read("09_sheetjs_export.xlsx", out var reading);

        reading.Lists[0].Rows.ShouldBe(Enumerable.Range(2, 4));
        reading.Night.Pieces[1].Weight!.Value.Grams.ShouldBe(0.52);
        var pin = reading.Night.Pieces[3];
        pin.Weight.ShouldBeNull();
        pin.Unreadable.ShouldBe(["patternMass"]);
        var finding = reading.Findings.Single(f => f.Id == "weight-not-a-number");
        finding.Seen.ShouldBe("\"=1.1*2\" is not a number: it is a formula typed as text.");
        reading.Cells.Find(finding.Subjects[0])!.Value.ToString().ShouldBe("Export!C5");
        reading.Findings.ShouldContain(f => f.Id == "unit-assumed" && f.Seen.Contains("\"H\", \"W\"", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("11_spreadcheetah_noref.xlsx")]
    [InlineData("14_openxmlsdk_minimal.xlsx")]
    public void Read_BookWithoutAddresses_CountsItsCells(string name)
    {
        using var package = Read(name, out var reading);

        reading.Lists[0].Rows.ShouldBe([2, 3, 4]);
        reading.Night.WeightsAreOf.ShouldBe(WeightMeaning.Pattern);
        reading.Night.Pieces.Select(p => p.Name).ShouldBe(["Sandpiper clip", "Net float", "Tide gauge hand"]);
        reading.Night.Pieces.Select(p => p.Weight!.Value.Grams).ShouldBe([2.4, 18.25, 0.9]);
        reading.Night.Pieces.ShouldAllBe(p => p.Material == "resin");
    }

    private static CastBook.Workbooks.Reading.Package.BookPackage Read(string name, out BookReading reading)
    {
        reading = TestBooks.Read(name);
        return reading.Package;
    }

    private static IEnumerable<string> Ids(BookReading reading) => reading.Findings.Select(f => f.Id);
}
