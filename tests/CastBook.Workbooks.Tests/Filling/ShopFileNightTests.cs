using CastBook.Planning;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Tests.Explaining;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Whole nights of a list whose shop stands in a shop file, with sheets of the same names in the book.</summary>
public sealed class ShopFileNightTests : IDisposable
{
    private const string List = "Gießliste";

    private readonly string folder = Directory.CreateTempSubdirectory("castbook-shop-file-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    // By hand: 1.12 g of Gießharz of 1.12 g/cm³ is 1 cm³, in sterling of 10.36 g/cm³ 10.36 g; by the other resin's 1.14 g/cm³ it were 10.18 g.
    [Fact]
    public void Fill_OtherResinInTheBook_LeavesTheResinOfTheShopFile()
    {
        var filled = Fill(book => book.Sheet("Materials", s => s.Row("Material", "Kind", "Density (g/cm³)").Row("Gießharz neu", "resin", 1.14)));

        filled.Plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(10.36, 1e-9);
        filled.Plan.Pieces[1].MetalEach!.Value.Grams.ShouldBe(10.36, 1e-9);
        filled.Plan.Pieces.Count.ShouldBe(2);
        filled.Ids.ShouldNotContain("material-taken-as");
        filled.Plan.Pieces.ShouldAllBe(p => p.Status == PieceStatus.Planned);
    }

    [Fact]
    public void Fill_FlaskSizeWithoutATrunk_IsSentToTheShopFile()
    {
        var filled = Fill(book => book.Sheet("Flasks", s => s.Row("Size", "Sprue diameter (mm)")), sprue: null);

        var place = filled.Result.Findings.Zip(filled.Result.Places).First(f => f.First.Id == "flask-size-incomplete").Second;
        (place.Text, place.Cell).ShouldBe(("shop.xlsx, Flasks!E2 75 × 100", null));
        filled.Grid("Checks").Rows.Select(r => filled.Row("Checks", r)).Count(r => r.Contains("shop.xlsx, Flasks!E2 75 × 100")).ShouldBe(1);
        filled.Sheets.Count(s => s.StartsWith("Flasks", StringComparison.Ordinal)).ShouldBe(1);
    }

    // The one cell that is missing may be typed into the book: it hides nothing of the shop file.
    [Fact]
    public void Fill_TrunkTypedIntoTheBook_PlansWithTheRestOfTheShopFile()
    {
        var filled = Fill(book => book.Sheet("Flasks", s => s.Row("Size", "Sprue diameter (mm)").Row("75 x 100", 8)), sprue: null);

        filled.Plan.Flasks.ShouldNotBeEmpty();
        filled.Plan.Flasks[0].Size.Name.ShouldBe("75 x 100");
        filled.Plan.Flasks.ShouldAllBe(f => f.Size.InsideDiameter!.Value.Millimeters == 75);
        filled.Again().Bytes.ShouldBe(filled.Bytes);
    }

    [Fact]
    public void Explain_LinesOfBothBooks_SaysWhereEachStands()
    {
        var filled = Fill(book => book.Sheet("Materials", s => s.Row("Material", "Kind", "Density (g/cm³)").Row("Gießharz neu", "resin", 1.14)));

        var explained = Explained.From(filled.Bytes, Settings);
        explained.From("I2", "Gießharz density").ShouldBe("shop.xlsx, Materials!C2");
        explained.From("I3", "Gießharz neu density").ShouldBe("Materials!C2");
    }

    private BookSettings Settings => new() { ShopFile = Path.Combine(folder, "shop.xlsx") };

    private Filled Fill(Func<BookBuilder, BookBuilder> more, double? sprue = 8)
    {
        File.WriteAllBytes(Settings.ShopFile!, Shop(sprue).Build().ToArray());
        var list = new BookBuilder().Sheet(List, s => s
            .Row("Piece", "Qty", "Pattern weight (g)", "Material", "Alloy", "Length (mm)", "Width (mm)", "Thickness (mm)")
            .Row("Otter ring", 2, 1.12, "Gießharz", "house sterling", 20, 12, 6)
            .Row("Gull stud", 2, 1.14, "Gießharz neu", "house sterling", 20, 12, 6));
        return Filled.From(more(list).Build(), settings: Settings);
    }

    private static BookBuilder Shop(double? sprue) => new BookBuilder()
        .Sheet("Flasks", s => s
            .Row("Size", "Inside diameter (mm)", "Height (mm)", "Owned", "Sprue diameter (mm)", "Base height (mm)", "Cup (ml)").Row("75 × 100", 75, 100, 2, sprue, 20, 12))
        .Sheet("Crucibles", s => s.Row("Crucible", "Holds (ml)").Row("No. 2", 60))
        .Sheet("Alloys", s => s.Row("Alloy", "Density (g/cm³)").Row("house sterling", 10.36))
        .Sheet("Materials", s => s.Row("Material", "Kind", "Density (g/cm³)").Row("Gießharz", "resin", 1.12))
        .Sheet("Shop", s => s.Row("Setting", "Value", "Unit").Row("Casting method", "vacuum perforated").Row("Button share", 20, "%").Row("Button at least", 1.5, "ml")
            .Row("Weights are of", "pattern").Row("Weights include", "piece alone").Row("Supports share", 0, "%")
            .Row("Gap between pieces", 3, "mm").Row("Gate length", 5, "mm").Row("Gate diameter", 2.5, "mm").Row("Gate angle", 50, "°"));
}
