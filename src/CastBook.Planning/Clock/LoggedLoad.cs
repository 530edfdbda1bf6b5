namespace CastBook.Planning.Clock;

/// <summary>Finds the kiln load that a log is of.</summary>
public static class LoggedLoad
{
    /// <summary>The load of a number; else the only one, or the one planned for the hours of the log.</summary>
    /// <param name="night">The night.</param>
    /// <param name="log">The log.</param>
    /// <param name="number">The load's number, where somebody said it.</param>
    /// <returns>The load; missing where none is meant.</returns>
    public static KilnLoad? Of(NightClock night, KilnLog log, int? number)
    {
        ArgumentNullException.ThrowIfNull(night);
        ArgumentNullException.ThrowIfNull(log);
        if (number is not null || night.Loads.Count == 1)
        {
            return night.Loads.FirstOrDefault(l => l.Number == (number ?? 1));
        }

        if (log.Begins is not { } begins || night.Start is null)
        {
            return null;
        }

        var (from, until) = (begins, begins + log.Takes.ToTimeSpan());
        return night.Loads.Select(l => (Load: l, Shared: Shared(night, l, from, until)))
            .Where(l => l.Shared > TimeSpan.Zero).OrderByDescending(l => l.Shared).Select(l => l.Load).FirstOrDefault();
    }

    private static TimeSpan Shared(NightClock night, KilnLoad load, DateTime from, DateTime until)
    {
        var stages = night.Steps.Where(s => s.Load == load.Number && s.Kind is ClockStepKind.Stage or ClockStepKind.Fall).ToList();
        var (begins, ends) = (night.Shown(stages[0].Begins)!.Value, night.Shown(stages[^1].Ends)!.Value);
        return (until < ends ? until : ends) - (from > begins ? from : begins);
    }
}
