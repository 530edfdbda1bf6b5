using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>An alloy as far as it is known. Missing values are missing: none is invented.</summary>
public sealed record Alloy
{
    /// <summary>The one name CastBook uses for it.</summary>
    public required string Name { get; init; }

    /// <summary>Other usual names and marks; a name may belong to several alloys.</summary>
    public IReadOnlyList<string> OtherNames { get; init; } = [];

    /// <summary>Parts per thousand by mass, where there is a standard composition.</summary>
    public Composition? Composition { get; init; }

    /// <summary>Density of the solid at room temperature.</summary>
    public Density? Density { get; init; }

    /// <summary>Where melting begins.</summary>
    public Temperature? Solidus { get; init; }

    /// <summary>Where melting ends.</summary>
    public Temperature? Liquidus { get; init; }

    /// <summary>Metal temperature to pour at.</summary>
    public Temperature? MetalTemperature { get; init; }

    /// <summary>Flask temperature for fine sections.</summary>
    public Temperature? FlaskTemperatureFine { get; init; }

    /// <summary>Flask temperature for ordinary work.</summary>
    public Temperature? FlaskTemperatureOrdinary { get; init; }

    /// <summary>Flask temperature for heavy sections.</summary>
    public Temperature? FlaskTemperatureHeavy { get; init; }

    /// <summary>Wait between pour and quench by flask class; missing classes have no value.</summary>
    public QuenchWaits QuenchAfter { get; init; } = QuenchWaits.None;

    /// <summary>True when gypsum-bonded investment cannot hold it (platinum, palladium).</summary>
    public bool NeedsHighTemperatureInvestment { get; init; }

    /// <summary>Where the built-in numbers come from; what the shop types has no source here.</summary>
    public AlloySources Sources { get; init; } = AlloySources.None;
}

/// <summary>The wait between pour and quench by flask class; a missing value is asked for, never guessed.</summary>
/// <param name="Small">Flasks of the smallest class.</param>
/// <param name="Medium">Flasks of the middle class.</param>
/// <param name="Large">Flasks of the large class.</param>
public readonly record struct QuenchWaits(Duration? Small, Duration? Medium, Duration? Large)
{
    /// <summary>No value for any class.</summary>
    public static QuenchWaits None => default;
}
