using System.Runtime.CompilerServices;
using CastBook.Planning.Floors;

namespace CastBook.Planning.Packing.Staying;

/// <summary>Trees of chosen flasks whose pieces move and change places one by one; meanwhile a tree may have more in it than hangs there.</summary>
/// <remarks>
/// Full trees leave pieces hardly a way to change places, trees that may be too full leave many. What is over counts as pieces that moved,
/// from moment to moment more while anything is over and less while all hangs, so that the trees swing about the edge of what hangs. From
/// hot to cold this is simulated annealing. Sources: Kirkpatrick, Gelatt and Vecchi, Optimization by Simulated Annealing, Science 220
/// (1983); of limits crossed at a price, Glover and Laguna, Tabu Search (1997), strategic oscillation.
/// </remarks>
internal sealed class CrowdedTrees
{
    // By how many pieces moved a change may be worse: at first, and in so many stages less and less.
    private const double Hot = 0.6;
    private const double Cooler = 0.9647;
    private const int Stages = 64;

    // As many pieces moved counts what is over: a whole turn, all that hangs on a trunk, all the metal that may be poured.
    private const double PriceOfTurn = 100;
    private const double PriceOfTrunk = 40;
    private const double PriceOfMetal = 40;

    // After so many changes that is made more or less, between limits.
    private const int TriesBetween = 256;
    private const double More = 1.006;
    private const double Less = 1 / 1.012;
    private const double LeastPressure = 0.3;
    private const double MostPressure = 10;

    // Half of the changes exchange two pieces; of the others some stay in their tree.
    private const double Exchanges = 0.5;
    private const double MovesInTree = 0.3;

    private const int WorkOfTry = 60;
    private const int WorkOfPiece = 6;

    // How much worse a change may be by chance, in thousandths of the heat; whole numbers are the same on every machine.
    private static readonly int[] Worse = [.. Enumerable.Range(0, 1024).Select(i => (int)Math.Round(-1000 * Math.Log((i + 0.5) / 1024)))];

    private readonly PackProblem problem;
    private readonly Chance chance;
    private readonly CrowdedTree[] trees;

    // The item of each piece, and its sector.
    private readonly int[] items;
    private readonly CrowdedSector[] sectorOf;
    private double pressure = 1;
    private int moved;

    /// <summary>Hangs every piece where it stood as far as it may hang there, and the others anywhere.</summary>
    /// <param name="problem">The problem; every piece that fits a size has a sector, and there are no wishes.</param>
    /// <param name="homes">Where pieces stood.</param>
    /// <param name="flasks">Which flask each was, less than 0 for a new one; its size and its setting. Every piece may hang in one of them.</param>
    /// <param name="seed">What chance starts from.</param>
    public CrowdedTrees(PackProblem problem, PackHomes homes, IReadOnlyList<(int Home, int Size, int Setting)> flasks, ulong seed)
    {
        (this.problem, chance, moved) = (problem, new Chance(seed), homes.Pieces);
        trees = [.. flasks.Select(f => new CrowdedTree(problem, f.Size, f.Setting, [.. problem.Items.Select((_, i) => homes.In(f.Home, i))]))];
        items = [.. problem.Items.SelectMany((item, i) => Enumerable.Repeat(i, item.Quantity))];
        sectorOf = [.. items.Select(Hung)];
    }

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    private bool IsHung => Array.TrueForAll(trees, t => t.IsHung);

    /// <summary>Cools the trees from hot to cold.</summary>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="most">How many pieces may have moved.</param>
    /// <param name="least">With so few it ends: no fewer can.</param>
    /// <param name="stop">Ends it early.</param>
    /// <returns>Trees that hang with fewest pieces moved, or nothing; and how near they came: pieces moved, with what was over as such.</returns>
    public (PackPlan? Plan, double Near) Cool(long work, int most, int least, CancellationToken stop)
    {
        var (begin, found, near) = (Work, (PackPlan?)null, double.MaxValue);
        for (var (stage, heat) = (0, Hot); stage < Stages; stage++, heat *= Cooler)
        {
            while (Work - begin < (stage + 1) * work / Stages && most >= least && !stop.IsCancellationRequested)
            {
                for (var i = 0; i < TriesBetween; i++)
                {
                    if (Try(heat) && moved <= most && IsHung)
                    {
                        (found, most) = (ToPlan(), moved - 1);
                    }
                }

                var over = trees.Sum(t => Price(t, 0, 0) + t.Sectors.Sum(s => Price(s, s.Over)));
                near = stage > Stages / 2 ? Math.Min(near, moved + over) : near;
                pressure = Math.Clamp(pressure * (over > 0 ? More : Less), LeastPressure, MostPressure);
            }
        }

        return (found, found is null ? near : most + 1);
    }

    private CrowdedSector Hung(int item)
    {
        CrowdedTree[] may = [.. trees.Where(t => t.MayHang(item))];
        CrowdedTree[] home = [.. may.Where(t => t.Staying(item, 1) > 0)];
        var tree = home.Length > 0 ? Drawn(home) : Drawn(may);
        var sector = tree.Sectors.MinBy(s => s.With(-1, item) is var (turn, over) ? Price(tree, turn - s.Turn, 0) + Price(s, over - s.Over) : 0)!;
        moved -= tree.Staying(item, 1);
        sector.Hang(item, problem.Metals[item]);
        return sector;
    }

    // Whether anything was changed.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Try(double heat)
    {
        Work += WorkOfTry;
        var (piece, other) = (Draw(items.Length), chance.Next() < Exchanges ? Draw(items.Length) : -1);
        var (item, from, back) = (items[piece], sectorOf[piece], other < 0 ? -1 : items[other]);
        var to = other < 0 ? Place(chance.Next() < MovesInTree ? from.Tree : Drawn(trees)) : sectorOf[other];
        if (to == from || back == item || !to.Tree.MayHang(item) || (back >= 0 && !from.Tree.MayHang(back)))
        {
            return false;
        }

        var most = heat * Worse[Draw(Worse.Length)] / 1000;
        var isOneTree = from.Tree == to.Tree;
        var staying = isOneTree ? 0 : from.Tree.Staying(item, -1) + to.Tree.Staying(item, 1) + (back < 0 ? 0 : to.Tree.Staying(back, -1) + from.Tree.Staying(back, 1));
        if (-staying > most && from.Tree.IsHung && to.Tree.IsHung)
        {
            return false;
        }

        Work += WorkOfPiece * (from.Count + to.Count);
        var (one, two, metal) = (from.With(item, back), to.With(back, item), problem.Metals[item] - (back < 0 ? 0 : problem.Metals[back]));
        var worse = Price(from, one.Over - from.Over) + Price(to, two.Over - to.Over) + (isOneTree
            ? Price(to.Tree, one.Turn - from.Turn + two.Turn - to.Turn, 0)
            : Price(from.Tree, one.Turn - from.Turn, -metal) + Price(to.Tree, two.Turn - to.Turn, metal) - Price(from.Tree, 0, 0)) - Price(to.Tree, 0, 0);
        if ((pressure * worse) - staying > most)
        {
            return false;
        }

        moved -= staying;
        Change(piece, from, to);
        if (other >= 0)
        {
            Change(other, to, from);
        }

        return true;
    }

    private void Change(int piece, CrowdedSector from, CrowdedSector to)
    {
        from.Take(items[piece], problem.Metals[items[piece]]);
        to.Hang(items[piece], problem.Metals[items[piece]]);
        sectorOf[piece] = to;
    }

    // A sector of a tree; of those that are empty one is as good as another.
    private CrowdedSector Place(CrowdedTree tree) => tree.Sectors[Math.Min(tree.Used, Draw(tree.Sectors.Length))];

    private static double Price(CrowdedTree tree, int turn, long metal) =>
        tree.Over(turn, metal) is var (overTurn, overMetal) ? (PriceOfTurn * overTurn) + (PriceOfMetal * overMetal) : 0;

    private static double Price(CrowdedSector sector, int over) => PriceOfTrunk * over / sector.Tree.Rod;

    private PackPlan ToPlan()
    {
        var plan = PackPlan.Empty(problem);
        foreach (var tree in trees.Where(t => Array.Exists(t.Sectors, s => s.Count > 0)))
        {
            plan.Add(PackedFlask.Of(problem, tree.Size, [.. tree.Sectors.Where(s => s.Count > 0).Select(Content)]));
        }

        return plan;
    }

    private static PackCount[] Content(CrowdedSector sector) => [.. sector.Items.ToArray().GroupBy(i => i).Select(g => new PackCount(g.Key, g.Count()))];

    private T Drawn<T>(T[] of) => of[Draw(of.Length)];

    private int Draw(int below) => (int)(chance.Next() * below);
}
