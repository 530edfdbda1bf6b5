namespace CastBook.Planning.Packing.Fitting;

/// <summary>Hangs all pieces in sectors of chosen widths, or refutes that.</summary>
/// <remarks>
/// Where each sector can be filled in few ways that lose little, these are listed (<see cref="SectorLister"/>) and looked through
/// (<see cref="ListSearch"/>). Where the ways are many, chance finds one that hangs everything (<see cref="WidthSwapping"/>). Metal is looked
/// at when everything hangs.
/// </remarks>
internal sealed class WidthHanging
{
    private const int MostListed = 12_000;

    // What of a look goes into listing and a first look through the lists, and what of it into swapping.
    private const int ShareOfListing = 8;
    private const int ShareOfSwapping = 2;

    // How many turns aside from the most promising ways are made, in turn.
    private static readonly int[] TurnsAside = [0, 1, 2, 3, ListSearch.AnyTurns];

    private readonly PackProblem problem;
    private readonly SectorType[] types;
    private readonly FitTree[] trees;
    private readonly WidthChoice[] sectors;
    private readonly int[] values;
    private readonly long spare;
    private readonly CancellationToken stop;
    private readonly int[] all;
    private readonly (int Type, int Width)[] kinds;
    private readonly WidthSwapping swapping;
    private ListSearch? search;
    private long listing;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="types">The sizes and settings; takes the prices.</param>
    /// <param name="trees">The trees, all empty.</param>
    /// <param name="sectors">The sectors.</param>
    /// <param name="master">Was asked of the sectors last.</param>
    /// <param name="stop">Ends every look early.</param>
    public WidthHanging(PackProblem problem, SectorType[] types, FitTree[] trees, IEnumerable<WidthChoice> sectors, WidthMaster master, CancellationToken stop)
    {
        (this.problem, this.types, this.trees, this.sectors, this.stop) = (problem, types, trees, [.. sectors], stop);
        (values, spare) = ([.. master.Values], master.Spare);
        all = [.. problem.Items.Select(i => i.Quantity)];
        kinds = [.. this.sectors.Select(s => (s.Type, s.Width)).Distinct()];
        swapping = new WidthSwapping(problem, types, this.sectors);
    }

    /// <summary>Steps so far, but for those of the types.</summary>
    public long Work => listing + swapping.Work + (search?.Work ?? 0);

    /// <summary>The trees, where everything was found to fit.</summary>
    public FitTree[] Hung { get; private set; } = [];

    /// <summary>Looks whether everything fits; nothing where not every way was looked at.</summary>
    /// <param name="work">How many steps to spend.</param>
    public bool? Look(long work)
    {
        var end = Work + work;
        search ??= Listed(work / ShareOfListing);
        var fits = Search(work / ShareOfListing);
        if (fits is null && swapping.Look(work / ShareOfSwapping) && Hangs(swapping.Content))
        {
            return true;
        }

        return fits ?? Search(end - Work);
    }

    // Nothing where they are too many.
    private ListSearch? Listed(long work)
    {
        foreach (var type in types)
        {
            type.Price(all, values, 0, PackShape.Turn);
        }

        var (listed, isWhole) = (new List<ListedSector>(), true);
        for (var k = 0; k < kinds.Length && isWhole; k++)
        {
            var type = types[kinds[k].Type];
            var lister = new SectorLister(type, k, work);
            isWhole = lister.List(kinds[k].Width, type.Best(kinds[k].Width) - spare, listed, MostListed);
            (listing, work) = (listing + lister.Work, work - lister.Work);
        }

        return isWhole ? new ListSearch(problem, [.. listed.OrderBy(Loss)], stop) : null;
    }

    private long Loss(ListedSector sector)
    {
        var (type, width) = (types[kinds[sector.Kind].Type], kinds[sector.Kind].Width);
        return type.Best(width) - sector.Content.Sum(c => (long)c.Count * values[c.Item]);
    }

    private bool? Search(long work)
    {
        if (search is null)
        {
            return null;
        }

        var end = search.Work + work;
        int[] rooms = [.. kinds.Select(k => sectors.Count(s => (s.Type, s.Width) == k))];
        bool? fits = null;
        foreach (var turns in TurnsAside)
        {
            fits ??= search.Look(all, rooms, turns, end - search.Work);
        }

        return fits == true && !Hangs(Content(search.Hung)) ? null : fits;
    }

    // Sectors of a kind are filled in turn; nothing hangs in some.
    private PackCount[][] Content(IEnumerable<ListedSector> full)
    {
        var queues = kinds.Select((_, k) => new Queue<PackCount[]>(full.Where(f => f.Kind == k).Select(f => f.Content))).ToArray();
        return [.. sectors.Select(s => queues[Array.IndexOf(kinds, (s.Type, s.Width))].TryDequeue(out var content) ? content : [])];
    }

    // Whether the metal suffices.
    private bool Hangs(PackCount[][] content)
    {
        Hung = [.. trees];
        foreach (var (sector, of) in sectors.Zip(content).Where(s => s.Second.Length > 0))
        {
            ref var tree = ref Hung[sector.Tree];
            tree = tree with { Metal = tree.Metal - of.Sum(c => c.Count * problem.Metals[c.Item]), Last = new FitSector(of, tree.Last) };
        }

        return Array.TrueForAll(Hung, t => t.Metal >= 0);
    }
}
