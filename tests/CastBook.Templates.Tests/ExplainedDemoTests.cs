using System.Globalization;
using System.Text.RegularExpressions;
using CastBook.Planning.Shops;
using CastBook.Workbooks;
using CastBook.Workbooks.Explaining;
using CastBook.Workbooks.Settings;
using ClosedXML.Excel;

namespace CastBook.Templates.Tests;

/// <summary>The demo night explained, in its own units and in those of a shop in the United States: every number in the book is the number that its explanation comes to.</summary>
public sealed partial class ExplainedDemoTests
{
    private static readonly string[] OwnSheets = ["Night plan", "Trees", "Mixes", "Metal", "Clock", "Kiln"];
    private static readonly string[] Columns = ["V", "W", "X", "Y", "Z"];

    private static readonly (string Setting, string Value)[] UsUnits =
    [
        (SettingName.MetalIn, "dwt"), (SettingName.MetalBoughtIn, "troy oz"), (SettingName.PowderIn, "lb"), (SettingName.WaterIn, "US fl oz"),
        (SettingName.TemperaturesIn, "°F"), (SettingName.LengthsIn, "in"),
    ];

    private static readonly Lazy<(SavedBook Book, IReadOnlyList<CellExplanation> Cells)> Metric = new(() => Explained([]));
    private static readonly Lazy<(SavedBook Book, IReadOnlyList<CellExplanation> Cells)> Us = new(() => Explained(UsUnits));

    private static (SavedBook Book, IReadOnlyList<CellExplanation> Cells) Demo => Metric.Value;

    private static (SavedBook Book, IReadOnlyList<CellExplanation> Cells) In(UnitHabit units) => (units == UnitHabit.Us ? Us : Metric).Value;

    private static (SavedBook Book, IReadOnlyList<CellExplanation> Cells) Explained((string Setting, string Value)[] answers)
    {
        using var demo = new MemoryStream();
        DemoNight.Write(demo);
        demo.Position = 0;
        if (answers.Length > 0)
        {
            using var book = new XLWorkbook(demo);
            var shop = book.Worksheet("Shop");
            foreach (var (setting, value) in answers)
            {
                shop.CellsUsed().Single(c => c.Address.ColumnNumber == 1 && c.GetString() == setting).CellRight().SetValue(value);
            }

            demo.SetLength(0);
            book.SaveAs(demo);
            demo.Position = 0;
        }

        using var output = new MemoryStream();
        BookFiller.Fill(demo, output, "wrenmoor-night.xlsx", BookSettings.None);
        demo.Position = 0;
        using var copy = new MemoryStream();
        return (new SavedBook(output.ToArray()), [.. BookFiller.Explain(demo, copy, "wrenmoor-night.xlsx", BookSettings.None).All()]);
    }

    [Theory]
    [InlineData(UnitHabit.Metric)]
    [InlineData(UnitHabit.Us)]
    public void All_DemoNight_ShowsWhatTheFilledBookShows(UnitHabit units)
    {
        var (book, cells) = In(units);
        foreach (var cell in cells)
        {
            var saved = book.Cell(cell.Cell.Sheet, cell.Cell.Address);

            saved.ShouldBe(cell.Number?.ToString(CultureInfo.InvariantCulture) ?? cell.Text, cell.Cell.ToString());
        }
    }

    /// <summary>Cells show hundredths of grams, pennyweights, pounds and fluid ounces, whole millilitres, minutes and hundredths of hours.</summary>
    [Theory]
    [InlineData(UnitHabit.Metric)]
    [InlineData(UnitHabit.Us)]
    public void All_DemoNight_ResultIsTheNumberInTheCell(UnitHabit units)
    {
        var numbers = In(units).Cells.Where(c => c.Number is not null).ToList();

        numbers.Count.ShouldBeGreaterThan(200);
        foreach (var cell in numbers)
        {
            cell.Number!.Value.ShouldBe(cell.Account!.Result!.Value, cell.Account.Unit == "ml" || cell.Account.Rounded == "to a whole degree" ? 0.501 : 0.00501, cell.Cell.ToString());
        }
    }

    [Fact]
    public void All_DemoNight_HasAFormulaInNumbersForThese()
    {
        var formulas = Demo.Cells.Where(c => c.Account!.Numbers.Length > 0);

        formulas.Select(c => c.Account!.Name).Distinct().Order(StringComparer.Ordinal).ShouldBe(
        [
            "Burnout", "Charge", "Charges", "Fresh", "Fresh to use", "In stock", "Metal", "Metal each", "Mix", "Pieces", "Pour done by", "Powder",
            "Powder of the mix", "Re-melt", "Re-melt to use", "Slurry", "Takes", "To buy", "Water", "Water of the mix",
        ]);
    }

    [Theory]
    [InlineData(UnitHabit.Metric)]
    [InlineData(UnitHabit.Us)]
    public void All_DemoNight_FormulaInNumbersComesToTheResult(UnitHabit units)
    {
        var formulas = In(units).Cells.Where(c => c.Account!.Numbers.Length > 0).ToList();

        formulas.Count.ShouldBeGreaterThan(100);
        foreach (var (cell, account) in formulas.Select(c => (c, c.Account!)))
        {
            var reckoned = Reckoning.Of(account.Numbers);
            var step = Step().Match(account.Rounded) is { Success: true } match ? double.Parse(match.Value, CultureInfo.InvariantCulture) : 0;

            // The numbers of a formula have three decimals.
            var dust = 0.003 + (0.001 * reckoned);
            account.Result!.Value.ShouldBeInRange(reckoned - dust, reckoned + step + dust, $"{cell.Cell}: {account.Numbers}");
        }
    }

    /// <summary>What is weighed out and dialled in is in the units that were asked for, all over the book.</summary>
    [Fact]
    public void All_UsUnits_NothingButReckoningIsInOthers()
    {
        Us.Value.Cells.Select(c => c.Account!.Unit).Distinct().Order(StringComparer.Ordinal).ShouldBe(
            ["", "%", "US fl oz", "dwt", "h", "lb", "min", "troy oz", "°C", "°C/h", "°F", "°F/h"]);

        // The Kiln sheet has targets and rates in both.
        Us.Value.Cells.Where(c => c.Account!.Unit is "°C" or "°C/h").ShouldAllBe(c => c.Cell.Sheet == "Kiln" && (c.Account!.Name == "Target" || c.Account.Name == "Rate"));
    }

    [Fact]
    public void All_DemoNight_LeavesOutNoCellThatIsWorkedOut()
    {
        var explained = Demo.Cells.Select(c => c.Cell.ToString()).ToHashSet();
        var book = Demo.Book;
        var missing = OwnSheets.SelectMany(s => Numbers(book, s).Select(a => $"{(s.Contains(' ', StringComparison.Ordinal) ? $"'{s}'" : s)}!{a}"))
            .Concat(Columns.SelectMany(c => Enumerable.Range(5, 32).Select(r => $"{c}{r}")).Where(a => book.Cell("Pieces", a).Length > 0).Select(a => "Pieces!" + a))
            .Where(a => !explained.Contains(a));

        missing.ShouldBeEmpty();
        explained.Count(a => a.StartsWith("Kiln!", StringComparison.Ordinal)).ShouldBeGreaterThan(150);
        explained.Count(a => a.StartsWith("Clock!", StringComparison.Ordinal)).ShouldBeGreaterThan(50);
    }

    [Fact]
    public void All_DemoNight_EveryInputSaysWhereItComesFrom()
    {
        var inputs = Demo.Cells.SelectMany(c => c.Inputs).ToList();

        inputs.ShouldAllBe(i => i.Name.Length > 0 && i.Value.Length > 0 && i.From.Length > 0);
        // Where the shop has typed something that filling reads, the cell holds it.
        foreach (var weight in inputs.Where(i => i.Name == "weight").DistinctBy(i => i.From))
        {
            weight.Value.ShouldBe(double.Parse(Demo.Book.Cell("Pieces", weight.From["Pieces!".Length..]), CultureInfo.InvariantCulture).ToString("#,0.###", CultureInfo.InvariantCulture) + " g");
        }
    }

    /// <summary>Cells with a number or a time of day.</summary>
    private static IEnumerable<string> Numbers(SavedBook book, string sheet) => book.Sheets[sheet].Descendants(SavedBook.Main + "c")
        .Where(c => (c.Element(SavedBook.Main + "v") is not null && (string?)c.Attribute("t") is null or "n") || TimeOfDay().IsMatch(book.Cell(sheet, (string)c.Attribute("r")!)))
        .Select(c => (string)c.Attribute("r")!);

    [GeneratedRegex("^[0-9]{1,2}:[0-9]{2}$")]
    private static partial Regex TimeOfDay();

    [GeneratedRegex("[0-9.]+")]
    private static partial Regex Step();
}
