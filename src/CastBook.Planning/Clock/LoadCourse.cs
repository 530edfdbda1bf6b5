namespace CastBook.Planning.Clock;

/// <summary>A load under way: what was done last by hand, by the kiln and at each flask, from which the next step follows.</summary>
internal sealed class LoadCourse
{
    private readonly double setEnds;
    private readonly double loadsAfter;
    private readonly double beforeLoading;
    private readonly Dictionary<string, double> poured = new(StringComparer.Ordinal);
    private double work;
    private double kiln = double.NegativeInfinity;
    private double hot = double.NegativeInfinity;
    private double lastPour = double.NegativeInfinity;

    /// <summary>Begins with moulds that have set.</summary>
    /// <param name="setEnds">When they have set, or were taken up.</param>
    /// <param name="loadsAfter">When they have set, taken up or not, and the kiln is free: they are never loaded before.</param>
    /// <param name="planned">The steps as planned.</param>
    public LoadCourse(double setEnds, double loadsAfter, IReadOnlyList<ClockStep> planned)
    {
        this.setEnds = setEnds;
        this.loadsAfter = loadsAfter;
        work = setEnds;
        beforeLoading = planned.Where(s => s.Kind is ClockStepKind.BaseOff or ClockStepKind.Steam).Sum(s => s.Takes.Minutes);
    }

    /// <summary>The steps so far.</summary>
    public List<ClockStep> Steps { get; } = [];

    /// <summary>When the moulds were taken up from their set.</summary>
    public double TakenUp => Steps.Where(s => s.Kind is ClockStepKind.BaseOff or ClockStepKind.LoadKiln).Select(s => s.Begins.Minutes).DefaultIfEmpty(setEnds).Min();

    /// <summary>The earliest that a step may begin after those before it.</summary>
    /// <param name="step">The step as planned.</param>
    public double Ready(ClockStep step) => step.Kind switch
    {
        ClockStepKind.KilnOn => Math.Max(step.Begins.Minutes, setEnds + Math.Max(0, beforeLoading - ClockRules.Preheating.Minutes)),
        ClockStepKind.BaseOff => Math.Max(work, hot - beforeLoading),
        ClockStepKind.LoadKiln => Math.Max(Math.Max(work, hot), loadsAfter),
        ClockStepKind.Timer => work,
        ClockStepKind.Stage => kiln,
        ClockStepKind.Fall => Math.Max(kiln, lastPour),
        ClockStepKind.Pour => Math.Max(kiln, work),
        ClockStepKind.Quench => Math.Max(work, poured.GetValueOrDefault(step.Flasks[0], work) + (step.Wait?.Minutes ?? 0)),
        ClockStepKind.CoolAlone => poured.GetValueOrDefault(step.Flasks[0], work),
        _ => work,
    };

    /// <summary>Adds a step.</summary>
    /// <param name="step">The step as it was done or will be.</param>
    public void Add(ClockStep step)
    {
        Steps.Add(step);
        var ends = step.Ends.Minutes;
        switch (step.Kind)
        {
            case ClockStepKind.KilnOn:
                hot = ends + ClockRules.Preheating.Minutes;
                break;
            case ClockStepKind.Timer or ClockStepKind.Stage or ClockStepKind.Fall:
                kiln = ends;
                break;
            case ClockStepKind.LoadKiln:
                (work, kiln) = (ends, ends);
                break;
            case ClockStepKind.Pour:
                (work, lastPour, poured[step.Flasks[0]]) = (ends, ends, ends);
                break;
            case ClockStepKind.CoolAlone:
                break;
            default:
                work = ends;
                break;
        }
    }
}
