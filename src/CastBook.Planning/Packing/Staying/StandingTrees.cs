using CastBook.Planning.Floors;

namespace CastBook.Planning.Packing.Staying;

/// <summary>The trees of a plan, sector by sector, whose pieces change places two sectors at a time.</summary>
internal sealed class StandingTrees
{
    private const double ByPieceThatMoved = 0.5;
    private const double InOneTree = 0.2;

    private readonly PackProblem problem;
    private readonly Chance chance;
    private readonly SectorPair pair;
    private readonly List<Tree> trees = [];
    private readonly List<(int From, int Item, int To)> away = [];
    private long looks;

    /// <summary>Takes the trees of a plan.</summary>
    /// <param name="problem">The problem; every piece that fits a size has a sector, and there are no wishes.</param>
    /// <param name="homes">Where pieces stood.</param>
    /// <param name="plan">The plan; it is not changed.</param>
    /// <param name="chance">Draws.</param>
    public StandingTrees(PackProblem problem, PackHomes homes, PackPlan plan, Chance chance)
    {
        (this.problem, this.chance, pair) = (problem, chance, new SectorPair(problem, chance));
        foreach (var (flask, home) in plan.Flasks.Zip(homes.Of(plan)))
        {
            int[] settings = [.. problem.Settings.Where(s => Array.TrueForAll(flask.Content, c => problem.Items[c.Item].MayBeCastAt(s)))];
            var tree = new Tree(flask.Size, settings[Draw(settings.Length)], [.. problem.Items.Select((_, i) => homes.In(home, i))]);
            trees.Add(tree);
            foreach (var column in flask.Columns)
            {
                var sector = new Sector(new int[problem.Items.Length]);
                tree.Sectors.Add(sector);
                Array.ForEach(column, p => sector.Counts[p.Item] += p.Count);
                Changed(tree, sector, new int[problem.Items.Length]);
            }
        }
    }

    /// <summary>Steps so far.</summary>
    public long Work => pair.Work + looks;

    /// <summary>How many pieces hang in the flask they stood in.</summary>
    public int Stayed => trees.Sum(t => t.Stayed);

    /// <summary>Hangs the pieces of two sectors anew.</summary>
    /// <param name="heat">By how much less worth a way is half as likely, in parts of <see cref="SectorPair.Piece"/>.</param>
    public void Exchange(int heat)
    {
        if (Chosen() is not var (from, one, to))
        {
            return;
        }

        var at = Draw(to.Sectors.Count + 1);
        var other = at < to.Sectors.Count ? to.Sectors[at] : new Sector(new int[problem.Items.Length]);
        if (one == other)
        {
            return;
        }

        var isOneTree = from == to;
        var more = isOneTree ? other.Theta : 0;
        int[] ones = [.. one.Counts];
        int[] others = [.. other.Counts];
        if (pair.Draw(one.Counts, other.Counts, (Side(from, one, more), Side(to, other, isOneTree ? one.Theta : 0), isOneTree), Staying, heat))
        {
            if (at == to.Sectors.Count)
            {
                to.Sectors.Add(other);
            }

            Changed(from, one, ones);
            Changed(to, other, others);
        }

        int Staying(int item, int count) => isOneTree ? 0
            : Math.Min(from.Counts[item] - ones[item] + count, from.Stood[item])
            + Math.Min(to.Counts[item] + ones[item] - count, to.Stood[item]);
    }

    /// <summary>The trees as a plan.</summary>
    public PackPlan ToPlan()
    {
        var plan = PackPlan.Empty(problem);
        foreach (var tree in trees)
        {
            plan.Add(PackedFlask.Of(problem, tree.Size, [.. tree.Sectors.Select(s => problem.ByTail[tree.Size].Where(i => s.Counts[i] > 0).Select(i => new PackCount(i, s.Counts[i])).ToArray())]));
        }

        return plan;
    }

    // Now a sector with a piece that could hang where it stood, now any two.
    private (Tree From, Sector One, Tree To)? Chosen()
    {
        if (chance.Next() >= ByPieceThatMoved)
        {
            var tree = trees[Draw(trees.Count)];
            return (tree, tree.Sectors[Draw(tree.Sectors.Count)], chance.Next() < InOneTree ? tree : trees[Draw(trees.Count)]);
        }

        away.Clear();
        looks += trees.Count * problem.Items.Length;
        for (var item = 0; item < problem.Items.Length; item++)
        {
            for (var from = 0; from < trees.Count; from++)
            {
                for (var to = 0; to < trees.Count && trees[from].Counts[item] > trees[from].Stood[item]; to++)
                {
                    if (trees[to].Counts[item] < trees[to].Stood[item])
                    {
                        away.Add((from, item, to));
                    }
                }
            }
        }

        if (away.Count == 0)
        {
            return null;
        }

        var (at, piece, home) = away[Draw(away.Count)];
        var sectors = trees[at].Sectors.FindAll(s => s.Counts[piece] > 0);
        return (trees[at], sectors[Draw(sectors.Count)], trees[home]);
    }

    private SectorSide Side(Tree tree, Sector sector, int more) => new(
        tree.Size, tree.Setting, PackShape.Turn - tree.Theta + sector.Theta + more,
        more > 0 ? PackProblem.AnyMetal : problem.Sizes[tree.Size].Metal - tree.Metal + sector.Metal);

    private void Changed(Tree tree, Sector sector, int[] before)
    {
        var (theta, metal) = (0, 0L);
        for (var item = 0; item < before.Length; item++)
        {
            var count = sector.Counts[item];
            if (count > 0)
            {
                theta = Math.Max(theta, problem.Shapes[tree.Size][item].Theta);
                metal += count * problem.Metals[item];
            }

            if (count != before[item])
            {
                tree.Stayed -= Math.Min(tree.Counts[item], tree.Stood[item]);
                tree.Counts[item] += count - before[item];
                tree.Stayed += Math.Min(tree.Counts[item], tree.Stood[item]);
            }
        }

        tree.Theta += theta - sector.Theta;
        tree.Metal += metal - sector.Metal;
        (sector.Theta, sector.Metal) = (theta, metal);
        if (theta == 0)
        {
            tree.Sectors.Remove(sector);
        }
    }

    private int Draw(int below) => (int)(chance.Next() * below);

    private sealed class Tree(int size, int setting, int[] stood)
    {
        public int Size => size;

        public int Setting => setting;

        public int[] Stood => stood;

        public int[] Counts { get; } = new int[stood.Length];

        public List<Sector> Sectors { get; } = [];

        public int Theta { get; set; }

        public long Metal { get; set; }

        public int Stayed { get; set; }
    }

    private sealed class Sector(int[] counts)
    {
        public int[] Counts => counts;

        public int Theta { get; set; }

        public long Metal { get; set; }
    }
}
