using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>How the cores of a load's moulds follow its kiln, by estimate; drying is not in it.</summary>
public sealed record LoadHeat
{
    /// <summary>The moulds size by size, the slowest first.</summary>
    public required IReadOnlyList<MouldHeat> Moulds { get; init; }

    /// <summary>The flask whose core is slowest, by letter.</summary>
    public string Flask => Moulds[0].Flasks[0];

    /// <summary>The slowest core at the end of each stage.</summary>
    public IReadOnlyList<CoreSpan> StageEnds => Moulds[0].StageEnds;

    /// <summary>When the slowest core is near the kiln in each stage.</summary>
    public IReadOnlyList<CoreArrival> Arrivals => Moulds[0].Arrivals;

    /// <summary>How near a core must be to the kiln, in degrees Celsius.</summary>
    public required double ToleranceDegrees { get; init; }

    /// <summary>What a mould loses in its first minute outside the kiln, where its outermost pieces begin.</summary>
    public required OpenLoss InTheOpen { get; init; }

    /// <summary>Kiln and slowest core from loading to the first pour.</summary>
    public required IReadOnlyList<KilnMoment> Course { get; init; }
}

/// <summary>How the cores of moulds of one size follow their kiln.</summary>
/// <param name="Size">What the size is called.</param>
/// <param name="Flasks">The flasks, by letter.</param>
/// <param name="StageEnds">The core at the end of each stage.</param>
/// <param name="Arrivals">When the core is near the kiln in each stage.</param>
public sealed record MouldHeat(string Size, IReadOnlyList<string> Flasks, IReadOnlyList<CoreSpan> StageEnds, IReadOnlyList<CoreArrival> Arrivals);

/// <summary>The temperature of a mould's core, between the slow and the fast case.</summary>
/// <param name="Slow">In the slow case.</param>
/// <param name="Fast">In the fast case.</param>
public readonly record struct CoreSpan(Temperature Slow, Temperature Fast);

/// <summary>How long after the begin of a stage the core is near the kiln; missing where it is not before the stage ends.</summary>
/// <param name="Slow">In the slow case.</param>
/// <param name="Fast">In the fast case.</param>
public readonly record struct CoreArrival(Duration? Slow, Duration? Fast);

/// <summary>What a mould loses in its first minute outside the kiln.</summary>
/// <param name="Depth">Below its face.</param>
/// <param name="Slow">In the slow case.</param>
/// <param name="Fast">In the fast case.</param>
public readonly record struct OpenLoss(Length Depth, TemperatureDelta Slow, TemperatureDelta Fast);

/// <summary>Kiln and core at a time.</summary>
/// <param name="After">The time, from loading on.</param>
/// <param name="Kiln">Kiln temperature.</param>
/// <param name="Core">The core.</param>
public readonly record struct KilnMoment(Duration After, Temperature Kiln, CoreSpan Core);
