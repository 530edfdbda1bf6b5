namespace CastBook.Planning.Packing;

/// <summary>What makes pieces worth most while all trees are empty: column generation over all sectors.</summary>
/// <remarks>Sectors are priced with values between those of the master and the best so far, which settles sooner.</remarks>
internal sealed class ListStart
{
    private const int MostRounds = 150;

    // Shares of the best values so far in what is asked, in turn.
    private static readonly double[] SharesOfBest = [0.6, 0];

    // Values of the master in those of the tables.
    private const int Bits = 14;
    private const double Enough = 1 + 1e-4;

    private readonly PackProblem problem;
    private readonly SectorType[] types;
    private readonly FitTree[] trees;
    private readonly int[] all;
    private readonly List<ListedSector> known = [];
    private readonly int most;
    private long workOfMasters;

    /// <summary>Finds the values.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="types">The sizes and settings; takes the prices.</param>
    /// <param name="trees">The trees, all empty.</param>
    /// <param name="steps">How many steps to spend, about.</param>
    /// <param name="stop">Ends it early.</param>
    public ListStart(PackProblem problem, SectorType[] types, FitTree[] trees, long steps, CancellationToken stop)
    {
        (this.problem, this.types, this.trees) = (problem, types, trees);
        all = [.. problem.Items.Select(i => i.Quantity)];
        most = FitNode.MostSum / Math.Max(1, all.Sum());
        var pool = new SectorPool(problem, types);
        var node = new FitNode(pool, all, [.. trees.Select(t => t with { Metal = PackProblem.AnyMetal })], []);
        (Values, Spare) = (node.Values, node.IsRefuted() ? -1 : long.MaxValue);
        known.AddRange(pool.Sectors.Select(s => new ListedSector(s.Type, s.Width, s.Content)));
        workOfMasters += pool.Work;
        for (var round = 0; round < MostRounds && Spare >= 0 && Work < steps && !stop.IsCancellationRequested && Better(); round++)
        {
        }

        if (Spare >= 0)
        {
            Spare = Price(Values);
        }
    }

    /// <summary>What each piece is worth.</summary>
    public int[] Values { get; private set; }

    /// <summary>What trees are worth more than all pieces; less than 0 where these do not fit.</summary>
    public long Spare { get; private set; }

    /// <summary>Steps so far, but for those of the types.</summary>
    public long Work => workOfMasters;

    private bool Better()
    {
        var master = new ListMaster(problem, [.. known], types.Length);
        var prices = master.Solve(all, trees, [.. Enumerable.Range(0, known.Count)], [], null);
        workOfMasters += master.Work;
        int[] values = [.. prices.Values.Select(Whole)];
        foreach (var share in SharesOfBest.Where(s => s == 0 || Spare < long.MaxValue))
        {
            int[] asked = [.. values.Select((v, i) => (int)((share * Values[i]) + ((1 - share) * v)))];
            var spare = Price(asked);
            if (spare < Spare)
            {
                (Spare, Values) = (spare, asked);
            }

            if (FindMore(prices) || Spare < 0)
            {
                return Spare >= 0;
            }
        }

        return false;
    }

    private int Whole(long value) => (int)Math.Min(most, value >> Bits);

    private long Price(int[] values)
    {
        var spare = 0L;
        for (var t = 0; t < types.Length; t++)
        {
            types[t].Price(all, values, 0, PackShape.Turn);
            spare += trees.Count(x => x.Type == t) * types[t].Turn(PackShape.Turn);
        }

        for (var i = 0; i < all.Length; i++)
        {
            spare -= (long)all[i] * values[i];
        }

        return spare;
    }

    // The best sectors of each width, where the master would take them.
    private bool FindMore(ListPrices prices)
    {
        var before = known.Count;
        for (var t = 0; t < types.Length; t++)
        {
            for (var w = 0; w < types[t].Widths.Count; w++)
            {
                var sector = new ListedSector(t, types[t].Widths[w], types[t].Sector(w));
                if (sector.Content.Length > 0 && sector.Worth(all, prices.Values) > prices.Room(sector) * Enough)
                {
                    known.Add(sector);
                }
            }
        }

        return known.Count > before;
    }
}
