using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Tests.Filling;

namespace CastBook.Workbooks.Tests.Explaining;

/// <summary>Who said a setting: its origin is told with the number that it went into.</summary>
public sealed class OriginsTests : IDisposable
{
    private const string Charge = "Night plan!E5";
    private const string Setting = "Melt loss";

    private readonly string folder = Directory.CreateTempSubdirectory("castbook-origins-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Of_SettingOnTheShopSheet_TellsItsCell() => Origin(Nights.Whole().ToArray(), BookSettings.None).ShouldBe("Shop!B5");

    [Fact]
    public void Of_SettingThatNobodySaid_TellsWhatIsBuiltIn() => Origin(Unsaid(), BookSettings.None).ShouldBe("built in, common practice");

    [Fact]
    public void Of_SettingBesideTheBook_TellsTheFile()
    {
        File.WriteAllText(Path.Combine(folder, SettingsFile.Name), """{ "Melt loss": "3" }""");

        Origin(Unsaid(), SettingsFile.Load(folder, null, new Dictionary<string, string>())).ShouldBe("castbook.json beside the book");
        Origin(Nights.Whole().ToArray(), SettingsFile.Load(folder, null, new Dictionary<string, string>())).ShouldBe("Shop!B5");
    }

    [Fact]
    public void Of_SettingInTheUsersFolder_TellsTheFile()
    {
        var user = Directory.CreateDirectory(Path.Combine(folder, "user")).FullName;
        File.WriteAllText(Path.Combine(user, SettingsFile.Name), """{ "Melt loss": "3" }""");

        Origin(Unsaid(), SettingsFile.Load(folder, user, new Dictionary<string, string>())).ShouldBe("castbook.json in your own folder");
    }

    [Fact]
    public void Of_SettingInAVariable_TellsItsName() =>
        Origin(Unsaid(), SettingsFile.Load(folder, null, new Dictionary<string, string> { ["CASTBOOK_MELT_LOSS"] = "2" })).ShouldBe("the variable CASTBOOK_MELT_LOSS");

    [Fact]
    public void Of_ShopFile_TellsItAndItsCell()
    {
        var path = Path.Combine(folder, "harbour shop.xlsx");
        File.WriteAllBytes(path, new BookBuilder()
            .Sheet("Shop", s => s.Row("Setting", "Value", "Unit").Row("Melt loss", 4, "%"))
            .Sheet("Materials", s => s.Row("Material", "Kind", "Density (g/cm³)").Row("quarry resin", "resin", 1.2)).Build().ToArray());
        var settings = new BookSettings { ShopFile = path };
        var book = new BookBuilder()
            .Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Material", "Alloy").Row("Otter ring", 2, 1.2, "quarry resin", "fine silver")).Build();

        Origin(Unsaid(), settings).ShouldBe("the shop file harbour shop.xlsx, Shop!B2");
        var explained = Explained.From(book, settings);
        explained.From("F2", "quarry resin density").ShouldBe("harbour shop.xlsx, Materials!C2");
        explained.From("F2", "fine silver density").ShouldStartWith("built in, ");
    }

    private static byte[] Unsaid() => Typed.Into(Nights.Whole().ToArray(), ("Shop", "A5", "Bench of"), ("Shop", "B5", "Tarn"), ("Shop", "C5", null));

    private static string Origin(byte[] book, BookSettings settings) => Explained.From(book, settings).From(Charge, Setting);
}
