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

        var (one, second) = (Open(settings.AtWorkFrom, settings.AtWorkUntil, question), Open(settings.SecondFrom, settings.SecondUntil, question));
        return one is null && (second is null || settings.TwoPeopleFor.Count == 0) ? null : new WorkingHours(one, second);
    }

    /// <summary>The hours as a sentence says them.</summary>
    /// <param name="settings">The shop's settings.</param>
    public static string Said(Settings settings)
    {
        var one = Of(settings.AtWorkFrom, settings.AtWorkUntil);
        var second = settings.TwoPeopleFor.Count == 0 ? null : Of(settings.SecondFrom, settings.SecondUntil);
        return second is null ? one ?? "" : one is null ? $"{second} of the second person" : $"{one}, or those of the second person {second}";

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

    private static List<Span>? Open(TimeOnly? begins, TimeOnly? ends, ClockQuestion question)
    {
        if (begins is not { } from || ends is not { } until || from == until)
        {
            return null;
        }

        var open = new List<Span>();
        var day = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(question.At, question.Zone).DateTime);
        for (var i = -DaysBefore; i <= DaysAfter; i++)
        {
            // Hours that end before they begin run past midnight.
            var begin = day.AddDays(i).ToDateTime(from);
            var end = day.AddDays(until > from ? i : i + 1).ToDateTime(until);
            open.Add(new Span(ClockQuestion.Nearest(begin, question.Zone), ClockQuestion.Nearest(end, question.Zone)));
        }

        return open;
    }

    private readonly record struct Span(DateTimeOffset From, DateTimeOffset Until)
    {
        public Span Within(DateTimeOffset from, DateTimeOffset until) => new(From > from ? From : from, Until < until ? Until : until);
    }
}
