using System.Collections.Frozen;
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
    /// <summary>The schedules of the book, then those that only the shop file has; one with a stage that is not whole, or for nobody knows what, is not run, because a burnout is never guessed.</summary>
    /// <param name="book">The book's sheet; missing where it has none.</param>
    /// <param name="cells">Takes down where the book's lines stand.</param>
    /// <param name="file">The shop file; missing where there is none.</param>
    /// <param name="under">Its sheet; missing where it has none.</param>
    public static IReadOnlyList<ReadSchedule> Read(ShopTable? book, CellMap cells, ShopFile? file, ShopTable? under)
    {
        var below = ByName(under);
        var schedules = new List<ReadSchedule>();
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
            Add(book!, rows);
        }

        foreach (var rows in below)
        {
            rows[0].Map(file!.Cells);
            Add(under!, rows);
        }

        return schedules;

        // A name alone is a question that nobody has answered yet.
        void Add(ShopTable table, List<ShopRow> rows)
        {
            var read = Schedule(table, rows);
            if (!rows.TrueForAll(r => r.IsBare))
            {
                schedules.Add(read);
            }
        }
    }

    private static List<List<ShopRow>> ByName(ShopTable? table) =>
        [.. (table?.Rows(continued: true) ?? []).GroupBy(r => r.Name, StringComparer.OrdinalIgnoreCase).Select(g => g.ToList())];

    private static ReadSchedule Schedule(ShopTable table, List<ShopRow> rows)
    {
        var stages = rows.ConvertAll(r => (Order: r.Number(ShopField.Stage), Stage: Stage(table, r)));
        var use = Use(rows);
        var schedule = new ShopSchedule
        {
            Name = rows[0].Name,
            For = use ?? ScheduleUse.WaxAndResin,
            UpToDiameter = First(rows, ShopField.UpToDiameter)?.Length(ShopField.UpToDiameter),
            UpToHeight = First(rows, ShopField.UpToHeight)?.Length(ShopField.UpToHeight),
            LoadAt = First(rows, ShopField.LoadAt)?.Temperature(ShopField.LoadAt),
            Stages = [.. stages.Select((s, i) => (Order: s.Order ?? i, s.Stage)).OrderBy(s => s.Order).Select(s => s.Stage).OfType<BurnoutStage>()],
        };
        var unreadable = rows.SelectMany(r => r.Unreadable).ToFrozenSet(StringComparer.Ordinal);
        return new ReadSchedule(schedule with { Unreadable = unreadable }, IsWhole: unreadable.Count == 0 && schedule.Stages.Count == rows.Count);
    }

    // What cannot be read has its finding: without its rate a stage would be run as fast as the kiln can.
    private static BurnoutStage? Stage(ShopTable table, ShopRow row)
    {
        var (target, rate, hold) = (row.Temperature(ShopField.Target), row.Number(ShopField.Rate), row.Minutes(ShopField.Hold));
        if (row.Unreadable.Count == 0 && (target is null || hold is null))
        {
            var missing = target is null ? ShopField.Target : ShopField.Hold;
            table.Findings.Add(Catalogue.ScheduleStageIncomplete.At(
                new Subject(SubjectKind.Schedule, row.Name, missing),
                row.Name, row.SheetRow.ToString(CultureInfo.InvariantCulture), target is null ? WantedWords.TargetTemperature : WantedWords.Hold));
        }

        return target is { } to && hold is { } held ? new BurnoutStage(to, rate, held) : null;
    }

    // Wax and resin alike where nobody says; missing where that cannot be read.
    private static ScheduleUse? Use(List<ShopRow> rows)
    {
        if (First(rows, ShopField.For) is not { } row)
        {
            return ScheduleUse.WaxAndResin;
        }

        var typed = row.Text(ShopField.For);
        var use = typed is null ? null : ShopWords.ScheduleUse(typed);
        if (typed is not null && use is null)
        {
            row.Fail(Catalogue.ScheduleUseUnreadable, ShopField.For, row.Name, typed);
        }

        return use;
    }

    // What the first line says that says anything of a field; without its size a schedule would be for every flask.
    private static ShopRow? First(List<ShopRow> rows, string field) => rows.Find(r => r.Says(field));
}

/// <summary>A schedule as it was read.</summary>
/// <param name="Schedule">The schedule, as far as it can be read.</param>
/// <param name="IsWhole">Whether it is all there; else it has a finding, and is not run.</param>
internal sealed record ReadSchedule(ShopSchedule Schedule, bool IsWhole);
