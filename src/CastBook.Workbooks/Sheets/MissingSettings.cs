using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>Adds to the shop's own Shop sheet, below its last line, the settings that are asked and have no line yet.</summary>
internal static class MissingSettings
{
    /// <summary>Adds the lines.</summary>
    /// <param name="reading">The book as read; the new cells are added to its map.</param>
    /// <param name="findings">What was found.</param>
    /// <param name="shop">The Shop sheet.</param>
    /// <param name="grid">Its cells.</param>
    /// <param name="edits">Where the lines go.</param>
    public static void Add(BookReading reading, IReadOnlyList<Finding> findings, SheetPart shop, SheetGrid grid, SheetEdits edits)
    {
        var names = findings.Where(f => f.Severity > Severity.Note).SelectMany(f => f.Subjects)
            .Where(s => s.Kind == SubjectKind.Setting && reading.Cells.Find(s) is null).Select(s => s.Key).Distinct().ToList();
        var heading = grid.Rows.Take(30).FirstOrDefault(row => Column(grid, row, "Setting") > 0 && Column(grid, row, "Value") > 0);
        if (names.Count == 0 || heading == 0)
        {
            return;
        }

        var (setting, value, unit) = (Column(grid, heading, "Setting"), Column(grid, heading, "Value"), Column(grid, heading, "Unit"));
        var last = grid.Rows.Last(row => row == heading || !grid.Cell(row, setting).IsEmpty);
        foreach (var guide in names.Select(SettingGuide.Of))
        {
            last++;
            edits.Set(last, setting, CellValue.Of(guide.Name), grid.Cell(last - 1, setting).Style);
            if (unit > 0)
            {
                edits.Set(last, unit, CellValue.Of(guide.Unit), null);
            }

            reading.Cells.Add(Subject.Setting(guide.Name), new CellRef(shop.Name, last, value));
        }
    }

    private static int Column(SheetGrid grid, int row, string heading)
    {
        for (var column = 1; column <= grid.LastColumnOf(row); column++)
        {
            if (string.Equals(grid.Cell(row, column).Text?.Trim(), heading, StringComparison.OrdinalIgnoreCase))
            {
                return column;
            }
        }

        return 0;
    }
}
