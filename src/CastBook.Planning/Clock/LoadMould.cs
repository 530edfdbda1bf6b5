using CastBook.Casting.Burnout;
using CastBook.Casting.Heat;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Moulds of one size in a kiln load, which follow the kiln alike.</summary>
/// <param name="Size">What the size is called.</param>
/// <param name="Flasks">The flasks, by letter.</param>
/// <param name="Slow">Their core in the slow case, not yet loaded.</param>
/// <param name="Fast">Their core in the fast case, not yet loaded.</param>
internal sealed record LoadMould(string Size, IReadOnlyList<string> Flasks, CoreTrace Slow, CoreTrace Fast)
{
    /// <summary>The moulds of one size.</summary>
    /// <param name="flasks">The flasks; at least one, all of one size.</param>
    /// <param name="schedule">The schedule that they run.</param>
    public static LoadMould Of(IReadOnlyList<FlaskPlan> flasks, BurnoutSchedule schedule)
    {
        var coolest = Temperature.FromDegreesCelsius(schedule.Stages.Min(s => s.Target.DegreesCelsius));
        return new LoadMould(flasks[0].Size.Name, [.. flasks.Select(f => f.Letter)], Core(MouldCase.Slow, coolest), Core(MouldCase.Fast, schedule.Top));

        CoreTrace Core(MouldCase mould, Temperature film) =>
            new(flasks[0].Size.InsideDiameter!.Value, flasks[0].Size.Height!.Value, mould, film, BurnoutSchedule.ColdKiln);
    }

    /// <summary>A core in the kiln at the begin of a schedule.</summary>
    /// <param name="mould">The core.</param>
    /// <param name="schedule">The schedule.</param>
    public static CoreTrace Loaded(CoreTrace mould, BurnoutSchedule schedule)
    {
        var trace = mould.Copy();
        trace.Go(schedule.LoadAt ?? BurnoutSchedule.ColdKiln, Duration.Zero);
        return trace;
    }
}
