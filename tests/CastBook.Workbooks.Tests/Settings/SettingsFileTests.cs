using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Settings;

public sealed class SettingsFileTests : IDisposable
{
    private static readonly Dictionary<string, string> NoVariables = [];

    private readonly string folder = Directory.CreateTempSubdirectory("castbook-settings-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Load_NothingThere_SaysNothing() => SettingsFile.Load(folder, null, NoVariables).ShouldBe(BookSettings.None);

    // What is found of them would stand in another order each time.
    [Fact]
    public void Load_VariablesInAnyOrder_ComeInOneOrder()
    {
        Dictionary<string, string> one = new() { ["CASTBOOK_CHARGE_STEP"] = "10", ["CASTBOOK_MELT_LOSS"] = "x", ["CASTBOOK_BOWL_FILL"] = "y" };

        var (first, second) = (SettingsFile.Load(folder, null, one), SettingsFile.Load(folder, null, one.Reverse().ToDictionary()));

        first.Values.Keys.ShouldBe([SettingName.BowlFill, SettingName.ChargeStep, SettingName.MeltLoss]);
        second.Values.Keys.ShouldBe(first.Values.Keys);
        second.Origins.Keys.ShouldBe(first.Origins.Keys);
    }

    [Fact]
    public void Load_FileAndVariables_LaterSourcesWin()
    {
        var user = Directory.CreateDirectory(Path.Combine(folder, "user")).FullName;
        File.WriteAllText(Path.Combine(user, SettingsFile.Name), """{ "Melt loss": "3", "Charge step": "5", "Gate length": 4 }""");
        File.WriteAllText(Path.Combine(folder, SettingsFile.Name), """{ "melt_loss": 2, "columns": { "patternMass": ["Peso modelo"], "alloy": "Lega" } }""");
        var variables = new Dictionary<string, string> { ["CASTBOOK_CHARGE_STEP"] = "10", ["CASTBOOK_HOME"] = "/somewhere", ["PATH"] = "x" };

        var settings = SettingsFile.Load(folder, user, variables);

        settings.Values.ShouldBe(
            new Dictionary<string, string> { [SettingName.MeltLoss] = "2", [SettingName.ChargeStep] = "10", [SettingName.GateLength] = "4" }, ignoreOrder: true);
        settings.Columns["patternMass"].ShouldBe(["Peso modelo"]);
        settings.Columns["alloy"].ShouldBe(["Lega"]);
    }

    [Theory]
    [InlineData("""{ "sheet": "March" }""", "March")]
    [InlineData("""{ "sheet": ["March", "April; May"] }""", "March", "April; May")]
    [InlineData("""{ "sheet": "" }""")]
    public void Load_Sheet_IsOneNameOrSeveral(string json, params string[] names)
    {
        File.WriteAllText(Path.Combine(folder, SettingsFile.Name), json);

        SettingsFile.Load(folder, null, NoVariables).Sheets.ShouldBe(names);
    }

    [Fact]
    public void Load_SheetsInBothFiles_TheOneBesideTheBookWins()
    {
        var user = Directory.CreateDirectory(Path.Combine(folder, "user")).FullName;
        File.WriteAllText(Path.Combine(user, SettingsFile.Name), """{ "sheet": "all" }""");
        File.WriteAllText(Path.Combine(folder, SettingsFile.Name), """{ "sheet": ["March"] }""");

        SettingsFile.Load(folder, user, NoVariables).Sheets.ShouldBe(["March"]);
    }

    [Fact]
    public void Load_Limits_AreThoseOfTheShop()
    {
        File.WriteAllText(Path.Combine(folder, SettingsFile.Name), """{ "limits": { "part megabytes": 600, "Times_packed": 400 } }""");

        SettingsFile.Load(folder, null, NoVariables).Caps.ShouldBe(new Caps { PartMegabytes = 600, TimesPacked = 400 });
    }

    [Theory]
    [InlineData("parts", "many")]
    [InlineData("parts", "0")]
    [InlineData("pages", "7")]
    public void Load_LimitThatIsNone_IsRefused(string name, string value)
    {
        File.WriteAllText(Path.Combine(folder, SettingsFile.Name), $$"""{ "limits": { "{{name}}": "{{value}}" } }""");

        var finding = Should.Throw<BookRefusedException>(() => SettingsFile.Load(folder, null, NoVariables)).Finding;

        finding.Seen.ShouldBe($"In castbook.json the limits say \"{name}\": \"{value}\", which CastBook does not understand.");
        finding.Remedy.ShouldBe("The limits are parts, part megabytes, book megabytes and times packed, each a whole number above 0; or take them out.");
    }

    [Fact]
    public void Load_BrokenFile_IsRefused()
    {
        File.WriteAllText(Path.Combine(folder, SettingsFile.Name), "{ not json");

        Should.Throw<BookRefusedException>(() => SettingsFile.Load(folder, null, NoVariables)).Finding.Id.ShouldBe("settings-file-unreadable");
    }

    [Fact]
    public void Read_SettingsAroundABook_YieldToItsShopSheet()
    {
        var settings = new BookSettings
        {
            Values = new Dictionary<string, string> { [SettingName.MeltLoss] = "2", [SettingName.ChargeStep] = "5 g", ["Melt los"] = "1" },
            Columns = new Dictionary<string, IReadOnlyList<string>> { ["patternMass"] = ["Peso modelo"], ["patternMas"] = ["x"] },
        };
        using var book = new BookBuilder()
            .Sheet("Pieces", s => s.Row("Piece", "Qty", "Peso modelo (g)").Row("Pin", 1, 2.5))
            .Sheet("Shop", s => s.Row("Setting", "Value", "Unit").Row("Melt loss", 1, "%")).Build();

        var reading = BookReader.Read(book, settings);

        reading.Night.Shop.Settings.MeltLoss!.Value.Percent.ShouldBe(1, 1e-9);
        reading.Night.Shop.Settings.ChargeStep!.Value.Grams.ShouldBe(5);
        reading.Night.Pieces[0].Weight!.Value.Grams.ShouldBe(2.5);
        reading.Night.WeightsAreOf.ShouldBe(WeightMeaning.Pattern);
        reading.Findings.Where(f => f.Id == "setting-unknown").Select(f => f.Remedy)
            .ShouldBe(["The nearest is \"Melt loss\".", "The nearest is \"patternMass\"."]);
    }

    [Fact]
    public void Read_ShopFile_GivesTheLinesTheBookLacks()
    {
        var path = Path.Combine(folder, "shop.xlsx");
        using (var shop = new BookBuilder()
            .Sheet("Flasks", s => s.Row("Size", "Owned", "Height (mm)").Row("90 × 125", 2, "tall"))
            .Sheet("Crucibles", s => s.Row("Crucible", "Holds (ml)").Row("Big", 100))
            .Sheet("Shop", s => s.Row("Setting", "Value").Row("Melt loss", 3).Row("Gate length", 4)).Build())
        {
            File.WriteAllBytes(path, shop.ToArray());
        }

        File.WriteAllText(Path.Combine(folder, SettingsFile.Name), """{ "shop": "shop.xlsx", "Melt loss": 2 }""");
        using var book = new BookBuilder()
            .Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Alloy").Row("Pin", 1, 2.5, "Bronze"))
            .Sheet("Crucibles", s => s.Row("Crucible", "Holds (ml)").Row("Small", 60)).Build();

        var reading = BookReader.Read(book, SettingsFile.Load(folder, null, NoVariables));

        reading.Night.Shop.FlaskSizes.ShouldHaveSingleItem().Owned.ShouldBe(2);
        reading.Night.Shop.Crucibles.Select(c => c.Name).ShouldBe(["Small", "Big"]);
        reading.Night.Shop.Settings.MeltLoss!.Value.Percent.ShouldBe(2, 1e-9);
        reading.Night.Shop.Settings.GateLength!.Value.Millimeters.ShouldBe(4);
        reading.Findings.ShouldHaveSingleItem().Seen.ShouldBe("In shop.xlsx: \"tall\" under Height (mm) is not a number.");
        reading.Cells.Find(new Subject(SubjectKind.FlaskSize, "90 × 125")).ShouldBeNull();
    }

    [Fact]
    public void Read_ShopFileMissing_IsRefused()
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", "Pattern weight (g)"], ["Pin", 1, 2.5]);
        var settings = new BookSettings { ShopFile = Path.Combine(folder, "nowhere.xlsx") };

        Should.Throw<BookRefusedException>(() => BookReader.Read(book, settings)).Finding.Id.ShouldBe("shop-file-unreadable");
    }
}
