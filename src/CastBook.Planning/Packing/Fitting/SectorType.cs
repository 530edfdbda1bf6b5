namespace CastBook.Planning.Packing.Fitting;

/// <summary>The sectors that flasks of one size and setting can have, and what the best of each width are worth.</summary>
internal sealed class SectorType
{
    /// <summary>The bits that parts of a price of metal take.</summary>
    public const int MetalBits = 20;

    // What a row of a table takes besides, in its steps.
    private const long WorkOfRow = 40;

    private readonly int rod;
    private readonly int[] members;
    private readonly PackShape[] shapes;
    private readonly long[] metals;
    private readonly int[] net;
    private readonly int[] copies;
    private readonly long[] turn = new long[PackShape.Turn + 1];
    private readonly List<int> widths = [];
    private readonly List<int[]> among = [];
    private readonly List<SectorTable> tables = [];
    private readonly Stack<SectorTable> spare = new();

    /// <summary>Prepares for a size and setting.</summary>
    /// <param name="problem">The problem; every piece that fits the size has a sector.</param>
    /// <param name="size">The size.</param>
    /// <param name="setting">The setting.</param>
    public SectorType(PackProblem problem, int size, int setting)
    {
        (Size, rod) = (size, problem.Sizes[size].Rod);
        members = [.. problem.ByTail[size].Where(i => problem.Items[i].MayBeCastAt(setting))];
        shapes = [.. members.Select(i => problem.Shapes[size][i])];
        metals = [.. members.Select(i => problem.Metals[i])];
        (net, copies) = (new int[members.Length], new int[members.Length]);
    }

    /// <summary>The size.</summary>
    public int Size { get; }

    /// <summary>The pieces that may hang in it, in the order in which they hang.</summary>
    public int[] Members => members;

    /// <summary>The widths that were priced, narrowest first.</summary>
    public IReadOnlyList<int> Widths => widths;

    /// <summary>Length of trunk.</summary>
    public int Rod => rod;

    /// <summary>What each member takes.</summary>
    public PackShape[] Shapes => shapes;

    /// <summary>The metal of each member.</summary>
    public long[] Metals => metals;

    /// <summary>What each member is worth at the prices asked last, less its metal.</summary>
    public int[] Net => net;

    /// <summary>How many of each member there are.</summary>
    public int[] Copies => copies;

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>The members that a sector of a width may hold, by their places.</summary>
    /// <param name="width">The width's place.</param>
    public int[] Among(int width) => among[width];

    /// <summary>The table of the best sectors of a width, in which <see cref="Among"/> were offered.</summary>
    /// <param name="width">The width's place.</param>
    public SectorTable TableOf(int width) => tables[width];

    /// <summary>Works out the best sector of each width.</summary>
    /// <param name="left">How many of each piece there are.</param>
    /// <param name="values">What each piece is worth, in whole numbers whose sum stays below 2^30.</param>
    /// <param name="metalPrice">What a unit of metal costs, with <see cref="MetalBits"/> bits of parts.</param>
    /// <param name="widest">The widest sector there is room for.</param>
    public void Price(int[] left, int[] values, long metalPrice, int widest)
    {
        widths.Clear();
        among.Clear();
        tables.ForEach(spare.Push);
        tables.Clear();
        for (var m = 0; m < members.Length; m++)
        {
            copies[m] = left[members[m]];
            net[m] = (int)Int128.Max(int.MinValue / 2, values[members[m]] - (((Int128)metalPrice * metals[m]) >> MetalBits));
            if (copies[m] > 0 && shapes[m].Theta <= widest && !widths.Contains(shapes[m].Theta))
            {
                widths.Add(shapes[m].Theta);
            }
        }

        widths.Sort();
        foreach (var width in widths)
        {
            int[] of = [.. Enumerable.Range(0, members.Length).Where(m => copies[m] > 0 && shapes[m].Theta <= width)];
            among.Add(of);
            tables.Add(Table(of));
        }

        FillTurn(widest);
    }

    /// <summary>What the best sector of a width is worth, less its metal.</summary>
    /// <param name="width">The width's place.</param>
    public int Best(int width) => tables[width].Best;

    /// <summary>The best sector of a width.</summary>
    /// <param name="width">The width's place.</param>
    public PackCount[] Sector(int width)
    {
        var sector = new List<PackCount>();
        var (of, table, height) = (among[width], tables[width], rod);
        for (var j = of.Length; j > 0; j--)
        {
            ref readonly var shape = ref shapes[of[j - 1]];
            var wanted = table.At(j, height);
            height = Math.Min(height, Math.Max(0, rod - shape.Tail));
            var count = 0;
            while (wanted != table.At(j - 1, Math.Max(0, height - (count * shape.Pitch))) + (count * net[of[j - 1]]))
            {
                count++;
            }

            height -= count * shape.Pitch;
            if (count > 0)
            {
                sector.Add(new PackCount(members[of[j - 1]], count));
            }
        }

        sector.Reverse();
        return [.. sector];
    }

    /// <summary>What a tree with so much angle free, no more than was priced for, can be worth at most with the sectors priced, less its metal.</summary>
    /// <param name="angle">The angle.</param>
    public long Turn(int angle) => turn[angle];

    /// <summary><see cref="Turn"/> for every angle.</summary>
    public long[] Turns() => [.. turn];

    private void FillTurn(int most)
    {
        int[] best = [.. tables.Select(t => t.Best)];
        for (var angle = 1; angle <= most; angle++)
        {
            var worth = turn[angle - 1];
            for (var w = 0; w < best.Length && widths[w] <= angle; w++)
            {
                worth = Math.Max(worth, turn[angle - widths[w]] + best[w]);
            }

            turn[angle] = worth;
        }

        Work += 2 * most * widths.Count;
    }

    private SectorTable Table(int[] of)
    {
        var table = spare.Count > 0 ? spare.Pop() : new SectorTable(members.Length, rod);
        table.Clear(of.Length);
        foreach (var m in of)
        {
            var last = rod - shapes[m].Tail;
            var passes = table.Add(net[m], copies[m], shapes[m].Pitch, last);
            Work += passes > 0 ? WorkOfRow + (passes * (last >> 2)) : 1;
        }

        return table;
    }
}
