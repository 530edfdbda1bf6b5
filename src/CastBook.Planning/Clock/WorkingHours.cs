using CastBook.Planning.Shops;

namespace CastBook.Planning.Clock;

/// <summary>The hours in which somebody is there, and those in which two people are, as the shop's clocks show them.</summary>
internal sealed class WorkingHours
{
    private const int DaysBefore = 4;
    private const int DaysAfter = 10;

    private readonly List<Span>? one;
    private readonly List<Span>? two;

    private WorkingHours(List<Span>? one, List<Span>? second)
    {
        this.one = one;
        two = one is null ? second : second is null ? one : [.. one.SelectMany(a => second.Select(b => a.Within(b.From, b.Until))).Where(s => s.Until > s.From)];
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

        var (one, second) = (Open(settings.AtWorkFrom, settings.AtWorkUntil, settings.ClosedOn, question), Open(settings.SecondFrom, settings.SecondUntil, settings.ClosedOn, question));
        return one is null && (second is null || settings.TwoPeopleFor.Count == 0) ? null : new WorkingHours(one, second);
    }

    /// <summary>The hours as a sentence says them.</summary>
    /// <param name="settings">The shop's settings.</param>
    public static string Said(Settings settings)
    {
        var one = Of(settings.AtWorkFrom, settings.AtWorkUntil);
        var second = settings.TwoPeopleFor.Count == 0 ? null : Of(settings.SecondFrom, settings.SecondUntil);
        var hours = second is null ? one ?? "of work" : one is null ? $"{second} of the second person" : $"{one}, or those of the second person {second}";
        return settings.ClosedOn.Count == 0 ? hours : $"{hours} (closed on {Findings.Say.Together([.. settings.ClosedOn.Select(d => d.ToString())])})";

        static string? Of(TimeOnly? from, TimeOnly? until) => from is { } begin && until is { } end ? $"from {ClockWords.Hour(begin)} to {ClockWords.Hour(end)}" : null;
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
            var (from, until) = span.Within(begins, ends);
            if (until > from)
            {
                inside += (until - from).TotalMinutes;
            }
        }

        return (ends - begins).TotalMinutes - inside;
    }

    private static List<Span>? Open(TimeOnly? begins, TimeOnly? ends, IReadOnlyList<DayOfWeek> closed, ClockQuestion question)
    {
        // Hours that nobody said, or that are one and the same, are the whole day.
        var (from, until) = begins is { } said && ends is { } end ? (said, end) : default;
        if (from == until)
        {
            if (closed.Count == 0)
            {
                return null;
            }

            (from, until) = (TimeOnly.MinValue, TimeOnly.MinValue);
        }

        var open = new List<Span>();
        var day = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(question.At, question.Zone).DateTime);
        for (var i = -DaysBefore; i <= DaysAfter; i++)
        {
            if (!closed.Contains(day.AddDays(i).DayOfWeek))
            {
                // Hours that end before they begin run past midnight.
                var last = day.AddDays(until > from ? i : i + 1);
                open.Add(new Span(ClockQuestion.Nearest(day.AddDays(i).ToDateTime(from), question.Zone), ClockQuestion.Nearest(last.ToDateTime(until), question.Zone)));
            }
        }

        return open;
    }

    private readonly record struct Span(DateTimeOffset From, DateTimeOffset Until)
    {
        public Span Within(DateTimeOffset from, DateTimeOffset until) => new(From > from ? From : from, Until < until ? Until : until);
    }
}
