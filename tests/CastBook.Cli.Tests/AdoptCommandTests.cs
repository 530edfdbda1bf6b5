using System.Globalization;
using System.Text.Json.Nodes;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;
using ClosedXML.Excel;

namespace CastBook.Cli.Tests;

public sealed partial class AdoptCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("castbook-adopt").FullName;
    private readonly StringWriter output = new();
    private readonly StringWriter errors = new();

    public void Dispose()
    {
        Directory.Delete(folder, recursive: true);
        output.Dispose();
        errors.Dispose();
    }

    [Fact]
    public void Adopt_Answers_GoIntoAShopFileAndSettingsThatFillThenUses()
    {
        var book = Book("Nights.xlsx", "Piece;Pcs;Weigth (g);Metal;Note", "Otter ring;2;1.2;fine silver;");
        var before = File.ReadAllBytes(book);

        // Column of the weight; what is weighed; with gates; supports; material, kind, density, cube, edge; method; a flask; no more; crucible; kiln.
        var code = Adopt(book, "C", "1", "piece alone", "0", "quarry resin", "resin", "", "9,2", "20", "3", "75", "100", "4", "8", "20", "", "60", "round", "300");

        code.ShouldBe(0, errors.ToString());
        File.ReadAllBytes(book).ShouldBe(before);
        JsonNode.Parse(File.ReadAllText(In("castbook.json")))!.ToJsonString().ShouldBe("""{"shop":"shop.xlsx","columns":{"patternMass":["Weigth (g)"]}}""");
        var filled = BookFile.Fill(book, In("out.xlsx"), dryRun: false, SettingsFile.Load(folder, null, new Dictionary<string, string>()), TimeProvider.System).Result;
        var shop = filled.Night.Shop;
        shop.FlaskSizes.Single().InsideDiameter!.Value.Millimeters.ShouldBe(75);
        shop.FlaskSizes.Single().Owned.ShouldBe(4);
        shop.Crucibles.Single().Holds!.Value.Milliliters.ShouldBe(60);
        shop.Kilns.Single().InsideDiameter!.Value.Millimeters.ShouldBe(300);
        shop.Materials.Single().CubeDensity!.Value.GramsPerCubicCentimeter.ShouldBe(1.15, 1e-9);
        shop.Settings.CastingMethod.ShouldBe(Casting.Pouring.CastingMethod.Spin);
        filled.Findings.Select(f => f.Id).ShouldNotContain("pattern-density-missing");
        filled.Findings.Select(f => f.Id).ShouldNotContain("casting-method-unknown");
        filled.Findings.Select(f => f.Id).ShouldNotContain("crucible-unknown");
    }

    // An invented shop's flasks, crucibles and kiln are nobody's answers; the kind of a material is offered where its name says it.
    [Fact]
    public void Adopt_ShopFileWithExamples_AsksForWhatTheShopOwns()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloy", "Otter ring;2;1.2;fine silver");
        CastBookRun.In(folder, ["new", "shop"]).ExitCode.ShouldBe(0);

        Adopt(book, "piece alone", "0", "castable resin", "", "1.15", "spin", "75", "100", "4", "8", "20", "", "60", "round", "300").ShouldBe(0, errors.ToString());

        output.ToString().ShouldNotContain("Example");
        output.ToString().ShouldContain("  Is it (1 wax, 2 resin) [resin]: ");
        CastBookRun.In(folder, ["clear-examples", "shop.xlsx"]).ExitCode.ShouldBe(0);
        var shop = Shop(book);
        var (material, flask) = (shop.Materials.ShouldHaveSingleItem(), shop.FlaskSizes.ShouldHaveSingleItem());
        (material.Name, material.Kind, material.Density!.Value.GramsPerCubicCentimeter).ShouldBe(("castable resin", Casting.Patterns.PatternKind.Resin, 1.15));
        (flask.Name, flask.InsideDiameter!.Value.Millimeters, flask.Owned).ShouldBe(("75 × 100", 75, 4));
        shop.Crucibles.ShouldHaveSingleItem().Holds!.Value.Milliliters.ShouldBe(60);
        shop.Kilns.ShouldHaveSingleItem().InsideDiameter!.Value.Millimeters.ShouldBe(300);
    }

    // "Resin weight" says no more than the material that was just told of.
    [Fact]
    public void Adopt_MaterialToldByItsWholeName_IsThatOfTheHeading()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Resin weight (g);Alloy", "Otter ring;2;1.2;fine silver");

        Adopt(book, "piece alone", "0", "castable resin", "resin", "1.15").ShouldBe(0, errors.ToString());

        Shop(book).Materials.ShouldHaveSingleItem().Name.ShouldBe("castable resin");
        var filled = BookFile.Fill(book, null, dryRun: true, SettingsFile.Load(folder, null, new Dictionary<string, string>()), TimeProvider.System).Result;
        filled.Findings.ShouldNotContain(f => f.Id == "pattern-density-missing");
        filled.Findings.ShouldContain(f => f.Id == "material-taken-as");
    }

    // Inches typed for millimetres, and the size of a flask typed as a density.
    [Fact]
    public void Adopt_NumbersThatCannotBeMeant_AreAskedAgain()
    {
        var book = Book("Nights.xlsx", "Piece;Pcs;Pattern weight (g);Metal;Note", "Otter ring;2;1.2;fine silver;");

        Adopt(book, "piece alone", "0", "quarry resin", "resin", "3 1/2", "1.15", "3", "3 1/2", "3 1/2 in", "4 in", "2", "8", "20", "").ShouldBe(0, errors.ToString());

        output.ToString().ShouldContain($"3.5 g/cm³ is not likely here: between 0.6 and 2 is usual.{Environment.NewLine}");
        output.ToString().ShouldContain("3.5 mm is not likely here: between 15 and 400 is usual. Type another unit with the number, such as 3 1/2 in.");
        var shop = BookFile.Fill(book, In("out.xlsx"), dryRun: false, SettingsFile.Load(folder, null, new Dictionary<string, string>()), TimeProvider.System).Result.Night.Shop;
        shop.FlaskSizes.Single().InsideDiameter!.Value.Millimeters.ShouldBe(88.9, 1e-9);
        shop.FlaskSizes.Single().Height!.Value.Millimeters.ShouldBe(101.6, 1e-9);
        shop.Materials.Single().Density!.Value.GramsPerCubicCentimeter.ShouldBe(1.15, 1e-9);
    }

    [Fact]
    public void Adopt_ListsOnTwoSheets_SaysThatThereIsAnother()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloy", "Otter ring;2;1.2;fine silver");
        using (var two = new XLWorkbook(book))
        {
            two.Worksheet("Sheet1").CopyTo("Prints");
            two.Save();
        }

        Adopt(book).ShouldBe(0, errors.ToString());

        output.ToString().ShouldContain("The list on sheet Sheet1 was read; a list of pieces stands on Prints too. To fill several, or another one, type their names");
    }

    [Fact]
    public void Adopt_ListInInches_IsAskedAndAnsweredInThem()
    {
        var book = Book("Nights.xlsx", "Piece;Pcs;Pattern weight (dwt);Metal;Length (in);Width (in)", "Otter ring;2;1.2;fine silver;0.9;0.25");

        // Piece alone; no supports; resin with its density; method; 3 1/2 by 4 in, two of them; trunk, base; no more; crucible; kiln 12 × 14 in.
        Adopt(book, "piece alone", "0", "quarry resin", "resin", "1.15", "3", "89", "3 1/2", "101.6 mm", "2", "0.25", "0.75", "", "60", "square", "12", "14").ShouldBe(0, errors.ToString());

        output.ToString().ShouldContain("A flask you own: inside diameter in inches, or such as 89 mm (Enter: no more): ");
        output.ToString().ShouldContain("89 in is not likely here: between 0.59 and 15.75 is usual. Type another unit with the number, such as 89 mm.");
        output.ToString().ShouldContain("  Its usable width, in inches: ");
        using (var made = new XLWorkbook(In("shop.xlsx")))
        {
            made.Worksheet("Flasks").Row(1).CellsUsed().Select(c => c.GetString()).ShouldBe(
                ["Size", "Inside diameter (in)", "Height (in)", "Owned", "Method", "Holds (ml)", "Powder (g)", "Water (ml)", "Sprue diameter (in)", "Base height (in)", "Cup (ml)", "Above tree (in)", "To wall (in)", "Per tree"]);
            made.Worksheet("Flasks").Row(2).CellsUsed().Select(c => c.GetString()).ShouldBe(["3.5 × 4", "3.5", "4", "2", "0.25", "0.75"]);
            made.Worksheet("Alloys").Row(1).CellsUsed().Select(c => c.GetString()).ShouldContain("Fresh (dwt)");
            made.Worksheet("Schedules").Row(1).CellsUsed().Select(c => c.GetString()).ShouldContain("Target (°F)");
            made.Worksheet("Shop").CellsUsed(c => c.GetString().EndsWith("Empty: 0.79.", StringComparison.Ordinal)).Count().ShouldBe(1);
        }

        var shop = Shop(book);
        shop.FlaskSizes.Single().InsideDiameter!.Value.Millimeters.ShouldBe(88.9, 1e-9);
        shop.FlaskSizes.Single().BaseHeight!.Value.Millimeters.ShouldBe(19.05, 1e-9);
        shop.Kilns.Single().InsideWidth!.Value.Millimeters.ShouldBe(304.8, 1e-9);

        // Once more, and only the height of the flask is another.
        var before = output.ToString().Length;
        Adopt(book, "", "", "", "", "", "", "c", "", "4.25", "", "", "", "", "", "", "", "").ShouldBe(0, errors.ToString());
        output.ToString()[before..].ShouldContain("  Its height, in inches [4]: ");
        Shop(book).FlaskSizes.Single().Height!.Value.Millimeters.ShouldBe(107.95, 1e-9);
    }

    [Fact]
    public void Adopt_Columns_AreToldWithWhatComesNear()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloyy;Colour", "Otter ring;2;1.2;fine silver;");

        Adopt(book).ShouldBe(0);

        output.ToString().ReplaceLineEndings("\n").ShouldStartWith(
            """
            Nights.xlsx: the list is on sheet Sheet1, its headings in row 1
              A   Piece               piece
              B   Qty                 quantity
              C   Pattern weight (g)  weight
              D   Alloyy              not known; is it alloy?
              E   Colour              not known: left alone
            no column for: alloy
            Which column holds alloy? Its letter; D comes near: 
            """.ReplaceLineEndings("\n"));
        output.ToString().ShouldContain("Nothing was answered, so nothing was written.");
        Directory.GetFiles(folder).Select(Path.GetFileName).ShouldBe(["Nights.xlsx"]);
    }

    [Fact]
    public void Adopt_ListWithoutAnyKnownHeading_IsShownAndMadeKnown()
    {
        var book = Book("Nights.xlsx", "Opus;Zahlung;Gr;Wovon", "Ring;2;1.2;fine silver");

        Adopt(book, "A", "B", "C", "D").ShouldBe(0, errors.ToString());

        JsonNode.Parse(File.ReadAllText(In("castbook.json")))!["columns"]!.ToJsonString()
            .ShouldBe("""{"piece":["Opus"],"quantity":["Zahlung"],"patternMass":["Gr"],"alloy":["Wovon"]}""");
        var settings = SettingsFile.Load(folder, null, new Dictionary<string, string>());
        BookFile.Fill(book, null, dryRun: true, settings, TimeProvider.System).Result.Night.Pieces.Single().Name.ShouldBe("Ring");
    }

    [Fact]
    public void Adopt_SettingsThatExist_AreKeptAndAddedTo()
    {
        const string Was = """{ "Melt loss": 2, "columns": { "PatternMass": "Master weight" } /* ours */ }""";
        var book = Book("Nights.xlsx", "Piece;Qty;Weigth (g);Alloy", "Otter ring;2;1.2;fine silver");
        File.WriteAllText(In("castbook.json"), Was);

        Adopt(book, "C", "", "", "", "", "", "50").ShouldBe(0, errors.ToString());

        JsonNode.Parse(File.ReadAllText(In("castbook.json")))!.ToJsonString()
            .ShouldBe("""{"Melt loss":2,"columns":{"PatternMass":["Master weight","Weigth (g)"]},"shop":"shop.xlsx"}""");
        File.ReadAllText(Directory.GetFiles(In(".castbook"), "castbook *.json").Single()).ShouldBe(Was);
    }

    [Fact]
    public void Adopt_SeveralTimesInASecond_KeepsTheSettingsOfEachTime()
    {
        var files = new Adopting.AdoptedFiles(folder, output, new Watching.Watched.SetClock());
        File.WriteAllText(In("castbook.json"), "{}");
        for (var time = 0; time < 3; time++)
        {
            files.WriteSettings(null, new Dictionary<string, Adopting.NamedHeading> { ["piece"] = new($"Opus {time}", null) });
        }

        Directory.GetFiles(In(".castbook")).Select(Path.GetFileName).Order(StringComparer.Ordinal).ShouldBe(
            ["castbook 2026-12-01 195400 2.json", "castbook 2026-12-01 195400 3.json", "castbook 2026-12-01 195400.json"]);
        File.ReadAllText(In(".castbook/castbook 2026-12-01 195400.json")).ShouldBe("{}");
    }

    [Fact]
    public void Adopt_ShopFileThatExists_IsNotWrittenOver()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloy", "Otter ring;2;1.2;fine silver");
        File.WriteAllText(In("shop.xlsx"), "mine");

        Adopt(book, "piece alone").ShouldBe(0, errors.ToString());

        File.ReadAllText(In("shop.xlsx")).ShouldBe("mine");
        JsonNode.Parse(File.ReadAllText(In("castbook.json")))!.ToJsonString().ShouldBe("""{"shop":"shop-2.xlsx"}""");
    }

    [Fact]
    public void Adopt_WhereNobodyCanAnswer_MakesAShopFileThatAsksWhatIsOpen()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Wax weight (g);Alloy;Material", "Otter ring;2;1.2;sterling;Harz", "Gull;1;2;Sterling silver;blue wax", "Fob;1;2;Bronze CuSn10;Harz");

        var run = CastBookRun.In(folder, ["adopt", "Nights.xlsx", "--sheet"]);

        run.ExitCode.ShouldBe(0, run.Errors);
        run.Output.ShouldContain("shop.xlsx: made.");
        run.Output.ShouldNotContain("Which column");
        using (var shop = new XLWorkbook(In("shop.xlsx")))
        {
            shop.Worksheets.Select(w => w.Name).ShouldBe(["Read me", "Flasks", "Crucibles", "Kilns", "Alloys", "Materials", "Shop"]);
            Column(shop, "Alloys").ShouldBe(["Alloy", "sterling", "Bronze CuSn10"]);
            Column(shop, "Materials").ShouldBe(["Material", "Harz", "blue wax"]);
            Column(shop, "Shop").ShouldBe(["Setting", "Weights include", "Supports share", "Pattern material", "Casting method"]);
            shop.Worksheet("Shop").DataValidations.Single(v => v.Ranges.Single().RangeAddress.FirstAddress.RowNumber == 5).Value.ShouldBe("\"vacuum perforated,vacuum solid,spin,gravity\"");
        }

        CastBookRun.In(folder, ["adopt", "Nights.xlsx", "--sheet"]).Output.ShouldContain("shop.xlsx is the shop file of this folder");
        Directory.GetFiles(folder, "shop*.xlsx").Length.ShouldBe(1);
        File.Exists(book).ShouldBeTrue();
    }

    [Fact]
    public void Adopt_Again_OffersTheOldAnswersAndChangesWhatIsAnsweredAnew()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Weigth (g);Other (g);Alloy", "Otter ring;2;1.2;7;fine silver");
        Adopt(book, "D", "pattern", "allein", "", "Gießharz", "Harz", "1,12", "Vakuum gelocht", "75 mm", "10 cm", "2", "8", "20", "", "60 ml", "eckig", "300").ShouldBe(0, errors.ToString());
        output.GetStringBuilder().Clear();

        Adopt(book, "C", "", "", "", "15", "", "", "1.14", "", "c", "", "125", "3", "", "", "", "0,05 l").ShouldBe(0, errors.ToString());

        var said = output.ToString().ReplaceLineEndings("\n");
        said.ShouldContain("Its letter [D]: ");
        said.ShouldContain("Are pieces weighed alone, or with their gates and sprue on (1 piece alone, 2 gates too) [piece alone]: ");
        said.ShouldContain("  Its density, solid and cured, in g/cm³ (open: by a test cube) [1.12]: ");
        said.ShouldContain("Flask 75 × 100, 2 owned: Enter keeps it, c changes it: ");
        said.ShouldContain("Is the floor of your kiln (1 square, 2 round) [square]: ");
        said.ShouldContain("shop.xlsx: changed; as it was it stands in .castbook/");
        said.ShouldNotContain("Nothing was");
        JsonNode.Parse(File.ReadAllText(In("castbook.json")))!.ToJsonString().ShouldBe("""{"shop":"shop.xlsx","columns":{"patternMass":["Weigth (g)"]}}""");
        var shop = Shop(book);
        var flask = shop.FlaskSizes.ShouldHaveSingleItem();
        (flask.Name, flask.Height!.Value.Millimeters, flask.Owned, flask.SprueDiameter!.Value.Millimeters).ShouldBe(("75 × 125", 125, 3, 8));
        shop.Materials.ShouldHaveSingleItem().Density!.Value.GramsPerCubicCentimeter.ShouldBe(1.14);
        shop.Crucibles.ShouldHaveSingleItem().Holds!.Value.Milliliters.ShouldBe(50, 1e-9);
        shop.Kilns.ShouldHaveSingleItem().InsideWidth!.Value.Millimeters.ShouldBe(300);
        (shop.Settings.CastingMethod, shop.Settings.WeightsIncludeGates, shop.Settings.SupportsShare!.Value.Percent).ShouldBe((Casting.Pouring.CastingMethod.VacuumPerforated, false, 15));
        Directory.GetFiles(folder, "shop*.xlsx").Length.ShouldBe(1);
    }

    [Fact]
    public void Adopt_AgainWithoutAnyAnswer_ChangesNothingAndSaysSo()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloy", "Otter ring;2;1.2;fine silver");
        Adopt(book, "piece alone", "10").ShouldBe(0, errors.ToString());
        var before = File.ReadAllBytes(In("shop.xlsx"));

        Adopt(book).ShouldBe(0, errors.ToString());

        output.ToString().ShouldContain("Nothing was changed: all answers are as they were.");
        File.ReadAllBytes(In("shop.xlsx")).ShouldBe(before);
    }

    [Fact]
    public void Adopt_ShopFileInInches_IsAnsweredInInches()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloy", "Otter ring;2;1.2;fine silver");
        CastBookRun.In(folder, ["new", "shop", "--units", "us", "--empty"]).ExitCode.ShouldBe(0);

        Adopt(book, "", "", "wax", "", "", "", "spin", "76.2 mm", "4", "2").ShouldBe(0, errors.ToString());

        var flask = Shop(book).FlaskSizes.ShouldHaveSingleItem();
        flask.InsideDiameter!.Value.Millimeters.ShouldBe(76.2, 1e-9);
        flask.Height!.Value.Millimeters.ShouldBe(101.6, 1e-9);
        using var shop = new XLWorkbook(In("shop.xlsx"));
        shop.Worksheet("Flasks").Cell("B2").GetDouble().ShouldBe(3);
    }

    [Fact]
    public void Adopt_ThenShare_TheTemplateHasTheAnswers()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Weigth (g);Alloy", "Otter ring;2;1.2;fine silver");
        Adopt(book, "C", "pattern", "allein", "", "", "spin", "75", "100", "4").ShouldBe(0, errors.ToString());

        var run = CastBookRun.In(folder, ["share", "Nights.xlsx", "--out", "ours.xlsx"]);

        run.ExitCode.ShouldBe(0, run.Errors);
        run.Output.ShouldContain("kept  Flasks (1 row of shop.xlsx)");
        run.Output.ShouldContain("kept  3 settings of shop.xlsx");
        run.Output.ShouldContain("""left out  your own words for headings; whoever uses it needs them in a castbook.json beside it: {"columns":{"patternMass":["Weigth (g)"]}}""");
    }

    [Fact]
    public void Adopt_ListInText_IsLookedAtLikeABook()
    {
        File.WriteAllText(In("list.csv"), "Piece;Qty;Weigth (g);Metal\nOtter ring;2;1,2;fine silver\n");

        Adopt(In("list.csv"), "C", "pattern", "piece alone").ShouldBe(0, errors.ToString());

        output.ToString().ShouldContain("list.csv: the list is on sheet Pieces, its headings in row 1");
        JsonNode.Parse(File.ReadAllText(In("castbook.json")))!["columns"]!.ToJsonString().ShouldBe("""{"patternMass":["Weigth (g)"]}""");
    }

    [Theory]
    [InlineData("1,150", "Type the number in digits")]
    [InlineData("12O", "Type the number in digits")]
    [InlineData("-3", "Type the number in digits")]
    public void Adopt_NumberThatIsNone_IsAskedAgain(string typed, string said)
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloy", "Otter ring;2;1.2;fine silver");

        Adopt(book, "", typed, "15").ShouldBe(0, errors.ToString());

        output.ToString().ShouldContain(said);
        SettingsFile.Load(folder, null, new Dictionary<string, string>()).ShopFile.ShouldNotBeNull();
        BookFile.Fill(book, null, dryRun: true, SettingsFile.Load(folder, null, new Dictionary<string, string>()), TimeProvider.System)
            .Result.Night.Shop.Settings.SupportsShare!.Value.Percent.ShouldBe(15);
    }

    private int Adopt(string book, params string[] answers)
    {
        using var input = new StringReader(string.Join('\n', answers));
        return AdoptCommand.Run(book, input, output, errors, TimeProvider.System);
    }

    private Planning.Shops.Shop Shop(string book) =>
        BookFile.Fill(book, null, dryRun: true, SettingsFile.Load(folder, null, new Dictionary<string, string>()), TimeProvider.System).Result.Night.Shop;

    private static List<string> Column(XLWorkbook book, string sheet) => [.. book.Worksheet(sheet).Column(1).CellsUsed().Select(c => c.GetString())];

    /// <summary>A book of the shop's own.</summary>
    private string Book(string name, params string[] lines)
    {
        using var book = new XLWorkbook();
        var sheet = book.AddWorksheet("Sheet1");
        for (var row = 0; row < lines.Length; row++)
        {
            var texts = lines[row].Split(';');
            for (var column = 0; column < texts.Length; column++)
            {
                var cell = sheet.Cell(row + 1, column + 1);
                _ = double.TryParse(texts[column], CultureInfo.InvariantCulture, out var number) ? cell.SetValue(number) : cell.SetValue(texts[column]);
            }
        }

        book.SaveAs(In(name));
        return In(name);
    }

    private string In(string name) => Path.Combine(folder, name);
}
