using System.Numerics;
using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Whether all pieces fit into rooms for one listed sector each: looks at every way that could be possible.</summary>
/// <remarks>
/// The sectors are such that nothing can be added; what they hold beyond what is left stays off. The piece that can hang in the fewest ways
/// is hung next. Where many sectors are left prices are worked out anew (<see cref="ListMaster"/>), and sectors that leave less than the rest
/// is worth are struck off the list for all that follows. Metal is not looked at.
/// </remarks>
/// <param name="problem">The problem.</param>
/// <param name="sectors">The sectors, the most promising first.</param>
/// <param name="stop">Ends every look early.</param>
internal sealed class ListSearch(PackProblem problem, ListedSector[] sectors, CancellationToken stop)
{
    /// <summary>Every way.</summary>
    public const int AnyTurns = 1 << 20;

    // Of fewer sectors a look at each is sooner done than prices.
    private const int FewSectors = 40;

    // What a step of the search, a look at a sector, and a way take.
    private const int WorkOfNode = 20_000;
    private const int WorkOfSector = 40;
    private const int WorkOfWay = 300;

    private readonly ListMaster master = new(problem, sectors);

    // What was refuted, by the pieces that were left and the rooms that were free.
    private readonly HashSet<long[]> refuted = new(new SameNumbers());
    private readonly Stack<ListedSector> hung = new();
    private long steps;
    private long end;

    /// <summary>Steps so far.</summary>
    public long Work => steps + master.Work;

    /// <summary>The sectors, where everything was found to fit.</summary>
    public IReadOnlyCollection<ListedSector> Hung => hung;

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="left">How many of each piece.</param>
    /// <param name="free">How many rooms of each kind.</param>
    /// <param name="turns">How many turns aside from the most promising ways to make.</param>
    /// <param name="work">How many steps to spend.</param>
    public bool? Look(int[] left, int[] free, int turns, long work)
    {
        end = Work + work;
        hung.Clear();
        return Hang(left, free, [.. Enumerable.Range(0, sectors.Length)], [], null, turns);
    }

    // All pieces that are left, with sectors among these; nothing where not every way was looked at.
    private bool? Hang(int[] left, int[] free, int[] among, int[] likely, ListPrices? prices, int turns)
    {
        if (Array.TrueForAll(left, l => l == 0))
        {
            return true;
        }

        long[] state = [.. left, .. free];
        if (refuted.Contains(state))
        {
            return false;
        }

        if (Work >= end || stop.IsCancellationRequested)
        {
            return null;
        }

        steps += WorkOfNode;
        among = prices is null ? among : Possible(left, free, among, prices);
        if (prices is null || among.Length >= FewSectors)
        {
            prices = master.Solve(left, free, among, likely, prices);
            likely = master.Chosen;
            among = Possible(left, free, among, prices);
        }

        var fits = among.Length == 0 ? false : Follow(left, free, among, likely, prices, turns);
        if (fits == false)
        {
            refuted.Add(state);
        }

        return fits;
    }

    // Sectors that there is room for and that leave enough for the rest.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int[] Possible(int[] left, int[] free, int[] among, ListPrices prices)
    {
        var (possible, spare) = (new List<int>(), prices.Spare(left, free));
        steps += among.Length * WorkOfSector;
        foreach (var place in among)
        {
            var sector = sectors[place];
            if (free[sector.Kind] > 0 && prices.Loss(sector, left) <= spare && sector.IsWanted(left))
            {
                possible.Add(place);
            }
        }

        return [.. possible];
    }

    private bool? Follow(int[] left, int[] free, int[] among, int[] likely, ListPrices prices, int turns)
    {
        bool? fits = false;
        var seen = new List<ListedSector>();
        foreach (var place in Ways(left, among, prices))
        {
            var sector = sectors[place] with { Content = sectors[place].Of(left) };
            steps += WorkOfWay + (seen.Count * 2);
            if (seen.Exists(s => s.Kind == sector.Kind && Holds(s.Content, sector.Content)))
            {
                continue;
            }

            var aside = seen.Count == 0 ? 0 : 1 + (BitOperations.Log2((uint)seen.Count) / 2);
            if (aside > turns || Work >= end || stop.IsCancellationRequested)
            {
                return null;
            }

            seen.Add(sector);
            hung.Push(sector);
            var found = HangRest(sector, left, free, among, likely, prices, turns == AnyTurns ? turns : turns - aside);
            if (found == true)
            {
                return true;
            }

            hung.Pop();
            fits = found is null ? null : fits;
        }

        return fits;
    }

    private bool? HangRest(ListedSector sector, int[] left, int[] free, int[] among, int[] likely, ListPrices prices, int turns)
    {
        int[] less = [.. left];
        int[] fewer = [.. free];
        foreach (var (item, count) in sector.Content)
        {
            less[item] -= count;
        }

        fewer[sector.Kind]--;
        return Hang(less, fewer, among, likely, prices, turns);
    }

    // Of the piece that has fewest; those that leave most come first.
    private IEnumerable<int> Ways(int[] left, int[] among, ListPrices prices)
    {
        var counts = new int[left.Length];
        steps += among.Length * WorkOfSector;
        foreach (var place in among)
        {
            foreach (var (item, _) in sectors[place].Content)
            {
                counts[item]++;
            }
        }

        var piece = Enumerable.Range(0, left.Length).Where(i => left[i] > 0).MinBy(i => counts[i]);
        return among.Where(s => Array.Exists(sectors[s].Content, c => c.Item == piece)).OrderBy(s => prices.Loss(sectors[s], left));
    }

    // Both in the same order.
    private static bool Holds(PackCount[] content, PackCount[] other)
    {
        var at = 0;
        foreach (var (item, count) in other)
        {
            while (at < content.Length && content[at].Item != item)
            {
                at++;
            }

            if (at == content.Length || content[at].Count < count)
            {
                return false;
            }
        }

        return true;
    }
}
