namespace CastBook.Planning.Packing;

/// <summary>Whether all pieces fit into given flasks: lists the sectors that could be part of a way, and looks at every way with these.</summary>
/// <remarks>
/// First with the most promising sectors alone, which finds what there is to find soonest; that nothing fits is said only where all were listed.
/// A choice of flasks that is nearly full leaves few. Only for pieces with sectors and without wishes.
/// </remarks>
internal sealed class ListFit
{
    // More sectors are not searched.
    private const int MostListed = 60_000;

    // Sectors that may lose a part of what there is to spare, the smallest part first.
    private static readonly int[] Parts = [16, 8, 4, 2, 1];

    private readonly PackProblem problem;
    private readonly SectorType[] types;
    private readonly FitTree[] trees;
    private readonly ListSearch?[] searches = new ListSearch?[Parts.Length];
    private readonly CancellationToken stop;
    private readonly int[] all;
    private long[] values = [];

    // Less than 0 where everything is refuted.
    private long spare;
    private long work;
    private bool isPriced;

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

    private long Work => work + types.Sum(t => t.Work) + searches.Sum(s => s?.Work ?? 0);

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="steps">How many steps to spend.</param>
    public FitAnswer Look(long steps)
    {
        var (before, end) = (Work, Work + steps);
        if (!isPriced)
        {
            Price();
        }

        for (var part = 0; spare >= 0 && part < Parts.Length && Work < end; part++)
        {
            if ((searches[part] ??= Search(Parts[part])) is not { } search)
            {
                break;
            }

            var isAll = part == Parts.Length - 1;
            var fits = search.Look(all, trees, ListSearch.AnyTurns, isAll ? end - Work : (end - Work) / 2);
            if (fits == true)
            {
                return new FitAnswer(true, FitTree.Plan(problem, types, search.Hung), Work - before);
            }

            // That the most promising do not suffice proves nothing.
            spare = isAll && fits == false ? -1 : spare;
        }

        return new FitAnswer(spare < 0 ? false : null, null, Work - before);
    }

    // Metal is left aside.
    private void Price()
    {
        isPriced = true;
        var start = new ListStart(problem, types, trees, stop);
        (spare, values) = (start.Spare, [.. start.Values.Select(v => (long)v)]);
        work += start.Work;
    }

    private ListSearch? Search(int part)
    {
        var listed = new List<ListedSector>();
        for (var t = 0; t < types.Length; t++)
        {
            var lister = new SectorLister(types[t], t);
            for (var w = 0; w < types[t].Widths.Count; w++)
            {
                var loss = types[t].Turn(PackShape.Turn) - types[t].Turn(PackShape.Turn - types[t].Widths[w]);
                lister.List(w, loss - (spare / part), listed, MostListed);
            }

            work += lister.Work;
        }

        return listed.Count > MostListed ? null : new ListSearch(problem, [.. listed.OrderBy(Loss)], types.Length, stop);
    }

    private long Loss(ListedSector sector)
    {
        var type = types[sector.Type];
        return type.Turn(PackShape.Turn) - type.Turn(PackShape.Turn - sector.Width) - sector.Worth(all, values);
    }
}
