using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>How the core of a load's slowest mould follows its kiln, by estimate; drying is not in it.</summary>
public sealed record LoadHeat
{
    /// <summary>The flask whose core is slowest, by letter.</summary>
    public required string Flask { get; init; }

    /// <summary>The core at the end of each stage.</summary>
    public required IReadOnlyList<CoreSpan> StageEnds { get; init; }

    /// <summary>When the core is near the kiln in each stage.</summary>
    public required IReadOnlyList<CoreArrival> Arrivals { get; init; }

    /// <summary>How near that is, in degrees Celsius.</summary>
    public required double ToleranceDegrees { get; init; }

    /// <summary>What a mould loses in its first minute outside the kiln, where its outermost pieces begin.</summary>
    public required OpenLoss InTheOpen { get; init; }

    /// <summary>Kiln and core from loading to the first pour.</summary>
    public required IReadOnlyList<KilnMoment> Course { get; init; }
}

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
