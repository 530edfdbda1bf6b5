using CastBook.Casting.Trees;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How the sums of an alloy, and a flask's shares of its stock, came to be.</summary>
/// <param name="night">The night.</param>
/// <param name="plan">Its plan.</param>
internal sealed class MetalAccounts(Night night, NightPlan plan)
{
    private const string Shares = "clean re-melt of the same alloy; re-melt is used up first, flask by flask";

    /// <summary>What an alloy takes: its charges, or its pieces where nothing of it is in a flask.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public Account? Needed(MetalPlan metal) => Charges(metal) ?? (metal.Pieces is { } pieces
        ? new("Needed", "the metal of its pieces; nothing of it is in a flask", "", pieces.Grams, "g")
        : null);

    /// <summary>The charges of its flasks; nothing where it has none.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public Account? Charges(MetalPlan metal)
    {
        if (metal.Charges is not { } charges)
        {
            return null;
        }

        var open = OpenFlasks(metal);
        return new(
            "Charges", open.Count == 0 ? "all of its flasks are poured" : "the charges of its flasks that are not poured yet",
            string.Join(" + ", open.Select(f => Figures.Grams(f.Charge))), charges.Grams, "g")
        {
            Inputs = [.. open.Select(f => AccountInput.Reckoned("flask " + f.Letter, f.Charge, "its charge"))],
        };
    }

    /// <summary>Fresh metal to buy; nothing where the stock is not known or suffices.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public Account? ToBuy(MetalPlan metal)
    {
        if (metal is not { Buy: { Grams: > 0 } buy, Charges: { } charges })
        {
            return null;
        }

        var (fresh, remelt) = (metal.Fresh ?? Mass.Zero, metal.Remelt ?? Mass.Zero);
        var usable = UnitMath.Min(remelt, OpenFlasks(metal).Aggregate(Mass.Zero, (sum, f) => sum + RoomIn(f.Charge, metal)));
        return new("To buy", "needed − re-melt that may be used − fresh in stock", $"{Figures.Grams(charges)} − {Figures.Grams(usable)} − {Figures.Grams(fresh)}", buy.Grams, "g")
        {
            Inputs = [AccountInput.Reckoned("needed", charges, "the charges of its flasks"), Stock(metal, ShopField.Remelt, remelt), Stock(metal, ShopField.Fresh, fresh), Least()],
            ValidFor = Shares,
        };
    }

    /// <summary>Fresh metal in stock; nothing where the shop has not said.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Account? FreshInStock(MetalPlan metal) => AsTyped("Fresh in stock", metal, ShopField.Fresh, metal.Fresh);

    /// <summary>Re-melt in stock; nothing where the shop has not said.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Account? RemeltInStock(MetalPlan metal) => AsTyped("Re-melt in stock", metal, ShopField.Remelt, metal.Remelt);

    /// <summary>Both together; nothing where the shop has said neither.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Account? InStock(MetalPlan metal)
    {
        if (metal is { Fresh: null, Remelt: null })
        {
            return null;
        }

        var (fresh, remelt) = (metal.Fresh ?? Mass.Zero, metal.Remelt ?? Mass.Zero);
        return new("In stock", "fresh + re-melt", $"{Figures.Grams(fresh)} + {Figures.Grams(remelt)}", (fresh + remelt).Grams, "g")
        {
            Inputs = [Stock(metal, ShopField.Fresh, fresh), Stock(metal, ShopField.Remelt, remelt)],
        };
    }

    /// <summary>The least share of fresh metal in a melt.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public Account? FreshAtLeast(MetalPlan metal) => metal.FreshAtLeast is { } least
        ? new("Least fresh", "the shop's rule for all melts", "", least.Percent, "%") { Inputs = [Least()], ValidFor = Shares }
        : null;

    /// <summary>Fresh metal that an alloy's flasks get.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Account? FreshOf(MetalPlan metal) => SumOf(metal, "Fresh to use", p => p.Fresh);

    /// <summary>Re-melt that an alloy's flasks get.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Account? RemeltOf(MetalPlan metal) => SumOf(metal, "Re-melt to use", p => p.Remelt);

    /// <summary>The fresh metal of a flask; nothing where the stock has not enough for it.</summary>
    /// <param name="letter">The flask's letter.</param>
    public Account? Fresh(string letter)
    {
        if (Find(letter) is not { Portion: { Fresh: { } fresh, Remelt: { } remelt } portion } found)
        {
            return null;
        }

        var others = string.Concat(portion.MadeUp.Select(p => $" − {Figures.Grams(p.Mass)}"));
        return new(
            "Fresh", others.Length > 0 ? "charge − re-melt − other metals that make it up" : "charge − re-melt",
            $"{Figures.Grams(portion.Charge)} − {Figures.Grams(remelt)}{others}", fresh.Grams, "g")
        {
            Inputs = [Charge(portion), AccountInput.Reckoned("re-melt", remelt, "the column beside it"), Stock(found.Metal, ShopField.Fresh, found.Metal.Fresh ?? Mass.Zero)],
            ValidFor = Shares,
        };
    }

    /// <summary>The re-melt of a flask; nothing where the stock has not enough for it.</summary>
    /// <param name="letter">The flask's letter.</param>
    public Account? Remelt(string letter)
    {
        if (Find(letter) is not { Portion: { Remelt: { } remelt } portion } found)
        {
            return null;
        }

        var room = RoomIn(portion.Charge, found.Metal);
        var isAll = remelt < room;
        return new(
            "Re-melt", isAll ? "what is left of it" : "charge − the least fresh metal, that up to a whole step",
            isAll ? "" : $"{Figures.Grams(portion.Charge)} − {Figures.Grams(portion.Charge - room)}", remelt.Grams, "g")
        {
            Inputs = [Charge(portion), Least(), Stock(found.Metal, ShopField.Remelt, found.Metal.Remelt ?? Mass.Zero)],
            ValidFor = Shares,
        };
    }

    /// <summary>The other metals that make up a flask's melt; nothing where there are none.</summary>
    /// <param name="letter">The flask's letter.</param>
    public Account? MadeUp(string letter) => Find(letter) is { Portion: { MadeUp.Count: > 0 } portion } found
        ? new("Made up from", "metals in the drawer that together have the alloy's composition, for what re-melt and fresh metal lack", "", null, "")
        {
            Inputs =
            [
                Charge(portion),
                AccountInput.Reckoned("re-melt", portion.Remelt!.Value, "the column Re-melt"),
                AccountInput.Reckoned("fresh", portion.Fresh!.Value, "the column Fresh"),
                .. portion.MadeUp.Select(p => AccountInput.By($"{p.Metal} in stock", Figures.Grams(p.Mass) + " of it", new Subject(SubjectKind.Alloy, p.Metal, ShopField.Fresh))),
            ],
            ValidFor = $"{found.Metal.Alloy} of the composition that is noted for it",
        }
        : null;

    private static Account? AsTyped(string name, MetalPlan metal, string field, Mass? mass) => mass is { } some
        ? new(name, "as typed", "", some.Grams, "g") { Inputs = [Stock(metal, field, some)] }
        : null;

    private List<FlaskPlan> OpenFlasks(MetalPlan metal) => [.. plan.Flasks.Where(f => f.Alloy == metal.Alloy && f.State < FlaskState.Poured)];

    private Mass RoomIn(Mass charge, MetalPlan metal) =>
        RemeltLimit.Compute(charge, metal.FreshAtLeast!.Value, ChargeRules.StepOf(night.Shop.Settings));

    private static Account? SumOf(MetalPlan metal, string name, Func<MeltPortion, Mass?> part)
    {
        var some = metal.Portions.Where(p => part(p) is not null).ToList();
        return metal.Portions.Count == 0 ? null : some.Count == 0 ? new(name, "none: the stock is enough for no flask of it", "", 0, "g") : new(
            name, "the shares of its flasks", string.Join(" + ", some.Select(p => Figures.Grams(part(p)!.Value))), some.Sum(p => part(p)!.Value.Grams), "g")
        {
            Inputs = [.. some.Select(p => AccountInput.Reckoned("flask " + p.Flask, part(p)!.Value, "the line of the flask"))],
            ValidFor = Shares,
        };
    }

    private static AccountInput Charge(MeltPortion portion) => AccountInput.Reckoned("charge", portion.Charge, "the charge of the flask");

    private static AccountInput Stock(MetalPlan metal, string field, Mass mass) =>
        AccountInput.By(field == ShopField.Fresh ? "fresh in stock" : "re-melt in stock", mass, new Subject(SubjectKind.Alloy, metal.Alloy, field));

    private AccountInput Least()
    {
        var said = night.Shop.Settings.FreshAtLeast;
        return AccountInput.Setting(SettingName.FreshAtLeast, Say.Percent(said ?? RemeltLimit.UsualFreshAtLeast), said is not null, "published supplier advice");
    }

    private (MetalPlan Metal, MeltPortion Portion)? Find(string letter)
    {
        foreach (var metal in plan.Metal)
        {
            foreach (var portion in metal.Portions)
            {
                if (portion.Flask == letter)
                {
                    return (metal, portion);
                }
            }
        }

        return null;
    }
}
