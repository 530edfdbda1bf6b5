namespace CastBook.Planning.Packing.Fitting;

/// <summary>Whether all pieces fit into given flasks: looks at every way of cutting the trees into sectors of widths that pieces have.</summary>
/// <remarks>
/// Trees have few sectors where dense nights are hard, and sectors in parts say little; once the widths are whole numbers of sectors, what
/// these can be worth says nearly all. For each way of cutting, <see cref="WidthMaster"/> finds prices that refute it, which refute most
/// others at a glance (<see cref="WidthCuts"/>); what is left <see cref="WidthHanging"/> hangs or refutes. A narrower sector in place of a
/// wider one is never needed. Only for pieces with sectors and without wishes.
/// </remarks>
internal sealed class WidthFit
{
    // What of a look goes into one way of cutting.
    private const int ShareOfOne = 4;

    // To ask prices about a sector, or to tell them of one: besides, and of so many prices together.
    private const int WorkOfCheck = 30;
    private const int CutsTogether = 2;

    private readonly PackProblem problem;
    private readonly SectorType[] types;
    private readonly FitTree[] trees;
    private readonly CancellationToken stop;
    private readonly int[] all;
    private readonly WidthMaster master;
    private WidthCuts? cuts;

    // Ways of cutting by the widths of their sectors: what was refuted, and what no prices refute.
    private readonly HashSet<string> refuted = [];
    private readonly Dictionary<string, WidthHanging> open = [];
    private FitTree[] hung = [];
    private long hangingWork;

    // The sectors chosen so far, and where those of each tree begin.
    private readonly List<WidthChoice> chosen = [];
    private readonly int[] begins;
    private long steps;
    private long end;
    private long workOfOne;
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
        master = new WidthMaster(problem, types);
        begins = new int[trees.Length];
    }

    private long Work => steps + master.Work + hangingWork + types.Sum(t => t.Work);

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="work">How many steps to spend.</param>
    public FitAnswer Look(long work)
    {
        var before = Work;
        (end, workOfOne) = (before + work, work / ShareOfOne);
        isWhole = true;
        if (cuts is null && IsTooMuch())
        {
            return new FitAnswer(false, null, Work - before);
        }

        var fits = Begin(0);
        return new FitAnswer(fits ? true : isWhole ? false : null, fits ? FitTree.Plan(problem, types, hung) : null, Work - before);
    }

    // Trees cut in parts: what refutes nothing is a cut to begin with.
    private bool IsTooMuch()
    {
        var pool = new SectorPool(problem, types);
        var node = new FitNode(pool, all, trees, []);
        var isTooMuch = node.IsRefuted();
        steps += pool.Work;
        cuts = new WidthCuts(types, trees, all);
        cuts.Add(node.Values, []);
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

            steps += WorkOfCheck + (cuts!.Count / CutsTogether);
            cuts.Choose(chosen.Count, sector);
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

    private bool IsRefuted(WidthChoice sector, int rest)
    {
        steps += WorkOfCheck + (cuts!.Count / CutsTogether);
        return cuts.Refutes(chosen.Count, sector, rest);
    }

    private bool Hang()
    {
        var key = string.Join(' ', chosen.Select(c => c.Width));
        if (refuted.Contains(key) || cuts!.Refutes(chosen.Count))
        {
            return false;
        }

        if (!open.TryGetValue(key, out var rooms))
        {
            if (master.Refutes(chosen))
            {
                cuts.Add(master.Values, chosen);
                return false;
            }

            open[key] = rooms = new WidthHanging(problem, types, trees, chosen, master, stop);
        }

        var before = rooms.Work;
        var fits = rooms.Look(Math.Min(workOfOne, end - Work));
        hangingWork += rooms.Work - before;
        if (fits == false)
        {
            refuted.Add(key);
        }

        hung = fits == true ? rooms.Hung : hung;
        isWhole &= fits is not null;
        return fits == true;
    }
}
