using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;

namespace CastBook.Planning.Clock;

/// <summary>The hours in which somebody is there, and those in which two people are, as the shop's clocks show them.</summary>
internal sealed class WorkingHours
{
    private const int DaysBefore = 4;
    private const int DaysAfter = 10;

    // A longer time away is one of a shop that plans no nights.
    private const int LongestAway = 60;

    private const double HalfADay = 0.5;

    // Over a weekend and the day beside it.
    private const double OverAWeekend = 3.5;

    // In order, and none upon another.
    private readonly List<Span>? one;
    private readonly List<Span>? two;

    private WorkingHours(List<Span>? one, List<Span>? second)
    {
        this.one = one;
        two = one is null ? second : second is null ? one : Joined(one.SelectMany(a => second.Select(b => a.Within(b.From, b.Until))));
    }

    /// <summary>The hours around a night; missing where the shop has not said any, or is there always.</summary>
    /// <param name="settings">The shop's settings.</param>
    /// <param name="question">The night's hour.</param>
    public static WorkingHours? Around(Settings settings, ClockQuestion? question)
    {
        if (question is null)
        {
            return null;
        }

        var (one, second) = (Open(First(settings), settings, question), Open(Second(settings), settings, question));
        return one is null && (second is null || settings.TwoPeopleFor.Count == 0) ? null : new WorkingHours(one, second);
    }

    /// <summary>The setting that says the hours.</summary>
    /// <param name="settings">The shop's settings.</param>
    public static string Setting(Settings settings) => settings.HoursOfWork is null ? SettingName.AtWorkFrom : SettingName.HoursOfWork;

    /// <summary>How many days a night may be moved to find better hours: half a day where all days are alike.</summary>
    /// <param name="settings">The shop's settings.</param>
    /// <param name="question">The night's hour.</param>
    public static double DaysToMove(Settings settings, ClockQuestion question)
    {
        var day = DayOf(question);
        var isAlike = settings.ClosedOn.Count == 0 && Near(settings, day).Count == 0 && settings.HoursOfWork?.Alike() is null or { Count: 1 };
        return isAlike ? HalfADay : OverAWeekend + StillAway(settings, day);
    }

    /// <summary>The hours as a sentence says them.</summary>
    /// <param name="settings">The shop's settings.</param>
    /// <param name="question">The night's hour: days away that are far from it are not said.</param>
    public static string Said(Settings settings, ClockQuestion question)
    {
        var week = First(settings)?.Alike() ?? [];
        var one = week.Count == 0 ? null : Of(week[0].Hours);
        var second = settings.TwoPeopleFor.Count == 0 || Second(settings) is not { } both ? null : Of(both.On(default));
        var hours = second is null ? one ?? ClockFindingWords.OfWork
            : one is null ? ClockFindingWords.OfSecondPerson(second) : ClockFindingWords.OrOfSecondPerson(one, second);
        var others = week.Skip(1).Where(g => g.Hours.Count > 0).Select(g => (g.Hours, Days: g.Days.Except(settings.ClosedOn).ToList())).Where(g => g.Days.Count > 0)
            .Select(g => ClockFindingWords.OnDays(Together(g.Days), Of(g.Hours)));
        List<string> closed =
        [
            .. settings.ClosedOn.Union(week.Where(g => g.Hours.Count == 0).SelectMany(g => g.Days)).Select(d => d.ToString()),
            .. Near(settings, DayOf(question)).Select(a => a.First == a.Last ? Day(a.First) : SentenceWords.FromTo(Day(a.First), Day(a.Last))),
        ];
        string[] but = [.. others, .. closed.Count == 0 ? Array.Empty<string>() : [ClockFindingWords.ClosedOn(Say.Together(closed))]];
        return but.Length == 0 ? hours : $"{hours} ({string.Join("; ", but)})";

        static string Of(IReadOnlyList<OpenHours> open) => Say.Together([.. open.Select(h => ClockFindingWords.Hours(ClockWords.Hour(h.From), ClockWords.Hour(h.Until)))]);

        static string Together(IEnumerable<DayOfWeek> days) => Say.Together([.. days.Select(d => d.ToString())]);

        static string Day(DateOnly day) => day.ToString("d MMM", CultureInfo.InvariantCulture);
    }

    /// <summary>How much of a step falls outside the hours of those it takes.</summary>
    /// <param name="step">The step; a moment counts as a minute.</param>
    /// <param name="begins">When it begins.</param>
    public double MinutesOutside(ClockStep step, DateTimeOffset begins)
    {
        if ((step.TwoPeople ? two : one) is not { } open)
        {
            return 0;
        }

        var ends = begins.AddMinutes(Math.Max(1, step.Takes.Minutes));
        var inside = 0.0;
        foreach (var span in open)
        {
            if (span.From >= ends)
            {
                break;
            }

            var (from, until) = span.Within(begins, ends);
            if (until > from)
            {
                inside += (until - from).TotalMinutes;
            }
        }

        return (ends - begins).TotalMinutes - inside;
    }

    private static WeekHours? First(Settings settings) => settings.HoursOfWork ?? Daily(settings.AtWorkFrom, settings.AtWorkUntil);

    private static WeekHours? Second(Settings settings) => Daily(settings.SecondFrom, settings.SecondUntil);

    // Hours that nobody said, or that are one and the same, are the whole day.
    private static WeekHours? Daily(TimeOnly? from, TimeOnly? until) =>
        from is { } begin && until is { } end && begin != end ? WeekHours.EveryDay(new OpenHours(begin, end)) : null;

    private static DateOnly DayOf(ClockQuestion question) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(question.At, question.Zone).DateTime);

    // Days away that a night of this day may meet.
    private static List<DaysAway> Near(Settings settings, DateOnly day) =>
        [.. settings.Away.Where(a => a.First <= day.AddDays(DaysAfter) && a.Last >= day.AddDays(-DaysBefore)).OrderBy(a => a.First)];

    private static int StillAway(Settings settings, DateOnly day) =>
        Math.Min(LongestAway, settings.Away.Where(a => a.Include(day)).Select(a => a.Last.DayNumber - day.DayNumber + 1).DefaultIfEmpty().Max());

    private static List<Span>? Open(WeekHours? week, Settings settings, ClockQuestion question)
    {
        if (week is null && settings.ClosedOn.Count + settings.Away.Count == 0)
        {
            return null;
        }

        week ??= WeekHours.EveryDay(default(OpenHours));
        var (today, open) = (DayOf(question), new List<Span>());
        for (var i = -DaysBefore; i <= DaysAfter + StillAway(settings, today); i++)
        {
            var day = today.AddDays(i);
            if (!settings.ClosedOn.Contains(day.DayOfWeek) && !settings.Away.Any(a => a.Include(day)))
            {
                // Hours that end before they begin run past midnight.
                open.AddRange(week.On(day.DayOfWeek).Select(h => new Span(
                    ClockQuestion.Nearest(day.ToDateTime(h.From), question.Zone), ClockQuestion.Nearest(day.AddDays(h.Until > h.From ? 0 : 1).ToDateTime(h.Until), question.Zone))));
            }
        }

        return Joined(open);
    }

    private static List<Span> Joined(IEnumerable<Span> spans)
    {
        var joined = new List<Span>();
        foreach (var span in spans.Where(s => s.Until > s.From).OrderBy(s => s.From))
        {
            if (joined.Count > 0 && span.From <= joined[^1].Until)
            {
                joined[^1] = new Span(joined[^1].From, span.Until > joined[^1].Until ? span.Until : joined[^1].Until);
            }
            else
            {
                joined.Add(span);
            }
        }

        return joined;
    }

    private readonly record struct Span(DateTimeOffset From, DateTimeOffset Until)
    {
        public Span Within(DateTimeOffset from, DateTimeOffset until) => new(From > from ? From : from, Until < until ? Until : until);
    }
}
