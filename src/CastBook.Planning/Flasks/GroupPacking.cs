using CastBook.Casting.Patterns;
using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Searching;
using CastBook.Planning.Packing.Staying;

namespace CastBook.Planning.Flasks;

/// <summary>Packs a group of rows: afresh, into given flasks, or with what stands left where it is.</summary>
internal sealed class GroupPacking
{
    // Steps to put like thicknesses together.
    private const long WorkOfLikeness = 100_000_000;

    // Steps to look for a few moves that are worth as much as a search afresh.
    private const long LeastCalm = 400_000_000;
    private const long CalmForEach = 30_000_000;
    private const long MostCalm = 4_000_000_000;
    private const long BriefCalm = 12;

    private readonly PieceGroup group;
    private readonly IReadOnlyList<UsableSize> sizes;
    private readonly FlaskCost cost;
    private readonly GroupNumbers numbers;
    private readonly GroupTrees trees;

    /// <summary>Prepares a group.</summary>
    /// <param name="group">The rows; each fits some size alone.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="room">What a tree may take.</param>
    /// <param name="dates">The days on which anything of the night is due, soonest first.</param>
    /// <param name="cost">What a flask costs by the order of wishes.</param>
    public GroupPacking(PieceGroup group, IReadOnlyList<UsableSize> sizes, FlaskRoom room, List<DateOnly> dates, FlaskCost cost)
    {
        (this.group, this.sizes, this.cost) = (group, sizes, cost);
        numbers = new GroupNumbers(group, sizes, room, dates, cost);
        trees = new GroupTrees(group, sizes, room, numbers);
    }

    /// <summary>How many pieces it has.</summary>
    public long Pieces => group.Pieces.Sum(p => (long)p.Quantity);

    /// <summary>The sizes.</summary>
    public IReadOnlyList<UsableSize> Sizes => sizes;

    /// <summary>Resin where any of it is, or is not known to be wax.</summary>
    public PatternKind Kind => group.Pieces.Any(p => p.Kind == PatternKind.Resin) ? PatternKind.Resin : PatternKind.Wax;

    /// <summary>Whether stones are set in it.</summary>
    public bool StonesIn => group.StonesIn;

    /// <summary>Packs the rows.</summary>
    /// <param name="free">How many of each size are free.</param>
    /// <param name="inBrief">Whether this is one of many ways to pack them.</param>
    /// <param name="stop">Ends the search early.</param>
    public GroupAnswer Pack(IReadOnlyList<int> free, bool inBrief, CancellationToken stop)
    {
        var begun = Begin(free, inBrief, stop);
        begun.Count(isShort: false);
        return begun.Finish();
    }

    /// <summary>Begins to pack the rows, as far as is quick.</summary>
    /// <param name="free">How many of each size are free.</param>
    /// <param name="inBrief">Whether this is one of many ways to pack them.</param>
    /// <param name="stop">Ends the search early.</param>
    public BegunGroup Begin(IReadOnlyList<int> free, bool inBrief, CancellationToken stop)
    {
        var pieces = numbers.Pieces();
        var begun = PackSolver.Begin(numbers.Problem(pieces, free), Seed, inBrief, stop);
        return new BegunGroup(begun, answer => Whole(pieces, answer, free, inBrief, stop));
    }

    private GroupAnswer Whole(List<(TreePiece Piece, int Count, int Pin)> pieces, PackAnswer answer, IReadOnlyList<int> free, bool inBrief, CancellationToken stop)
    {
        var unmet = new Dictionary<int, int>();

        // What finds no room in the flask it is wanted in goes wherever there is room.
        for (var i = pieces.Count - 1; i >= 0; i--)
        {
            if (pieces[i].Pin >= 0 && answer.Plan.Left[i] > 0)
            {
                unmet[pieces[i].Piece.Id] = answer.Plan.Left[i];
                pieces.Add((pieces[i].Piece, answer.Plan.Left[i], -1));
                pieces[i] = pieces[i] with { Count = pieces[i].Count - answer.Plan.Left[i] };
            }
        }

        if (unmet.Count > 0)
        {
            answer = PackSolver.Solve(numbers.Problem(pieces, free), Seed, inBrief, stop);
        }

        return trees.Of(pieces, answer, unmet);
    }

    /// <summary>Packs the rows into given flasks; what finds no room in them is left.</summary>
    /// <param name="afresh">The answer that took the flasks it liked; what is proved of it holds for this one.</param>
    /// <param name="counts">How many of each size.</param>
    /// <param name="free">How many of each size are free.</param>
    /// <param name="stop">Ends the search early.</param>
    public GroupAnswer PackInto(GroupAnswer afresh, int[] counts, IReadOnlyList<int> free, CancellationToken stop)
    {
        var packed = Pack(counts, inBrief: true, stop);
        return Freed(packed, packed.Packed.Plan.Flasks, free, afresh);
    }

    /// <summary>Puts pieces of like thickness together, in the flasks that there are.</summary>
    /// <param name="afresh">The answer that looks at no standing flask.</param>
    /// <param name="free">How many of each size are free.</param>
    /// <param name="stop">Ends it early.</param>
    public GroupAnswer Alike(GroupAnswer afresh, IReadOnlyList<int> free, CancellationToken stop)
    {
        var flasks = afresh.Packed.Plan.Flasks;
        var alike = PackLikeness.Together(Problem(afresh, free), flasks, cost.RanksMetalBeforeLikeness ? numbers.Button : null, WorkOfLikeness, stop);
        return alike.SequenceEqual(flasks) ? afresh : Freed(afresh, alike, free, afresh);
    }

    /// <summary>An answer as it is where other flasks than those it was packed into are free.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="free">How many of each size are free.</param>
    public GroupAnswer Freed(GroupAnswer answer, IReadOnlyList<int> free) => Freed(answer, answer.Packed.Plan.Flasks, free, answer);

    private GroupAnswer Freed(GroupAnswer answer, IEnumerable<PackedFlask> flasks, IReadOnlyList<int> free, GroupAnswer proved)
    {
        var plan = PackPlan.Empty(Problem(answer, free));
        foreach (var flask in flasks)
        {
            // Pieces weigh by the sizes that are free.
            plan.Add(flask with { Fill = flask.Content.Sum(c => c.Count * plan.Problem.Weights[c.Item]), Outgrown = 0 });
        }

        return trees.Of(answer.Packed.Pieces, new PackAnswer(plan, proved.LeastCost, proved.LeastFlasks), answer.WishesUnmet);
    }

    /// <summary>Packs the rows again with every piece left in the flask it stands in, as far as it fits.</summary>
    /// <param name="afresh">The answer that looks at no standing flask.</param>
    /// <param name="standing">The flasks that stand.</param>
    /// <param name="free">How many of each size are free.</param>
    /// <param name="stop">Ends the search for new flasks early.</param>
    public GroupAnswer Keep(GroupAnswer afresh, IReadOnlyList<StandingFlask> standing, IReadOnlyList<int> free, CancellationToken stop)
    {
        var (pieces, plan) = (afresh.Packed.Pieces, afresh.Packed.Plan);
        var kept = Homes(afresh, standing).Zip(standing, (home, stood) => (home, stood.HasLost)).ToList();
        var keeping = PackKeeping.Plan(Problem(afresh, free), kept, plan.Flasks, Seed, stop);
        return trees.Of(pieces, new PackAnswer(keeping, afresh.LeastCost, afresh.LeastFlasks), afresh.WishesUnmet);
    }

    /// <summary>Moves as few pieces out of the flasks they stand in as make a plan as cheap as the one searched afresh.</summary>
    /// <param name="homes">The flasks that stand, in whole numbers.</param>
    /// <param name="afresh">The answer that looks at no standing flask.</param>
    /// <param name="kept">The answer that moves nothing.</param>
    /// <param name="free">How many of each size are free, no fewer than the answer afresh takes.</param>
    /// <param name="inBrief">Whether it is only to be told what could be.</param>
    /// <param name="stop">Ends the search early.</param>
    public GroupAnswer Calm(
        IReadOnlyList<PackedFlask> homes, GroupAnswer afresh, GroupAnswer kept, IReadOnlyList<int> free, bool inBrief, CancellationToken stop)
    {
        var plan = PackCalming.Plan(
            Problem(afresh, free), homes, afresh.Packed.Plan.Flasks, kept.Packed.Plan.Flasks, inBrief ? WorkOfCalm / BriefCalm : WorkOfCalm, Seed, stop);
        return trees.Of(afresh.Packed.Pieces, new PackAnswer(plan, afresh.LeastCost, afresh.LeastFlasks), afresh.WishesUnmet);
    }

    /// <summary>Looks for an answer whose flasks and moves count less together.</summary>
    /// <param name="homes">The flasks that stand, in whole numbers.</param>
    /// <param name="start">The answer that counts least so far.</param>
    /// <param name="other">Another, whose flasks it may cost and of which it may take trees.</param>
    /// <param name="free">How many of each size are free, no fewer than the answer takes.</param>
    /// <param name="counts">What a flask counts, by size, and what a piece that moves counts.</param>
    /// <param name="stop">Ends the search early.</param>
    public GroupAnswer Weigh(
        IReadOnlyList<PackedFlask> homes, GroupAnswer start, GroupAnswer other, IReadOnlyList<int> free, (IReadOnlyList<long> OfFlask, long OfMove) counts,
        CancellationToken stop)
    {
        var (one, two) = (start.Packed.Plan, other.Packed.Plan);
        var aim = new StayingAim(Math.Max(one.Flasks.Count, two.Flasks.Count), Math.Min(one.Cost, two.Cost), Math.Max(one.Cost, two.Cost), counts.OfFlask, counts.OfMove);
        var plan = PackCalming.Weighed(Problem(start, free), homes, one.Flasks, [.. one.Flasks, .. two.Flasks], aim, WorkOfCalm, Seed, stop);
        return plan is null ? start : trees.Of(start.Packed.Pieces, new PackAnswer(plan, start.LeastCost, start.LeastFlasks), start.WishesUnmet);
    }

    private long WorkOfCalm => Math.Min(MostCalm, LeastCalm + (Pieces * CalmForEach));

    /// <summary>Flasks that stand, in whole numbers.</summary>
    /// <param name="afresh">The answer that looks at no standing flask.</param>
    /// <param name="standing">The flasks.</param>
    public IReadOnlyList<PackedFlask> Homes(GroupAnswer afresh, IReadOnlyList<StandingFlask> standing) => numbers.Homes(afresh.Packed.Pieces, standing);

    private static PackProblem Problem(GroupAnswer answer, IReadOnlyList<int> free)
    {
        var problem = answer.Packed.Plan.Problem;
        return new PackProblem(problem.Items, [.. problem.Sizes.Select((s, i) => s with { Free = free[i] })]);
    }

    // By the alloy alone, so that other alloys of the night change nothing.
    private ulong Seed => group.Alloy.Name.Aggregate(group.StonesIn ? 1UL : 0UL, (seed, c) => unchecked((seed * 31) + c));
}
