namespace CastBook.Planning.Shops;

/// <summary>The hours of a week in which somebody is there.</summary>
/// <param name="ByDay">The hours that begin on a day of the week; on a day that is missing nobody is there.</param>
public sealed record WeekHours(IReadOnlyDictionary<DayOfWeek, IReadOnlyList<OpenHours>> ByDay)
{
    private static readonly DayOfWeek[] Days =
        [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday, DayOfWeek.Saturday, DayOfWeek.Sunday];

    /// <summary>The same hours on every day.</summary>
    /// <param name="hours">The hours.</param>
    public static WeekHours EveryDay(params IReadOnlyList<OpenHours> hours) => new(Days.ToDictionary(day => day, _ => hours));

    /// <summary>The hours that begin on a day; none where nobody is there.</summary>
    /// <param name="day">The day.</param>
    public IReadOnlyList<OpenHours> On(DayOfWeek day) => ByDay.GetValueOrDefault(day, []);

    /// <summary>Days that have the same hours, the hours of most days first; Monday is the first of the week.</summary>
    public IReadOnlyList<(IReadOnlyList<OpenHours> Hours, IReadOnlyList<DayOfWeek> Days)> Alike()
    {
        var groups = new List<(IReadOnlyList<OpenHours> Hours, IReadOnlyList<DayOfWeek> Days)>();
        foreach (var day in Days)
        {
            var at = groups.FindIndex(g => g.Hours.SequenceEqual(On(day)));
            if (at < 0)
            {
                groups.Add((On(day), [day]));
            }
            else
            {
                groups[at] = (groups[at].Hours, [.. groups[at].Days, day]);
            }
        }

        return [.. groups.OrderByDescending(g => g.Hours.Count > 0 ? g.Days.Count : 0)];
    }
}
