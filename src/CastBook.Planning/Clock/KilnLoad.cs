using CastBook.Casting.Burnout;
using CastBook.Planning.Floors;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Flasks that are burnt out together: one kiln, one schedule.</summary>
public sealed record KilnLoad
{
    // Wax melts above it and begins to run out: memory.
    private const double MostCold = 50;

    /// <summary>Its place in the order of the loads, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The kiln's name; empty where none is known.</summary>
    public required string Kiln { get; init; }

    /// <summary>By how much the kiln's display stands above what is inside; nothing where nobody says so.</summary>
    public TemperatureDelta? ReadsHighBy { get; init; }

    /// <summary>Whether the shop says by how much the display is off, and nobody can read it.</summary>
    public bool IsReadingUnread { get; init; }

    /// <summary>The flasks, by letter.</summary>
    public required IReadOnlyList<string> Flasks { get; init; }

    /// <summary>Where each flask stands, in the same order; empty where the kiln's floor is not known.</summary>
    public IReadOnlyList<FloorSpot> Spots { get; init; } = [];

    /// <summary>The outside diameter of each flask, in the same order.</summary>
    public IReadOnlyList<Length> Outsides { get; init; } = [];

    /// <summary>The kiln's floor; missing where it is not known.</summary>
    public KilnFloor? Floor { get; init; }

    /// <summary>The most demanding schedule of its flasks, which all of them run; it ends at the first flask temperature to pour at.</summary>
    public required BurnoutSchedule Schedule { get; init; }

    /// <summary>The flasks in the order in which they are poured, the hottest first.</summary>
    public required IReadOnlyList<PourGroup> Pours { get; init; }

    /// <summary>How fast the kiln cools, in degrees Celsius per hour.</summary>
    public required double CoolsDegreesPerHour { get; init; }

    /// <summary>How the cores of its moulds follow the kiln.</summary>
    public required LoadHeat Heat { get; init; }

    /// <summary>The flask of a group whose core is slowest, by letter.</summary>
    /// <param name="group">The group.</param>
    public string SlowestOf(PourGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        return Heat.Moulds.SelectMany(m => m.Flasks).First(group.Flasks.Contains);
    }

    /// <summary>The cores, to be driven further.</summary>
    internal CoreLag? Core { get; init; }

    /// <summary>Whether the kiln is cold when it is loaded, so that it may wait for its timer.</summary>
    public bool IsLoadedCold => Schedule.LoadAt is not { DegreesCelsius: > MostCold };

    /// <summary>From its loading until the kiln is empty and cool enough for the next load; missing where nothing is poured.</summary>
    public Duration? FreeAfter { get; init; }

    /// <summary>From loading until the first flask may be poured.</summary>
    public Duration Takes { get; init; }
}

/// <summary>Flasks of a load that are poured from one kiln temperature.</summary>
/// <param name="Temperature">The flask temperature of the hottest; missing where no flask of it has one.</param>
/// <param name="Flasks">Their letters.</param>
public sealed record PourGroup(Temperature? Temperature, IReadOnlyList<string> Flasks);
