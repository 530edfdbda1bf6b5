using System.Globalization;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Tests.Fidelity;
using CastBook.Workbooks.Tests.Fidelity.RandomBooks;
using CastBook.Workbooks.Tests.Filling;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Writing;
using CellsBySheet = System.Collections.Generic.Dictionary<string, System.Collections.Generic.Dictionary<string, string>>;

namespace CastBook.Workbooks.Tests.Witnesses;

/// <summary>Programs of other people read the books before and after: each cell of the shop's as it was, each of ours as we wrote it.</summary>
public sealed class WitnessTests
{
    private const int RandomBooks = 25;

    private static readonly Lazy<List<(string Name, byte[] Before, Filled After)>> Books = new(() =>
    [
        .. NothingIsLostTests.Names.Select(n => (n.Replace('/', '-'), File.ReadAllBytes(TestBooks.PathOf(n)), Filled.From(TestBooks.Open(n), n))),
        .. Enumerable.Range(1, RandomBooks).Select(seed => ($"random-{seed}.xlsx", RandomBook.Make(seed), Filled.From(RandomBook.Make(seed)))),
        ("night.xlsx", Nights.Whole().ToArray(), Filled.From(Nights.Whole())),
    ]);

    private static IEnumerable<(string, byte[])> All => Books.Value.SelectMany(b => new[] { ("before-" + b.Name, b.Before), ("after-" + b.Name, b.After.Bytes) });

    [LibreOfficeFact]
    public void Fill_ReadByLibreOffice_EachCellIsAsItShouldBe()
    {
        var seen = LibreOffice.Cells(All);
        var faults = new List<string>();
        var compared = 0;
        foreach (var (name, _, after) in Books.Value)
        {
            seen["before-" + name].Count.ShouldBeGreaterThan(0, name);
            compared += Compare(name, after, seen["before-" + name], seen["after-" + name], faults);
        }

        faults.ShouldBeEmpty();
        compared.ShouldBeGreaterThan(5000);
    }

    [NodeFact]
    public void Fill_ReadBySheetJs_EachCellIsAsItShouldBe()
    {
        var seen = NodeLibraries.Cells(All);
        var faults = new List<string>();
        var compared = 0;
        foreach (var (name, _, after) in Books.Value.Where(b => seen["before-" + b.Name] is not null))
        {
            compared += Compare(name, after, seen["before-" + name]!, seen["after-" + name].ShouldNotBeNull(name), faults);
        }

        faults.ShouldBeEmpty();
        compared.ShouldBeGreaterThan(5000);
    }

    private static int Compare(string name, Filled filled, CellsBySheet before, CellsBySheet after, List<string> faults)
    {
        using var package = BookPackage.Open(new MemoryStream(filled.Bytes));
        var ours = package.DefinedNames.Where(n => n.Name.StartsWith(OwnName.Prefix, StringComparison.Ordinal))
            .Select(n => n.TryCell(out var cell) ? (n.Name, Cell: cell) : default).ToList();
        var compared = 0;
        foreach (var (sheet, cells) in before)
        {
            var columns = ours.Where(o => o.Cell.Sheet == sheet).Select(o => o.Cell.Column).ToHashSet();
            foreach (var (address, value) in cells.Where(c => !columns.Contains(ColumnOf(c.Key)) && !IsClock(c.Value)))
            {
                compared++;
                if (after.GetValueOrDefault(sheet)?.GetValueOrDefault(address) is var now && now != value)
                {
                    faults.Add($"{name} {sheet}!{address} was \"{value}\", is \"{now}\"");
                }
            }
        }

        var strings = SharedStrings.Read(package);
        foreach (var sheet in package.Sheets.Where(s => ours.Any(o => o.Cell.Sheet == s.Name)))
        {
            var whole = ours.Any(o => o.Cell.Sheet == sheet.Name && o.Name.EndsWith("Sheet", StringComparison.Ordinal));
            var columns = ours.Where(o => o.Cell.Sheet == sheet.Name).Select(o => o.Cell.Column).ToHashSet();
            foreach (var (address, text) in Written(SheetReader.Read(package, sheet, strings), whole ? null : columns))
            {
                compared++;
                if (!IsSame(text, after[sheet.Name].GetValueOrDefault(address)))
                {
                    faults.Add($"{name} {sheet.Name}!{address}: we wrote \"{text}\", they read \"{after[sheet.Name].GetValueOrDefault(address)}\"");
                }
            }
        }

        return compared;
    }

    /// <summary>What stands in a sheet, or in some columns of it.</summary>
    private static IEnumerable<(string Address, string Text)> Written(SheetGrid grid, HashSet<int>? columns) =>
        from row in grid.Rows
        from column in Enumerable.Range(1, grid.LastColumnOf(row))
        where columns is null || columns.Contains(column)
        let text = FillRecord.TextOf(grid.Cell(row, column))
        where text.Length > 0
        select (CellRef.AddressOf(row, column), text);

    private static bool IsSame(string written, string? seen) => seen?.Replace("\r", "", StringComparison.Ordinal) == written.Replace("\r", "", StringComparison.Ordinal)
        || (double.TryParse(written, CultureInfo.InvariantCulture, out var number) && double.TryParse(seen, CultureInfo.InvariantCulture, out var read)
            && Math.Abs(number - read) <= 1e-8 * Math.Abs(number));

    private static int ColumnOf(string address) => CellRef.TryParse(address, out _, out var column) ? column : 0;

    /// <summary>A cell with NOW() ticks between two readings: date and time to the second.</summary>
    private static bool IsClock(string value) => value.Length == 19 && value[2] == '/' && value[13] == ':';
}
