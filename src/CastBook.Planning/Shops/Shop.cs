namespace CastBook.Planning.Shops;

/// <summary>What the shop owns, uses and has decided. Empty lists and missing values mean the shop has not said.</summary>
public sealed record Shop
{
    /// <summary>The flask sizes the shop owns.</summary>
    public IReadOnlyList<FlaskSize> FlaskSizes { get; init; } = [];

    /// <summary>The crucibles the shop owns.</summary>
    public IReadOnlyList<Crucible> Crucibles { get; init; } = [];

    /// <summary>The kilns the shop owns.</summary>
    public IReadOnlyList<Kiln> Kilns { get; init; } = [];

    /// <summary>The shop's own alloys and their stock.</summary>
    public IReadOnlyList<ShopAlloy> Alloys { get; init; } = [];

    /// <summary>The shop's own pattern materials.</summary>
    public IReadOnlyList<Material> Materials { get; init; } = [];

    /// <summary>The investment powders the shop uses.</summary>
    public IReadOnlyList<Investment> Investments { get; init; } = [];

    /// <summary>The shop's own burnout schedules.</summary>
    public IReadOnlyList<ShopSchedule> Schedules { get; init; } = [];

    /// <summary>Schedules of the shop that are not whole or that nobody can read, as far as they can be read: no other stands in for them.</summary>
    public IReadOnlyList<ShopSchedule> UnreadSchedules { get; init; } = [];

    /// <summary>The settings of the Shop sheet and of castbook.json.</summary>
    public Settings Settings { get; init; } = new();
}
