using System.Globalization;
using CastBook.Templates.Demo;
using CastBook.Templates.Sheets;

namespace CastBook.Templates.Tests.Demo;

public sealed class DemoNightTests
{
    private const int HeadingRow = 4;

    private static readonly SavedBook Book = SavedBook.Demo();

    [Fact]
    public void Write_List_HasTitleLinesAboveIt()
    {
        Book.Cell("Pieces", "A1").ShouldBe("Wrenmoor Foundry – casting night");
        Book.Cell("Pieces", "A4").ShouldBe("Piece");
        Book.Under("Pieces", HeadingRow, "Piece").Count.ShouldBeInRange(25, 35);
    }

    [Fact]
    public void Write_Names_AreThoseOfTheShopsOwnSheets()
    {
        Book.Under("Pieces", HeadingRow, "Alloy").Distinct().ShouldBe(Book.Under("Alloys", 1, "Alloy"), ignoreOrder: true);
        Book.Under("Pieces", HeadingRow, "Material").Distinct().ShouldBe(Book.Under("Materials", 1, "Material"), ignoreOrder: true);
    }

    [Fact]
    public void Write_Slips_AreInTheBook()
    {
        Book.Under("Pieces", HeadingRow, "Pattern weight (g)").Where(w => w.Length > 0 && !double.TryParse(w, NumberStyles.Float, CultureInfo.InvariantCulture, out _))
            .ShouldBe(["12O.5"]);
        Book.Under("Pieces", HeadingRow, "Leave out").Count(l => l == "yes").ShouldBe(1);
        var noDensity = Book.Under("Materials", 1, "Material").Zip(Book.Under("Materials", 1, "Density (g/cm³)")).Where(m => m.Second.Length == 0).Select(m => m.First);
        noDensity.ShouldBe([WrenmoorShop.Carving]);
    }

    /// <summary>58 g of wax at 0.95 g/cm³ is 61 ml, more than a 60 ml crucible holds to the brim.</summary>
    [Fact]
    public void Write_OnePiece_IsMoreThanItsCrucibleHolds()
    {
        var volumes = Book.Under("Pieces", HeadingRow, "Pattern weight (g)")
            .Where(w => w != "12O.5" && w.Length > 0).Select(w => double.Parse(w, CultureInfo.InvariantCulture) / 0.95);

        volumes.Count(v => v > 60).ShouldBe(1);
    }

    [Fact]
    public void Write_OnePiece_IsLongerThanAnyFlask()
    {
        var highest = Book.Under("Flasks", 1, "Height (mm)").Max(h => double.Parse(h, CultureInfo.InvariantCulture));

        Book.Under("Pieces", HeadingRow, "Length (mm)").Where(l => l.Length > 0).Count(l => double.Parse(l, CultureInfo.InvariantCulture) > 0.8 * highest).ShouldBe(1);
    }

    /// <summary>The least the gold pieces can take is their volume times the alloy's density; the drawer has less even of that.</summary>
    [Fact]
    public void Write_Gold_IsShort()
    {
        var rows = Book.Under("Pieces", HeadingRow, "Alloy").Select((alloy, i) => (alloy, i)).Where(r => r.alloy == WrenmoorShop.Gold).Select(r => r.i).ToList();
        var quantities = Book.Under("Pieces", HeadingRow, "Qty");
        var weights = Book.Under("Pieces", HeadingRow, "Pattern weight (g)");

        var grams = rows.Sum(i => double.Parse(quantities[i], CultureInfo.InvariantCulture) * double.Parse(weights[i], CultureInfo.InvariantCulture)) / 1.15 * 13.94;

        grams.ShouldBeGreaterThan(30 + 8);
    }

    [Fact]
    public void Write_Settings_AreAnsweredButForNightSheetsPourSecondPersonQuantityAndAlloy() =>
        SettingsSheet.Settings.Zip(Book.Under("Shop", 1, "Value")).Where(s => s.Second.Length == 0).Select(s => s.First.Name).ShouldBe(["Night", "Sheets to fill", "Pour at", "Hours of work", "Closed on", "Two people for", "Second person from", "Second person until", "Stay with", "Kiln loads", "Quantity where the list gives none", "Alloy where the list gives none"], ignoreOrder: true);

    [Fact]
    public void Write_DueDays_AreInDecember2037()
    {
        var first = new DateTime(2037, 12, 1).ToOADate();

        Book.Under("Pieces", HeadingRow, "Due").Where(d => d.Length > 0)
            .ShouldAllBe(d => double.Parse(d, CultureInfo.InvariantCulture) >= first && double.Parse(d, CultureInfo.InvariantCulture) < first + 31);
    }
}
