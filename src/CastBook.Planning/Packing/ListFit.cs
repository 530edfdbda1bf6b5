namespace CastBook.Planning.Packing;

/// <summary>Whether all pieces fit into given flasks: lists the sectors that could be part of a way, and looks at every way with these.</summary>
/// <remarks>
/// First with the most promising sectors alone, which finds what there is to find soonest; that nothing fits is said only where all were listed.
/// A choice of flasks that is nearly full leaves few. Only for pieces with sectors and without wishes.
/// </remarks>
internal sealed class ListFit
{
    // More sectors are not searched; so many that promise most are searched first.
    private const int MostListed = 60_000;
    private const int MostPromising = 8000;

    private const long WorkOfStart = 500_000_000;
    private const long WorkOfListing = 100_000_000;

    // What of the work goes into these where all are listed.
    private const int ShareOfPromising = 4;

    // What a sector may lose at most is lowered so until few enough are left.
    private const int LoweredBy = 5;

    // How many turns aside from the most promising ways are made, in turn.
    private static readonly int[] TurnsAside = [0, 1, 2, 3, 4, 6];

    private readonly PackProblem problem;
    private readonly SectorType[] types;
    private readonly FitTree[] trees;
    private readonly CancellationToken stop;
    private readonly int[] all;
    private ListSearch? promising;
    private ListSearch? whole;
    private long[] values = [];

    // Less than 0 where everything is refuted.
    private long spare;
    private long work;
    private int turn;
    private bool isPrepared;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="flasks">Size and setting of each flask.</param>
    /// <param name="stop">Ends every look early.</param>
    public ListFit(PackProblem problem, IReadOnlyList<(int Size, int Setting)> flasks, CancellationToken stop)
    {
        (this.problem, this.stop) = (problem, stop);
        List<(int Size, int Setting)> kinds = [.. flasks.Distinct()];
        types = [.. kinds.Select(k => new SectorType(problem, k.Size, k.Setting))];
        trees = [.. flasks.Select(f => new FitTree(kinds.IndexOf(f), PackShape.Turn, problem.Sizes[f.Size].Metal, null))];
        all = [.. problem.Items.Select(i => i.Quantity)];
    }

    private long Work => work + types.Sum(t => t.Work) + (promising?.Work ?? 0) + (whole?.Work ?? 0);

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="steps">How many steps to spend.</param>
    public FitAnswer Look(long steps)
    {
        var (before, end) = (Work, Work + steps);
        if (!isPrepared)
        {
            Prepare();
        }

        if (promising is not null && Promising(whole is null ? end : Work + ((end - Work) / ShareOfPromising)) is { } plan)
        {
            return new FitAnswer(true, plan, Work - before);
        }

        bool? fits = spare < 0 ? false : Work < end ? whole?.Look(all, trees, ListSearch.AnyTurns, end - Work) : null;
        spare = fits == false ? -1 : spare;
        return new FitAnswer(fits, fits == true ? FitTree.Plan(problem, types, whole!.Hung) : null, Work - before);
    }

    // That the most promising do not suffice proves nothing.
    private PackPlan? Promising(long end)
    {
        for (; turn < TurnsAside.Length; turn++)
        {
            if (promising!.Look(all, trees, TurnsAside[turn], end - Work) == true)
            {
                return FitTree.Plan(problem, types, promising.Hung);
            }

            // A later look begins where this one ended.
            if (Work >= end)
            {
                break;
            }
        }

        return null;
    }

    // Metal is left aside.
    private void Prepare()
    {
        isPrepared = true;
        var start = new ListStart(problem, types, trees, WorkOfStart, stop);
        (spare, values) = (start.Spare, [.. start.Values.Select(v => (long)v)]);
        work += start.Work;
        if (spare >= 0)
        {
            List();
        }
    }

    private void List()
    {
        var listed = Listed(spare, MostListed);
        whole = listed is null ? null : Search(listed);
        for (var most = spare - (spare / LoweredBy); (listed is null || listed.Count > MostPromising) && most > LoweredBy; most -= most / LoweredBy)
        {
            listed = Listed(most, MostPromising);
            promising = listed is null ? null : Search(listed);
        }
    }

    private ListSearch Search(List<ListedSector> listed) => new(problem, [.. listed.OrderBy(Loss)], types.Length, stop);

    // Sectors that lose no more; nothing where they are too many.
    private List<ListedSector>? Listed(long loss, int most)
    {
        var (listed, isWhole) = (new List<ListedSector>(), true);
        for (var t = 0; t < types.Length && isWhole; t++)
        {
            var (type, lister) = (types[t], new SectorLister(types[t], t, isAnyWidth: false, WorkOfListing));
            for (var w = 0; w < type.Widths.Count && isWhole; w++)
            {
                isWhole = lister.List(w, type.Turn(PackShape.Turn) - type.Turn(PackShape.Turn - type.Widths[w]) - loss, listed, most);
            }

            work += lister.Work;
        }

        return isWhole ? listed : null;
    }

    private long Loss(ListedSector sector)
    {
        var type = types[sector.Type];
        return type.Turn(PackShape.Turn) - type.Turn(PackShape.Turn - sector.Width) - sector.Worth(all, values);
    }
}
