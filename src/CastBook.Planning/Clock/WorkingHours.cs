using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>The hours in which somebody is there, as the shop's clocks show them.</summary>
internal sealed class WorkingHours
{
    private const int DaysBefore = 4;
    private const int DaysAfter = 10;

    private readonly List<(DateTimeOffset From, DateTimeOffset Until)> open = [];

    private WorkingHours()
    {
    }

    /// <summary>The hours around a night; missing where the shop has not said any, or is there always.</summary>
    /// <param name="settings">The shop's settings.</param>
    /// <param name="question">The night's hour.</param>
    public static WorkingHours? Around(Settings settings, ClockQuestion? question)
    {
        if (question is null || settings.AtWorkFrom is not { } from || settings.AtWorkUntil is not { } until || from == until)
        {
            return null;
        }

        var hours = new WorkingHours();
        var day = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(question.At, question.Zone).DateTime);
        for (var i = -DaysBefore; i <= DaysAfter; i++)
        {
            // Hours that end before they begin run past midnight.
            var begin = day.AddDays(i).ToDateTime(from);
            var end = day.AddDays(until > from ? i : i + 1).ToDateTime(until);
            hours.open.Add((ClockQuestion.Nearest(begin, question.Zone), ClockQuestion.Nearest(end, question.Zone)));
        }

        return hours;
    }

    /// <summary>How much of a time falls outside.</summary>
    /// <param name="begins">Its begin.</param>
    /// <param name="takes">Its length; a moment counts as a minute.</param>
    public double MinutesOutside(DateTimeOffset begins, Duration takes)
    {
        var ends = begins.AddMinutes(Math.Max(1, takes.Minutes));
        var inside = 0.0;
        foreach (var (from, until) in open)
        {
            var (first, last) = (from > begins ? from : begins, until < ends ? until : ends);
            if (last > first)
            {
                inside += (last - first).TotalMinutes;
            }
        }

        return (ends - begins).TotalMinutes - inside;
    }
}
