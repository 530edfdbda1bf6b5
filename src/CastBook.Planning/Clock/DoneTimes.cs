using CastBook.Planning.Shops;

namespace CastBook.Planning.Clock;

/// <summary>When steps really ended, in minutes from the hour that was asked for.</summary>
internal sealed class DoneTimes
{
    private const double DayMinutes = 24 * 60;

    private readonly Dictionary<string, double> ends = new(StringComparer.Ordinal);

    private DoneTimes()
    {
    }

    /// <summary>Before this nothing begins that takes hands and is not done.</summary>
    public double Now { get; private set; } = double.NegativeInfinity;

    /// <summary>Finds the moments that typed hours mean: each the one nearest to its plan, moved by how late the one before it was.</summary>
    /// <param name="typed">The hours.</param>
    /// <param name="question">The hour that was asked for.</param>
    /// <param name="planned">The night as planned.</param>
    /// <returns>The moments; missing where no hour belongs to a step of this night.</returns>
    public static DoneTimes? Of(DoneHours? typed, ClockQuestion question, TimedNight planned)
    {
        if (typed is null)
        {
            return null;
        }

        var hours = new Dictionary<string, TypedHour>(StringComparer.Ordinal);
        foreach (var step in typed.Steps)
        {
            hours.TryAdd(step.Step, step.Hour);
        }

        var done = new DoneTimes();
        var (late, last) = (0.0, double.NegativeInfinity);
        foreach (var step in planned.Steps.OrderBy(s => s.Ends.Minutes))
        {
            // The hours may have been typed before the shop chose another unit.
            if (Taken(step) is { } hour)
            {
                var words = ClockWords.Of(step);
                var ended = Nearest(hour, question, step.Ends.Minutes + late);
                (late, last) = (ended - step.Ends.Minutes, Math.Max(last, ended));
                done.ends[words] = ended;
            }
        }

        TypedHour? Taken(ClockStep step)
        {
            foreach (var unit in WrittenTemperature.All)
            {
                if (hours.Remove(ClockWords.Of(step, unit), out var hour))
                {
                    return hour;
                }
            }

            return null;
        }

        if (typed.Now is { } now)
        {
            var nearest = Nearest(now, question, double.IsFinite(last) ? last : planned.Steps.Count == 0 ? 0 : planned.Steps[0].Begins.Minutes);
            done.Now = nearest < last && now.Day is null ? nearest + DayMinutes : nearest;
        }

        // What is done is over: nothing that is not done began before it.
        done.Now = Math.Max(done.Now, last);
        return double.IsFinite(done.Now) ? done : null;
    }

    /// <summary>When a step ended; missing where nobody typed it.</summary>
    /// <param name="step">The step.</param>
    public double? Of(ClockStep step) => ends.TryGetValue(ClockWords.Of(step), out var ended) ? ended : null;

    private static double Nearest(TypedHour typed, ClockQuestion question, double near)
    {
        var about = TimeZoneInfo.ConvertTime(question.At.AddMinutes(near), question.Zone).DateTime;
        if (typed.Day is { } day)
        {
            return Minutes(day);
        }

        var (best, least) = (near, double.PositiveInfinity);
        for (var i = -1; i <= 1; i++)
        {
            var minutes = Minutes(DateOnly.FromDateTime(about).AddDays(i));
            if (Math.Abs(minutes - near) < least)
            {
                (best, least) = (minutes, Math.Abs(minutes - near));
            }
        }

        return best;

        double Minutes(DateOnly on) => (ClockQuestion.Nearest(on.ToDateTime(typed.Hour), question.Zone) - question.At).TotalMinutes;
    }
}
