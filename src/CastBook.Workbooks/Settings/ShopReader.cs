using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Settings;

/// <summary>Reads the shop from the sheets of a book and the settings around it.</summary>
internal sealed class ShopReader(
    BookPackage package, SharedStrings strings, CellValues values, OwnMarks marks, BookSettings settings, CellMap cells)
{
    private const string ShopSheetName = "Shop";

    private readonly Dictionary<string, SheetPart> sheets = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, SettingOrigin> origins = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<FieldColumn> columns = [];
    private readonly List<Finding> findings = [];

    /// <summary>Reads all there is.</summary>
    /// <param name="below">The shop file, over which all else wins; missing where there is none.</param>
    public ShopReading Read(ShopFile? below)
    {
        if (below is not null)
        {
            cells.LiesOver(below);
            findings.AddRange(below.Said(below.Findings));
        }

        var shop = new Shop
        {
            FlaskSizes = Rows(ShopSheet.Flasks, below, ShopRecords.Flask),
            Crucibles = Rows(ShopSheet.Crucibles, below, ShopRecords.Crucible),
            Kilns = Rows(ShopSheet.Kilns, below, ShopRecords.Kiln),
            Alloys = Rows(ShopSheet.Alloys, below, ShopRecords.Alloy),
            Materials = Rows(ShopSheet.Materials, below, ShopRecords.Material),
            Investments = Rows(ShopSheet.Investments, below, ShopRecords.Investment),
        };
        var schedules = OfBoth(ShopSheet.Schedules, below, (book, under) => ScheduleRows.Read(book, cells, below, under));
        shop = shop with
        {
            Schedules = [.. schedules.Where(s => s.IsWhole).Select(s => s.Schedule)],
            UnreadSchedules = [.. schedules.Where(s => !s.IsWhole).Select(s => s.Schedule)],
            Settings = Settings(below),
        };
        return new ShopReading(shop, Trees(), sheets, origins, findings)
        {
            Columns = [.. columns, .. below?.Tables.Values.SelectMany(t => t.Fields.Values) ?? []],
        };
    }

    /// <summary>Reads it as a shop file of that name, whose lines are read with those of a book.</summary>
    /// <param name="name">The file's name.</param>
    public ShopFile AsFile(string name)
    {
        var tables = new Dictionary<string, ShopTable>(StringComparer.OrdinalIgnoreCase);
        foreach (var sheet in ShopSheet.OfShop)
        {
            if (Find(sheet) is { } table)
            {
                table.Map(cells);
                tables[sheet.Name] = table;
            }
        }

        var said = Settings(null);
        var from = origins.ToDictionary(o => o.Key, o => o.Value with { From = OriginWords.ShopFile(name, o.Value.From), OfShopFile = true }, StringComparer.OrdinalIgnoreCase);
        return new ShopFile(name, tables, said, from, cells, findings);
    }

    private IReadOnlyList<T> Rows<T>(ShopSheet sheet, ShopFile? below, Func<ShopRow, T> record) =>
        OfBoth<T>(sheet, below, (book, under) => [.. ShopLines.Of(book, cells, below, under).Select(record)]);

    // The sheet of the book and that of the shop file, and after them what was found in each.
    private IReadOnlyList<T> OfBoth<T>(ShopSheet sheet, ShopFile? below, Func<ShopTable?, ShopTable?, IReadOnlyList<T>> read)
    {
        var (book, under) = (Find(sheet), below?.Tables.GetValueOrDefault(sheet.Name));
        var records = read(book, under);
        findings.AddRange(book?.Findings ?? []);
        findings.AddRange(under is null ? [] : below!.Said(under.Findings));
        return records;
    }

    private Planning.Shops.Settings Settings(ShopFile? below)
    {
        var rows = new SettingsRows(values, cells, findings, below?.Settings ?? new Planning.Shops.Settings());
        rows.Take(settings.Values, settings.Origins);
        if (SheetNamed(ShopSheetName) is { } sheet)
        {
            sheets[ShopSheetName] = sheet;
            rows.Take(sheet, SheetReader.Read(package, sheet, strings));
        }

        foreach (var (name, origin) in (below?.Origins ?? origins).Concat(rows.Origins))
        {
            origins[name] = origin;
        }

        return rows.Settings;
    }

    // Only the sheet that bears our name is ours.
    private List<TreeInHand> Trees()
    {
        if (!marks.Sheets.TryGetValue(OwnName.TreesSheet, out var part)
            || ShopTable.Find(ShopSheet.Trees, part, SheetReader.Read(package, part, strings), values) is not { } table)
        {
            return [];
        }

        List<TreeInHand> trees = [.. ShopLines.Of(table, cells, null, null).Select(ShopRecords.Tree)];
        findings.AddRange(table.Findings);
        return trees;
    }

    private ShopTable? Find(ShopSheet sheet)
    {
        foreach (var part in ((string[])[sheet.Name, .. sheet.OtherNames]).Select(SheetNamed).OfType<SheetPart>())
        {
            if (ShopTable.Find(sheet, part, SheetReader.Read(package, part, strings), values) is { } table && sheet.Is(part.Name, table.Fields.Keys))
            {
                sheets[sheet.Name] = part;
                columns.AddRange(table.Fields.Values);
                return table;
            }
        }

        return null;
    }

    private SheetPart? SheetNamed(string name) => package.Sheets.FirstOrDefault(s =>
        string.Equals(s.Name.Trim(), name, StringComparison.OrdinalIgnoreCase) && !marks.Sheets.Values.Contains(s));
}
