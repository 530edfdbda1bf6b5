using System.Numerics;

namespace CastBook.Planning.Packing;

/// <summary>Whether all pieces fit into given flasks: looks at every way that could be possible, sector by sector.</summary>
/// <remarks>
/// The widest piece is hung next, so that no two ways are the same; only with sectors that leave room enough for what the rest is worth
/// (<see cref="FitNode"/>). The most promising ways are followed first, then with more and more turns aside, then all. Only for pieces
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

    private readonly PackProblem problem;
    private readonly SectorType[] types;
    private readonly SectorPool pool;
    private readonly bool[][] isHarder;
    private readonly CancellationToken stop;
    private FitTree[] hung = [];
    private long steps;
    private long end;

    private FlaskFit(PackProblem problem, IEnumerable<(int Size, int Setting)> kinds, CancellationToken stop)
    {
        (this.problem, this.stop) = (problem, stop);
        types = [.. kinds.Select(k => new SectorType(problem, k.Size, k.Setting))];
        pool = new SectorPool(problem, types);
        isHarder = [.. problem.Items.Select((_, a) => problem.Items.Select((_, b) => IsHarder(a, b)).ToArray())];
    }

    private long Work => steps + pool.Work + types.Sum(t => t.Work);

    /// <summary>Looks whether everything fits.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="flasks">Size and setting of each flask.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="stop">Ends it early.</param>
    public static FitAnswer Of(PackProblem problem, IReadOnlyList<(int Size, int Setting)> flasks, long work, CancellationToken stop)
    {
        List<(int Size, int Setting)> kinds = [.. flasks.Distinct()];
        var fit = new FlaskFit(problem, kinds, stop);
        FitTree[] trees = [.. flasks.Select(f => new FitTree(kinds.IndexOf(f), PackShape.Turn, problem.Sizes[f.Size].Metal, null))];
        int[] all = [.. problem.Items.Select(i => i.Quantity)];
        bool? fits = null;
        foreach (var turns in TurnsAside.Append(AnyTurns))
        {
            fit.end = turns == AnyTurns ? work : fit.Work + ((work - fit.Work) / TurnsAside.Length);
            fits ??= fit.Hang(all, trees, turns);
        }

        return new FitAnswer(fits, fits == true ? fit.Plan() : null, fit.Work);
    }

    // All pieces that are left; nothing where not every way was looked at.
    private bool? Hang(int[] left, FitTree[] trees, int turns)
    {
        if (Array.TrueForAll(left, l => l == 0))
        {
            hung = trees;
            return true;
        }

        steps += WorkOfNode;
        if (Work >= end || stop.IsCancellationRequested)
        {
            return null;
        }

        var node = new FitNode(pool, left, trees);
        if (node.IsRefuted())
        {
            return false;
        }

        var (ways, isAll) = node.Ways(isHarder, turns == AnyTurns ? int.MaxValue : 1 << (2 * Math.Min(turns, 6)));
        steps += node.Work;
        for (var i = 0; i < ways.Count; i++)
        {
            var aside = i == 0 ? 0 : 1 + (BitOperations.Log2((uint)i) / 2);
            var fits = aside > turns || Work >= end ? null : Hung(left, trees, ways[i], turns == AnyTurns ? turns : turns - aside);
            if (fits == true)
            {
                return true;
            }

            isAll &= fits == false;
            if (aside > turns || Work >= end)
            {
                return null;
            }
        }

        return isAll ? false : null;
    }

    private bool? Hung(int[] left, FitTree[] trees, FitWay way, int turns)
    {
        int[] less = [.. left];
        FitTree[] more = [.. trees];
        var metal = trees[way.Tree].Metal;
        foreach (var (item, count) in way.Sector)
        {
            less[item] -= count;
            metal -= count * problem.Metals[item];
        }

        more[way.Tree] = trees[way.Tree] with
        {
            Angle = trees[way.Tree].Angle - way.Width,
            Metal = metal,
            Last = new FitSector(way.Sector, trees[way.Tree].Last),
        };
        return Hang(less, more, turns);
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

    private PackPlan Plan()
    {
        var plan = PackPlan.Empty(problem);
        foreach (var tree in hung.Where(t => t.Last is not null))
        {
            PackCount[][] sectors = [.. tree.Sectors()];
            PackCount[] content = [.. sectors.SelectMany(c => c).GroupBy(c => c.Item).OrderBy(g => g.Key).Select(g => new PackCount(g.Key, g.Sum(c => c.Count)))];
            plan.Add(new PackedFlask(types[tree.Type].Size, content, sectors) { Fill = content.Sum(c => c.Count * problem.Weights[c.Item]) });
        }

        return plan;
    }
}

/// <summary>Whether all pieces fit into given flasks.</summary>
/// <param name="Fits">Whether they do; nothing where the work did not suffice.</param>
/// <param name="Plan">The trees, where they do.</param>
/// <param name="Work">Steps that were spent.</param>
internal sealed record FitAnswer(bool? Fits, PackPlan? Plan, long Work);
