using System.Globalization;
using CastBook.Casting.Burnout;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Settings;

/// <summary>Reads burnout schedules: the rows of one name, a stage each.</summary>
internal static class ScheduleRows
{
    /// <summary>The schedules; one with a stage that is not whole is left out, because a burnout is never guessed.</summary>
    public static IReadOnlyList<ShopSchedule> Read(ShopTable table, CellMap cells)
    {
        var schedules = new List<ShopSchedule>();
        foreach (var rows in table.Rows(continued: true).GroupBy(r => r.Name, StringComparer.OrdinalIgnoreCase))
        {
            rows.First().Map(cells);
            if (Schedule(table, [.. rows]) is { } schedule)
            {
                schedules.Add(schedule);
            }
        }

        return schedules;
    }

    private static ShopSchedule? Schedule(ShopTable table, IReadOnlyList<ShopRow> rows)
    {
        var stages = new List<(double Order, BurnoutStage Stage)>();
        foreach (var row in rows)
        {
            var (target, rate, hold) = (row.Temperature(ShopField.Target), row.Number(ShopField.Rate), row.Minutes(ShopField.Hold));
            if (target is null || hold is null)
            {
                var missing = target is null ? ShopField.Target : ShopField.Hold;
                table.Findings.Add(Catalogue.ScheduleStageIncomplete.At(
                    new Subject(SubjectKind.Schedule, row.Name, missing),
                    row.Name, row.SheetRow.ToString(CultureInfo.InvariantCulture), target is null ? "target temperature" : "hold"));
                return null;
            }

            stages.Add((row.Number(ShopField.Stage) ?? stages.Count, new BurnoutStage(target.Value, rate, hold.Value)));
        }

        return new ShopSchedule
        {
            Name = rows[0].Name,
            For = First(rows, r => r.Text(ShopField.For)),
            UpToDiameter = FirstValue(rows, r => r.Length(ShopField.UpToDiameter)),
            UpToHeight = FirstValue(rows, r => r.Length(ShopField.UpToHeight)),
            LoadAt = FirstValue(rows, r => r.Temperature(ShopField.LoadAt)),
            Stages = [.. stages.OrderBy(s => s.Order).Select(s => s.Stage)],
        };
    }

    private static T? First<T>(IReadOnlyList<ShopRow> rows, Func<ShopRow, T?> read)
        where T : class => rows.Select(read).FirstOrDefault(v => v is not null);

    private static T? FirstValue<T>(IReadOnlyList<ShopRow> rows, Func<ShopRow, T?> read)
        where T : struct => rows.Select(read).FirstOrDefault(v => v is not null);
}
