using System.Numerics;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Whether all pieces fit into given flasks: looks at every way that could be possible, sector by sector.</summary>
/// <remarks>
/// The piece that can hang in the fewest ways is hung next; only with sectors that leave room enough for what the rest is worth
/// (<see cref="FitNode"/>). Prices that refuted one sector are asked of the others first (<see cref="FitCut"/>), and what was refuted
/// once is not looked at again, whichever way led there. The most promising ways are followed first, then with more and more turns aside, then all. Only for pieces
/// with sectors and without wishes.
/// </remarks>
internal sealed class FlaskFit
{
    // How many turns aside from the most promising ways are made, in turn.
    private static readonly int[] TurnsAside = [0, 1, 2, 3, 4, 6, 8];

    // Every way.
    private const int AnyTurns = 1 << 20;

    // What one step of the search takes besides its prices, in steps of the tables.
    private const long WorkOfNode = 10_000;
    private const long WorkOfCut = 30;

    // Prices that are asked before a look at prices of its own.
    private const int MostCuts = 300;

    // Points with more ways are worked out anew, so that they do not fill the memory.
    private const int MostKept = 200;

    private readonly PackProblem problem;
    private readonly FitTree[] trees;
    private readonly SectorType[] types;
    private readonly SectorPool pool;
    private readonly bool[][] isHarder;
    private readonly CancellationToken stop;
    private readonly FitMemory memory;
    private readonly List<FitCut> cuts = [];
    private FitCut? last;
    private FitTree[] hung = [];
    private long steps;
    private long end;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="flasks">Size and setting of each flask.</param>
    /// <param name="stop">Ends every look early.</param>
    public FlaskFit(PackProblem problem, IReadOnlyList<(int Size, int Setting)> flasks, CancellationToken stop)
    {
        (this.problem, this.stop) = (problem, stop);
        List<(int Size, int Setting)> kinds = [.. flasks.Distinct()];
        trees = [.. flasks.Select(f => new FitTree(kinds.IndexOf(f), PackShape.Turn, problem.Sizes[f.Size].Metal, null))];
        types = [.. kinds.Select(k => new SectorType(problem, k.Size, k.Setting))];
        pool = new SectorPool(problem, types);
        memory = new FitMemory(problem);
        isHarder = [.. problem.Items.Select((_, a) => problem.Items.Select((_, b) => IsHarder(a, b)).ToArray())];
    }

    private long Work => steps + pool.Work + types.Sum(t => t.Work);

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="work">How many steps to spend.</param>
    public FitAnswer Look(long work)
    {
        int[] all = [.. problem.Items.Select(i => i.Quantity)];
        var (before, until) = (Work, Work + work);
        bool? fits = null;
        foreach (var turns in TurnsAside.Append(AnyTurns))
        {
            end = turns == AnyTurns ? until : Work + ((until - Work) / TurnsAside.Length);
            fits ??= Hang(all, trees, [], turns);
        }

        return new FitAnswer(fits, fits == true ? FitTree.Plan(problem, types, hung) : null, Work - before);
    }

    // All pieces that are left; nothing where not every way was looked at.
    private bool? Hang(int[] left, FitTree[] now, PooledSector[] likely, int turns)
    {
        if (Array.TrueForAll(left, l => l == 0))
        {
            hung = now;
            return true;
        }

        var state = memory.StateOf(left, now);
        if (memory.IsRefuted(state))
        {
            return false;
        }

        var point = memory.PointOf(state);
        if (point is null)
        {
            steps += WorkOfNode;
            if (Work >= end || stop.IsCancellationRequested)
            {
                return null;
            }

            point = Look(left, now, likely, turns);
            if (point is { IsAll: true, Ways.Count: <= MostKept })
            {
                memory.Keep(state, point);
            }
        }

        var fits = point is null ? false : Follow(point, left, now, turns);
        if (fits == false)
        {
            memory.Refute(state);
        }

        return fits;
    }

    // How to go on; nothing where the rest does not fit.
    private FitPoint? Look(int[] left, FitTree[] now, PooledSector[] likely, int turns)
    {
        var node = new FitNode(pool, left, now, likely);
        if (node.IsRefuted())
        {
            last = node.Cut;
            return null;
        }

        var (ways, isAll) = node.Ways(isHarder, turns == AnyTurns ? int.MaxValue : 1 << (2 * Math.Min(turns, 6)));
        steps += node.Work;
        return new FitPoint(ways, isAll, node.Chosen);
    }

    private bool? Follow(FitPoint point, int[] left, FitTree[] now, int turns)
    {
        var known = cuts.Count;
        cuts.AddRange(point.Cuts);
        bool? fits = null;
        for (var i = 0; i < point.Ways.Count && fits != true;)
        {
            var aside = i == 0 ? 0 : 1 + (BitOperations.Log2((uint)i) / 2);
            if (aside > turns || Work >= end)
            {
                break;
            }

            var (less, more) = Hung(left, now, point.Ways[i]);
            steps += WorkOfCut * cuts.Count;
            fits = cuts.Exists(c => c.Refutes(less, more)) ? false : Hang(less, more, point.Chosen, turns == AnyTurns ? turns : turns - aside);
            if (last is not null && Learnt(left, now, less, more) is { } cut)
            {
                point.Cuts.Add(cut);
                cuts.Add(cut);
            }

            last = null;
            if (fits == false)
            {
                point.Ways.RemoveAt(i);
            }
            else
            {
                i++;
            }
        }

        cuts.RemoveRange(known, cuts.Count - known);
        return fits == true ? true : point.IsAll && point.Ways.Count == 0 ? false : null;
    }

    // What one sector leaves too little room by, another may too.
    private FitCut? Learnt(int[] left, FitTree[] now, int[] less, FitTree[] more) =>
        cuts.Count < MostCuts && last!.For(types, left, now) is var cut && cut.Refutes(less, more) ? cut : null;

    private (int[] Left, FitTree[] Trees) Hung(int[] left, FitTree[] now, FitWay way)
    {
        int[] less = [.. left];
        FitTree[] more = [.. now];
        var metal = now[way.Tree].Metal;
        foreach (var (item, count) in way.Sector)
        {
            less[item] -= count;
            metal -= count * problem.Metals[item];
        }

        more[way.Tree] = now[way.Tree] with
        {
            Angle = now[way.Tree].Angle - way.Width,
            Metal = metal,
            Last = new FitSector(way.Sector, now[way.Tree].Last),
        };
        return (less, more);
    }

    // Wherever the first hangs the second could hang too, and it takes no less.
    private bool IsHarder(int first, int second)
    {
        var isEqual = problem.Metals[first] == problem.Metals[second];
        foreach (var type in types)
        {
            if (!type.Members.Contains(first))
            {
                continue;
            }

            var (a, b) = (problem.Shapes[type.Size][first], problem.Shapes[type.Size][second]);
            if (!type.Members.Contains(second) || a.Theta < b.Theta || a.Pitch < b.Pitch || a.Tail < b.Tail)
            {
                return false;
            }

            isEqual &= a == b;
        }

        return problem.Metals[first] >= problem.Metals[second] && (!isEqual || first < second);
    }
}

/// <summary>Whether all pieces fit into given flasks.</summary>
/// <param name="Fits">Whether they do; nothing where the work did not suffice.</param>
/// <param name="Plan">The trees, where they do.</param>
/// <param name="Work">Steps that were spent.</param>
internal sealed record FitAnswer(bool? Fits, PackPlan? Plan, long Work);
