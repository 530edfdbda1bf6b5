using CastBook.Planning.Patterns;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>What one piece of a row takes; worked out step by step, and not changed after that.</summary>
/// <param name="Piece">The row.</param>
/// <param name="Alloy">What its alloy came to.</param>
/// <param name="Material">Its pattern material.</param>
internal sealed record PieceMetal(Piece Piece, AlloyAnswer Alloy, KnownMaterial Material)
{
    /// <summary>Metal of one piece, without gates; missing where it cannot be known.</summary>
    public Mass? Each { get; set; }

    /// <summary>What its weight or volume comes to, where <see cref="Each"/> is the shop's own word; missing where that cannot be known.</summary>
    public Mass? WorkedOut { get; set; }

    /// <summary>The least one piece can take, where it is not known exactly.</summary>
    public Mass? Least { get; set; }

    /// <summary>The most one piece can take, where it is not known exactly.</summary>
    public Mass? Most { get; set; }

    /// <summary>Volume of one piece; missing where it cannot be known.</summary>
    public Volume? VolumeEach { get; set; }

    /// <summary>Mass of one pattern; missing where it cannot be known.</summary>
    public Mass? PatternMass { get; set; }

    /// <summary>True when only the material's density is missing.</summary>
    public bool WantsDensity { get; set; }

    /// <summary>True when only the meaning of the weights is missing.</summary>
    public bool WantsMeaning { get; set; }
}
