using System.Runtime.InteropServices;
using CastBook.Planning.Packing.Bounds;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Chooses listed sectors in parts, and ways of cutting trees into sectors in parts, so that every piece that is left is hung: says what makes pieces worth most.</summary>
/// <remarks>
/// How all trees are filled to the same share, the least there is, by the simplex method (<see cref="CoverSimplex"/>). Columns are sectors,
/// which take room for a sector of their width, and cuts of a tree, which give it; of both only those are offered that are worth it.
/// </remarks>
/// <param name="problem">The problem.</param>
/// <param name="sectors">The sectors.</param>
/// <param name="types">How many sizes and settings.</param>
internal sealed class ListMaster(PackProblem problem, ListedSector[] sectors, int types)
{
    // What is worth one share of all trees, in the whole numbers of prices.
    private const double Unit = 1L << 40;

    // Sectors that are offered first, and at once.
    private const int FirstOffered = 150;
    private const int MostAtOnce = 40;
    private const int MostRounds = 60;
    private const int NoSector = -1;
    private const double Dust = 1e-6;

    // Less than any amount that matters, so that rows without need differ.
    private const double Trifle = 1e-7;

    // A round besides, and to look at a sector.
    private const int WorkOfRound = 20_000;
    private const int WorkOfSector = 40;

    private readonly TreeCutting cutting = new();
    private readonly bool[] isOffered = new bool[sectors.Length];
    private readonly int[] rowOf = new int[problem.Items.Length];
    private readonly int[][] roomRows = [.. Enumerable.Range(0, types).Select(_ => new int[PackShape.Turn + 1])];

    // The sector of each column; less than 0 for others.
    private readonly List<int> columns = [];
    private readonly List<int> at = [];
    private readonly List<double> amounts = [];
    private readonly List<(double Worth, int Sector)> better = [];
    private int[] left = [];
    private int rows;

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>The sectors that were chosen last, by their places.</summary>
    public int[] Chosen { get; private set; } = [];

    /// <summary>What makes the pieces worth most.</summary>
    /// <param name="wanted">How many of each piece are left; some are.</param>
    /// <param name="trees">The trees.</param>
    /// <param name="among">The sectors that may be hung, by their places; each holds some of the pieces.</param>
    /// <param name="likely">Sectors that are likely to be chosen.</param>
    /// <param name="before">Prices of a moment ago, or nothing.</param>
    public ListPrices Solve(int[] wanted, FitTree[] trees, int[] among, int[] likely, ListPrices? before)
    {
        left = wanted;
        (int Type, int Angle, int Count)[] kinds = [.. trees.GroupBy(t => (t.Type, t.Angle)).Select(g => (g.Key.Type, g.Key.Angle, g.Count()))];
        Number(among, kinds.Length);
        var master = Master(kinds);
        OfferKnownCuts(master, kinds);
        OfferFirst(master, among, likely, before);
        for (var round = 0; ; round++)
        {
            var workBefore = master.Work;
            master.Solve();
            Work += WorkOfRound + (2 * (master.Work - workBefore));
            var more = OfferBetter(master, among);
            for (var k = 0; k < kinds.Length; k++)
            {
                more |= OfferCut(master, kinds[k].Type, kinds[k].Angle, rows - kinds.Length + k);
            }

            if (!more || round >= MostRounds)
            {
                Chosen = [.. master.Chosen.Select(c => columns[c]).Where(s => s >= 0)];
                return Prices(master.Duals, among);
            }
        }
    }

    // Rows: pieces that are left, room for sectors by size and setting and width, trees of each kind.
    private void Number(int[] among, int kinds)
    {
        rows = 0;
        for (var i = 0; i < left.Length; i++)
        {
            rowOf[i] = left[i] > 0 ? rows++ : -1;
        }

        Array.ForEach(roomRows, r => Array.Fill(r, -1));
        foreach (var place in among)
        {
            ref var row = ref roomRows[sectors[place].Type][sectors[place].Width];
            row = row < 0 ? rows++ : row;
        }

        rows += kinds;
    }

    private void OfferFirst(CoverSimplex master, int[] among, int[] likely, ListPrices? before)
    {
        foreach (var place in likely.Intersect(among))
        {
            Offer(master, place);
        }

        master.LookFirst(columns.Count);
        foreach (var place in Promising(among, before).Take(FirstOffered))
        {
            Offer(master, place);
        }
    }

    private int[] Promising(int[] among, ListPrices? before)
    {
        if (before is null)
        {
            return among;
        }

        Work += among.Length * 2 * WorkOfSector;
        long[] losses = [.. among.Select(s => before.Room(sectors[s]) - sectors[s].Worth(left, before.Values))];
        int[] sorted = [.. among];
        Array.Sort(losses, sorted);
        return sorted;
    }

    private CoverSimplex Master((int Type, int Angle, int Count)[] kinds)
    {
        var needs = new double[rows];
        for (var i = 0; i < left.Length; i++)
        {
            if (rowOf[i] >= 0)
            {
                needs[rowOf[i]] = left[i];
            }
        }

        for (var r = left.Count(l => l > 0); r < rows; r++)
        {
            needs[r] = -Trifle * (r + 1);
        }

        columns.ForEach(s => isOffered[Math.Max(0, s)] = false);
        columns.Clear();
        columns.Add(NoSector);
        var master = new CoverSimplex(needs);
        master.Add([.. Enumerable.Range(rows - kinds.Length, kinds.Length)], [.. kinds.Select(k => (double)k.Count)], 1);
        return master;
    }

    private void Offer(CoverSimplex master, int place)
    {
        if (isOffered[place])
        {
            return;
        }

        isOffered[place] = true;
        columns.Add(place);
        at.Clear();
        amounts.Clear();
        foreach (var (item, count) in sectors[place].Content)
        {
            if (rowOf[item] >= 0)
            {
                at.Add(rowOf[item]);
                amounts.Add(Math.Min(count, left[item]));
            }
        }

        at.Add(roomRows[sectors[place].Type][sectors[place].Width]);
        amounts.Add(-1);
        master.Add(CollectionsMarshal.AsSpan(at), CollectionsMarshal.AsSpan(amounts), 0);
    }

    private void OfferKnownCuts(CoverSimplex master, (int Type, int Angle, int Count)[] kinds)
    {
        for (var k = 0; k < kinds.Length; k++)
        {
            foreach (var widths in cutting.Known(kinds[k].Type, kinds[k].Angle))
            {
                AddCut(master, roomRows[kinds[k].Type], widths, rows - kinds.Length + k);
            }
        }
    }

    // The way of cutting a tree that is worth most, where it is worth more than the tree.
    private bool OfferCut(CoverSimplex master, int type, int angle, int row)
    {
        var duals = master.Duals;
        double[] rooms = [.. roomRows[type].Select(r => r < 0 ? 0 : duals[r])];
        var found = cutting.Find(type, angle, rooms, duals[row] + (Trifle * 10));
        Work += cutting.Work;
        if (found is not null)
        {
            AddCut(master, roomRows[type], found, row);
        }

        return found is not null;
    }

    // What it leaves for sectors of a width that no sector has is no matter.
    private void AddCut(CoverSimplex master, int[] roomRow, int[] widths, int row)
    {
        at.Clear();
        amounts.Clear();
        foreach (var same in widths.Where(w => roomRow[w] >= 0).GroupBy(w => w))
        {
            at.Add(roomRow[same.Key]);
            amounts.Add(same.Count());
        }

        at.Add(row);
        amounts.Add(-1);
        columns.Add(NoSector);
        master.Add(CollectionsMarshal.AsSpan(at), CollectionsMarshal.AsSpan(amounts), 0);
    }

    private bool OfferBetter(CoverSimplex master, int[] among)
    {
        var duals = master.Duals;
        better.Clear();
        Work += among.Length * WorkOfSector;
        foreach (var place in among)
        {
            if (isOffered[place])
            {
                continue;
            }

            var sector = sectors[place];
            var worth = -duals[roomRows[sector.Type][sector.Width]];
            foreach (var (item, count) in sector.Content)
            {
                worth += rowOf[item] >= 0 ? duals[rowOf[item]] * Math.Min(count, left[item]) : 0;
            }

            if (worth > Dust)
            {
                better.Add((worth, place));
            }
        }

        better.Sort((a, b) => a.Worth != b.Worth ? b.Worth.CompareTo(a.Worth) : a.Sector.CompareTo(b.Sector));
        foreach (var (_, place) in better.Take(MostAtOnce))
        {
            Offer(master, place);
        }

        return better.Count > 0;
    }

    private ListPrices Prices(double[] duals, int[] among)
    {
        Work += among.Length * WorkOfSector;
        long[] values = [.. rowOf.Select(r => r < 0 ? 0 : Whole(duals[r]))];
        long[][] rooms = [.. roomRows.Select(of => of.Select(r => r < 0 ? 0 : Whole(duals[r])).ToArray())];
        return new ListPrices(values, rooms, sectors, among, left);
    }

    private static long Whole(double dual) => (long)(Math.Clamp(dual, 0, 1) * Unit);
}
