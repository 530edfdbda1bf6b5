using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing.Staying;

/// <summary>Makes a plan as cheap as one searched afresh, with as few pieces as possible in another flask than they stood in.</summary>
internal sealed class PackCalming
{
    // Searches that start from what is kept, and the part of the work that they and the ways back of each may take.
    private const int Tries = 9;
    private const int PartOfSearch = 40;
    private const int PartOfReturn = 80;
    private const int PartOfLast = 8;

    private readonly PackProblem problem;
    private readonly ulong seed;
    private readonly PackSearch search;
    private readonly ContentHanging hanging;
    private readonly PackReturning returning;
    private readonly PackHomes homes;
    private readonly PackPlan target;
    private readonly long work;
    private readonly CancellationToken stop;

    private PackCalming(PackProblem problem, PackHomes homes, PackPlan target, IReadOnlyList<PackedFlask> known, long work, ulong seed, CancellationToken stop)
    {
        (this.problem, this.seed) = (problem, seed);
        (this.homes, this.target, this.work, this.stop) = (homes, target, work, stop);
        var filling = new TreeFilling(problem);
        var greedy = new PackGreedy(problem, filling);
        search = new PackSearch(problem, greedy, filling, seed);
        hanging = new ContentHanging(problem, greedy, filling, known);
        returning = new PackReturning(greedy, filling, hanging, homes, seed);
    }

    /// <summary>Plans.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="homes">The flasks that stood, by pieces.</param>
    /// <param name="afresh">The flasks of the plan searched afresh; there are as many of each size.</param>
    /// <param name="kept">The flasks of a plan with every piece where it stood.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="stop">Ends the search early.</param>
    public static PackPlan Plan(
        PackProblem problem, IReadOnlyList<PackedFlask> homes, IReadOnlyList<PackedFlask> afresh, IReadOnlyList<PackedFlask> kept, long work, ulong seed, CancellationToken stop)
    {
        var target = Made(problem, afresh)!;
        var start = Made(problem, kept);
        if (start is not null && start.Lost <= target.Lost && start.Cost <= target.Cost)
        {
            return start;
        }

        var calming = new PackCalming(problem, new PackHomes(problem, homes), target, [.. afresh, .. kept], work, seed, stop);
        return calming.Calmest(start);
    }

    /// <summary>Plans so that flasks and moves count less together.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="homes">The flasks that stood, by pieces.</param>
    /// <param name="start">The flasks of a plan with everything in it.</param>
    /// <param name="known">Trees already hung.</param>
    /// <param name="aim">What flasks and moves count.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="stop">Ends the search early.</param>
    /// <returns>The plan; nothing where none that counts less was found.</returns>
    public static PackPlan? Weighed(
        PackProblem problem, IReadOnlyList<PackedFlask> homes, IReadOnlyList<PackedFlask> start, IReadOnlyList<PackedFlask> known, StayingAim aim, long work,
        ulong seed, CancellationToken stop)
    {
        var stood = new PackHomes(problem, homes);
        if (Made(problem, start) is not { Lost: 0 } plan || !PackStaying.Suits(problem, stood))
        {
            return null;
        }

        var filling = new TreeFilling(problem);
        var hanging = new ContentHanging(problem, new PackGreedy(problem, filling), filling, known);
        var weighed = PackStaying.Plan(problem, stood, hanging, plan, aim, work, seed, stop);
        return weighed == plan ? null : weighed;
    }

    private static PackPlan? Made(PackProblem problem, IReadOnlyList<PackedFlask> flasks)
    {
        var plan = PackPlan.Empty(problem);
        foreach (var flask in flasks)
        {
            if (plan.Free[flask.Size] <= 0)
            {
                return null;
            }

            plan.Add(flask);
        }

        return plan;
    }

    private PackPlan Calmest(PackPlan? start)
    {
        var best = returning.Return(target, work / PartOfReturn, stop);
        for (var i = 0; i < Tries && start is { Lost: 0 } && best.Stayed < homes.Pieces; i++)
        {
            var found = search.Improve(start, target.Cost, work / PartOfSearch, PackEffort.Few(2 + (i % (PackEffort.MostAtOnce - 1))), stop);
            if (found.Lost == 0 && found.Cost <= target.Cost && hanging.HangAll(found) is { } hung)
            {
                var back = returning.Return(hung, work / PartOfReturn, stop);
                best = back.Stayed > best.Stayed ? back : best;
            }
        }

        var calmest = returning.Return(best.Plan, work / PartOfLast, stop).Plan;
        return calmest.Lost == 0 && PackStaying.Suits(problem, homes)
            ? PackStaying.Plan(problem, homes, hanging, calmest, StayingAim.FewestMoves(problem, calmest.Flasks.Count, target.Cost), work, seed, stop)
            : calmest;
    }
}
