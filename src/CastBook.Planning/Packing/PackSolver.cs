using CastBook.Planning.Packing.Bounds;
using CastBook.Planning.Packing.Fitting;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing;

/// <summary>Finds a plan for one problem and says what it is worth.</summary>
internal sealed partial class PackSolver
{
    // No more pieces than this find room in a flask as a rule; what cannot be placed needs no search.
    private const long PiecesOfOne = 60;

    // A bound on the number of flasks is looked for as if each cost so much.
    private const long CostOfAny = 1_000_000;

    private const int MostKinds = 110;

    // Where many more kinds would have to be merged, too little is left of what tells them apart: all of them, valued once, prove more.
    private const int ManyKinds = 2 * MostKinds;

    private const int MostDives = 20;
    private const int FewDives = 3;
    private const int FewFlasks = 8;

    private readonly PackProblem problem;
    private readonly TreeFilling filling;
    private readonly PackGreedy greedy;
    private readonly PackSearch search;
    private readonly CancellationToken stop;
    private readonly PackWork work;
    private readonly long shared;
    private readonly bool isOfManyKinds;
    private bool isOfFew;
    private PackPlan plan;
    private long least;
    private int fewest;

    private PackSolver(PackProblem problem, ulong seed, bool inBrief, CancellationToken stop)
    {
        (this.problem, this.stop) = (problem, stop);
        var pieces = Math.Min(problem.Items.Sum(i => (long)i.Quantity), problem.Sizes.Sum(s => (long)s.Free) * PiecesOfOne);
        filling = new TreeFilling(problem);
        greedy = new PackGreedy(problem, filling);
        search = new PackSearch(problem, greedy, filling, seed);
        plan = greedy.Best();
        search.Shrink(plan);
        isOfManyKinds = problem.Items.Length > ManyKinds && !IsSmall;
        work = inBrief || plan.Lost > 0 ? PackWork.Brief(pieces, isOfManyKinds) : PackWork.Full(pieces, isOfManyKinds);
        (fewest, least) = (PackFloor.Flasks(problem), PackFloor.Of(problem));

        // What every flask costs at least says nothing about sizes.
        var (cheapest, dearest) = (problem.Sizes.Min(s => s.Cost), problem.Sizes.Max(s => s.Cost));
        shared = Math.Max(0, cheapest - Math.Max(1, dearest - cheapest));
    }

    /// <summary>Solves a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="inBrief">Whether this is one of many problems.</param>
    /// <param name="stop">Ends the search early with the best so far.</param>
    public static PackAnswer Solve(PackProblem problem, ulong seed, bool inBrief, CancellationToken stop)
    {
        var solver = Begin(problem, seed, inBrief, stop);
        solver.Count(isShort: false);
        return solver.Finish();
    }

    /// <summary>Finds a first plan and, of few flasks, mostly proves how few do; that is quick beside all that follows.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="inBrief">Whether this is one of many problems.</param>
    /// <param name="stop">Ends the search early with the best so far.</param>
    public static PackSolver Begin(PackProblem problem, ulong seed, bool inBrief, CancellationToken stop)
    {
        var solver = new PackSolver(problem, seed, inBrief, stop);
        solver.Start();
        return solver;
    }

    /// <summary>Goes on to the end.</summary>
    public PackAnswer Finish()
    {
        GoOn();
        var flasks = Math.Max(fewest, PackSizes.Fewest(problem, least));
        return new PackAnswer(plan, least, plan.Lost > 0 ? PackFloor.Flasks(problem) : Math.Min(flasks, plan.Flasks.Count));
    }

    private void Start()
    {
        plan = search.Improve(plan, least, work.Search / 4, PackEffort.FirstLook, stop);
        if (work.Values > 0 && IsOpen)
        {
            Revalue();
        }

        if (IsOpen && MetalAlone.Suits(problem))
        {
            ShareMetal();
        }

        // Few flasks are tried one choice after the other; of many, or of many pieces, only the search knows where to begin.
        isOfFew = IsSmall && !problem.IsOfMany && PackSqueeze.Suits(problem);
        if (isOfFew && IsOpen)
        {
            ProveFewest(work.Fewest / 8);
        }
    }

    private void GoOn()
    {
        if (isOfFew && plan.Lost == 0 && (!IsOpen || Decide()))
        {
            return;
        }

        if (IsOpen)
        {
            Prove();
        }

        if (isOfFew && IsOpen)
        {
            Settle();
        }

        plan = isOfFew && plan.Lost == 0 ? plan : search.Improve(plan, least, work.Search, IsSmall ? PackEffort.Short : PackEffort.Full, stop);
        if (!isOfFew && IsOpen && !(WantsFewer && plan.Flasks.Count == fewest))
        {
            Settle();
        }
    }

    private bool IsOpen => plan.Lost == 0 && plan.Cost > least;

    // Of many pieces, where a flask counts more than any size, fewer flasks are what is dived for; of so many choices few are settled, and
    // none where no fewer do.
    private bool WantsFewer => problem.IsOfMany && shared > 0;

    private long Settling => WantsFewer ? work.Proof / 4 : work.Proof;

    private bool IsSmall => plan.Flasks.Count <= FewFlasks;

    // A proof over more kinds of pieces than these would not end.
    private PackMerging Merging => field ??= PackMerging.Of(problem, isOfManyKinds ? problem.Items.Length : MostKinds);

    // Large, and not needed where pieces are left over.
    private PackBound Bound => field ??= new PackBound(Merging.Merged);

    private void Revalue()
    {
        var better = new PackRevaluing(problem, greedy, filling).Best(plan, least, work.Values, stop);
        search.Shrink(better);
        plan = better;
    }

    // First how few flasks do, whatever their size, then the least that so few can cost.
    private void Prove()
    {
        var most = mostFlasks ?? ProveCount();
        if (plan.Cost > least)
        {
            int[] free = [.. problem.Sizes.Select(s => s.Free)];
            var cost = (fewest * shared) + Bound.Find([.. problem.Sizes.Select(s => s.Cost - shared)], free, fewest, plan.Cost - (fewest * shared), work.Proof, stop);
            least = Math.Max(least, Math.Min(cost, fewest < most ? PackSizes.Least(problem, fewest + 1) : plan.Cost));
            RoundUp();
            fewest = Math.Max(fewest, PackSizes.Fewest(problem, least));
            if (!WantsFewer)
            {
                Dive([.. problem.Sizes.Select(s => s.Cost - shared)], work.Proof / 4);
            }
        }
    }

    // How few flasks do. Says how many a better plan could have at most.
    private int ProveCount()
    {
        var most = ProveFewest(work.Fewest);
        if (!problem.IsOfMany || plan.Flasks.Count > fewest)
        {
            Dive([.. problem.Sizes.Select(_ => CostOfAny)], work.Fewest / (WantsFewer ? 2 : 4));
        }

        return most;
    }

    // Says how many flasks a better plan could have at most.
    private int ProveFewest(long steps)
    {
        plan.Flasks.ForEach(f => Bound.Know(Merging.Of(f)));
        if (isOfManyKinds)
        {
            Bound.AskBySpace();
        }

        int[] free = [.. problem.Sizes.Select(s => s.Free)];
        var most = PackSizes.Most(problem, plan.Cost - 1);
        var flasks = Bound.Find([.. free.Select(_ => CostOfAny)], free, most, CostOfAny * Math.Min(most, plan.Flasks.Count - 1), steps, stop);
        fewest = Math.Max(fewest, (int)((flasks + CostOfAny - 1) / CostOfAny));
        least = fewest > most ? plan.Cost : Math.Max(least, PackSizes.Least(problem, fewest));
        return most;
    }

    // Where kinds of pieces were merged, the trees of the proof cannot be hung, and it knows no wishes for a flask. Another choice
    // early on leads elsewhere.
    private void Dive(long[] costs, long steps)
    {
        if (problem.Items.Length > MostKinds || problem.Pins > 0)
        {
            return;
        }

        var (end, turns, isHopeless) = (filling.Work + steps, IsSmall && !WantsFewer ? FewDives : MostDives, false);
        for (var turn = -1; turn < turns && !isHopeless && (WantsFewer ? plan.Flasks.Count > fewest : plan.Cost > least) && filling.Work < end && !stop.IsCancellationRequested; turn++)
        {
            var dive = new PackDive(problem, filling, greedy, costs, Bound.Flasks.Where(f => f.Pin < 0));
            if (dive.Plan(turn, WantsFewer ? plan.Flasks.Count - 1 : 0, stop) is { } dived)
            {
                search.Shrink(dived);
                plan = dived.IsBetterThan(plan) ? dived : plan;
            }

            (end, isHopeless) = (end - (WantsFewer ? dive.Work : 0), dive.IsHopeless);
        }
    }

    // Flasks are whole, so that the least cost is that of some choice of them.
    private void RoundUp()
    {
        if (PackSizes.Between(problem, least, plan.Cost, int.MaxValue) is { } choices)
        {
            var open = choices.FirstOrDefault(c => !Bound.IsRefuted(c.Counts));
            least = open.Counts is null ? plan.Cost : open.Cost;
        }
    }
}
