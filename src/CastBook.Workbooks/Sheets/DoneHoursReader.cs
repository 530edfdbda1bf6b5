using System.Globalization;
using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sheets;

/// <summary>Reads from the Clock sheet as it stands when steps were done, and what hour it is.</summary>
internal static class DoneHoursReader
{
    /// <summary>Reads the hours; missing where none is typed.</summary>
    /// <param name="grid">The sheet.</param>
    /// <param name="values">Reads cells.</param>
    /// <param name="book">What the book settles about the order of day and month; the hours typed here settle it too.</param>
    /// <param name="findings">Takes what is found.</param>
    public static DoneHours? Read(SheetGrid grid, CellValues values, DayOrders book, List<Finding> findings)
    {
        TypedHour? now = null;
        var orders = book | SettledHere(grid);
        var steps = new List<DoneStep>();
        var column = 0;
        foreach (var row in grid.Rows)
        {
            if (values.Text(grid.Cell(row, ClockSheet.KeyColumn)) is not { } words)
            {
                continue;
            }

            if (column == 0 && words == ClockSheetWords.HourItIsNow)
            {
                now = Hour(grid.Cell(row, ClockSheet.NowColumn), words);
            }
            else if (column == 0)
            {
                column = words == ClockSheetWords.Step ? ColumnOf(row) : 0;
            }
            else if (Hour(grid.Cell(row, column), words) is { } hour)
            {
                steps.Add(new DoneStep(words, hour));
            }
        }

        return steps.Count == 0 && now is null ? null : new DoneHours(steps, now);

        int ColumnOf(int row) => Enumerable.Range(1, grid.LastColumnOf(row)).FirstOrDefault(c => grid.Cell(row, c).Text == ClockSheetWords.DoneAt, ClockSheet.KeyColumn + 1);

        // A tick says that it was done, and no hour; 1 is one o'clock, as 22 is ten.
        TypedHour? Hour(GridCell cell, string words)
        {
            if (values.TextWithHour(cell) is not { } typed || (typed != "1" && CellWords.Yes.Contains(typed)))
            {
                return null;
            }

            var text = cell.Kind == CellKind.Number && !values.IsDate(cell) ? OfNumber(cell.Number) : typed;
            var read = text is null ? default : HourText.ReadWithDay(text, orders);
            if (read.Moment is { } moment)
            {
                return new TypedHour(DateOnly.FromDateTime(moment), TimeOnly.FromDateTime(moment));
            }

            if (text is not null && HourText.Read(text) is { } hour)
            {
                return new TypedHour(null, hour);
            }

            if (read is { First: { } first, Other: { } other })
            {
                findings.Add(Catalogue.DoneHourOfTwoDays.At(Subject.Book, typed, words, ClockWords.Typed(first), ClockWords.Typed(other)));
                return null;
            }

            findings.Add(Catalogue.DoneHourUnreadable.At(Subject.Book, typed, words));
            return null;
        }

        // A time that lost its format is one still; 22.4 may be forty minutes past or four.
        string? OfNumber(double number) => number is (> 0 and < 1) or > ClockSheet.EarliestDay
            ? values.DayAndHour(number)
            : number == Math.Floor(number) ? number.ToString(CultureInfo.InvariantCulture) : null;
    }

    // 11/25/26 23:00 beside one step says that 12/4/26 beside another begins with the month too.
    private static DayOrders SettledHere(SheetGrid grid) => grid.Rows
        .SelectMany(row => Enumerable.Range(1, grid.LastColumnOf(row)).Select(column => grid.Cell(row, column)))
        .Where(cell => cell.Kind == CellKind.Text)
        .Aggregate(DayOrders.None, (all, cell) => all | HourText.ReadWithDay(CellValues.Clean(cell.Text), DayOrders.None).Settles);
}
