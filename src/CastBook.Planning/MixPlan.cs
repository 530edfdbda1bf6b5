using UnitsNet;

namespace CastBook.Planning;

/// <summary>A mix of investment: what goes into the bowl, which flasks it fills, and how its minutes run from the first powder in the water.</summary>
public sealed record MixPlan
{
    /// <summary>Its place in the order in which the mixes are made, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Letters of the flasks it fills, in the order to fill them. No flask is in two mixes.</summary>
    public required IReadOnlyList<string> Flasks { get; init; }

    /// <summary>Powder to weigh out.</summary>
    public required Mass Powder { get; init; }

    /// <summary>Water to measure.</summary>
    public required Volume Water { get; init; }

    /// <summary>What the two fill of the bowl.</summary>
    public required Volume Slurry { get; init; }

    /// <summary>When the last flask must be full, so that its vacuum ends in time.</summary>
    public required Duration PourDoneBy { get; init; }

    /// <summary>When the last flask comes out of the vacuum if every step takes its usual time.</summary>
    public required Duration Takes { get; init; }

    /// <summary>When the surface loses its gloss; from a margin before it nothing may be moved.</summary>
    public required Duration GlossOff { get; init; }
}
