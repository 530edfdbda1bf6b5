using CastBook.Casting.Investing;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>An investment powder, a row of the shop's Investments sheet.</summary>
public sealed record Investment : SheetLine
{
    /// <summary>The powder's name.</summary>
    public required string Name { get; init; }

    /// <summary>Its binder; missing counts as gypsum, with an assumption, unless nobody can read it.</summary>
    public InvestmentKind? Kind { get; init; }

    /// <summary>Parts of water to 100 parts of powder, by mass.</summary>
    public double? WaterPer100 { get; init; }

    /// <summary>Density of the powder's solid.</summary>
    public Density? PowderDensity { get; init; }

    /// <summary>From the first water to gloss-off.</summary>
    public Duration? WorkingTime { get; init; }

    /// <summary>The least set before the kiln.</summary>
    public Duration? SetAtLeast { get; init; }

    /// <summary>The hottest kiln.</summary>
    public Temperature? NeverAbove { get; init; }

    /// <summary>The silica in it, which turns over at temperatures of its own; missing counts as both kinds.</summary>
    public Silica? Silica { get; init; }

    /// <summary>How fast a kiln may go through those temperatures by its maker, in degrees Celsius per hour.</summary>
    public double? InversionDegreesPerHour { get; init; }

    /// <summary>How long a mould may be kept at its flask temperature before it is poured, by its maker.</summary>
    public Duration? KeptHotAtMost { get; init; }

    /// <summary>Powder in stock.</summary>
    public Mass? InStock { get; init; }
}
