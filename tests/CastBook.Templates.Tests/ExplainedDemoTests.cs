using System.Globalization;
using System.Text.RegularExpressions;
using CastBook.Workbooks;
using CastBook.Workbooks.Explaining;
using CastBook.Workbooks.Settings;

namespace CastBook.Templates.Tests;

/// <summary>The demo night explained: every number in the book is the number that its explanation comes to.</summary>
public sealed partial class ExplainedDemoTests
{
    private static readonly string[] OwnSheets = ["Night plan", "Trees", "Mixes", "Metal", "Clock", "Kiln"];
    private static readonly string[] Columns = ["V", "W", "X", "Y", "Z"];

    private static readonly Lazy<(SavedBook Book, IReadOnlyList<CellExplanation> Cells)> Demo = new(() =>
    {
        using var demo = new MemoryStream();
        DemoNight.Write(demo);
        using var output = new MemoryStream();
        demo.Position = 0;
        BookFiller.Fill(demo, output, "wrenmoor-night.xlsx", BookSettings.None);
        demo.Position = 0;
        using var copy = new MemoryStream();
        return (new SavedBook(output.ToArray()), [.. BookFiller.Explain(demo, copy, "wrenmoor-night.xlsx", BookSettings.None).All()]);
    });

    [Fact]
    public void All_DemoNight_ShowsWhatTheFilledBookShows()
    {
        foreach (var cell in Demo.Value.Cells)
        {
            var saved = Demo.Value.Book.Cell(cell.Cell.Sheet, cell.Cell.Address);

            saved.ShouldBe(cell.Number?.ToString(CultureInfo.InvariantCulture) ?? cell.Text, cell.Cell.ToString());
        }
    }

    /// <summary>Cells show hundredths of grams, whole millilitres, minutes and hundredths of hours.</summary>
    [Fact]
    public void All_DemoNight_ResultIsTheNumberInTheCell()
    {
        var numbers = Demo.Value.Cells.Where(c => c.Number is not null).ToList();

        numbers.Count.ShouldBeGreaterThan(200);
        foreach (var cell in numbers)
        {
            cell.Number!.Value.ShouldBe(cell.Account!.Result!.Value, cell.Account.Unit == "ml" || cell.Account.Rounded == "to a whole degree" ? 0.501 : 0.00501, cell.Cell.ToString());
        }
    }

    [Fact]
    public void All_DemoNight_FormulaInNumbersComesToTheResult()
    {
        var formulas = Demo.Value.Cells.Where(c => c.Account!.Numbers.Length > 0).ToList();

        formulas.Select(c => c.Account!.Name).Distinct().Order(StringComparer.Ordinal).ShouldBe(
        [
            "Burnout", "Charge", "Charges", "Fresh", "Fresh to use", "In stock", "Metal", "Metal each", "Mix", "Pieces", "Pour done by", "Powder",
            "Powder of the mix", "Re-melt", "Re-melt to use", "Slurry", "Takes", "To buy", "Water", "Water of the mix",
        ]);
        foreach (var (cell, account) in formulas.Select(c => (c, c.Account!)))
        {
            var reckoned = Reckoning.Of(account.Numbers);
            var step = Step().Match(account.Rounded) is { Success: true } match ? double.Parse(match.Value, CultureInfo.InvariantCulture) : 0;

            // The numbers of a formula have three decimals.
            var dust = 0.003 + (0.001 * reckoned);
            account.Result!.Value.ShouldBeInRange(reckoned - dust, reckoned + step + dust, $"{cell.Cell}: {account.Numbers}");
        }
    }

    [Fact]
    public void All_DemoNight_LeavesOutNoCellThatIsWorkedOut()
    {
        var explained = Demo.Value.Cells.Select(c => c.Cell.ToString()).ToHashSet();
        var book = Demo.Value.Book;
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
        var inputs = Demo.Value.Cells.SelectMany(c => c.Inputs).ToList();

        inputs.ShouldAllBe(i => i.Name.Length > 0 && i.Value.Length > 0 && i.From.Length > 0);
        // Where the shop has typed something that filling reads, the cell holds it.
        foreach (var weight in inputs.Where(i => i.Name == "weight").DistinctBy(i => i.From))
        {
            weight.Value.ShouldBe(double.Parse(Demo.Value.Book.Cell("Pieces", weight.From["Pieces!".Length..]), CultureInfo.InvariantCulture).ToString("#,0.###", CultureInfo.InvariantCulture) + " g");
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

    /// <summary>Reckons a formula as a person with a calculator does; units are not looked at.</summary>
    private sealed class Reckoning
    {
        private readonly string text;
        private int at;

        private Reckoning(string text) => this.text = text;

        public static double Of(string formula)
        {
            var plain = string.Concat(formula.Where(c => char.IsAsciiDigit(c) || "().+−×÷".Contains(c, StringComparison.Ordinal)));
            var reckoning = new Reckoning(plain);
            var result = reckoning.Sum();
            reckoning.at.ShouldBe(plain.Length, formula);
            return result;
        }

        private char Next => at < text.Length ? text[at] : '\0';

        private double Sum()
        {
            var sum = Product();
            while (Next is '+' or '−')
            {
                sum += text[at++] == '+' ? Product() : -Product();
            }

            return sum;
        }

        private double Product()
        {
            var product = Number();
            while (Next is '×' or '÷')
            {
                product = text[at++] == '×' ? product * Number() : product / Number();
            }

            return product;
        }

        private double Number()
        {
            if (Next == '(')
            {
                at++;
                var inner = Sum();
                text[at++].ShouldBe(')');
                return inner;
            }

            var from = at;
            while (char.IsAsciiDigit(Next) || Next == '.')
            {
                at++;
            }

            return double.Parse(text.AsSpan(from, at - from), CultureInfo.InvariantCulture);
        }
    }
}
