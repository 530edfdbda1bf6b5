namespace CastBook.Planning.Packing.Fitting;

/// <summary>Sectors that were found worth their angle, for masters to come.</summary>
/// <param name="problem">The problem.</param>
/// <param name="types">The sizes and settings of the flasks.</param>
internal sealed class SectorPool(PackProblem problem, SectorType[] types)
{
    /// <summary>The problem.</summary>
    public PackProblem Problem => problem;

    /// <summary>The sizes and settings of the flasks.</summary>
    public SectorType[] Types => types;

    /// <summary>The sectors, each with the rows of a master that it gives to or takes from, and how much: pieces, then the angle of its type, then the metal.</summary>
    public List<PooledSector> Sectors { get; } = [];

    /// <summary>Steps of the masters.</summary>
    public long Work { get; set; }

    /// <summary>The most that a piece may be worth, so that all together stay within the whole numbers of a table.</summary>
    public int Most { get; } = (int)Math.Min(FitNode.Unit, FitNode.MostSum / Math.Max(1, problem.Items.Sum(i => (long)i.Quantity)));

    /// <summary>Adds a sector.</summary>
    /// <param name="type">The place of its size and setting.</param>
    /// <param name="width">The angle it takes.</param>
    /// <param name="sector">What hangs in it.</param>
    public PooledSector Add(int type, int width, PackCount[] sector)
    {
        var pooled = new PooledSector(
            type, width, sector,
            [.. sector.Select(c => c.Item), AngleRow(type), MetalRow(type)],
            [.. sector.Select(c => (double)c.Count), -width / (double)PackShape.Turn, -MetalOf(type, sector.Sum(c => c.Count * problem.Metals[c.Item]))]);
        Sectors.Add(pooled);
        return pooled;
    }

    /// <summary>The row of the angle there is for a size and setting.</summary>
    /// <param name="type">Its place.</param>
    public int AngleRow(int type) => problem.Items.Length + type;

    /// <summary>The row of the metal there is for a size and setting.</summary>
    /// <param name="type">Its place.</param>
    public int MetalRow(int type) => problem.Items.Length + types.Length + type;

    /// <summary>Metal as a share of what an empty tree takes.</summary>
    /// <param name="type">The place of the tree's size and setting.</param>
    /// <param name="metal">The metal.</param>
    public double MetalOf(int type, long metal) => metal / (double)Math.Max(1, problem.Sizes[types[type].Size].Metal);
}

/// <summary>A sector that was found worth its angle.</summary>
/// <param name="Type">The place of its size and setting.</param>
/// <param name="Width">The angle it takes.</param>
/// <param name="Content">What hangs in it.</param>
/// <param name="Rows">The rows of a master that it gives to or takes from.</param>
/// <param name="Counts">How much, below 0 where it takes.</param>
internal sealed record PooledSector(int Type, int Width, PackCount[] Content, int[] Rows, double[] Counts);
