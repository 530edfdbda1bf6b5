using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Settings;

/// <summary>Reads the shop from the sheets of a book and the settings around it.</summary>
internal sealed class ShopReader(
    BookPackage package, SharedStrings strings, CellValues values, OwnMarks marks, BookSettings settings, CellMap cells)
{
    private const string ShopSheetName = "Shop";

    private readonly Dictionary<string, SheetPart> sheets = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, SettingOrigin> origins = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<Finding> findings = [];

    /// <summary>Reads all there is.</summary>
    /// <param name="below">The shop file, whose settings all others win over; missing where there is none.</param>
    public ShopReading Read(ShopReading? below)
    {
        var shop = new Shop
        {
            FlaskSizes = Rows(ShopSheet.Flasks, ShopRecords.Flask),
            Crucibles = Rows(ShopSheet.Crucibles, ShopRecords.Crucible),
            Kilns = Rows(ShopSheet.Kilns, ShopRecords.Kiln),
            Alloys = Rows(ShopSheet.Alloys, ShopRecords.Alloy),
            Materials = Rows(ShopSheet.Materials, ShopRecords.Material),
            Investments = Rows(ShopSheet.Investments, ShopRecords.Investment),
            Schedules = Schedules(),
            Settings = Settings(below),
        };
        return new ShopReading(shop, Trees(), sheets, origins, findings);
    }

    private List<T> Rows<T>(ShopSheet sheet, Func<ShopRow, T> record)
    {
        if (Find(sheet) is not { } table)
        {
            return [];
        }

        List<T> records = [.. table.NamedRows(cells).Select(record)];
        findings.AddRange(table.Findings);
        return records;
    }

    private IReadOnlyList<ShopSchedule> Schedules()
    {
        if (Find(ShopSheet.Schedules) is not { } table)
        {
            return [];
        }

        var schedules = ScheduleRows.Read(table, cells);
        findings.AddRange(table.Findings);
        return schedules;
    }

    private Planning.Shops.Settings Settings(ShopReading? below)
    {
        var rows = new SettingsRows(values, cells, findings, below?.Shop.Settings ?? new Planning.Shops.Settings());
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

        List<TreeInHand> trees = [.. table.NamedRows(cells).Select(ShopRecords.Tree)];
        findings.AddRange(table.Findings);
        return trees;
    }

    private ShopTable? Find(ShopSheet sheet)
    {
        if (SheetNamed(sheet.Name) is not { } part)
        {
            return null;
        }

        var table = ShopTable.Find(sheet, part, SheetReader.Read(package, part, strings), values);
        if (table is not null)
        {
            sheets[sheet.Name] = part;
        }

        return table;
    }

    private SheetPart? SheetNamed(string name) => package.Sheets.FirstOrDefault(s =>
        string.Equals(s.Name.Trim(), name, StringComparison.OrdinalIgnoreCase) && !marks.Sheets.Values.Contains(s));
}
