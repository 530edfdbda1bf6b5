using CastBook.Casting.Trees;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How the sums of an alloy, and a flask's shares of its stock, came to be.</summary>
/// <param name="night">The night.</param>
/// <param name="plan">Its plan.</param>
internal sealed class MetalAccounts(Night night, NightPlan plan)
{
    /// <summary>What an alloy takes: its charges, or its pieces where nothing of it is in a flask.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public Account? Needed(MetalPlan metal) => Charges(metal) ?? (metal.Pieces is { } pieces
        ? new(MetalAccountWords.Needed, MetalAccountWords.InNoFlask, "", pieces.Grams, "g")
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
            MetalAccountWords.Charges, open.Count == 0 ? MetalAccountWords.AllArePoured : MetalAccountWords.ChargesOfOpenFlasks,
            string.Join(" + ", open.Select(f => Figures.Grams(f.Charge))), charges.Grams, "g")
        {
            Inputs = [.. open.Select(f => AccountInput.Reckoned(AccountWords.Flask(f.Letter), f.Charge, MetalAccountWords.ItsCharge))],
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
        return new(MetalAccountWords.ToBuy, MetalAccountWords.ToBuyRule, $"{Figures.Grams(charges)} − {Figures.Grams(usable)} − {Figures.Grams(fresh)}", buy.Grams, "g")
        {
            Inputs =
            [
                AccountInput.Reckoned(MetalAccountWords.NeededMetal, charges, MetalAccountWords.ChargesOfFlasks),
                Stock(metal, ShopField.Remelt, remelt),
                Stock(metal, ShopField.Fresh, fresh),
                Least(),
            ],
            ValidFor = MetalAccountWords.SharesHold,
        };
    }

    /// <summary>Fresh metal in stock; nothing where the shop has not said.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Account? FreshInStock(MetalPlan metal) => AsTyped(MetalAccountWords.FreshInStock, metal, ShopField.Fresh, metal.Fresh);

    /// <summary>Re-melt in stock; nothing where the shop has not said.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Account? RemeltInStock(MetalPlan metal) => AsTyped(MetalAccountWords.RemeltInStock, metal, ShopField.Remelt, metal.Remelt);

    /// <summary>Both together; nothing where the shop has said neither.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Account? InStock(MetalPlan metal)
    {
        if (metal is { Fresh: null, Remelt: null })
        {
            return null;
        }

        var (fresh, remelt) = (metal.Fresh ?? Mass.Zero, metal.Remelt ?? Mass.Zero);
        return new(MetalAccountWords.InStock, MetalAccountWords.BothStocks, $"{Figures.Grams(fresh)} + {Figures.Grams(remelt)}", (fresh + remelt).Grams, "g")
        {
            Inputs = [Stock(metal, ShopField.Fresh, fresh), Stock(metal, ShopField.Remelt, remelt)],
        };
    }

    /// <summary>The least share of fresh metal in a melt.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public Account? FreshAtLeast(MetalPlan metal) => metal.FreshAtLeast is { } least
        ? new(MetalAccountWords.LeastFresh, MetalAccountWords.RuleForAllMelts, "", least.Percent, "%") { Inputs = [Least()], ValidFor = MetalAccountWords.SharesHold }
        : null;

    /// <summary>Fresh metal that an alloy's flasks get.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Account? FreshOf(MetalPlan metal) => SumOf(metal, MetalAccountWords.FreshToUse, p => p.Fresh);

    /// <summary>Re-melt that an alloy's flasks get.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Account? RemeltOf(MetalPlan metal) => SumOf(metal, MetalAccountWords.RemeltToUse, p => p.Remelt);

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
            MetalAccountWords.Fresh, MetalAccountWords.FreshRule(others.Length > 0),
            $"{Figures.Grams(portion.Charge)} − {Figures.Grams(remelt)}{others}", fresh.Grams, "g")
        {
            Inputs =
            [
                Charge(portion),
                AccountInput.Reckoned(MetalAccountWords.RemeltMetal, remelt, AccountWords.BesideIt),
                Stock(found.Metal, ShopField.Fresh, found.Metal.Fresh ?? Mass.Zero),
            ],
            ValidFor = MetalAccountWords.SharesHold,
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
            MetalAccountWords.Remelt, isAll ? MetalAccountWords.WhatIsLeft : MetalAccountWords.ChargeLessLeastFresh,
            isAll ? "" : $"{Figures.Grams(portion.Charge)} − {Figures.Grams(portion.Charge - room)}", remelt.Grams, "g")
        {
            Inputs = [Charge(portion), Least(), Stock(found.Metal, ShopField.Remelt, found.Metal.Remelt ?? Mass.Zero)],
            ValidFor = MetalAccountWords.SharesHold,
        };
    }

    /// <summary>The other metals that make up a flask's melt; nothing where there are none.</summary>
    /// <param name="letter">The flask's letter.</param>
    public Account? MadeUp(string letter) => Find(letter) is { Portion: { MadeUp.Count: > 0 } portion } found
        ? new(MetalAccountWords.MadeUpFrom, MetalAccountWords.MadeUpRule, "", null, "")
        {
            Inputs =
            [
                Charge(portion),
                AccountInput.Reckoned(MetalAccountWords.RemeltMetal, portion.Remelt!.Value, MetalAccountWords.ColumnRemelt),
                AccountInput.Reckoned(MetalAccountWords.FreshMetal, portion.Fresh!.Value, MetalAccountWords.ColumnFresh),
                .. portion.MadeUp.Select(p => AccountInput.By(
                    MetalAccountWords.StockOf(p.Metal), MetalAccountWords.OfIt(Figures.Grams(p.Mass)), new Subject(SubjectKind.Alloy, p.Metal, ShopField.Fresh))),
            ],
            ValidFor = MetalAccountWords.OfNotedComposition(found.Metal.Alloy),
        }
        : null;

    private static Account? AsTyped(string name, MetalPlan metal, string field, Mass? mass) => mass is { } some
        ? new(name, MetalAccountWords.AsTyped, "", some.Grams, "g") { Inputs = [Stock(metal, field, some)] }
        : null;

    private List<FlaskPlan> OpenFlasks(MetalPlan metal) => [.. plan.Flasks.Where(f => f.Alloy == metal.Alloy && f.State < FlaskState.Poured)];

    private Mass RoomIn(Mass charge, MetalPlan metal) =>
        RemeltLimit.Compute(charge, metal.FreshAtLeast!.Value, ChargeRules.StepOf(night.Shop.Settings));

    private static Account? SumOf(MetalPlan metal, string name, Func<MeltPortion, Mass?> part)
    {
        var some = metal.Portions.Where(p => part(p) is not null).ToList();
        return metal.Portions.Count == 0 ? null : some.Count == 0 ? new(name, MetalAccountWords.EnoughForNone, "", 0, "g") : new(
            name, MetalAccountWords.SharesOfFlasks, string.Join(" + ", some.Select(p => Figures.Grams(part(p)!.Value))), some.Sum(p => part(p)!.Value.Grams), "g")
        {
            Inputs = [.. some.Select(p => AccountInput.Reckoned(AccountWords.Flask(p.Flask), part(p)!.Value, MetalAccountWords.LineOfFlask))],
            ValidFor = MetalAccountWords.SharesHold,
        };
    }

    private static AccountInput Charge(MeltPortion portion) => AccountInput.Reckoned(MetalAccountWords.Charge, portion.Charge, MetalAccountWords.ChargeOfFlask);

    private static AccountInput Stock(MetalPlan metal, string field, Mass mass) =>
        AccountInput.By(field == ShopField.Fresh ? MetalAccountWords.FreshStock : MetalAccountWords.RemeltStock, mass, new Subject(SubjectKind.Alloy, metal.Alloy, field));

    private AccountInput Least()
    {
        var said = night.Shop.Settings.FreshAtLeast;
        return AccountInput.Setting(SettingName.FreshAtLeast, Say.Percent(said ?? RemeltLimit.UsualFreshAtLeast), said is not null, MetalAccountWords.SupplierAdvice);
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
