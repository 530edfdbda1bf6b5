using CastBook.Casting.Alloying;
using CastBook.Casting.Metals;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>Makes up an alloy that has run short out of the other metals in the drawer.</summary>
internal static class MakeUp
{
    // Under what the finest scale of a caster shows.
    private static readonly Mass Nothing = Mass.FromGrams(0.005);

    /// <summary>The metals to put together; none where the drawer cannot make all of it.</summary>
    /// <param name="wanted">The composition to reach.</param>
    /// <param name="missing">How much of it.</param>
    /// <param name="stock">The fresh metals that are left; what is used is taken out.</param>
    public static IReadOnlyList<StockPart> From(Composition wanted, Mass missing, IReadOnlyList<DrawerMetal> stock)
    {
        foreach (var metals in Ways(stock))
        {
            var recipe = MakeAlloy.Compute(wanted, missing, [.. metals.Select(m => new MetalInStock(m.Composition!, m.Fresh))]);
            if (recipe.StillToAdd.Count > 0)
            {
                continue;
            }

            var parts = new List<StockPart>();
            for (var i = 0; i < metals.Count; i++)
            {
                var mass = recipe.FromStock[i];
                metals[i].Take(mass, Mass.Zero);
                if (mass > Nothing)
                {
                    parts.Add(new StockPart(metals[i].Name, mass));
                }
            }

            return parts;
        }

        return [];
    }

    // One alloy brought up or down with fine metals, then fine metals alone, then whatever there is; alloys before fine metals,
    // or there is no room for them.
    private static IEnumerable<IReadOnlyList<DrawerMetal>> Ways(IReadOnlyList<DrawerMetal> stock)
    {
        List<DrawerMetal> fine = [.. stock.Where(m => m.IsFine)];
        List<DrawerMetal> alloys = [.. stock.Where(m => !m.IsFine)];
        foreach (var alloy in alloys)
        {
            yield return [alloy, .. fine];
        }

        yield return fine;
        if (alloys.Count > 1)
        {
            yield return [.. alloys, .. fine];
        }
    }
}
