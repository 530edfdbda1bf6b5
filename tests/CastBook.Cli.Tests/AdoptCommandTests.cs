using System.Globalization;
using System.Text.Json.Nodes;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;
using ClosedXML.Excel;

namespace CastBook.Cli.Tests;

public sealed class AdoptCommandTests : IDisposable
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
    public void Adopt_ShopFileThatExists_IsNotWrittenOver()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloy", "Otter ring;2;1.2;fine silver");
        File.WriteAllText(In("shop.xlsx"), "mine");

        Adopt(book, "piece alone").ShouldBe(0, errors.ToString());

        File.ReadAllText(In("shop.xlsx")).ShouldBe("mine");
        JsonNode.Parse(File.ReadAllText(In("castbook.json")))!.ToJsonString().ShouldBe("""{"shop":"shop-2.xlsx"}""");
    }

    [Fact]
    public void Adopt_WhereNobodyCanAnswer_MakesAShopFileToFillIn()
    {
        var book = Book("Nights.xlsx", "Piece;Qty;Pattern weight (g);Alloy", "Otter ring;2;1.2;fine silver");

        var run = CastBookRun.In(folder, ["adopt", "Nights.xlsx", "--sheet"]);

        run.ExitCode.ShouldBe(0, run.Errors);
        run.Output.ShouldContain("shop.xlsx: made.");
        run.Output.ShouldNotContain("Which column");
        File.Exists(In("shop.xlsx")).ShouldBeTrue();
        CastBookRun.In(folder, ["adopt", "Nights.xlsx", "--sheet"]).Output.ShouldContain("shop.xlsx is the shop file of this folder");
        Directory.GetFiles(folder, "shop*.xlsx").Length.ShouldBe(1);
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
