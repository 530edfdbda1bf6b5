namespace CastBook.Planning.Packing.Fitting;

/// <summary>Whether all pieces fit into given flasks: looks at every way of cutting the trees into sectors of widths that pieces have.</summary>
/// <remarks>
/// Trees have few sectors where dense nights are hard, and sectors in parts say little; once the widths are whole numbers of sectors, what
/// these can be worth says nearly all. For each way of cutting, <see cref="WidthMaster"/> finds prices that refute it, which refute most
/// others at a glance (<see cref="WidthCut"/>); what is left <see cref="WidthHanging"/> hangs or refutes. A narrower sector in place of a
/// wider one is never needed. Only for pieces with sectors and without wishes.
/// </remarks>
internal sealed class WidthFit
{
    // How many ways of filling sectors are listed, by how often it was looked.
    private const int FewListed = 3000;
    private const int MoreListed = 2;
    private const int MostListed = 12_000;

    // Prices that are kept.
    private const int MostCuts = 300;

    // What of a look goes into one way of cutting.
    private const int ShareOfOne = 4;

    // To ask prices about a sector, or to tell them of one.
    private const int WorkOfCheck = 10;

    private readonly PackProblem problem;
    private readonly SectorType[] types;
    private readonly FitTree[] trees;
    private readonly CancellationToken stop;
    private readonly int[] all;
    private readonly WidthMaster master;
    private readonly WidthHanging hanging;
    private readonly List<WidthCut> cuts = [];
    private readonly HashSet<string> refuted = [];

    // The sectors chosen so far, and where those of each tree begin.
    private readonly List<WidthChoice> chosen = [];
    private readonly int[] begins;
    private long steps;
    private long end;
    private long workOfOne;
    private int mostListed;
    private bool isWhole;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="flasks">Size and setting of each flask.</param>
    /// <param name="stop">Ends every look early.</param>
    public WidthFit(PackProblem problem, IReadOnlyList<(int Size, int Setting)> flasks, CancellationToken stop)
    {
        (this.problem, this.stop) = (problem, stop);
        List<(int Size, int Setting)> kinds = [.. flasks.Distinct()];
        types = [.. kinds.Select(k => new SectorType(problem, k.Size, k.Setting))];
        trees = [.. flasks.Select(f => new FitTree(kinds.IndexOf(f), PackShape.Turn, problem.Sizes[f.Size].Metal, null)).OrderBy(t => t.Type)];
        all = [.. problem.Items.Select(i => i.Quantity)];
        (master, hanging) = (new WidthMaster(problem, types), new WidthHanging(problem, types, trees, stop));
        begins = new int[trees.Length];
    }

    private long Work => steps + master.Work + hanging.Work + types.Sum(t => t.Work);

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="work">How many steps to spend.</param>
    public FitAnswer Look(long work)
    {
        var before = Work;
        (end, workOfOne) = (before + work, work / ShareOfOne);
        mostListed = mostListed == 0 ? FewListed : Math.Min(MostListed, mostListed * MoreListed);
        isWhole = true;
        if (cuts.Count == 0 && IsTooMuch())
        {
            return new FitAnswer(false, null, Work - before);
        }

        var fits = Begin(0);
        return new FitAnswer(fits ? true : isWhole ? false : null, fits ? FitTree.Plan(problem, types, hanging.Hung) : null, Work - before);
    }

    // Trees cut in parts: what refutes nothing is a cut to begin with.
    private bool IsTooMuch()
    {
        var pool = new SectorPool(problem, types);
        var node = new FitNode(pool, all, trees, []);
        var isTooMuch = node.IsRefuted();
        steps += pool.Work;
        cuts.Add(new WidthCut(types, trees, all, node.Values));
        return isTooMuch;
    }

    private bool Begin(int tree)
    {
        if (tree == trees.Length)
        {
            return Hang();
        }

        begins[tree] = chosen.Count;
        return Cut(tree, PackShape.Turn, int.MaxValue, tree > 0 && trees[tree].Type == trees[tree - 1].Type);
    }

    // Sectors of a tree from the widest down; equal trees in turn, so that none is cut as one that comes later. Whether everything was found to fit.
    private bool Cut(int tree, int rest, int widest, bool isAsBefore)
    {
        var (type, widths) = (trees[tree].Type, types[trees[tree].Type].Widths);
        if (widths.Count == 0 || widths[0] > rest)
        {
            return IsWidest(tree, rest) && Begin(tree + 1);
        }

        var most = isAsBefore ? Math.Min(widest, Before(tree)) : widest;
        for (var w = Math.Min(most, widths.Count - 1); w >= 0; w--)
        {
            if (Work >= end || stop.IsCancellationRequested)
            {
                isWhole = false;
                return false;
            }

            var sector = new WidthChoice(tree, type, w);
            if (widths[w] > rest || IsRefuted(sector, rest - widths[w]))
            {
                continue;
            }

            steps += WorkOfCheck * cuts.Count;
            cuts.ForEach(c => c.Choose(chosen.Count, sector));
            chosen.Add(sector);
            var fits = Cut(tree, rest - widths[w], w, isAsBefore && w == most);
            chosen.RemoveAt(chosen.Count - 1);
            if (fits)
            {
                return true;
            }
        }

        return false;
    }

    // The width in the tree before of which so many sectors were cut alike.
    private int Before(int tree) => chosen[begins[tree - 1] + chosen.Count - begins[tree]].Width;

    private bool IsWidest(int tree, int rest)
    {
        for (var i = begins[tree]; i < chosen.Count; i++)
        {
            var (widths, next) = (types[chosen[i].Type].Widths, chosen[i].Width + 1);
            if (next < widths.Count && widths[next] - widths[next - 1] <= rest)
            {
                return false;
            }
        }

        return true;
    }

    // Prices that refute are asked sooner the next time.
    private bool IsRefuted(WidthChoice sector, int rest)
    {
        for (var i = 0; i < cuts.Count; i++)
        {
            steps += WorkOfCheck;
            if (cuts[i].Refutes(chosen.Count, sector, rest))
            {
                (cuts[i], cuts[i / 2]) = (cuts[i / 2], cuts[i]);
                return true;
            }
        }

        return false;
    }

    private bool Hang()
    {
        var key = string.Join(' ', chosen.Select(c => c.Width));
        if (refuted.Contains(key) || cuts.Exists(c => c.Refutes(chosen.Count)))
        {
            return false;
        }

        if (master.Refutes(chosen))
        {
            Learn();
            return false;
        }

        var fits = hanging.Look(chosen, master.Values, master.Spare, mostListed, Math.Min(workOfOne, end - Work));
        if (fits == false)
        {
            refuted.Add(key);
        }

        isWhole &= fits is not null;
        return fits == true;
    }

    private void Learn()
    {
        var cut = new WidthCut(types, trees, all, master.Values);
        for (var i = 0; i < chosen.Count; i++)
        {
            cut.Choose(i, chosen[i]);
        }

        if (cuts.Count >= MostCuts)
        {
            cuts.RemoveAt(cuts.Count / 2);
        }

        cuts.Add(cut);
    }
}
