using System.Globalization;
using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Sheets;

/// <summary>Reads from the Clock sheet as it stands when steps were done, and what hour it is.</summary>
internal static class DoneHoursReader
{
    /// <summary>Reads the hours; missing where none is typed.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="values">Reads cells.</param>
    /// <param name="findings">Takes what is found.</param>
    public static DoneHours? Read(SheetGrid grid, CellValues values, List<Finding> findings)
    {
        TypedHour? now = null;
        var steps = new List<DoneStep>();
        var column = 0;
        foreach (var row in grid.Rows)
        {
            if (values.Text(grid.Cell(row, ClockSheet.KeyColumn)) is not { } words)
            {
                continue;
            }

            if (column == 0 && words == ClockSheet.NowLabel)
            {
                now = Hour(grid.Cell(row, ClockSheet.NowColumn), words);
            }
            else if (column == 0)
            {
                column = words == ClockSheet.KeyHeading ? ColumnOf(row) : 0;
            }
            else if (Hour(grid.Cell(row, column), words) is { } hour)
            {
                steps.Add(new DoneStep(words, hour));
            }
        }

        return steps.Count == 0 && now is null ? null : new DoneHours(steps, now);

        int ColumnOf(int row) => Enumerable.Range(1, grid.LastColumnOf(row)).FirstOrDefault(c => grid.Cell(row, c).Text == ClockSheet.DoneHeading, ClockSheet.KeyColumn + 1);

        // A tick says that it was done, and no hour.
        TypedHour? Hour(GridCell cell, string words)
        {
            if (values.TextWithHour(cell) is not { } typed || CellWords.Yes.Contains(typed))
            {
                return null;
            }

            var text = cell.Kind == CellKind.Number && !values.IsDate(cell) ? OfNumber(cell.Number) : typed;
            if (text is not null && HourText.ReadWithDay(text) is { } moment)
            {
                return new TypedHour(DateOnly.FromDateTime(moment), TimeOnly.FromDateTime(moment));
            }

            if (text is not null && HourText.Read(text) is { } hour)
            {
                return new TypedHour(null, hour);
            }

            findings.Add(Catalogue.DoneHourUnreadable.At(Subject.Book, typed, words));
            return null;
        }

        // A time that lost its format is one still; 22.4 may be forty minutes past or four.
        string? OfNumber(double number) => number is (> 0 and < 1) or > ClockSheet.EarliestDay
            ? values.DayAndHour(number)
            : number == Math.Floor(number) ? number.ToString(CultureInfo.InvariantCulture) : null;
    }
}
