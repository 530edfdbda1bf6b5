namespace CastBook.Planning.Packing.Fitting;

/// <summary>Hangs all pieces in sectors of chosen widths, or refutes that: lists what each could hold (<see cref="SectorLister"/>) and searches (<see cref="ListSearch"/>).</summary>
/// <remarks>Metal is looked at when everything hangs.</remarks>
/// <param name="problem">The problem.</param>
/// <param name="types">The sizes and settings; takes the prices.</param>
/// <param name="trees">The trees, all empty.</param>
/// <param name="stop">Ends every look early.</param>
internal sealed class WidthHanging(PackProblem problem, SectorType[] types, FitTree[] trees, CancellationToken stop)
{
    private const long WorkOfListing = 50_000_000;

    // Where there are more than are searched, only what loses so much less is listed.
    private const int LessEachTime = 2;
    private const int MostTimes = 8;

    // How many turns aside from the most promising ways are made, in turn.
    private static readonly int[] TurnsAside = [0, 1, 2, 3, ListSearch.AnyTurns];

    private readonly int[] all = [.. problem.Items.Select(i => i.Quantity)];

    /// <summary>Steps so far, but for those of the types.</summary>
    public long Work { get; private set; }

    /// <summary>The trees, where everything was found to fit.</summary>
    public FitTree[] Hung { get; private set; } = [];

    /// <summary>Looks whether everything fits; nothing where not every way was looked at.</summary>
    /// <param name="sectors">The sectors.</param>
    /// <param name="values">What each piece is worth.</param>
    /// <param name="spare">What the sectors are worth more than all pieces.</param>
    /// <param name="most">How many ways of filling a sector to list.</param>
    /// <param name="steps">How many steps to search.</param>
    public bool? Look(IReadOnlyList<WidthChoice> sectors, int[] values, long spare, int most, long steps)
    {
        foreach (var type in types)
        {
            type.Price(all, values, 0, PackShape.Turn);
        }

        (int Type, int Width)[] kinds = [.. sectors.Select(s => (s.Type, s.Width)).Distinct()];
        var (listed, isWhole) = List(kinds, spare, most);
        int[] rooms = [.. kinds.Select(k => sectors.Count(s => (s.Type, s.Width) == k))];
        var search = new ListSearch(problem, listed, stop);
        bool? fits = null;
        foreach (var turns in TurnsAside)
        {
            fits ??= search.Look(all, rooms, turns, steps - search.Work);
        }

        return fits == true ? Hangs(sectors, search.Hung.ToLookup(h => kinds[h.Kind])) : isWhole ? fits : null;
    }

    // What loses least first.
    private (ListedSector[] Listed, bool IsWhole) List((int Type, int Width)[] kinds, long spare, int most)
    {
        var (listed, isWhole) = (new List<ListedSector>(), false);
        for (var times = 0; times < MostTimes && !isWhole; times++, spare /= LessEachTime)
        {
            listed.Clear();
            isWhole = true;
            for (var k = 0; k < kinds.Length && isWhole; k++)
            {
                var (type, width) = (types[kinds[k].Type], kinds[k].Width);
                var lister = new SectorLister(type, k, WorkOfListing);
                isWhole = lister.List(width, type.Best(width) - spare, listed, most);
            }

            if (isWhole)
            {
                return (Sorted(listed, kinds), times == 0);
            }
        }

        return (Sorted(listed, kinds), false);
    }

    private ListedSector[] Sorted(List<ListedSector> listed, (int Type, int Width)[] kinds) =>
        [.. listed.OrderBy(s => types[kinds[s.Kind].Type].Best(kinds[s.Kind].Width) - Worth(s, types[kinds[s.Kind].Type]))];

    private static long Worth(ListedSector sector, SectorType type) =>
        sector.Content.Sum(c => (long)c.Count * type.Net[Array.IndexOf(type.Members, c.Item)]);

    // Rooms of a kind are filled in turn; some may stay empty.
    private bool? Hangs(IReadOnlyList<WidthChoice> sectors, ILookup<(int Type, int Width), ListedSector> full)
    {
        Hung = [.. trees];
        foreach (var rooms in sectors.GroupBy(s => (s.Type, s.Width)))
        {
            foreach (var (room, sector) in rooms.Zip(full[rooms.Key]))
            {
                ref var tree = ref Hung[room.Tree];
                tree = tree with
                {
                    Metal = tree.Metal - sector.Content.Sum(c => c.Count * problem.Metals[c.Item]),
                    Last = new FitSector(sector.Content, tree.Last),
                };
            }
        }

        return Array.TrueForAll(Hung, t => t.Metal >= 0) ? true : null;
    }
}
