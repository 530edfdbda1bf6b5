using CastBook.Casting.Patterns;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A pattern material, a row of the shop's Materials sheet.</summary>
public sealed record Material
{
    /// <summary>The material's name.</summary>
    public required string Name { get; init; }

    /// <summary>Wax or resin.</summary>
    public PatternKind? Kind { get; init; }

    /// <summary>Density of the solid, cured material.</summary>
    public Density? Density { get; init; }

    /// <summary>The least resin temperature to print at.</summary>
    public Temperature? PrintAtLeast { get; init; }

    /// <summary>The longest wash.</summary>
    public Duration? WashAtMost { get; init; }

    /// <summary>The least cure of each side.</summary>
    public Duration? CureEachSide { get; init; }
}
