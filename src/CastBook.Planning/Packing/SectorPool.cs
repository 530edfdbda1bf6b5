namespace CastBook.Planning.Packing;

/// <summary>Sectors that were found worth their angle, for masters to come.</summary>
/// <param name="problem">The problem.</param>
/// <param name="types">The sizes and settings of the flasks.</param>
internal sealed class SectorPool(PackProblem problem, SectorType[] types)
{
    /// <summary>The problem.</summary>
    public PackProblem Problem => problem;

    /// <summary>The sizes and settings of the flasks.</summary>
    public SectorType[] Types => types;

    /// <summary>The sectors.</summary>
    public List<(int Type, int Width, PackCount[] Sector)> Sectors { get; } = [];

    /// <summary>Steps of the masters.</summary>
    public long Work { get; set; }

    /// <summary>The most that a piece may be worth, so that all together stay within the whole numbers of a table.</summary>
    public int Most { get; } = (int)Math.Min(FitNode.Unit, FitNode.MostSum / Math.Max(1, problem.Items.Sum(i => (long)i.Quantity)));
}
