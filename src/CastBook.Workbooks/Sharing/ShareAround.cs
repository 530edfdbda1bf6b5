using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Adopting;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sharing;

/// <summary>Takes into a template what stands around the book: the lines of the shop file and the settings of the shop file and of <c>castbook.json</c>.</summary>
/// <remarks>What stands in the template wins, as it does when a book is filled. Stock and prices stay behind here too.</remarks>
internal sealed class ShareAround
{
    private const string ShopName = "Shop";

    private readonly BookSettings settings;
    private readonly ShopFile? file;
    private readonly List<string> kept = [];
    private readonly List<string> left = [];

    private ShareAround(BookSettings settings) => (this.settings, file) = (settings, ShopFile.Read(settings));

    /// <summary>What was taken along.</summary>
    public IReadOnlyList<string> Kept => kept;

    /// <summary>What was left behind.</summary>
    public IReadOnlyList<string> Left => left;

    /// <summary>What stands around a book; null where nothing does.</summary>
    /// <param name="settings">What <c>castbook.json</c> says.</param>
    /// <exception cref="Files.BookRefusedException">The shop file cannot be read.</exception>
    public static ShareAround? Of(BookSettings settings) => settings.ShopFile is null && settings.Values.Count == 0 ? null : new ShareAround(settings);

    /// <summary>Writes the template with it.</summary>
    /// <param name="template">The template without it.</param>
    /// <param name="output">Where to; must be able to read, write and seek.</param>
    public void Write(Stream template, Stream output)
    {
        template.Position = 0;
        using var package = BookPackage.Open(template, settings.Caps);
        var edits = new BookEdits(package);
        var (workbook, styles) = (new WorkbookEdits(package, edits), new StyleBook(package.Read(package.StylesPart!)));
        var strings = SharedStrings.Read(package);
        var values = new CellValues(NumberFormats.Read(package), package.Date1904);
        void Add(OwnedSheet sheet) => workbook.AddSheet(sheet.Name, OwnedSheetWriter.Write(sheet, styles, edits.Dialect, isLetter: false));
        SheetPart? Named(string name) => package.Sheets.FirstOrDefault(s => s.Name.Trim().Equals(name, StringComparison.OrdinalIgnoreCase));
        foreach (var table in file?.Tables.Values ?? [])
        {
            var standing = Named(table.Sheet.Name);
            if (standing is null)
            {
                Keep(table, NewLines(table, Add));
            }
            else if (ShopTable.Find(table.Sheet, standing, SheetReader.Read(package, standing, strings), values) is { } own)
            {
                Keep(table, MoreLines(table, own, edits.Sheet(standing.PartName)));
            }
            else
            {
                left.Add(SharingWords.OtherHeadings(table.Sheet.Name, file!.Name));
            }
        }

        TakeSettings(Named(ShopName), part => SheetReader.Read(package, part, strings), values, edits, Add);
        edits.Replace(package.StylesPart!, styles.ToBytes());
        workbook.Finish();
        var check = new OutputCheck(package, edits);
        PackageWriter.Write(package, edits, output, check.Watch);
        check.Run(output);
    }

    private void Keep(ShopTable table, int lines)
    {
        if (lines > 0)
        {
            kept.Add(SharingWords.RowsOfFile(table.Sheet.Name, lines, file!.Name));
        }

        if (table.Fields.Keys.Any(f => SheetSorter.IsStock(f) && table.Rows(continued: true).Any(r => r.Says(f))))
        {
            left.Add(SharingWords.StockAndPrices(table.Sheet.Name, file!.Name));
        }
    }

    // In the columns of the shop file, as far as CastBook knows them.
    private static int NewLines(ShopTable table, Action<OwnedSheet> add)
    {
        List<ShopRow> rows = [.. table.Rows(continued: true)];
        if (rows.Count == 0)
        {
            return 0;
        }

        List<FieldColumn> columns = [.. table.Fields.Values.Where(f => !SheetSorter.IsStock(f.Field)).OrderBy(f => f.Column)];
        var sheet = new OwnedSheet(table.Sheet.Name) { HeadingRow = 1, Landscape = true, Widths = [.. columns.Select(c => c.Field == ShopField.Name ? 24.0 : 13.0)] };
        for (var at = 0; at < columns.Count; at++)
        {
            var heading = CellValues.Clean(table.Grid.Cell(table.HeadingsRow, columns[at].Column).Text);
            sheet.Set(1, at + 1, heading, at == 0 ? CellLook.FirstHeading : table.DimensionOf(columns[at].Field) == Dimension.None ? CellLook.Heading : CellLook.NumberHeading);
            for (var row = 0; row < rows.Count; row++)
            {
                sheet.Set(row + 2, at + 1, Value(table, rows[row], columns[at].Field, columns[at].Unit ?? ShopTable.UsualUnit(columns[at].Field)), CellLook.Text);
            }
        }

        sheet.Height(1, 32);
        add(sheet);
        return rows.Count;
    }

    // A line of the book wins; blank cells in it take the shop file's value. Stages of two sheets never mix.
    private static int MoreLines(ShopTable table, ShopTable own, SheetEdits sheet)
    {
        var isSchedule = table.Sheet == ShopSheet.Schedules;
        var (standing, last, lines) = (own.Rows(continued: isSchedule).ToList(), own.Grid.Rows[^1], 0);
        foreach (var row in table.Rows(continued: isSchedule))
        {
            var found = standing.Find(r => ShopLines.IsSame(r.Name, row.Name));
            if (isSchedule && found is not null)
            {
                continue;
            }

            var (at, isNew) = (found?.SheetRow ?? ++last, found is null);
            var written = false;
            foreach (var column in own.Fields.Values.Where(f => !SheetSorter.IsStock(f.Field) && row.Says(f.Field) && (isNew || !found!.Says(f.Field))))
            {
                sheet.Set(at, column.Column, Value(table, row, column.Field, column.Unit ?? ShopTable.UsualUnit(column.Field)), null);
                written = true;
            }

            lines += written ? 1 : 0;
        }

        return lines;
    }

    private static CellValue Value(ShopTable table, ShopRow row, string field, CellUnit? unit)
    {
        if (field == ShopField.Name)
        {
            return CellValue.Of(row.Name);
        }

        if (!row.Says(field))
        {
            return CellValue.Empty;
        }

        if (row.Measured(field) is { } number)
        {
            return CellValue.Of(unit?.Written(number) ?? number);
        }

        var text = row.Shown(field);
        return table.DimensionOf(field) == Dimension.None || SheetSorter.IsMeasure(text) ? CellValue.Of(text) : CellValue.Empty;
    }

    private void TakeSettings(SheetPart? shop, Func<SheetPart, SheetGrid> grid, CellValues values, BookEdits edits, Action<OwnedSheet> add)
    {
        var rows = new SettingsRows(values, new CellMap(), [], new Planning.Shops.Settings());
        rows.Take(settings.Values, settings.Origins);
        var said = new Dictionary<string, object>(StringComparer.OrdinalIgnoreCase);
        foreach (var (name, origin) in (file?.Origins ?? new Dictionary<string, SettingOrigin>()).Concat(rows.Origins).Where(o => SheetSorter.IsShared(o.Key, o.Value.Value)))
        {
            var unit = SettingGuide.Of(name).Unit;
            said[name] = unit.Length > 0 && TypedAnswer.Number(origin.Value, unit) is { } number ? number : origin.Value;
        }

        if (said.Count == 0)
        {
            return;
        }

        if (shop is null)
        {
            add(NewShop(said));
        }
        else if (!SettingsEdit.Write(shop, grid(shop), values, edits.Sheet(shop.PartName), said, keeps: true))
        {
            left.Add(SharingWords.NoHeadingsOnShop);
            return;
        }

        var places = new[] { file is { Origins.Count: > 0 } ? file.Name : "", rows.Origins.Count > 0 ? SettingsFile.Name : "" }.Where(p => p.Length > 0);
        kept.Add(SharingWords.SettingsOf(said.Count, places));
    }

    private static OwnedSheet NewShop(Dictionary<string, object> said)
    {
        var sheet = new OwnedSheet(ShopName) { HeadingRow = 1, Landscape = true, Widths = [30, 22, 10, 78] };
        string[] headings = ["Setting", "Value", "Unit", "What it is for"];
        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(1, column, headings[column - 1], column == 1 ? CellLook.FirstHeading : CellLook.Heading);
        }

        var row = 1;
        foreach (var guide in SettingGuide.All.Select(g => g.Name).Where(said.ContainsKey).Union(said.Keys, StringComparer.OrdinalIgnoreCase).Select(SettingGuide.Of))
        {
            row++;
            sheet.Set(row, 1, guide.Name, CellLook.Strong);
            sheet.Set(row, 2, SettingsEdit.Value(said[guide.Name], guide.Unit, null), CellLook.Box);
            sheet.Set(row, 3, guide.Unit, CellLook.Text);
            sheet.Set(row, 4, guide.WhatFor, CellLook.Text);
        }

        return sheet;
    }
}
