using CastBook.Casting.Patterns;
using CastBook.Planning.Patterns;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A pattern material, a row of the shop's Materials sheet.</summary>
public sealed record Material : SheetLine
{
    /// <summary>The material's name.</summary>
    public required string Name { get; init; }

    /// <summary>Wax or resin.</summary>
    public PatternKind? Kind { get; init; }

    /// <summary>Wax or resin, where a name says so; missing where it says neither or may be of both.</summary>
    /// <param name="name">A name as written, such as <c>castable resin</c>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    public static PatternKind? KindSaidBy(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return MaterialWords.KindIn(name);
    }

    /// <summary>Density of the solid, cured material, as the shop gives it.</summary>
    public Density? Density { get; init; }

    /// <summary>What a solid test cube of it weighs.</summary>
    public Mass? CubeMass { get; init; }

    /// <summary>The edge of that cube.</summary>
    public Length? CubeEdge { get; init; }

    /// <summary>The volume of that cube, where it was measured.</summary>
    public Volume? CubeVolume { get; init; }

    /// <summary>The density that the test cube tells; missing where it was not weighed and measured.</summary>
    public Density? CubeDensity =>
        CubeMass is not { } mass ? null
        : CubeVolume is { } volume ? TestCube.Compute(mass, volume)
        : CubeEdge is { } edge ? TestCube.Compute(mass, edge)
        : null;

    /// <summary>The least resin temperature to print at.</summary>
    public Temperature? PrintAtLeast { get; init; }

    /// <summary>The longest wash, all baths together.</summary>
    public Duration? WashAtMost { get; init; }

    /// <summary>The longest time in one bath of the wash.</summary>
    public Duration? BathAtMost { get; init; }

    /// <summary>The least cure of each side.</summary>
    public Duration? CureEachSide { get; init; }

    /// <summary>Whether parts of it may be rinsed in water; missing where the shop has not said.</summary>
    public bool? WaterRinse { get; init; }

    /// <summary>Whether its surface is roughened so that sprue wax holds on it; missing where the shop has not said.</summary>
    public bool? Roughen { get; init; }
}
