using CastBook.Casting.Metals;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>The shop's metal while it is handed out: no gram of it goes into two crucibles.</summary>
internal sealed class MetalDrawer
{
    private readonly List<DrawerMetal> metals;

    /// <summary>Takes the stock of the shop's Alloys sheet.</summary>
    /// <param name="shop">The shop.</param>
    public MetalDrawer(Shop shop)
    {
        var meanings = new AlloyMeanings(shop);
        metals =
        [
            .. shop.Alloys
                .Where(row => row.Fresh is not null || row.Remelt is not null)
                .Select(row => new DrawerMetal(row, row.Alloy.Composition ?? meanings.BuiltInFor(row)?.Composition)),
        ];
    }

    /// <summary>The stock of an alloy; nothing where the shop has not said what it has of it.</summary>
    /// <param name="alloy">The alloy.</param>
    public DrawerMetal? Of(KnownAlloy alloy) => metals.Find(m => ReferenceEquals(m.Row, alloy.Row));

    /// <summary>Fresh metals of a known composition that are left, the alloy itself apart, in the order of the sheet.</summary>
    /// <param name="alloy">The alloy.</param>
    public IReadOnlyList<DrawerMetal> Others(KnownAlloy alloy) =>
        [.. metals.Where(m => m.Composition is not null && m.Fresh > Mass.Zero && !ReferenceEquals(m.Row, alloy.Row))];
}

/// <summary>What is left of a metal in the drawer.</summary>
/// <param name="row">Its row of the Alloys sheet.</param>
/// <param name="composition">Its composition, where it is known.</param>
internal sealed class DrawerMetal(ShopAlloy row, Composition? composition)
{
    /// <summary>Its row.</summary>
    public ShopAlloy Row => row;

    /// <summary>Its name.</summary>
    public string Name => row.Alloy.Name.Trim();

    /// <summary>Its composition, where it is known.</summary>
    public Composition? Composition => composition;

    /// <summary>Whether it is one element and no alloy.</summary>
    public bool IsFine => composition is { Parts.Count: 1 };

    /// <summary>Fresh metal left.</summary>
    public Mass Fresh { get; private set; } = row.Fresh ?? Mass.Zero;

    /// <summary>Re-melt left.</summary>
    public Mass Remelt { get; private set; } = row.Remelt ?? Mass.Zero;

    /// <summary>Takes metal out.</summary>
    /// <param name="fresh">So much fresh, of what is there.</param>
    /// <param name="remelt">So much re-melt, of what is there.</param>
    public void Take(Mass fresh, Mass remelt)
    {
        Fresh -= fresh;
        Remelt -= remelt;
    }
}
