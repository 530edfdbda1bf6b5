
namespace CastBook.Workbooks.Tests.Filling;

/// <summary>A finding that sends the shop to a sheet which its book lacks comes with that sheet.</summary>
public sealed class AddedSheetsTests
{
    [Fact]
    public void Fill_CrucibleUnknown_AddsTheSheetItNames()
    {
        var filled = Filled.From(Nights.Plain());

        filled.Sheets.ShouldContain("Crucibles");
        filled.Row("Crucibles", 4).ShouldBe(["Crucible", "Holds (ml)", "Rated (g)", "Rated for", "Alloys", "Made of", "Owned"]);
        Place(filled, "crucible-unknown").ShouldEndWith(" Crucible holds, Crucibles!A4");
        filled.Again().Bytes.ShouldBe(filled.Bytes);
    }

    [Fact]
    public void Fill_NightWithoutKilnPowderAndSchedule_AddsTheirSheets()
    {
        var filled = Filled.From(Book());

        filled.Sheets.ShouldBe(
            ["List", "Flasks", "Crucibles", "Alloys", "Materials", "Shop", "Night plan", "Trees", "Clock", "Kiln", "Metal", "Checks", "Kilns", "Investments", "Schedules"],
            ignoreOrder: true);
        Place(filled, "kiln-not-known").ShouldBe("Kilns!A4");
        filled.Row("Kilns", 4).ShouldBe(
            ["Kiln", "Shape", "Inside width (mm)", "Inside depth (mm)", "Inside diameter (mm)", "Power (kW)", "Cools (°C/h)", "Reads high by (°C)"]);
        filled.Row("Schedules", 4).ShouldBe(
            ["Schedule", "For", "Up to diameter (mm)", "Up to height (mm)", "Load at (°C)", "Stage", "Target (°C)", "Rate (°C/h)", "Hold (h)"]);
        filled.Row("Investments", 4).Take(3).ShouldBe(["Investment", "Kind", "Water per 100"]);
        filled.Again().Bytes.ShouldBe(filled.Bytes);
    }

    [Fact]
    public void Fill_AnswersOnTheAddedSheets_AreUsed()
    {
        var filled = Filled.From(Book()).AfterTyping(
            ("Kilns", "A5", "the kiln"), ("Kilns", "B5", "square"), ("Kilns", "C5", 300), ("Kilns", "D5", 300),
            ("Investments", "A5", "white powder"), ("Investments", "C5", 40),
            ("Schedules", "A5", "by the maker"), ("Schedules", "B5", "resin"), ("Schedules", "F5", 1), ("Schedules", "G5", 732), ("Schedules", "I5", 9));

        filled.Ids.ShouldNotContain("kiln-not-known");
        filled.Ids.ShouldNotContain("schedule-of-maker-missing");
        filled.Result.Night.Shop.Kilns.ShouldHaveSingleItem().InsideWidth!.Value.Millimeters.ShouldBe(300);
        filled.Result.Night.Shop.Investments.ShouldHaveSingleItem().WaterPer100.ShouldBe(40);
        filled.Plan.Flasks.ShouldAllBe(f => f.Burnout!.Value.Hours >= 9);
    }

    [Fact]
    public void Undo_SheetsNobodyAnswered_AreTakenOut()
    {
        var book = Book().ToArray();
        using var output = new MemoryStream();

        CastBook.Workbooks.Undoing.BookUndo.Undo(new MemoryStream(Filled.From(book).Bytes), output, "night.xlsx", CastBook.Workbooks.Files.Caps.Usual);

        using var package = CastBook.Workbooks.Reading.Package.BookPackage.Open(output);
        package.AllSheetNames.ShouldBe(["List", "Flasks", "Crucibles", "Alloys", "Materials", "Shop"]);
    }

    private static string Place(Filled filled, string id) => filled.Result.Findings.Zip(filled.Result.Places).First(f => f.First.Id == id).Second.Text;

    private static MemoryStream Book() => new BookBuilder()
        .Sheet("List", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Material", "Alloy", "Length (mm)", "Width (mm)", "Thickness (mm)")
            .Row("Otter ring", 2, 1.15, "quarry resin", "house sterling", 20, 12, 6))
        .Sheet("Flasks", s => s
            .Row("Size", "Inside diameter (mm)", "Height (mm)", "Owned", "Sprue diameter (mm)", "Base height (mm)", "Cup (ml)").Row("75 × 100", 75, 100, 2, 8, 20, 12))
        .Sheet("Crucibles", s => s.Row("Crucible", "Holds (ml)").Row("No. 2", 60))
        .Sheet("Alloys", s => s.Row("Alloy", "Density (g/cm³)").Row("house sterling", 10.36))
        .Sheet("Materials", s => s.Row("Material", "Kind", "Density (g/cm³)").Row("quarry resin", "resin", 1.15))
        .Sheet("Shop", s => s.Row("Setting", "Value", "Unit").Row("Casting method", "vacuum perforated")
            .Row("Weights are of", "pattern").Row("Weights include", "piece alone").Row("Supports share", 0, "%"))
        .Build();
}
