using CastBook.Casting.Metals;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>An alloy of the shop and its stock, a row of its Alloys sheet.</summary>
public sealed record ShopAlloy : SheetLine
{
    /// <summary>The alloy; what the row leaves blank is missing here.</summary>
    public required Alloy Alloy { get; init; }

    /// <summary>Poisonous elements in a composition that could not be read.</summary>
    public IReadOnlyList<Element> Poisons { get; init; } = [];

    /// <summary>Melt loss of this alloy, where it differs from the shop's setting.</summary>
    public Ratio? Loss { get; init; }

    /// <summary>Fresh metal in stock; missing means the shop has not said.</summary>
    public Mass? Fresh { get; init; }

    /// <summary>Clean re-melt in stock; missing means the shop has not said.</summary>
    public Mass? Remelt { get; init; }

    /// <summary>Price per gram, in the shop's currency.</summary>
    public double? PricePerGram { get; init; }
}
