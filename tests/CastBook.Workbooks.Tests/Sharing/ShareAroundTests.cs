using CastBook.Casting.Pouring;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Sharing;
using CastBook.Workbooks.Tests.Fidelity;
using CastBook.Workbooks.Tests.Filling;

namespace CastBook.Workbooks.Tests.Sharing;

/// <summary>A template takes along what the shop file and <c>castbook.json</c> say of the shop, and nothing of its stock.</summary>
public sealed class ShareAroundTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("castbook-around-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Share_ListAlone_TakesTheShopFileAlong()
    {
        var (template, result) = Share(List(new BookBuilder()));

        var shop = Read(template).Night.Shop;
        var flask = shop.FlaskSizes.ShouldHaveSingleItem();
        (flask.Name, flask.InsideDiameter!.Value.Millimeters, flask.Height!.Value.Millimeters, flask.Owned).ShouldBe(("75 × 100", 75, 101.6, 2));
        var alloy = shop.Alloys.ShouldHaveSingleItem();
        (alloy.Alloy.Name, alloy.Alloy.Density!.Value.GramsPerCubicCentimeter, alloy.Alloy.QuenchAfter.Large!.Value.Minutes, alloy.Fresh, alloy.PricePerGram)
            .ShouldBe(("house sterling", 10.36, 20, null, null));
        shop.Schedules.ShouldHaveSingleItem().Stages.Select(s => s.Hold.Hours).ShouldBe([2, 9]);
        (shop.Settings.CastingMethod, shop.Settings.MeltLoss!.Value.Percent, shop.Settings.Night).ShouldBe((CastingMethod.Spin, 3, null));
        result.Kept.ShouldBe(
            [
                "the headings of the list on List", "Flasks (1 row of shop.xlsx)", "Alloys (1 row of shop.xlsx)", "Schedules (2 rows of shop.xlsx)",
                "2 settings of shop.xlsx and castbook.json", "column widths, formats, frozen headings, drop-down lists and the set-up of pages",
            ]);
        result.Removed.ShouldContain("stock and prices on Alloys in shop.xlsx");
        Secrets.Found(template, ["Fernleaf", "secret", "813", "4.75", "Friday"]).ShouldBeEmpty();
        Validator.Messages(template).ShouldBeEmpty();
    }

    [Fact]
    public void Share_SheetsOfTheSameName_TheBooksLineWinsAndTheOthersJoinIt()
    {
        var (template, result) = Share(List(new BookBuilder())
            .Sheet("Flasks", s => s.Row("Size", "Inside diameter (in)", "Height (mm)", "Owned").Row("75 x 100", null, 98, null).Row("tall", 3, 150, 1))
            .Sheet("Shop", s => s.Row("Setting", "Value", "Unit").Row("Casting method", "vacuum perforated").Row("Melt loss", null, "%")));

        var shop = Read(template).Night.Shop;
        shop.FlaskSizes.Select(f => (f.Name, Math.Round(f.InsideDiameter!.Value.Millimeters, 6), f.Height!.Value.Millimeters, f.Owned))
            .ShouldBe([("75 x 100", 75.0, 98.0, 2), ("tall", 76.2, 150.0, 1)]);
        (shop.Settings.CastingMethod, shop.Settings.MeltLoss!.Value.Percent).ShouldBe((CastingMethod.VacuumPerforated, 3));
        result.Kept.ShouldContain("Flasks (1 row of shop.xlsx)");
    }

    [Fact]
    public void Share_WordsForHeadings_AreToldAsLeftOut()
    {
        var settings = new BookSettings { Columns = new Dictionary<string, IReadOnlyList<string>> { ["patternMass"] = ["Weigth", "Heft"] } };
        using var output = new MemoryStream();

        var result = BookShare.Share(
            new BookBuilder().Sheet("List", s => s.Row("Piece", "Qty", "Weigth").Row("Otter ring", 2, 1.2)).Build(), output, ShareWishes.None, settings);

        SettingsFile.NamingHeadings(result.Words).ShouldBe("""{"columns":{"patternMass":["Weigth"]}}""");
    }

    [Theory]
    [InlineData("in g", "LxBxH in mm", true)]
    [InlineData("(g)", "L×B×H", true)]
    [InlineData("for Fernleaf", "LxBxH in mm", false)]
    [InlineData("2.4 g", "LxBxH in mm", false)]
    public void Share_SecondRowOfHeadings_IsKeptWhereItSaysUnitsOnly(string mass, string sizes, bool kept)
    {
        using var output = new MemoryStream();
        BookShare.Share(
            new BookBuilder().Sheet("List", s => s
                .Row("Piece", "Qty", "Pattern weight", "Sizes", "Alloy").Row(null, null, mass, sizes, null).Row("Otter ring", 2, 1.2, "20x12x6", "fine silver")).Build(),
            output, ShareWishes.None, BookSettings.None);

        using var package = BookPackage.Open(new MemoryStream(output.ToArray()));
        (SheetReader.Read(package, package.Sheets[0], SharedStrings.Read(package)).Cell(2, 4).Text == sizes).ShouldBe(kept);
    }

    private (byte[] Template, ShareResult Result) Share(BookBuilder book)
    {
        var path = Path.Combine(folder, "shop.xlsx");
        File.WriteAllBytes(path, Shop().Build().ToArray());
        using var output = new MemoryStream();
        var settings = new BookSettings { ShopFile = path, Values = new Dictionary<string, string> { ["Melt loss"] = "3" } };
        var result = BookShare.Share(book.Build(), output, ShareWishes.None, settings);
        return (output.ToArray(), result);
    }

    private static BookBuilder List(BookBuilder book) =>
        book.Sheet("List", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Alloy").Row("Fernleaf ring", 2, 1.15, "house sterling"));

    // What others use of the template: a piece typed under its headings, and nothing around it.
    private static BookReading Read(byte[] template) => BookReader.Read(
        new MemoryStream(Typed.Into(template, ("List", "A2", "Pin"), ("List", "B2", 1), ("List", "C2", 2.5), ("List", "D2", "house sterling"))), BookSettings.None);

    private static BookBuilder Shop() => new BookBuilder()
        .Sheet("Flasks", s => s.Row("for Fernleaf's work").Skip().Row("Size", "Inside diameter (mm)", "Height (in)", "Owned", "Remarks").Row("75 × 100", 75, 4, 2, "secret"))
        .Sheet("Alloys", s => s.Row("Alloy", "Density (g/cm³)", "Quench after (min)", "Fresh (g)", "Price (per g)").Row("house sterling", 10.36, "8/15/20", 813, 4.75))
        .Sheet("Schedules", s => s.Row("Schedule", "For", "Target (°C)", "Hold (h)").Row("maker's", "resin", 150, 2).Row(null, null, 732, 9))
        .Sheet("Shop", s => s.Row("Setting", "Value", "Unit").Row("Casting method", "spin").Row("Melt loss", 2, "%").Row("Night", "Friday").Row("Alloy \"secret\" is", "fine silver"));
}
