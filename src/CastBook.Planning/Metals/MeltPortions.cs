using CastBook.Casting.Trees;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>
/// Hands out the metal in the drawer, flask by flask: re-melt as far as the least share of fresh metal leaves room for it, the
/// rest fresh, and what an alloy then lacks made up from other metals where the drawer has all it takes.
/// </summary>
/// <remarks>Trees that are under way come first, then pieces that are due. A flask that cannot be had whole leaves its metal to the next.</remarks>
internal sealed class MeltPortions
{
    /// <summary>Under what any scale shows: sums of the arithmetic do not empty a drawer to the last bit.</summary>
    public static Mass Dust { get; } = Mass.FromMilligrams(1);

    private readonly Night night;
    private readonly MetalDrawer drawer;
    private readonly Ratio freshAtLeast;
    private readonly Mass step;
    private readonly Dictionary<string, MeltPortion> byLetter = new(StringComparer.Ordinal);

    /// <summary>Hands out the metal.</summary>
    /// <param name="night">The night.</param>
    /// <param name="flasks">The flasks; those poured need none.</param>
    /// <param name="alloys">The alloys, by name.</param>
    /// <param name="findings">Takes what is found.</param>
    public MeltPortions(Night night, IReadOnlyList<FlaskPlan> flasks, IReadOnlyDictionary<string, KnownAlloy> alloys, FindingList findings)
    {
        this.night = night;
        drawer = new MetalDrawer(night.Shop);
        freshAtLeast = night.Shop.Settings.FreshAtLeast ?? RemeltLimit.UsualFreshAtLeast;
        step = ChargeRules.StepOf(night.Shop.Settings);
        var lacking = new List<(FlaskPlan Flask, KnownAlloy Alloy, DrawerMetal Stock)>();
        foreach (var flask in flasks.Where(f => f.State < FlaskState.Poured).OrderByDescending(f => f.State).ThenBy(DueOf).ThenBy(f => FlaskLetters.Place(f.Letter)))
        {
            // Each alloy's own metal first: what is left for others is known only after that.
            if (alloys.TryGetValue(flask.Alloy, out var alloy) && drawer.Of(alloy) is { } stock && !TryOwn(flask, stock))
            {
                lacking.Add((flask, alloy, stock));
            }
        }

        foreach (var (flask, alloy, stock) in lacking)
        {
            MadeUp(flask, alloy, stock);
        }

        if (night.Shop.Settings.FreshAtLeast is null && byLetter.Values.Any(p => p.Remelt > Mass.Zero))
        {
            findings.Add(Catalogue.AssumedDefault.At(
                Subject.Setting(SettingName.FreshAtLeast), SettingName.FreshAtLeast, Say.Percent(RemeltLimit.UsualFreshAtLeast)));
        }
    }

    /// <summary>The least share of fresh metal in each melt.</summary>
    public Ratio FreshAtLeast => freshAtLeast;

    /// <summary>What to weigh out for flasks, in their order; none for those whose stock is not known.</summary>
    /// <param name="flasks">The flasks.</param>
    public IReadOnlyList<MeltPortion> Of(IEnumerable<FlaskPlan> flasks) =>
        [.. flasks.Where(f => byLetter.ContainsKey(f.Letter)).Select(f => byLetter[f.Letter])];

    /// <summary>Fresh metal that must be bought so that an alloy's flasks can all be poured; other metals are not counted.</summary>
    /// <param name="flasks">Its flasks not yet poured.</param>
    /// <param name="fresh">Fresh metal in stock.</param>
    /// <param name="remelt">Re-melt in stock.</param>
    public Mass ToBuy(IReadOnlyList<FlaskPlan> flasks, Mass fresh, Mass remelt)
    {
        var (charges, room) = (Mass.Zero, Mass.Zero);
        foreach (var flask in flasks)
        {
            charges += flask.Charge;
            room += RoomIn(flask);
        }

        var lacking = charges - UnitMath.Min(remelt, room) - fresh;
        return lacking > Dust ? lacking : Mass.Zero;
    }

    private Mass RoomIn(FlaskPlan flask) => RemeltLimit.Compute(flask.Charge, freshAtLeast, step);

    private bool TryOwn(FlaskPlan flask, DrawerMetal stock)
    {
        var remelt = UnitMath.Min(stock.Remelt, RoomIn(flask));
        var fresh = flask.Charge - remelt;
        if (fresh > stock.Fresh + Dust)
        {
            return false;
        }

        stock.Take(fresh, remelt);
        byLetter[flask.Letter] = new MeltPortion(flask.Letter, flask.Charge, fresh, remelt, []);
        return true;
    }

    private void MadeUp(FlaskPlan flask, KnownAlloy alloy, DrawerMetal stock)
    {
        var remelt = UnitMath.Min(stock.Remelt, RoomIn(flask));
        var fresh = UnitMath.Min(stock.Fresh, flask.Charge - remelt);
        var missing = flask.Charge - remelt - fresh;
        IReadOnlyList<StockPart> made = alloy.Alloy.Composition is { } wanted ? MakeUp.From(wanted, missing, drawer.Others(alloy)) : [];
        if (made.Count == 0)
        {
            byLetter[flask.Letter] = new MeltPortion(flask.Letter, flask.Charge, null, null, []);
            return;
        }

        stock.Take(fresh, remelt);
        byLetter[flask.Letter] = new MeltPortion(flask.Letter, flask.Charge, fresh, remelt, made);
    }

    private DateOnly DueOf(FlaskPlan flask)
    {
        var first = DateOnly.MaxValue;
        foreach (var share in flask.Pieces)
        {
            if (night.Pieces[share.PieceId].Due is { } due && due < first)
            {
                first = due;
            }
        }

        return first;
    }
}
