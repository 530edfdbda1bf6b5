using CastBook.Casting.Pouring;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A size of flask that the shop owns, a row of its Flasks sheet.</summary>
public sealed record FlaskSize : SheetLine
{
    /// <summary>The size's name, such as <c>75 × 100</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Inside diameter; nominal sizes are often outside.</summary>
    public Length? InsideDiameter { get; init; }

    /// <summary>Height of the flask.</summary>
    public Length? Height { get; init; }

    /// <summary>How many the shop owns; unknown counts as none, with a question.</summary>
    public int? Owned { get; init; }

    /// <summary>How this size is cast, where it differs from the shop's setting.</summary>
    public CastingMethod? Method { get; init; }

    /// <summary>Measured inside volume, which wins over diameter and height.</summary>
    public Volume? Holds { get; init; }

    /// <summary>Powder of the shop's own chart, which wins over the computed value.</summary>
    public Mass? Powder { get; init; }

    /// <summary>Water of the shop's own chart.</summary>
    public Volume? Water { get; init; }

    /// <summary>How many pieces of unknown size a tree of this size takes, where a row does not say.</summary>
    public int? PerTree { get; init; }

    /// <summary>Diameter of the trunk.</summary>
    public Length? SprueDiameter { get; init; }

    /// <summary>Height of the sprue base inside the flask, up to where the first gate may stand.</summary>
    public Length? BaseHeight { get; init; }

    /// <summary>Volume of the pouring cup that the base forms.</summary>
    public Volume? Cup { get; init; }

    /// <summary>The shop's own clearance above the tree.</summary>
    public Length? AboveTree { get; init; }

    /// <summary>The shop's own clearance to the wall.</summary>
    public Length? ToWall { get; init; }
}
