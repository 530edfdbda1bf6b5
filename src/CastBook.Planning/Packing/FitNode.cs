namespace CastBook.Planning.Packing;

/// <summary>Pieces that are left and trees with room: whether the pieces are worth more than the room, and how to go on.</summary>
/// <remarks>
/// Sectors are chosen in parts so that every piece is hung and all trees are filled to the same share, the least there is
/// (<see cref="CoverSimplex"/>). What that makes pieces worth is then held against what trees can be worth, in whole numbers: pieces
/// worth more than all trees do not fit, whatever the prices.
/// </remarks>
/// <param name="pool">The sectors known.</param>
/// <param name="left">How many of each piece are left.</param>
/// <param name="trees">The trees.</param>
internal sealed class FitNode(SectorPool pool, int[] left, FitTree[] trees)
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

    private readonly SectorType[] types = pool.Types;
    private readonly int[] items = [.. Enumerable.Range(0, left.Length).Where(i => left[i] > 0)];
    private readonly int[] rowOf = new int[left.Length];
    private readonly int[] values = new int[left.Length];
    private readonly long[] metalPrices = new long[pool.Types.Length];
    private readonly long[] worths = new long[trees.Length];
    private readonly int[] widest = [.. pool.Types.Select((_, t) => trees.Where(x => x.Type == t).Select(x => x.Angle).DefaultIfEmpty(0).Max())];
    private readonly long metalLeft = left.Select((count, i) => count * pool.Problem.Metals[i]).Sum();
    private long total;

    /// <summary>Steps of looking for ways.</summary>
    public long Work { get; private set; }

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

            if ((filled < FilledWell && round >= EnoughRounds) || round >= MostRounds || !FindMore(master))
            {
                return false;
            }
        }
    }

    /// <summary>Sectors for the piece that is widest, those that leave most to spare first.</summary>
    /// <param name="isHarder">Whether one piece is never easier to hang than another.</param>
    /// <param name="few">So many suffice.</param>
    /// <returns>The sectors, and whether all are among them that can be part of a way to hang everything.</returns>
    public (List<FitWay> Ways, bool IsAll) Ways(bool[][] isHarder, int few)
    {
        var room = worths.Sum() - total;
        var found = (Ways: new List<FitWay>(), IsAll: true);
        for (var share = few < MostWays ? FewerWays : 1; share >= 1; share /= 4)
        {
            found = WaysOf(Widest(), room - (room / share), isHarder);
            if (share > 1 && found.Ways.Count > few)
            {
                found.IsAll = false;
                break;
            }
        }

        found.Ways.Sort((a, b) => a.Spare != b.Spare ? b.Spare.CompareTo(a.Spare) : a.Tree.CompareTo(b.Tree));
        return found;
    }

    private (List<FitWay> Ways, bool IsAll) WaysOf(int piece, long spare, bool[][] isHarder)
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


                var rest = sum - worths[at] + type.Turn(tree.Angle - width) + MetalWorth(at) - total;
                var finder = new SectorFinder(type, w, member, tree.Metal >= metalLeft ? isHarder : null, MostWays);
                ways.AddRange(finder.Find(spare - rest, tree.Metal).Select(f => new FitWay(at, width, f.Sector, rest + f.Worth)));
                isAll &= !finder.IsCutShort;
                Work += finder.Work;
            }
        }

        return (ways, isAll);
    }

    // Where it takes least: elsewhere it is wider still.
    private int Widest() => items.MaxBy(i => types.Where(t => t.Members.Contains(i)).Select(t => pool.Problem.Shapes[t.Size][i].Theta).DefaultIfEmpty(PackShape.Turn).Min());

    private CoverSimplex Master()
    {
        for (var i = 0; i < items.Length; i++)
        {
            rowOf[items[i]] = i;
        }

        var master = new CoverSimplex([.. items.Select(i => (double)left[i]), .. Enumerable.Range(1, 2 * types.Length).Select(k => -Trifle * k)]);
        double[] angles = [.. types.Select((_, t) => trees.Where(x => x.Type == t).Sum(x => x.Angle / (double)PackShape.Turn))];
        double[] metals = [.. types.Select((type, t) => IsMetalShort(t) ? trees.Where(x => x.Type == t).Sum(x => Metal(type, x.Metal)) : 1 / Trifle)];
        master.Add([.. Enumerable.Range(items.Length, 2 * types.Length)], [.. angles, .. metals], 1);
        foreach (var (type, width, sector) in pool.Sectors)
        {
            if (width <= widest[type] && Array.TrueForAll(sector, c => c.Count <= left[c.Item]))
            {
                Offer(master, type, width, sector);
            }
        }

        return master;
    }

    private bool IsMetalShort(int type) => Array.Exists(trees, t => t.Type == type && t.Metal < metalLeft);

    private double Metal(SectorType type, long metal) => metal / (double)Math.Max(1, pool.Problem.Sizes[type.Size].Metal);

    private void Offer(CoverSimplex master, int type, int width, PackCount[] sector) => master.Add(
        [.. sector.Select(c => rowOf[c.Item]), items.Length + type, items.Length + types.Length + type],
        [.. sector.Select(c => (double)c.Count), -width / (double)PackShape.Turn, -Metal(types[type], sector.Sum(c => c.Count * pool.Problem.Metals[c.Item]))],
        0);

    private void Value(CoverSimplex master)
    {
        foreach (var item in items)
        {
            values[item] = (int)Math.Clamp(master.Duals[rowOf[item]] * Unit, 0, pool.Most);
        }

        for (var t = 0; t < types.Length; t++)
        {
            var price = master.Duals[items.Length + types.Length + t] * Unit * (1 << SectorType.MetalBits) / Math.Max(1, pool.Problem.Sizes[types[t].Size].Metal);
            metalPrices[t] = (long)Math.Clamp(price, 0, MostSum);
        }
    }

    private bool IsWorthMore()
    {
        total = items.Sum(i => (long)left[i] * values[i]);
        for (var t = 0; t < types.Length; t++)
        {
            types[t].Price(left, values, metalPrices[t], widest[t]);
        }

        for (var i = 0; i < trees.Length; i++)
        {
            worths[i] = types[trees[i].Type].Turn(trees[i].Angle) + MetalWorth(i);
        }

        return total > worths.Sum();
    }

    // Rounded up: what pieces pay for their metal is rounded down.
    private long MetalWorth(int tree) => metalPrices[trees[tree].Type] is > 0 and var price
        ? (long)(((Int128)price * trees[tree].Metal) >> SectorType.MetalBits) + 1
        : 0;

    private bool FindMore(CoverSimplex master)
    {
        var isMore = false;
        for (var t = 0; t < types.Length; t++)
        {
            var price = master.Duals[items.Length + t] * Unit / PackShape.Turn;
            for (var w = 0; w < types[t].Widths.Count; w++)
            {
                var width = types[t].Widths[w];
                if (types[t].Best(w) > ((price * width) + 2) * (1 + 1e-6))
                {
                    var sector = types[t].Sector(w);
                    pool.Sectors.Add((t, width, sector));
                    Offer(master, t, width, sector);
                    isMore = true;
                }
            }
        }

        return isMore;
    }
}
