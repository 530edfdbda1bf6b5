using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A crucible, a row of the shop's Crucibles sheet: by volume, or by a rated mass of a named metal.</summary>
public sealed record Crucible : SheetLine
{
    /// <summary>The crucible's name.</summary>
    public required string Name { get; init; }

    /// <summary>Volume to the brim.</summary>
    public Volume? Holds { get; init; }

    /// <summary>The maker's rating.</summary>
    public Mass? Rated { get; init; }

    /// <summary>The metal that the rating means.</summary>
    public string? RatedFor { get; init; }

    /// <summary>The alloys it may hold, by the shop's names; empty means any.</summary>
    public IReadOnlyList<string> Alloys { get; init; } = [];

    /// <summary>What it is made of, as the shop writes it.</summary>
    public string? MadeOf { get; init; }

    /// <summary>How many the shop owns; unknown counts as one.</summary>
    public int? Owned { get; init; }
}
