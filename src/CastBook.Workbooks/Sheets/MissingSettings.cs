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
    /// <param name="record">Takes down what is written.</param>
    public static void Add(BookReading reading, IReadOnlyList<Finding> findings, SheetPart shop, SheetGrid grid, SheetEdits edits, FillRecord record)
    {
        var names = findings.Where(f => f.Severity > Severity.Note).SelectMany(f => f.Subjects)
            .Where(s => s.Kind == SubjectKind.Setting && reading.Cells.Find(s) is null).Select(s => s.Key).Distinct().ToList();
        var heading = HeadingRow(grid);
        if (names.Count == 0 || heading == 0)
        {
            return;
        }

        var (setting, value, unit) = (Column(grid, heading, "Setting"), Column(grid, heading, "Value"), Column(grid, heading, "Unit"));
        var whatFor = Column(grid, heading, "What it is for");
        var last = grid.Rows.Last(row => row == heading || !grid.Cell(row, setting).IsEmpty);
        foreach (var guide in names.Select(n => SettingGuide.Of(n).In(reading.Night.Shop.Settings.Units)))
        {
            last++;
            edits.Set(last, setting, CellValue.Of(guide.Name), grid.Cell(last - 1, setting).Style);
            record.Add(OwnName.ShopQuestions, TypedOnSheet.Question(setting, guide.Name));
            if (unit > 0)
            {
                edits.Set(last, unit, CellValue.Of(guide.Unit), null);
                record.Add(OwnName.ShopQuestions, TypedOnSheet.Question(unit, guide.Unit));
            }

            if (whatFor > 0)
            {
                edits.Set(last, whatFor, CellValue.Of(guide.WhatFor), null);
                record.Add(OwnName.ShopQuestions, TypedOnSheet.Question(whatFor, guide.WhatFor));
            }

            reading.Cells.Add(Subject.Setting(guide.Name), new CellRef(shop.Name, last, value));
        }
    }

    /// <summary>Takes out again the lines that nobody answered.</summary>
    /// <param name="grid">The Shop sheet's cells.</param>
    /// <param name="edits">Gives the sheet's edits, where there are any to make.</param>
    /// <param name="record">What CastBook wrote.</param>
    public static void Remove(SheetGrid grid, Func<SheetEdits> edits, FillRecord record)
    {
        if (HeadingRow(grid) is not (> 0 and var heading))
        {
            return;
        }

        var (setting, value, unit) = (Column(grid, heading, "Setting"), Column(grid, heading, "Value"), Column(grid, heading, "Unit"));
        var whatFor = Column(grid, heading, "What it is for");
        bool IsOurs(int row, int column) =>
            column > 0 && record.Wrote(OwnName.ShopQuestions, TypedOnSheet.Question(column, FillRecord.TextOf(grid.Cell(row, column))));
        foreach (var row in grid.Rows.Where(r => r > heading && IsOurs(r, setting) && grid.Cell(r, value).IsEmpty))
        {
            edits().Remove(row, setting);
            foreach (var column in new[] { unit, whatFor })
            {
                if (IsOurs(row, column))
                {
                    edits().Remove(row, column);
                }
            }
        }
    }

    /// <summary>The row of the Shop sheet's headings; 0 where it has none.</summary>
    /// <param name="grid">The Shop sheet's cells.</param>
    public static int HeadingRow(SheetGrid grid) =>
        grid.Rows.Take(30).FirstOrDefault(row => Column(grid, row, "Setting") > 0 && Column(grid, row, "Value") > 0);

    /// <summary>The column under a heading; 0 where there is none.</summary>
    /// <param name="grid">The Shop sheet's cells.</param>
    /// <param name="row">The row of the headings.</param>
    /// <param name="heading">The heading.</param>
    public static int Column(SheetGrid grid, int row, string heading)
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
