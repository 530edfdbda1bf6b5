using System.Numerics;
using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Whether all pieces fit into given trees with listed sectors: looks at every way that could be possible.</summary>
/// <remarks>
/// The sectors are such that nothing can be added; what they hold beyond what is left stays off. The piece that can hang in the fewest ways
/// is hung next. Where many sectors are left prices are worked out anew (<see cref="ListMaster"/>), and sectors that leave less than the rest
/// is worth are struck off the list for all that follows.
/// </remarks>
/// <param name="problem">The problem.</param>
/// <param name="sectors">The sectors, the most promising first.</param>
/// <param name="types">How many sizes and settings.</param>
/// <param name="stop">Ends every look early.</param>
internal sealed class ListSearch(PackProblem problem, ListedSector[] sectors, int types, CancellationToken stop)
{
    /// <summary>Every way.</summary>
    public const int AnyTurns = 1 << 20;

    // Of fewer sectors a look at each is sooner done than prices.
    private const int FewSectors = 40;

    // What a step of the search, a look at a sector, and a way take.
    private const int WorkOfNode = 20_000;
    private const int WorkOfSector = 40;
    private const int WorkOfWay = 300;

    private readonly ListMaster master = new(problem, sectors, types);
    private readonly FitMemory memory = new(problem);
    private long steps;
    private long end;

    /// <summary>Steps so far.</summary>
    public long Work => steps + master.Work;

    /// <summary>The trees, where everything was found to fit.</summary>
    public FitTree[] Hung { get; private set; } = [];

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="left">How many of each piece.</param>
    /// <param name="trees">The trees.</param>
    /// <param name="turns">How many turns aside from the most promising ways to make.</param>
    /// <param name="work">How many steps to spend.</param>
    public bool? Look(int[] left, FitTree[] trees, int turns, long work)
    {
        end = Work + work;
        return Hang(left, trees, [.. Enumerable.Range(0, sectors.Length)], [], null, turns);
    }

    // All pieces that are left, with sectors among these; nothing where not every way was looked at.
    private bool? Hang(int[] left, FitTree[] trees, int[] among, int[] likely, ListPrices? prices, int turns)
    {
        if (Array.TrueForAll(left, l => l == 0))
        {
            Hung = trees;
            return true;
        }

        var state = memory.StateOf(left, trees);
        if (memory.IsRefuted(state))
        {
            return false;
        }

        if (Work >= end || stop.IsCancellationRequested)
        {
            return null;
        }

        steps += WorkOfNode;
        among = prices is null ? among : Possible(left, trees, among, prices);
        if (prices is null || among.Length >= FewSectors)
        {
            prices = master.Solve(left, trees, among, likely, prices);
            likely = master.Chosen;
            among = Possible(left, trees, among, prices);
        }

        var fits = among.Length == 0 ? false : Follow(left, trees, among, likely, prices, turns);
        if (fits == false)
        {
            memory.Refute(state);
        }

        return fits;
    }

    // Sectors that some tree can take, so that it leaves enough for the rest.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int[] Possible(int[] left, FitTree[] trees, int[] among, ListPrices prices)
    {
        var (possible, spare) = (new List<int>(), prices.Spare(left, trees));
        long[][] losses = [.. Enumerable.Range(0, types).Select(t => prices.Losses(trees, t))];
        steps += among.Length * WorkOfSector;
        foreach (var place in among)
        {
            var sector = sectors[place];
            if (spare + sector.Worth(left, prices.Values) - losses[sector.Type][sector.Width] >= 0 && sector.IsWanted(left))
            {
                possible.Add(place);
            }
        }

        return [.. possible];
    }

    private bool? Follow(int[] left, FitTree[] trees, int[] among, int[] likely, ListPrices prices, int turns)
    {
        bool? fits = false;
        var seen = new List<(int Tree, int Width, PackCount[] Content)>();
        foreach (var (tree, place, _) in Ways(left, trees, among, prices))
        {
            var (sector, content) = (sectors[place], sectors[place].Of(left));
            steps += WorkOfWay + (seen.Count * 2);
            if (seen.Exists(s => s.Tree == tree && s.Width <= sector.Width && Holds(s.Content, content)))
            {
                continue;
            }

            var aside = seen.Count == 0 ? 0 : 1 + (BitOperations.Log2((uint)seen.Count) / 2);
            if (aside > turns || Work >= end || stop.IsCancellationRequested)
            {
                return null;
            }

            // With the metal of less it could be possible.
            seen.Add((tree, sector.Width, content));
            var found = HangOne(left, trees, tree, sector.Width, content) is var (less, more) ? Hang(less, more, among, likely, prices, turns == AnyTurns ? turns : turns - aside) : null;
            if (found == true)
            {
                return true;
            }

            fits = found is null ? null : fits;
        }

        return fits;
    }

    private (int[] Left, FitTree[] Trees)? HangOne(int[] left, FitTree[] trees, int at, int width, PackCount[] content)
    {
        var metal = trees[at].Metal - content.Sum(c => c.Count * problem.Metals[c.Item]);
        if (metal < 0)
        {
            return null;
        }

        int[] less = [.. left];
        FitTree[] more = [.. trees];
        foreach (var (item, count) in content)
        {
            less[item] -= count;
        }

        more[at] = trees[at] with { Angle = trees[at].Angle - width, Metal = metal, Last = new FitSector(content, trees[at].Last) };
        return (less, more);
    }

    // Of the piece that has fewest; those that leave most come first.
    private List<(int Tree, int Sector, long Leaves)> Ways(int[] left, FitTree[] trees, int[] among, ListPrices prices)
    {
        int[] first = [.. Enumerable.Range(0, trees.Length).Where(t => !Array.Exists(trees[..t], o => IsSame(o, trees[t])))];
        var (all, counts, spare) = (new List<(int Tree, int Sector, long Leaves)>(), new int[left.Length], prices.Spare(left, trees));
        steps += among.Length * first.Length * WorkOfSector;
        foreach (var place in among)
        {
            var sector = sectors[place];
            var worth = spare + sector.Worth(left, prices.Values);
            foreach (var tree in first)
            {
                var leaves = trees[tree].Type == sector.Type && trees[tree].Angle >= sector.Width ? worth - prices.Loss(trees[tree], sector.Width) : -1;
                if (leaves >= 0)
                {
                    all.Add((tree, place, leaves));
                    foreach (var (item, _) in sector.Content)
                    {
                        counts[item]++;
                    }
                }
            }
        }

        var piece = Enumerable.Range(0, left.Length).Where(i => left[i] > 0).MinBy(i => counts[i]);
        all.RemoveAll(w => !Array.Exists(sectors[w.Sector].Content, c => c.Item == piece));
        all.Sort((a, b) => a.Leaves != b.Leaves ? b.Leaves.CompareTo(a.Leaves) : (a.Tree, a.Sector).CompareTo((b.Tree, b.Sector)));
        return all;
    }

    private static bool IsSame(FitTree tree, FitTree other) => tree.Type == other.Type && tree.Angle == other.Angle && tree.Metal == other.Metal;

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
