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
        return Cells(grid, record, ownName).Any(c => !kept.Contains(c.Text));
    }

    /// <summary>The cells of a sheet of ours that say something CastBook did not write.</summary>
    /// <param name="grid">The sheet as it stands.</param>
    /// <param name="record">What CastBook wrote last.</param>
    /// <param name="ownName">The sheet's hidden name.</param>
    public static IEnumerable<(int Row, int Column, string Text)> Cells(SheetGrid grid, FillRecord record, string ownName)
    {
        foreach (var row in grid.Rows)
        {
            for (var column = 1; column <= grid.LastColumnOf(row); column++)
            {
                var text = FillRecord.TextOf(grid.Cell(row, column));
                if (text.Length > 0 && !record.Wrote(ownName, Key(ownName, row, column, text))
                    && !(ownName == Reading.OwnName.ChecksSheet && column == ChecksSheet.RecordColumn))
                {
                    yield return (row, column, text);
                }
            }
        }
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
                    record.Add(ownName, Key(ownName, row, column, FillRecord.TextOf(cell.Value)));
                }
            }
        }
    }

    /// <summary>What is recorded of a question.</summary>
    /// <param name="column">The column it stands in.</param>
    /// <param name="text">What it says.</param>
    public static string Question(int column, string text) => string.Create(CultureInfo.InvariantCulture, $"{column},{text}");

    /// <summary>Where and what; a sheet with questions is the shop's to move rows in, so there only the column counts.</summary>
    private static string Key(string ownName, int row, int column, string text) => Reading.OwnName.IsQuestions(ownName)
        ? Question(column, text)
        : string.Create(CultureInfo.InvariantCulture, $"{row},{column},{text}");
}
