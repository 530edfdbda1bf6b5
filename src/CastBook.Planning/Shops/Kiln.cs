using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A burnout kiln, a row of the shop's Kilns sheet.</summary>
public sealed record Kiln : SheetLine
{
    /// <summary>The kiln's name.</summary>
    public required string Name { get; init; }

    /// <summary>The shape of its floor; missing is told by the measures that are given.</summary>
    public KilnShape? Shape { get; init; }

    /// <summary>Inside width of the floor.</summary>
    public Length? InsideWidth { get; init; }

    /// <summary>Inside depth of the floor.</summary>
    public Length? InsideDepth { get; init; }

    /// <summary>Inside diameter of a round floor.</summary>
    public Length? InsideDiameter { get; init; }

    /// <summary>Electrical power.</summary>
    public Power? Power { get; init; }

    /// <summary>How fast it cools, in degrees Celsius per hour.</summary>
    public double? CoolsDegreesPerHour { get; init; }

    /// <summary>By how many degrees Celsius its controller reads high.</summary>
    public TemperatureDelta? ReadsHighBy { get; init; }
}
