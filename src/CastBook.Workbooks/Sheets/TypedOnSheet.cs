using System.Globalization;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>Tells whether somebody typed on a sheet of ours outside the cells that are the shop's.</summary>
internal static class TypedOnSheet
{
    /// <summary>Whether the sheet holds anything that CastBook did not write and that a refresh would lose.</summary>
    /// <param name="grid">The sheet as it stands.</param>
    /// <param name="record">What CastBook wrote last.</param>
    /// <param name="ownName">The sheet's hidden name.</param>
    /// <param name="fresh">The sheet as it will be; the shop's cells that it keeps are in it.</param>
    public static bool Any(SheetGrid grid, FillRecord record, string ownName, OwnedSheet fresh)
    {
        if (!record.Knows(ownName))
        {
            return false;
        }

        var kept = fresh.Rows.SelectMany(r => r.Value.Values).Where(c => c.Look.Border == Line.Frame && !c.Value.IsEmpty)
            .Select(c => FillRecord.TextOf(c.Value)).ToHashSet();
        foreach (var row in grid.Rows)
        {
            for (var column = 1; column <= grid.LastColumnOf(row); column++)
            {
                var text = FillRecord.TextOf(grid.Cell(row, column));
                if (text.Length > 0 && !kept.Contains(text) && !record.Wrote(ownName, Key(row, column, text))
                    && !(ownName == Reading.OwnName.ChecksSheet && column == ChecksSheet.RecordColumn))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Records what CastBook writes on a sheet of ours.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="ownName">Its hidden name.</param>
    /// <param name="record">The record.</param>
    public static void Remember(OwnedSheet sheet, string ownName, FillRecord record)
    {
        foreach (var (row, cells) in sheet.Rows)
        {
            foreach (var (column, cell) in cells)
            {
                if (cell.Look.Border != Line.Frame && !cell.Value.IsEmpty)
                {
                    record.Add(ownName, Key(row, column, FillRecord.TextOf(cell.Value)));
                }
            }
        }
    }

    private static string Key(int row, int column, string text) => string.Create(CultureInfo.InvariantCulture, $"{row},{column},{text}");
}
