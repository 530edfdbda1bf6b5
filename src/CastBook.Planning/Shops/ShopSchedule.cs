using CastBook.Casting.Burnout;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A burnout schedule of the shop, the rows of one name in its Schedules sheet.</summary>
public sealed record ShopSchedule : SheetLine
{
    /// <summary>The schedule's name.</summary>
    public required string Name { get; init; }

    /// <summary>What it is for; wax and resin alike where nobody says.</summary>
    public ScheduleUse For { get; init; }

    /// <summary>The largest flask diameter it serves; missing means any.</summary>
    public Length? UpToDiameter { get; init; }

    /// <summary>The largest flask height it serves; missing means any.</summary>
    public Length? UpToHeight { get; init; }

    /// <summary>Kiln temperature at which flasks go in.</summary>
    public Temperature? LoadAt { get; init; }

    /// <summary>The stages, in order.</summary>
    public required IReadOnlyList<BurnoutStage> Stages { get; init; }
}
