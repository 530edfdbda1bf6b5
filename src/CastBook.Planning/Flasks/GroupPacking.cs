using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Searching;
using CastBook.Planning.Packing.Staying;

namespace CastBook.Planning.Flasks;

/// <summary>Turns a group of rows into a problem of whole numbers, and the answer into trees.</summary>
internal sealed class GroupPacking
{
    // Metal is counted in hundredths of a microlitre, far finer than any scale.
    private const double UnitsPerMl = 100_000;

    // Steps to put like thicknesses together.
    private const long WorkOfLikeness = 100_000_000;

    // Steps to look for a few moves that are worth as much as a search afresh.
    private const long LeastCalm = 200_000_000;
    private const long CalmForEach = 15_000_000;
    private const long MostCalm = 2_000_000_000;
    private const long BriefCalm = 6;

    private readonly PieceGroup group;
    private readonly IReadOnlyList<UsableSize> sizes;
    private readonly List<DateOnly> dates;
    private readonly FlaskCost cost;
    private readonly FlaskRoom room;
    private readonly List<string> letters;
    private readonly long[] roomUnits;
    private readonly bool[] isByCup;

    /// <summary>Prepares a group.</summary>
    /// <param name="group">The rows; each fits some size alone.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="room">What a tree may take.</param>
    /// <param name="dates">The days on which anything of the night is due, soonest first.</param>
    /// <param name="cost">What a flask costs by the order of wishes.</param>
    public GroupPacking(PieceGroup group, IReadOnlyList<UsableSize> sizes, FlaskRoom room, List<DateOnly> dates, FlaskCost cost)
    {
        (this.group, this.sizes, this.room, this.dates, this.cost) = (group, sizes, room, dates, cost);
        letters = [.. group.Wishes.Values.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

        // Looked up once, so that groups can be packed side by side.
        roomUnits = [.. sizes.Select(s => Units(room.Ml(s, group.Alloy)))];
        isByCup = [.. sizes.Select(s => room.ByCupMl(s) < room.ByCrucibleMl(s, group.Alloy))];
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
        var pieces = group.Pieces
            .Select(p => (Piece: p, Count: p.Quantity, Pin: group.Wishes.TryGetValue(p.Id, out var letter) ? letters.IndexOf(letter) : -1))
            .ToList();
        var unmet = new Dictionary<int, int>();
        var answer = Solve(pieces, free, inBrief, stop);

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
            answer = Solve(pieces, free, inBrief, stop);
        }

        return Answer(pieces, answer, unmet);
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
        var alike = PackLikeness.Together(Problem(afresh, free), flasks, cost.RanksMetalBeforeLikeness ? Button : null, WorkOfLikeness, stop);
        return alike.SequenceEqual(flasks) ? afresh : Freed(afresh, alike, free, afresh);

        long Button(int size, long metal) => Units(room.Button(sizes[size], metal / UnitsPerMl).Milliliters);
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

        return Answer(answer.Packed.Pieces, new PackAnswer(plan, proved.LeastCost, proved.LeastFlasks), answer.WishesUnmet);
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
        return Answer(pieces, new PackAnswer(keeping, afresh.LeastCost, afresh.LeastFlasks), afresh.WishesUnmet);
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
        return Answer(afresh.Packed.Pieces, new PackAnswer(plan, afresh.LeastCost, afresh.LeastFlasks), afresh.WishesUnmet);
    }

    private long WorkOfCalm => Math.Min(MostCalm, LeastCalm + (Pieces * CalmForEach));

    /// <summary>Flasks that stand, in whole numbers.</summary>
    /// <param name="afresh">The answer that looks at no standing flask.</param>
    /// <param name="standing">The flasks.</param>
    public IReadOnlyList<PackedFlask> Homes(GroupAnswer afresh, IReadOnlyList<StandingFlask> standing)
    {
        var left = afresh.Packed.Pieces.Select(p => p.Count).ToArray();
        return [.. standing.Select(f => Whole(f, afresh.Packed.Pieces, left))];
    }

    private static PackProblem Problem(GroupAnswer answer, IReadOnlyList<int> free)
    {
        var problem = answer.Packed.Plan.Problem;
        return new PackProblem(problem.Items, [.. problem.Sizes.Select((s, i) => s with { Free = free[i] })]);
    }

    // A row may have been packed as two, one of them pinned.
    private PackedFlask Whole(StandingFlask flask, IReadOnlyList<(TreePiece Piece, int Count, int Pin)> pieces, int[] left)
    {
        var pin = letters.IndexOf(flask.Letter);
        var content = new SortedDictionary<int, int>();
        foreach (var (id, count) in flask.Content)
        {
            var more = count;
            for (var i = 0; i < pieces.Count && more > 0; i++)
            {
                if (pieces[i].Piece.Id == id && (pieces[i].Pin < 0 || pieces[i].Pin == pin) && left[i] > 0)
                {
                    content[i] = Math.Min(more, left[i]);
                    left[i] -= content[i];
                    more -= content[i];
                }
            }
        }

        return new PackedFlask(flask.Size.Index, [.. content.Select(c => new PackCount(c.Key, c.Value))], []) { Pin = pin };
    }

    private PackAnswer Solve(List<(TreePiece Piece, int Count, int Pin)> pieces, IReadOnlyList<int> free, bool inBrief, CancellationToken stop)
    {
        var items = pieces.Select(p => new PackItem(p.Count, MetalOf(p.Piece), [.. sizes.Select(s => Shape(p.Piece, s))])
        {
            Lowest = (int)p.Piece.Coldest,
            Highest = (int)p.Piece.Hottest,
            Pin = p.Pin,
            Section = SectionOf(p.Piece.Metal.Piece),
            Sort = p.Piece.Kind == PatternKind.Resin ? 1 : 0,
            Urgency = p.Piece.Metal.Piece.Due is { } due ? Math.Max(1, PackItem.MostUrgent - dates.IndexOf(due)) : 0,
        });
        var flasks = sizes.Select(s => new PackSize(s.Rod, roomUnits[s.Index], cost.Of(s), free[s.Index]));
        return PackSolver.Solve(new PackProblem([.. items], [.. flasks]), Seed, inBrief, stop);
    }

    // The heaviest section decides how a piece freezes; of a ring its band is one. The third size of other pieces is none, as they may be hollow.
    // What is thicker than the heavy band begins is all alike.
    private static int SectionOf(Piece piece) => (int)Math.Round(Math.Min(
        (piece.HeaviestSection ?? piece.FinestSection ?? (piece.Box is { IsRing: true } ring ? ring.Thickness : null))?.Millimeters ?? 0, SectionBands.HeavyAbove.Millimeters) * 100);

    // By the alloy alone, so that other alloys of the night change nothing.
    private ulong Seed => group.Alloy.Name.Aggregate(group.StonesIn ? 1UL : 0UL, (seed, c) => unchecked((seed * 31) + c));

    private static PackShape Shape(TreePiece piece, UsableSize size)
    {
        if (!piece.FitsIn(size))
        {
            return PackShape.None;
        }

        if (piece.Shapes is null)
        {
            return new PackShape(0, 0, 0, PackShape.Whole / piece.PerTree[size.Index]);
        }

        var shape = piece.Shapes[size.Index];
        return new PackShape(shape.Theta, shape.Pitch, shape.Tail, 0);
    }

    private static long MetalOf(TreePiece piece) =>
        (long)Math.Min(PackProblem.AnyMetal, Math.Ceiling((piece.MetalMl * UnitsPerMl) - PieceShape.Dust));

    private static long Units(double ml) => ml <= 0 ? 0 : (long)Math.Min(PackProblem.AnyMetal, Math.Floor((ml * UnitsPerMl * (1 + PieceShape.Dust)) + PieceShape.Dust));

    private GroupAnswer Answer(IReadOnlyList<(TreePiece Piece, int Count, int Pin)> pieces, PackAnswer answer, IReadOnlyDictionary<int, int> unmet)
    {
        var plan = answer.Plan;
        var left = new Dictionary<int, int>();
        for (var i = 0; i < pieces.Count; i++)
        {
            left[pieces[i].Piece.Id] = left.GetValueOrDefault(pieces[i].Piece.Id) + plan.Left[i];
        }

        var limits = new PackLimits(plan, [.. sizes.Select(s => s.Owned)]);
        var flasks = plan.Flasks
            .OrderByDescending(f => plan.Problem.Sizes[f.Size].Cost).ThenByDescending(f => f.Fill).ThenBy(f => f.Content[0].Item)
            .Select(f => new FilledFlask(group.Alloy, sizes[f.Size], [.. Merged(pieces, f.Content).OrderBy(c => c.Piece.Id)])
            {
                Sectors = [.. f.Columns.Select(c => Merged(pieces, c))],
                Letter = f.Pin >= 0 ? letters[f.Pin] : null,
                Limit = new Lazy<FlaskLimit>(() => LimitOf(limits.Of(f), f.Size)),
            });
        return new GroupAnswer([.. flasks], left, unmet)
        {
            Packed = new PackedGroup(pieces, plan),
            LeastFlasks = answer.LeastFlasks,
            LeastCost = answer.LeastCost,
            Cost = plan.Cost,
            Lost = plan.Lost,
        };
    }

    private FlaskLimit LimitOf(PackLimit limit, int size) => limit switch
    {
        PackLimit.Free => FlaskLimit.Owned,
        PackLimit.Setting => FlaskLimit.Temperature,
        PackLimit.Metal => isByCup[size] ? FlaskLimit.Cup : FlaskLimit.Crucible,
        PackLimit.Turn => FlaskLimit.Turn,
        PackLimit.Height => FlaskLimit.Height,
        PackLimit.HasRoom => FlaskLimit.HasRoom,
        _ => FlaskLimit.Nothing,
    };

    private static List<(TreePiece Piece, int Count)> Merged(IReadOnlyList<(TreePiece Piece, int Count, int Pin)> pieces, PackCount[] counts)
    {
        var merged = new List<(TreePiece Piece, int Count)>();
        foreach (var (item, count) in counts)
        {
            var piece = pieces[item].Piece;
            var at = merged.FindIndex(m => m.Piece == piece);
            if (at < 0)
            {
                merged.Add((piece, count));
            }
            else
            {
                merged[at] = (piece, merged[at].Count + count);
            }
        }

        return merged;
    }
}
