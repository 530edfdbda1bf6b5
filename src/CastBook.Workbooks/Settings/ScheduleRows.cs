using System.Globalization;
using CastBook.Casting.Burnout;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Settings;

/// <summary>Reads burnout schedules: the rows of one name, a stage each.</summary>
internal static class ScheduleRows
{
    /// <summary>The schedules of the book, then those that only the shop file has; one with a stage that is not whole, or for nobody knows what, is left out, because a burnout is never guessed.</summary>
    /// <param name="book">The book's sheet; missing where it has none.</param>
    /// <param name="cells">Takes down where the book's lines stand.</param>
    /// <param name="file">The shop file; missing where there is none.</param>
    /// <param name="under">Its sheet; missing where it has none.</param>
    public static IReadOnlyList<ShopSchedule> Read(ShopTable? book, CellMap cells, ShopFile? file, ShopTable? under)
    {
        var below = ByName(under);
        var schedules = new List<ShopSchedule?>();
        book?.Map(cells);
        foreach (var rows in ByName(book))
        {
            if (below.Find(r => ShopLines.IsSame(r[0].Name, rows[0].Name)) is { } found)
            {
                if (rows.All(r => r.IsBare))
                {
                    continue;
                }

                // Stages of two sheets never mix: the book's schedule is used whole.
                below.Remove(found);
                found[0].Named(rows[0].Name).Map(file!.Cells);
                if (rows.Count != found.Count || rows.Zip(found).Any(r => !r.First.SaysTheSame(r.Second)))
                {
                    var subject = new Subject(SubjectKind.Schedule, rows[0].Name);
                    book!.Findings.Add(Catalogue.ShopFileSchedule.At(subject, rows[0].Name, file.PlaceOf(subject)!));
                }
            }

            rows[0].Map(cells);
            schedules.Add(Schedule(book!, rows));
        }

        foreach (var rows in below)
        {
            rows[0].Map(file!.Cells);
            schedules.Add(Schedule(under!, rows));
        }

        return [.. schedules.OfType<ShopSchedule>()];
    }

    private static List<List<ShopRow>> ByName(ShopTable? table) =>
        [.. (table?.Rows(continued: true) ?? []).GroupBy(r => r.Name, StringComparer.OrdinalIgnoreCase).Select(g => g.ToList())];

    private static ShopSchedule? Schedule(ShopTable table, List<ShopRow> rows)
    {
        var stages = new List<(double Order, BurnoutStage Stage)>();
        foreach (var row in rows)
        {
            var (target, rate, hold, order) = (row.Temperature(ShopField.Target), row.Number(ShopField.Rate), row.Minutes(ShopField.Hold), row.Number(ShopField.Stage));
            if (IsUnread(row, ShopField.Target, target) || IsUnread(row, ShopField.Rate, rate) || IsUnread(row, ShopField.Hold, hold) || IsUnread(row, ShopField.Stage, order))
            {
                return null;
            }

            if (target is null || hold is null)
            {
                var missing = target is null ? ShopField.Target : ShopField.Hold;
                table.Findings.Add(Catalogue.ScheduleStageIncomplete.At(
                    new Subject(SubjectKind.Schedule, row.Name, missing),
                    row.Name, row.SheetRow.ToString(CultureInfo.InvariantCulture), target is null ? WantedWords.TargetTemperature : WantedWords.Hold));
                return null;
            }

            stages.Add((order ?? stages.Count, new BurnoutStage(target.Value, rate, hold.Value)));
        }

        var said = rows.Find(r => r.Says(ShopField.For));
        var typed = said?.Text(ShopField.For);
        if (said is not null && typed is null)
        {
            return null;
        }

        if ((typed is null ? ScheduleUse.WaxAndResin : ShopWords.ScheduleUse(typed)) is not { } use)
        {
            table.Findings.Add(Catalogue.ScheduleUseUnreadable.At(new Subject(SubjectKind.Schedule, rows[0].Name, ShopField.For), rows[0].Name, typed!));
            return null;
        }

        if (!TryFirst(rows, ShopField.UpToDiameter, r => r.Length(ShopField.UpToDiameter), out var diameter)
            || !TryFirst(rows, ShopField.UpToHeight, r => r.Length(ShopField.UpToHeight), out var height)
            || !TryFirst(rows, ShopField.LoadAt, r => r.Temperature(ShopField.LoadAt), out var loadAt))
        {
            return null;
        }

        return new ShopSchedule
        {
            Name = rows[0].Name,
            For = use,
            UpToDiameter = diameter,
            UpToHeight = height,
            LoadAt = loadAt,
            Stages = [.. stages.OrderBy(s => s.Order).Select(s => s.Stage)],
        };
    }

    // What cannot be read has its finding. Without its rate a stage would be run as fast as the kiln can, and without its size a schedule
    // would be for every flask.
    private static bool IsUnread<T>(ShopRow row, string field, T? value)
        where T : struct => value is null && row.Says(field);

    // What the first line says that says anything; false where that cannot be read.
    private static bool TryFirst<T>(IReadOnlyList<ShopRow> rows, string field, Func<ShopRow, T?> read, out T? value)
        where T : struct
    {
        var row = rows.FirstOrDefault(r => r.Says(field));
        value = row is null ? null : read(row);
        return row is null || value is not null;
    }
}
