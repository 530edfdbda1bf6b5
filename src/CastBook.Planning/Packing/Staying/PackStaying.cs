using CastBook.Planning.Floors;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing.Staying;

/// <summary>Looks for the plan that moves fewest pieces: first whether all can stay, then pieces change places two sectors at a time.</summary>
internal sealed class PackStaying
{
    // More flasks than these are too many to ask of each choice whether everything fits.
    private const int MostFlasks = 8;

    // Choices of flasks in which all could stay.
    private const int MostChoices = 20;
    private const long WorkOfLook = 80_000_000;

    // Each run of changing places starts from the best so far, hot, and grows colder.
    private const int Runs = 2;
    private static readonly int[] Heats = [120, 100, 84, 70, 59, 49, 41, 34, 28, 24, 20];

    private readonly PackProblem problem;
    private readonly PackHomes homes;
    private readonly StayingFit fit;
    private readonly ContentHanging hanging;
    private readonly CancellationToken stop;
    private readonly long work;
    private PackPlan best;
    private int moved;

    private PackStaying(PackProblem problem, PackHomes homes, ContentHanging hanging, PackPlan start, int moved, long work, CancellationToken stop)
    {
        (this.problem, this.homes, this.hanging, this.work, this.stop) = (problem, homes, hanging, work, stop);
        fit = new StayingFit(problem, stop);
        (best, this.moved) = (start, moved);
    }

    /// <summary>Whether it can be asked at all: of few flasks, where every piece that fits a size has a sector and there are no wishes.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="homes">Where pieces stood.</param>
    public static bool Suits(PackProblem problem, PackHomes homes) => homes.Count <= MostFlasks && PackSqueeze.Suits(problem);

    /// <summary>The cheapest plan that moves nothing.</summary>
    /// <param name="problem">The problem; it <see cref="Suits"/>.</param>
    /// <param name="homes">Where pieces stood.</param>
    /// <param name="hanging">Hangs what was found.</param>
    /// <param name="start">A plan with everything in it and nothing moved.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="stop">Ends the search early.</param>
    public static PackPlan Cheapest(PackProblem problem, PackHomes homes, ContentHanging hanging, PackPlan start, long work, CancellationToken stop)
    {
        var staying = new PackStaying(problem, homes, hanging, start, 1, work, stop);
        staying.StayAll(homes.Count + 1, start.Cost - 1);
        return staying.best;
    }

    /// <summary>Plans.</summary>
    /// <param name="problem">The problem; it <see cref="Suits"/>.</param>
    /// <param name="homes">Where pieces stood.</param>
    /// <param name="hanging">Hangs what was found.</param>
    /// <param name="start">A plan with everything in it.</param>
    /// <param name="most">What a plan may cost; it has no more flasks than the start.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="stop">Ends the search early.</param>
    public static PackPlan Plan(PackProblem problem, PackHomes homes, ContentHanging hanging, PackPlan start, long most, long work, ulong seed, CancellationToken stop)
    {
        var staying = new PackStaying(problem, homes, hanging, start, homes.Moved(start), work, stop);
        staying.StayAll(start.Flasks.Count, most);
        staying.Exchange(new Chance(seed));
        return staying.best;
    }

    private void StayAll(int flasks, long cost)
    {
        foreach (var choice in new StayingChoices(problem, homes).Between(flasks, cost, MostChoices).TakeWhile(c => c.Least == 0))
        {
            if (moved > 0 && fit.Work < work && !stop.IsCancellationRequested)
            {
                Take(fit.Look(choice.Staying, Math.Min(WorkOfLook, work - fit.Work)));
            }
        }
    }

    private void Exchange(Chance chance)
    {
        for (var run = 0; run < Runs && moved > 1; run++)
        {
            var trees = new StandingTrees(problem, homes, best, chance);
            var (calmest, most) = ((PackPlan?)null, homes.Pieces - moved);
            for (var i = 0; i < Heats.Length; i++)
            {
                while (trees.Work < (i + 1) * work / (Runs * Heats.Length) && !stop.IsCancellationRequested)
                {
                    trees.Exchange(Heats[i]);
                    if (trees.Stayed > most)
                    {
                        (calmest, most) = (trees.ToPlan(), trees.Stayed);
                    }
                }
            }

            Take(calmest);
        }
    }

    // Takes what moves fewer.
    private void Take(PackPlan? found)
    {
        if (found is not null && homes.Moved(found) < moved && hanging.HangAll(found) is { } hung && homes.Moved(hung) < moved)
        {
            (best, moved) = (hung, homes.Moved(hung));
        }
    }
}
