using System.Runtime.InteropServices;
using CastBook.Planning.Packing.Bounds;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Pieces that are left and trees with room: whether the pieces are worth more than the room, and how to go on.</summary>
/// <remarks>
/// Sectors are chosen in parts so that every piece is hung and all trees are filled to the same share, the least there is
/// (<see cref="CoverSimplex"/>). What that makes pieces worth is then held against what trees can be worth, in whole numbers: pieces
/// worth more than all trees do not fit, whatever the prices.
/// </remarks>
/// <param name="pool">The sectors known.</param>
/// <param name="left">How many of each piece are left.</param>
/// <param name="trees">The trees.</param>
/// <param name="likely">Sectors that are likely to be chosen.</param>
internal sealed class FitNode(SectorPool pool, int[] left, FitTree[] trees, PooledSector[] likely)
{
    /// <summary>What the trees are worth together, about, where all room is needed.</summary>
    public const int Unit = 1 << 20;

    /// <summary>What all pieces may be worth together.</summary>
    public const int MostSum = 1 << 29;

    // With room to spare, prices need not be the best.
    private const double FilledWell = 0.999;
    private const int EnoughRounds = 8;
    private const int MostRounds = 60;

    // An amount that is no matter, so that rows without need differ.
    private const double Trifle = 1e-6;

    private const int MostWays = 4000;
    private const int FewerWays = 16;
    private const long MostWorkOfFinder = 20_000_000;

    // What it takes to look at a known sector.
    private const long WorkOfOffer = 40;

    // To count the ways of a piece, beside a look at prices.
    private const int MostCounted = 400;
    private const long WorkOfFinder = 100_000;
    private const long WorkOfCounting = 1_000_000;

    private readonly SectorType[] types = pool.Types;
    private readonly int[] items = [.. Enumerable.Range(0, left.Length).Where(i => left[i] > 0)];
    private readonly int[] values = new int[left.Length];
    private readonly long[] metalPrices = new long[pool.Types.Length];
    private readonly long[] worths = new long[trees.Length];
    private readonly int[] widest = [.. pool.Types.Select((_, t) => FitCut.Widest(trees, t))];
    private readonly long metalLeft = left.Select((count, i) => count * pool.Problem.Metals[i]).Sum();
    private readonly List<PooledSector> offered = [];
    private long total;

    /// <summary>Steps of looking for ways.</summary>
    public long Work { get; private set; }

    /// <summary>The prices that were asked last.</summary>
    public FitCut? Cut { get; private set; }

    /// <summary>What each piece was said to be worth last.</summary>
    public int[] Values => values;

    /// <summary>The sectors that were chosen last.</summary>
    public PooledSector[] Chosen { get; private set; } = [];

    /// <summary>Whether the pieces are sure not to fit.</summary>
    public bool IsRefuted()
    {
        var master = Master();
        for (var round = 0; ; round++)
        {
            var before = master.Work;
            var filled = master.Solve();
            pool.Work += master.Work - before;
            Value(master);
            if (IsWorthMore())
            {
                return true;
            }

            Chosen = [.. master.Chosen.Where(c => c > 0).Select(c => offered[c - 1])];

            if ((filled < FilledWell && round >= EnoughRounds) || round >= MostRounds || !FindMore(master))
            {
                return false;
            }
        }
    }

    /// <summary>Sectors for the piece that can hang in the fewest ways, those that leave most to spare first.</summary>
    /// <param name="isHarder">Whether one piece is never easier to hang than another.</param>
    /// <param name="few">So many suffice.</param>
    /// <returns>The sectors, and whether all are among them that can be part of a way to hang everything.</returns>
    public (List<FitWay> Ways, bool IsAll) Ways(bool[][] isHarder, int few)
    {
        var found = Fewest(isHarder) ?? OfWidest(isHarder, few);
        found.Ways.Sort((a, b) => a.Spare != b.Spare ? b.Spare.CompareTo(a.Spare) : a.Tree.CompareTo(b.Tree));
        return found;
    }

    // Whichever piece is hung next, one of its ways is right.
    private (List<FitWay> Ways, bool IsAll)? Fewest(bool[][] isHarder)
    {
        var (fewest, most, end) = ((List<FitWay>?)null, MostCounted, Work + WorkOfCounting);
        foreach (var piece in items.OrderByDescending(Theta).ThenBy(i => i))
        {
            var (ways, isAll) = WaysOf(piece, 0, isHarder, most, WorkOfFinder);
            if (isAll && (fewest is null || ways.Count < fewest.Count))
            {
                (fewest, most) = (ways, ways.Count);
            }

            if (most == 0 || Work > end)
            {
                break;
            }
        }

        return fewest is null ? null : (fewest, true);
    }

    private (List<FitWay> Ways, bool IsAll) OfWidest(bool[][] isHarder, int few)
    {
        var (room, piece) = (worths.Sum() - total, items.MaxBy(Theta));
        var found = (Ways: new List<FitWay>(), IsAll: true);
        for (var share = few < MostWays ? FewerWays : 1; share >= 1; share /= 4)
        {
            found = WaysOf(piece, room - (room / share), isHarder, MostWays, MostWorkOfFinder);
            if (share > 1 && found.Ways.Count > few)
            {
                found.IsAll = false;
                break;
            }
        }

        return found;
    }

    private (List<FitWay> Ways, bool IsAll) WaysOf(int piece, long spare, bool[][] isHarder, int most, long workOfEach)
    {
        var (ways, isAll, sum) = (new List<FitWay>(), true, worths.Sum());
        for (var at = 0; at < trees.Length; at++)
        {
            var (tree, type) = (trees[at], types[trees[at].Type]);
            var member = Array.IndexOf(type.Members, piece);
            if (member < 0 || Array.Exists(trees[..at], t => t.Type == tree.Type && t.Angle == tree.Angle && t.Metal == tree.Metal))
            {
                continue;
            }

            for (var w = 0; w < type.Widths.Count; w++)
            {
                var width = type.Widths[w];
                if (width < type.Shapes[member].Theta || width > tree.Angle)
                {
                    continue;
                }

                var rest = sum - worths[at] + type.Turn(tree.Angle - width) + Cut!.MetalWorth(tree) - total;
                var finder = new SectorFinder(type, w, member, tree.Metal >= metalLeft ? isHarder : null, most - ways.Count, workOfEach);
                ways.AddRange(finder.Find(spare - rest, tree.Metal).Select(f => new FitWay(at, width, f.Sector, rest + f.Worth)));
                isAll &= !finder.IsCutShort;
                Work += finder.Work;
                if (!isAll && ways.Count >= most)
                {
                    return (ways, false);
                }
            }
        }

        return (ways, isAll);
    }

    // Where it takes least: elsewhere it is wider still.
    private int Theta(int item) => types.Where(t => t.Members.Contains(item)).Select(t => pool.Problem.Shapes[t.Size][item].Theta).DefaultIfEmpty(PackShape.Turn).Min();

    private CoverSimplex Master()
    {
        var master = new CoverSimplex([.. left.Select(l => (double)l), .. Enumerable.Range(1, 2 * types.Length).Select(k => -Trifle * k)]);
        double[] angles = [.. types.Select((_, t) => trees.Where(x => x.Type == t).Sum(x => x.Angle / (double)PackShape.Turn))];
        double[] metals = [.. types.Select((_, t) => IsMetalShort(t) ? trees.Where(x => x.Type == t).Sum(x => pool.MetalOf(t, x.Metal)) : 1 / Trifle)];
        master.Add([.. Enumerable.Range(left.Length, 2 * types.Length)], [.. angles, .. metals], 1);
        Offer(master, likely);
        master.LookFirst(1 + offered.Count);
        Offer(master, CollectionsMarshal.AsSpan(pool.Sectors));
        return master;
    }

    private void Offer(CoverSimplex master, ReadOnlySpan<PooledSector> sectors)
    {
        pool.Work += sectors.Length * WorkOfOffer;
        foreach (var sector in sectors)
        {
            if (sector.Width <= widest[sector.Type] && IsLeft(sector.Content))
            {
                offered.Add(sector);
                master.Add(sector.Rows, sector.Counts, 0);
            }
        }
    }

    private bool IsLeft(PackCount[] sector)
    {
        foreach (var (item, count) in sector)
        {
            if (count > left[item])
            {
                return false;
            }
        }

        return true;
    }

    private bool IsMetalShort(int type) => Array.Exists(trees, t => t.Type == type && t.Metal < metalLeft);

    private void Value(CoverSimplex master)
    {
        foreach (var item in items)
        {
            values[item] = (int)Math.Clamp(master.Duals[item] * Unit, 0, pool.Most);
        }

        for (var t = 0; t < types.Length; t++)
        {
            var price = master.Duals[pool.MetalRow(t)] * Unit * (1 << SectorType.MetalBits) / Math.Max(1, pool.Problem.Sizes[types[t].Size].Metal);
            metalPrices[t] = (long)Math.Clamp(price, 0, MostSum);
        }
    }

    private bool IsWorthMore()
    {
        Cut = new FitCut(types, left, trees, [.. values], [.. metalPrices]);
        total = items.Sum(i => (long)left[i] * values[i]);
        for (var i = 0; i < trees.Length; i++)
        {
            worths[i] = Cut.Worth(trees[i]);
        }

        return total > worths.Sum();
    }

    private bool FindMore(CoverSimplex master)
    {
        var isMore = false;
        for (var t = 0; t < types.Length; t++)
        {
            var price = master.Duals[pool.AngleRow(t)] * Unit / PackShape.Turn;
            for (var w = 0; w < types[t].Widths.Count; w++)
            {
                var width = types[t].Widths[w];
                if (types[t].Best(w) > ((price * width) + 2) * (1 + 1e-6))
                {
                    Offer(master, [pool.Add(t, width, types[t].Sector(w))]);
                    isMore = true;
                }
            }
        }

        return isMore;
    }
}
