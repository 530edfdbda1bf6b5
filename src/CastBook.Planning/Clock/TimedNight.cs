using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Parts of a night with their minutes, counted from the hour that was asked for.</summary>
/// <param name="setMinutes">The least set.</param>
internal sealed class TimedNight(double setMinutes)
{
    // Halves of minutes add up with dust.
    private const double Dust = 1e-6;

    private readonly List<ClockStep> steps = [];
    private readonly List<(double Begins, double Ends)> hands = [];
    private readonly Dictionary<string, (double At, double Celsius, double Cools)> kilns = new(StringComparer.Ordinal);

    /// <summary>The steps, in the order in which they begin.</summary>
    public IReadOnlyList<ClockStep> Steps => [.. steps.OrderBy(s => s.Begins.Minutes)];

    /// <summary>How many minutes of hands fall outside their hours.</summary>
    public double Outside { get; private set; }

    /// <summary>Adds a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="at">When it begins.</param>
    /// <param name="outside">How many of its minutes fall outside.</param>
    public void Add(NightPart part, double at, double outside) => Add(part.At(at), outside);

    /// <summary>Adds steps that stand where they stand.</summary>
    /// <param name="timed">The steps.</param>
    /// <param name="outside">How many of their minutes fall outside.</param>
    public void Add(IEnumerable<ClockStep> timed, double outside)
    {
        Outside += outside;
        foreach (var step in timed)
        {
            steps.Add(step);
            if (step.Hands)
            {
                hands.Add((step.Begins.Minutes, step.Ends.Minutes));
            }
        }
    }

    /// <summary>Adds a load.</summary>
    /// <param name="load">The load and its parts.</param>
    /// <param name="filled">When the last mould was filled.</param>
    /// <param name="before">When the work before the kiln begins.</param>
    /// <param name="timer">How long the loaded kiln waits.</param>
    /// <param name="outside">Minutes outside, before the kiln and after it.</param>
    public void Add(LoadParts load, double filled, double before, double timer, params ReadOnlySpan<double> outside)
    {
        if (setMinutes > 0)
        {
            steps.Add(new ClockStep
            {
                Kind = ClockStepKind.Set,
                Begins = Duration.FromMinutes(filled),
                Takes = Duration.FromMinutes(before - filled),
                Load = load.Load.Number,
                Flasks = load.Load.Flasks,
            });
        }

        Add(load.Before, before, outside[0]);
        var loaded = before + load.Before.Minutes;
        if (timer > 0)
        {
            steps.Add(new ClockStep { Kind = ClockStepKind.Timer, Begins = Duration.FromMinutes(loaded), Takes = Duration.FromMinutes(timer), Load = load.Load.Number });
        }

        Add(load.Burnout, loaded + timer, 0);
        Add(load.Pours, load.PourAt(before, timer), outside[1]);
        Empty(load, load.PourAt(before, timer) + load.Pours.Steps.Where(s => s.Kind == ClockStepKind.Pour).Max(s => s.Ends.Minutes));
    }

    /// <summary>Notes when the kiln of a load was emptied.</summary>
    /// <param name="load">The load.</param>
    /// <param name="at">When.</param>
    public void Empty(LoadParts load, double at)
    {
        kilns[load.Load.Kiln] = (at, LastCelsius(load.Load), load.Load.CoolsDegreesPerHour);
    }

    /// <summary>From the loading of a kiln until it is empty and no hotter than its next load asks for, were that the same again; missing where it is not poured.</summary>
    /// <param name="load">The load.</param>
    public Duration? FreeAfter(KilnLoad load)
    {
        var own = steps.FindAll(s => s.Load == load.Number);
        if (own.Find(s => s.Kind == ClockStepKind.LoadKiln) is not { } loaded || own.FindLast(s => s.Kind == ClockStepKind.Pour) is null)
        {
            return null;
        }

        var emptied = own.Where(s => s.Kind == ClockStepKind.Pour).Max(s => s.Ends.Minutes);
        return Duration.FromMinutes(emptied + Cooling(load, LastCelsius(load), load.CoolsDegreesPerHour) - loaded.Ends.Minutes);
    }

    /// <summary>When the kiln of a load is empty, and no hotter than its first stage.</summary>
    /// <param name="load">The load.</param>
    public double KilnFree(KilnLoad load) => kilns.TryGetValue(load.Kiln, out var kiln)
        ? kiln.At + Cooling(load, kiln.Celsius, kiln.Cools)
        : double.NegativeInfinity;

    /// <summary>The first moment from which hands are free for so long.</summary>
    /// <param name="at">From when.</param>
    /// <param name="minutes">For how long.</param>
    public double FreeFrom(double at, double minutes)
    {
        foreach (var (begins, ends) in hands.OrderBy(h => h.Begins))
        {
            if (at < ends - Dust && at + minutes > begins + Dust)
            {
                at = ends;
            }
        }

        return at;
    }

    /// <summary>Whether a part would need hands that are busy.</summary>
    /// <param name="part">The part.</param>
    /// <param name="at">When it would begin.</param>
    public bool IsBusy(NightPart part, double at)
    {
        foreach (var step in part.Hands)
        {
            var (begins, ends) = (at + step.Begins.Minutes + Dust, at + step.Ends.Minutes - Dust);
            foreach (var busy in hands)
            {
                if (begins < busy.Ends && ends > busy.Begins)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static double Cooling(KilnLoad next, double celsius, double degreesPerHour) =>
        60 * Math.Max(0, celsius - (next.Schedule.LoadAt ?? next.Schedule.Stages[0].Target).DegreesCelsius) / degreesPerHour;

    private static double LastCelsius(KilnLoad load) =>
        load.Pours.Select(p => p.Temperature?.DegreesCelsius).LastOrDefault(t => t is not null) ?? load.Schedule.Stages[^1].Target.DegreesCelsius;
}
