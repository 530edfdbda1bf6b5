using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing.Staying;

/// <summary>Looks for the plan that moves fewest pieces, or of which moves and flasks count least together.</summary>
/// <remarks>First it looks whether all can stay, then pieces change places in trees of one choice of sizes and settings after another.</remarks>
internal sealed class PackStaying
{
    // More flasks than these are too many to ask of each choice whether everything fits.
    private const int MostFlasks = 8;

    // Choices of flasks in which all could stay.
    private const int MostChoices = 20;
    private const long WorkOfLook = 80_000_000;

    // Of the choices in which most may stay, so many get settings, and so many of these are tried briefly, with a part of the work; those
    // that come nearest are tried in turn, each time from other chances.
    private const int MostSet = 200;
    private const int MostBrief = 24;
    private const int PartOfBrief = 8;
    private const int MostNear = 3;
    private const int Runs = 40;

    private readonly PackHomes homes;
    private readonly StayingFit fit;
    private readonly StayingChoices choices;
    private readonly ContentHanging hanging;
    private readonly StayingAim aim;
    private readonly PackProblem problem;
    private readonly CancellationToken stop;
    private PackPlan best;
    private long value;

    private PackStaying(PackProblem problem, PackHomes homes, ContentHanging hanging, PackPlan start, StayingAim aim, CancellationToken stop)
    {
        (this.problem, this.homes, this.hanging, this.aim, this.stop) = (problem, homes, hanging, aim, stop);
        (fit, choices) = (new StayingFit(problem, stop), new StayingChoices(problem, homes));
        (best, value) = (start, Value(start));
    }

    /// <summary>Whether it can be asked at all: of few flasks, where every piece that fits a size has a sector and there are no wishes.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="homes">Where pieces stood.</param>
    public static bool Suits(PackProblem problem, PackHomes homes) => homes.Count <= MostFlasks && PackSqueeze.Suits(problem);

    /// <summary>Plans.</summary>
    /// <param name="problem">The problem; it <see cref="Suits"/>.</param>
    /// <param name="homes">Where pieces stood.</param>
    /// <param name="hanging">Hangs what was found.</param>
    /// <param name="start">A plan with everything in it.</param>
    /// <param name="aim">What to reach.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="stop">Ends the search early.</param>
    public static PackPlan Plan(
        PackProblem problem, PackHomes homes, ContentHanging hanging, PackPlan start, StayingAim aim, long work, ulong seed, CancellationToken stop)
    {
        var staying = new PackStaying(problem, homes, hanging, start, aim, stop);
        var found = staying.choices.Between(aim.MostFlasks, aim.MostCost);
        staying.StayAll(found, work);
        staying.Change(found, work, seed);
        return staying.best;
    }

    private void StayAll(IEnumerable<StayingChoice> found, long work)
    {
        foreach (var choice in found.Where(c => c.Least == 0).OrderBy(c => aim.Of(c.There, 0)).ThenBy(c => c.Cost).Take(MostChoices))
        {
            if (aim.Of(choice.There, 0) < value && fit.Work < work && !stop.IsCancellationRequested)
            {
                Take(fit.Look(choice.Staying, Math.Min(WorkOfLook, work - fit.Work)));
            }
        }
    }

    private void Change(IEnumerable<StayingChoice> found, long work, ulong seed)
    {
        var tried = found.Where(c => c.Cost >= aim.LeastCost).OrderBy(c => aim.Of(c.There, c.Least)).ThenBy(c => c.Least).Take(MostSet).SelectMany(choices.Set)
            .OrderBy(Least).ThenBy(c => c.Least).Take(MostBrief).ToList()
            .Select(c => (Choice: c, Near: Cool(c, work / (PartOfBrief * MostBrief), seed))).OrderBy(t => t.Near).Take(MostNear).ToList();
        for (var run = 1; run <= Runs && tried.Count > 0; run++)
        {
            // Every other time the one that came nearest so far.
            var at = run % 2 == 0 ? 0 : run / 2 % tried.Count;
            var (choice, near) = tried[at];
            tried[at] = (choice, Math.Min(near, Cool(choice, (work - (work / PartOfBrief)) / Runs, seed + (ulong)run)));
            tried = [.. tried.OrderBy(t => t.Near)];
        }
    }

    private long Least(SetChoice choice) => aim.Of(choice.Sizes.There, choice.Least);

    // What it could count by how near it came.
    private double Cool(SetChoice choice, long work, ulong seed)
    {
        if (Least(choice) >= value || stop.IsCancellationRequested)
        {
            return double.MaxValue;
        }

        var most = (int)Math.Min(homes.Pieces, (value - 1 - aim.Of(choice.Sizes.There, 0)) / aim.OfMove);
        var (plan, near) = new CrowdedTrees(problem, homes, choice.Flasks, seed).Cool(work, most, choice.Least, stop);
        Take(plan);
        return aim.Of(choice.Sizes.There, 0) + (near * aim.OfMove);
    }

    // Takes what counts less.
    private void Take(PackPlan? found)
    {
        if (found is not null && Value(found) < value && hanging.HangAll(found) is { } hung && Value(hung) < value)
        {
            (best, value) = (hung, Value(hung));
        }
    }

    private long Value(PackPlan plan) => aim.Of(plan.Flasks.Select(f => f.Size), homes.Moved(plan));
}
