using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Reading;

/// <summary>Reads the tables of a sheet.</summary>
internal static class TableReader
{
    /// <summary>The table whose heading row this is; null where there is none.</summary>
    /// <param name="package">The book.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="grid">Its cells.</param>
    /// <param name="headingRow">The heading row.</param>
    /// <param name="column">A column of the list.</param>
    public static SheetTable? At(BookPackage package, SheetPart sheet, SheetGrid grid, int headingRow, int column) =>
        grid.TablePartIds
            .Select(id => package.Relationships(sheet.PartName).FirstOrDefault(r => r.Id == id && !r.IsExternal))
            .Where(r => r is not null && package.Has(r.Target))
            .Select(r => Read(package, r!.Target))
            .FirstOrDefault(t => t is not null && t.Range.FirstRow == headingRow && t.Range.Contains(headingRow, column));

    private static SheetTable? Read(BookPackage package, string part)
    {
        var name = "";
        var range = default(CellRange);
        var (totals, plain, heading) = (false, true, true);
        var columns = new List<string>();
        PackageXml.EachElement(package.OpenPart(part), part, element =>
        {
            if (element.LocalName == "table" && element.Depth == 0)
            {
                name = element.GetAttribute("displayName") ?? element.GetAttribute("name") ?? "";
                heading = CellRange.TryParse(element.GetAttribute("ref"), out range) && element.GetAttribute("headerRowCount") != "0";
                totals = element.GetAttribute("totalsRowCount") is { } count && count != "0";
                plain = element.GetAttribute("tableType") is null or "worksheet";
            }
            else if (element.LocalName == "tableColumn" && element.Depth == 2)
            {
                columns.Add(StringItems.Unescape(element.GetAttribute("name") ?? ""));
            }
        });
        plain &= !package.Relationships(part).Any(r => r.Is("queryTable"));
        return heading ? new SheetTable(part, name, range, totals, columns, plain) : null;
    }
}
