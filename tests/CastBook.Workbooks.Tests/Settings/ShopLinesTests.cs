using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Settings;

public sealed class ShopLinesTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("castbook-lines-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Read_LinesOfBoth_TheBooksComeFirstAndTheOthersStay()
    {
        var reading = Read(
            book => book.Sheet("Crucibles", s => s.Row("Crucible", "Holds (ml)").Row("Small", 60)),
            file => file.Sheet("Crucibles", s => s.Row("Crucible", "Holds (ml)").Row("Big", 100).Row("SMALL", 60)));

        reading.Night.Shop.Crucibles.Select(c => (c.Name, c.Holds!.Value.Milliliters)).ShouldBe([("Small", 60), ("Big", 100)]);
        Place(reading, SubjectKind.Crucible, "Big", ShopField.Holds).ShouldBe("shop.xlsx, Crucibles!B2 Big");
        Place(reading, SubjectKind.Crucible, "Small", ShopField.Holds).ShouldBe("Crucibles!B2 Small");
        Said(reading).ShouldBeEmpty();
    }

    [Fact]
    public void Read_HeadingsWithoutLines_HideNothing()
    {
        var reading = Read(
            book => book.Sheet("Flasks", s => s.Row("Size", "Inside diameter (mm)", "Owned")),
            file => file.Sheet("Flasks", s => s.Row("Size", "Inside diameter (mm)", "Height (mm)", "Owned").Row("75 × 100", 75, 100, 2)));

        reading.Night.Shop.FlaskSizes.ShouldHaveSingleItem().Owned.ShouldBe(2);
        Place(reading, SubjectKind.FlaskSize, "75 × 100", ShopField.SprueDiameter).ShouldBe("shop.xlsx, Flasks!A2 75 × 100");
    }

    [Fact]
    public void Read_CellsBlankInTheBook_ComeFromTheShopFilesLine()
    {
        var reading = Read(
            book => book.Sheet("Flasks", s => s.Row("Size", "Inside diameter (mm)", "Sprue diameter (mm)").Row("75 x 100", null, 9)),
            file => file.Sheet("Flasks", s => s.Row("Size", "Inside diameter (mm)", "Height (mm)", "Owned").Row("75×100", 75, 100, 2)));

        var flask = reading.Night.Shop.FlaskSizes.ShouldHaveSingleItem();
        (flask.Name, flask.InsideDiameter!.Value.Millimeters, flask.SprueDiameter!.Value.Millimeters, flask.Owned).ShouldBe(("75 x 100", 75, 9, 2));
        Place(reading, SubjectKind.FlaskSize, "75 x 100", ShopField.InsideDiameter).ShouldBe("shop.xlsx, Flasks!B2 75 x 100");
        Place(reading, SubjectKind.FlaskSize, "75 x 100", ShopField.SprueDiameter).ShouldBe("Flasks!C2 75 x 100");
        Said(reading).ShouldBeEmpty();
    }

    [Fact]
    public void Read_BothSayDifferentThings_TheBookWinsAndANoteSaysSo()
    {
        var reading = Read(
            book => book.Sheet("Alloys", s => s.Row("Alloy", "Density (g/cm³)", "Metal temp (°C)").Row("925", 10.4, 970)),
            file => file.Sheet("Alloys", s => s.Row("Alloy", "Metal temp (°F)", "Density (g/cm³)").Row("925", 1778, 10.3).Row("585", 1800, 13)));

        reading.Night.Shop.Alloys.Select(a => (a.Alloy.Name, a.Alloy.Density!.Value.GramsPerCubicCentimeter)).ShouldBe([("925", 10.4), ("585", 13)]);
        var note = reading.Findings.Single(f => f.Id == "shop-file-differs");
        (note.Severity, $"{note.Seen} {note.Why} {note.Remedy}").ShouldBe((Severity.Note,
            "Of alloy 925 the book says \"10.4\" under Density (g/cm³), and shop.xlsx, Alloys!C2 says \"10.3\". The book wins over the shop file, so \"10.4\" was used. "
            + "Mend the one that is wrong; an empty cell in the book leaves it to the shop file."));
        reading.Cells.Find(note.Subjects[0]).ToString().ShouldBe("Alloys!B2");
    }

    // 1.2 g/cm³ by the file; the cube of the book: 1.4 g in 10 mm is 1.4 g/cm³.
    [Fact]
    public void Read_TestCubeInTheBook_IsNotJudgedByTheShopFilesDensity()
    {
        var material = Read(
            book => book.Sheet("Materials", s => s.Row("Material", "Cube weighs (g)", "Cube edge (mm)").Row("bench resin", 1.4, 10)),
            file => file.Sheet("Materials", s => s.Row("Material", "Kind", "Density (g/cm³)").Row("bench resin", "resin", 1.2))).Night.Shop.Materials.ShouldHaveSingleItem();

        (material.Kind, material.Density).ShouldBe((PatternKind.Resin, null));
        material.CubeDensity!.Value.GramsPerCubicCentimeter.ShouldBe(1.4, 1e-9);
    }

    [Fact]
    public void Read_AnotherHeightInTheBook_LeavesThePowderOfTheShopFile()
    {
        var flask = Read(
            book => book.Sheet("Flasks", s => s.Row("Size", "Height (mm)").Row("tall", 120)),
            file => file.Sheet("Flasks", s => s.Row("Size", "Height (mm)", "Powder (g)", "Owned").Row("tall", 100, 540, 3))).Night.Shop.FlaskSizes.ShouldHaveSingleItem();

        (flask.Height!.Value.Millimeters, flask.Powder, flask.Owned).ShouldBe((120, null, 3));
    }

    [Fact]
    public void Read_ValueOfTheShopFileThatCannotBe_IsFoundThere()
    {
        var reading = Read(
            book => book.Sheet("Flasks", s => s.Row("Size", "Height (mm)").Row("90 × 125", null)),
            file => file.Sheet("Flasks", s => s.Row("Size", "Height (mm)").Row("90 × 125", "tall")));

        var finding = Said(reading).ShouldHaveSingleItem();
        finding.Seen.ShouldBe("In shop.xlsx: \"tall\" under Height (mm) is not a number.");
        CastBook.Workbooks.Sheets.Places.Of(finding, reading).ShouldBe("shop.xlsx, Flasks!B2 90 × 125");
        reading.Cells.FindPlace(finding.Subjects[0]).ShouldBeNull();
    }

    [Fact]
    public void Read_SchedulesOfBoth_AreNeverMixed()
    {
        var reading = Read(
            book => book.Sheet("Schedules", s => s.Row("Schedule", "Target (°C)", "Hold (h)").Row("wax", 150, 2).Row("wax", 700, 3).Row("resin", null, null)),
            file => file.Sheet("Schedules", s => s
                .Row("Schedule", "Target (°C)", "Hold (h)", "Rate (°C/h)").Row("wax", 150, 2, 90).Row("wax", 732, 3, 90).Row("wax", 538, 2, 90).Row("resin", 732, 4, 60)));

        reading.Night.Shop.Schedules.Select(s => (s.Name, s.Stages.Count, s.Stages[^1].Target.DegreesCelsius)).ShouldBe([("wax", 2, 700), ("resin", 1, 732)]);
        var note = Said(reading).ShouldHaveSingleItem();
        $"{note.Seen} {note.Why} {note.Remedy}".ShouldBe(
            "Schedule wax stands in the book and, otherwise, in shop.xlsx, Schedules!A2. The book wins over the shop file, so its lines were used. Delete the lines that no longer hold.");
    }

    [Fact]
    public void Read_SameScheduleInBoth_IsNoConflict() =>
        Said(Read(
            book => book.Sheet("Schedules", s => s.Row("Schedule", "Target (°C)", "Hold (h)").Row("wax", 150, 2)),
            file => file.Sheet("Schedules", s => s.Row("Schedule", "Target (°F)", "Hold (min)").Row("Wax", 302, 120)))).ShouldBeEmpty();

    [Fact]
    public void Read_SettingOfTheShopFileThatCannotBe_IsFoundThere()
    {
        var reading = Read(book => book, file => file.Sheet("Shop", s => s.Row("Setting", "Value").Row("Melt loss", "some")));

        CastBook.Workbooks.Sheets.Places.Of(Said(reading).ShouldHaveSingleItem(), reading).ShouldBe("shop.xlsx, Shop!B2 Melt loss");
    }

    private BookReading Read(Func<BookBuilder, BookBuilder> book, Func<BookBuilder, BookBuilder> file)
    {
        var path = Path.Combine(folder, "shop.xlsx");
        File.WriteAllBytes(path, file(new BookBuilder()).Build().ToArray());
        var list = new BookBuilder().Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Alloy").Row("Pin", 1, 2.5, "fine silver"));
        return BookReader.Read(book(list).Build(), new BookSettings { ShopFile = path });
    }

    private static List<Finding> Said(BookReading reading) => [.. reading.Findings.Where(f => f.Severity > Severity.Note || f.Id.StartsWith("shop-file", StringComparison.Ordinal))];

    private static string Place(BookReading reading, SubjectKind kind, string name, string field) =>
        CastBook.Workbooks.Sheets.Places.Of(Catalogue.ShopNameTwice.At(new Subject(kind, name, field), "", ""), reading);
}
