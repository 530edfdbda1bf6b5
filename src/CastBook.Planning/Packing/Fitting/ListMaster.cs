using System.Runtime.InteropServices;
using CastBook.Planning.Packing.Bounds;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Chooses listed sectors in parts so that every piece that is left is hung: says what makes pieces worth most.</summary>
/// <remarks>
/// How all rooms are filled to the same share, the least there is, by the simplex method (<see cref="CoverSimplex"/>). Of the sectors only
/// those are offered that are worth it.
/// </remarks>
/// <param name="problem">The problem.</param>
/// <param name="sectors">The sectors.</param>
internal sealed class ListMaster(PackProblem problem, ListedSector[] sectors)
{
    // What is worth one share of all rooms, in the whole numbers of prices.
    private const double Unit = 1L << 40;

    // Sectors that are offered first, and at once.
    private const int FirstOffered = 150;
    private const int MostAtOnce = 40;
    private const int MostRounds = 60;
    private const double Dust = 1e-6;

    // Less than any amount that matters, so that rows without need differ.
    private const double Trifle = 1e-7;

    // A round besides, and to look at a sector.
    private const int WorkOfRound = 20_000;
    private const int WorkOfSector = 40;

    private readonly bool[] isOffered = new bool[sectors.Length];
    private readonly int[] rowOf = new int[problem.Items.Length];

    // The sector of each column but the first.
    private readonly List<int> columns = [];
    private readonly List<int> at = [];
    private readonly List<double> amounts = [];
    private readonly List<(double Worth, int Sector)> better = [];
    private int[] left = [];
    private int roomRow;

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>The sectors that were chosen last, by their places.</summary>
    public int[] Chosen { get; private set; } = [];

    /// <summary>What makes the pieces worth most.</summary>
    /// <param name="wanted">How many of each piece are left; some are.</param>
    /// <param name="free">How many rooms of each kind are free.</param>
    /// <param name="among">The sectors that may be hung, by their places; each holds some of the pieces.</param>
    /// <param name="likely">Sectors that are likely to be chosen.</param>
    /// <param name="before">Prices of a moment ago, or nothing.</param>
    public ListPrices Solve(int[] wanted, int[] free, int[] among, int[] likely, ListPrices? before)
    {
        left = wanted;
        var master = Master(free);
        OfferFirst(master, among, likely, before);
        for (var round = 0; ; round++)
        {
            var workBefore = master.Work;
            master.Solve();
            Work += WorkOfRound + (2 * (master.Work - workBefore));
            if (!OfferBetter(master, among) || round >= MostRounds)
            {
                Chosen = [.. master.Chosen.Where(c => c > 0).Select(c => columns[c - 1])];
                return Prices(master.Duals, free.Length, among);
            }
        }
    }

    // Rows: pieces that are left, rooms of each kind. The first column is a share of all rooms.
    private CoverSimplex Master(int[] free)
    {
        roomRow = 0;
        for (var i = 0; i < left.Length; i++)
        {
            rowOf[i] = left[i] > 0 ? roomRow++ : -1;
        }

        columns.ForEach(s => isOffered[s] = false);
        columns.Clear();
        var master = new CoverSimplex([.. left.Where(l => l > 0).Select(l => (double)l), .. free.Select((_, k) => -Trifle * (roomRow + k + 1))]);
        master.Add([.. Enumerable.Range(roomRow, free.Length)], [.. free.Select(f => (double)f)], 1);
        return master;
    }

    private void OfferFirst(CoverSimplex master, int[] among, int[] likely, ListPrices? before)
    {
        foreach (var place in likely.Intersect(among))
        {
            Offer(master, place);
        }

        master.LookFirst(1 + columns.Count);
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
        long[] losses = [.. among.Select(s => before.Loss(sectors[s], left))];
        int[] sorted = [.. among];
        Array.Sort(losses, sorted);
        return sorted;
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
        foreach (var (item, count) in sectors[place].Of(left))
        {
            at.Add(rowOf[item]);
            amounts.Add(count);
        }

        at.Add(roomRow + sectors[place].Kind);
        amounts.Add(-1);
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

            var worth = -duals[roomRow + sectors[place].Kind];
            foreach (var (item, count) in sectors[place].Content)
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

    private ListPrices Prices(double[] duals, int kinds, int[] among)
    {
        Work += among.Length * WorkOfSector;
        long[] values = [.. rowOf.Select(r => r < 0 ? 0 : Whole(duals[r]))];
        long[] rooms = [.. Enumerable.Range(roomRow, kinds).Select(r => Whole(duals[r]))];
        return new ListPrices(values, rooms, sectors, among, left);
    }

    private static long Whole(double dual) => (long)(Math.Clamp(dual, 0, 1) * Unit);
}
