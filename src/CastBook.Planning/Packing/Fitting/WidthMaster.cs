using System.Runtime.InteropServices;
using CastBook.Planning.Packing.Bounds;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Fills sectors of chosen widths in parts, as cheaply as may be, so that every piece is hung: says what makes pieces worth most.</summary>
/// <remarks>
/// By the simplex method (<see cref="CoverSimplex"/>) and column generation. Whatever pieces are said to be worth, sectors that are worth
/// less than all pieces do not hold them; that is decided in whole numbers.
/// </remarks>
/// <param name="problem">The problem.</param>
/// <param name="types">The sizes and settings; takes the prices.</param>
internal sealed class WidthMaster(PackProblem problem, SectorType[] types)
{
    // What all pieces are worth together, about.
    private const double Unit = 1 << 26;

    private const int MostRounds = 100;
    private const double Enough = 1 + 1e-6;

    // Less than any amount that matters, so that rows without need differ.
    private const double Trifle = 1e-7;

    // A round besides, and to look at a known sector.
    private const int WorkOfRound = 20_000;
    private const int WorkOfOffer = 40;

    private readonly int[] all = [.. problem.Items.Select(i => i.Quantity)];
    private readonly int most = FitNode.MostSum / Math.Max(1, problem.Items.Sum(i => i.Quantity));

    // Sectors that were found worth their room, those that were offered last, and of these the ones that were chosen.
    private readonly List<KnownSector> known = [];
    private readonly List<KnownSector> offered = [];
    private KnownSector[] likely = [];

    // By size and setting and width: how many sectors, the row of each, and what it costs to fill one.
    private readonly int[][] counts = [.. types.Select(_ => new int[PackShape.Turn])];
    private readonly int[][] rows = [.. types.Select(_ => new int[PackShape.Turn])];
    private readonly double[][] costs = [.. types.Select(_ => new double[PackShape.Turn])];
    private readonly List<int> at = [];
    private readonly List<double> amounts = [];
    private readonly int[] asked = new int[problem.Items.Length];
    private double scale;

    /// <summary>Steps so far, but for those of the types.</summary>
    public long Work { get; private set; }

    /// <summary>What each piece is worth, so that the sectors asked about last are worth least.</summary>
    public int[] Values { get; } = new int[problem.Items.Length];

    /// <summary>What these sectors are worth more than all pieces; less than 0 where they do not hold them.</summary>
    public long Spare { get; private set; }

    /// <summary>Whether sectors are sure not to hold all pieces.</summary>
    /// <param name="sectors">The sectors.</param>
    public bool Refutes(IReadOnlyList<WidthChoice> sectors)
    {
        var master = Master(sectors);
        (Spare, var tightest) = (long.MaxValue, double.PositiveInfinity);
        for (var round = 0; round < MostRounds; round++)
        {
            var before = master.Work;
            master.Solve();
            Work += WorkOfRound + master.Work - before;
            Value(master.Duals);
            var (worth, more) = Price(master);
            var total = all.Select((count, i) => (long)count * asked[i]).Sum();
            if (worth - total < tightest * total)
            {
                (tightest, Spare) = ((worth - total) / (double)total, worth - total);
                asked.CopyTo(Values, 0);
            }

            if (Spare < 0 || !more)
            {
                break;
            }
        }

        likely = [.. master.Chosen.Select(c => offered[c])];
        return Spare < 0;
    }

    private CoverSimplex Master(IReadOnlyList<WidthChoice> sectors)
    {
        var (count, room) = (all.Length, sectors.Sum(Room));
        for (var t = 0; t < types.Length; t++)
        {
            Array.Clear(counts[t]);
            Array.Fill(rows[t], -1);
        }

        foreach (var sector in sectors)
        {
            ref var row = ref rows[sector.Type][sector.Width];
            row = row < 0 ? count++ : row;
            counts[sector.Type][sector.Width]++;
            costs[sector.Type][sector.Width] = Room(sector) / room;
        }

        var needs = new double[count];
        for (var i = 0; i < all.Length; i++)
        {
            needs[i] = all[i];
        }

        foreach (var sector in sectors.Distinct())
        {
            var row = rows[sector.Type][sector.Width];
            needs[row] = -counts[sector.Type][sector.Width] - (Trifle * row);
        }

        var master = new CoverSimplex(needs);
        offered.Clear();
        Offer(master, likely);
        master.LookFirst(offered.Count);
        Offer(master, known.Except(likely));

        Work += known.Count * WorkOfOffer;
        return master;
    }

    private double Room(WidthChoice sector) => types[sector.Type].Widths[sector.Width] * (double)types[sector.Type].Rod;

    // Where the master does not hang everything it makes some pieces worth far more than all room.
    private void Value(double[] duals)
    {
        var sum = 0.0;
        for (var i = 0; i < all.Length; i++)
        {
            sum += duals[i] * all[i];
        }

        scale = Unit / Math.Max(1, sum);
        for (var i = 0; i < all.Length; i++)
        {
            asked[i] = (int)Math.Clamp(duals[i] * scale, 0, most);
        }
    }

    // What the sectors can be worth, and whether there are more that the master would take.
    private (long Worth, bool More) Price(CoverSimplex master)
    {
        var (worth, more) = (0L, false);
        for (var t = 0; t < types.Length; t++)
        {
            var type = types[t];
            type.Price(all, asked, 0, PackShape.Turn);
            for (var w = 0; w < type.Widths.Count; w++)
            {
                if (counts[t][w] == 0)
                {
                    continue;
                }

                worth += (long)counts[t][w] * type.Best(w);
                if (type.Best(w) > ((master.Duals[rows[t][w]] + costs[t][w]) * scale * Enough) + all.Length)
                {
                    known.Add(new KnownSector(t, w, type.Sector(w)));
                    Offer(master, [known[^1]]);
                    more = true;
                }
            }
        }

        return (worth, more);
    }

    private void Offer(CoverSimplex master, IEnumerable<KnownSector> sectors)
    {
        foreach (var sector in sectors.Where(s => rows[s.Type][s.Width] >= 0))
        {
            offered.Add(sector);
            at.Clear();
            amounts.Clear();
            foreach (var (item, count) in sector.Content)
            {
                at.Add(item);
                amounts.Add(count);
            }

            at.Add(rows[sector.Type][sector.Width]);
            amounts.Add(-1);
            master.Add(CollectionsMarshal.AsSpan(at), CollectionsMarshal.AsSpan(amounts), costs[sector.Type][sector.Width]);
        }
    }

    private sealed record KnownSector(int Type, int Width, PackCount[] Content);
}
