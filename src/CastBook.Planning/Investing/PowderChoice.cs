using CastBook.Casting.Investing;
using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Investing;

/// <summary>The investment of the night, and how much powder and water a flask takes of it.</summary>
internal sealed class PowderChoice
{
    private const double FarApart = 0.15;

    private readonly Settings settings;
    private readonly Assumptions assumed;
    private readonly FindingList findings;
    private readonly bool isUnread;

    /// <summary>Finds the powder in use.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="assumed">Takes the notes of what was assumed.</param>
    /// <param name="findings">Takes what is found.</param>
    public PowderChoice(Shop shop, Assumptions assumed, FindingList findings)
    {
        settings = shop.Settings;
        this.assumed = assumed;
        this.findings = findings;
        var wanted = Wanted(settings);
        Row = InUse(shop);
        var names = Say.Together([.. shop.Investments.Take(6).Select(i => $"\"{i.Name}\"")]);
        Question = Row is not null || shop.Investments.Count == 0 ? null
            : wanted.Length > 0
                ? Catalogue.InvestmentUnknown.At(Subject.Setting(SettingName.Investment), wanted, names)
                : Catalogue.InvestmentNotChosen.At(Subject.Setting(SettingName.Investment), names);
        isUnread = Row is { } row && IsUnread(row, shop);
        if (!IsOpen)
        {
            LookAtRanges();
            Question ??= OwnNumbers(shop);
        }
    }

    /// <summary>The shop's row, if one is in use.</summary>
    public Investment? Row { get; private set; }

    /// <summary>The question that must be answered first, if any.</summary>
    public Finding? Question { get; private set; }

    /// <summary>Whether the mould is gypsum-bonded; so counted where nobody says otherwise, and not where nobody can read what is said.</summary>
    public bool IsGypsum => MayBeGypsum && !IsUnreadable;

    /// <summary>Whether the mould may be gypsum-bonded, so that what gypsum does not bear is refused.</summary>
    public bool MayBeGypsum => Row?.Kind is null or InvestmentKind.Gypsum;

    /// <summary>Whether its kind is a word that nobody can read: nothing is taken from another kind then. Who read the word has said so.</summary>
    public bool IsUnreadable => Row?.CannotRead(ShopField.Kind) == true;

    /// <summary>Whether powder and water wait for an answer.</summary>
    public bool IsOpen => Question is not null || IsUnreadable || isUnread;

    /// <summary>The powder's name as a text says it.</summary>
    public string Said => Row is null ? PowderFindingWords.Unnamed : $"\"{Row.Name}\"";

    private Density Density => Row?.PowderDensity ?? PowderAndWater.UsualPowderDensity;

    /// <summary>The step to which powder is weighed.</summary>
    public Mass Step => settings.Units.Powder.Step(settings.PowderStep);

    /// <summary>The row of the powder in use: the one that is named, or the only one.</summary>
    /// <param name="shop">The shop.</param>
    public static Investment? InUse(Shop shop) => Wanted(shop.Settings) is { Length: > 0 } wanted
        ? shop.Investments.FirstOrDefault(i => string.Equals(i.Name.Trim(), wanted, StringComparison.OrdinalIgnoreCase))
        : shop.Investments.Count == 1 ? shop.Investments[0] : null;

    /// <summary>Powder and water of one flask; nothing while the powder is not chosen, or nobody can read its kind.</summary>
    /// <param name="size">The flask size.</param>
    /// <param name="kind">What is in the mould; resin where there is any.</param>
    /// <param name="tree">Volume of pieces, gates and trunk.</param>
    /// <returns>For the flask mixed by itself, and what it adds to a mix of several.</returns>
    public (Mass Powder, Volume Water, FlaskFill Fill)? For(UsableSize size, PatternKind kind, Volume tree)
    {
        if (IsOpen)
        {
            return null;
        }

        var displaced = Displaced(size, tree);
        var ratio = Row?.WaterPer100 ?? PowderAndWater.UsualWaterPer100(kind);
        var computed = PowderAndWater.Compute(FillVolume.Compute(size.Inside, displaced), ratio, Density, Step);
        if (size.Size.Powder is not { } chart)
        {
            Note(kind, withDensity: true);
            return (computed.Powder, computed.Water, new FlaskFill(size.Inside - displaced, Mass.Zero, ratio));
        }

        if (Math.Abs((chart / computed.Powder) - 1) > FarApart)
        {
            assumed.Once("powder-chart " + size.Size.Name, () => Catalogue.PowderChartDiffers.At(
                new Subject(SubjectKind.FlaskSize, size.Size.Name, ShopField.Powder),
                size.Size.Name, findings.Units.Powder.Say(chart), findings.Units.Powder.Say(computed.Powder)));
        }

        if (size.Size.Water is { } water)
        {
            LookAtChart(size.Size, chart, water);
            return (chart, water, new FlaskFill(Volume.Zero, chart, water.Milliliters / chart.Grams * 100));
        }

        Note(kind, withDensity: false);
        return (chart, Volume.FromMilliliters(chart.Grams * ratio / 100), new FlaskFill(Volume.Zero, chart, ratio));
    }

    /// <summary>Powder, water and slurry of a mix; what stays in the bowl counts once.</summary>
    /// <param name="fill">What the moulds need together.</param>
    public (Mass Powder, Volume Water, Volume Slurry) Mix(FlaskFill fill)
    {
        var computed = PowderAndWater.Compute(FillVolume.Compute(fill.Net, Volume.Zero), fill.WaterPer100, Density, Step);
        var powder = computed.Powder + fill.Chart;
        var water = Volume.FromMilliliters(powder.Grams * fill.WaterPer100 / 100);
        return (powder, water, SlurryVolume.Compute(powder, water, Density));
    }

    /// <summary>What takes the place of investment in a flask: the tree and the cup of its base.</summary>
    /// <param name="size">The flask size.</param>
    /// <param name="tree">Volume of pieces, gates and trunk.</param>
    public static Volume Displaced(UsableSize size, Volume tree) => UnitMath.Min(tree + (size.Size.Cup ?? Volume.Zero), size.Inside);

    /// <summary>Says if the powder in stock is too little for the flasks still to be invested.</summary>
    /// <param name="needed">Powder of those flasks.</param>
    public void CompareStock(Mass needed)
    {
        if (Row?.InStock is { } stock && needed > stock)
        {
            findings.Add(Catalogue.PowderShort.At(
                new Subject(SubjectKind.Investment, Row.Name, ShopField.InStock),
                Row.Name, findings.Units.Powder.Say(needed), findings.Units.Powder.Say(stock), findings.Units.Powder.Say(needed - stock)));
        }
    }

    // A ratio of 0.40 for 40, or 400, would empty the store or leave the tree bare; a heap's density makes half a mould.
    private void LookAtRanges()
    {
        var (least, most) = PowderAndWater.WaterRange(Row?.Kind ?? InvestmentKind.Gypsum);
        if (Row?.WaterPer100 is { } water && (water < least || water > most))
        {
            Question = Catalogue.WaterRatioImpossible.At(
                new Subject(SubjectKind.Investment, Row.Name, ShopField.WaterPer100), Row.Name, Say.Plain(water), Say.Plain(least), Say.Plain(most));
        }

        var (light, heavy) = PowderAndWater.PowderDensityRange;
        if (Row?.PowderDensity is { } density && (density < light || density > heavy))
        {
            assumed.Once("powder-density-impossible", () => Catalogue.PowderDensityImpossible.At(
                new Subject(SubjectKind.Investment, Row.Name, ShopField.PowderDensity), Row.Name,
                Say.Dense(density), Say.Dense(light), Say.Dense(heavy), Say.Dense(PowderAndWater.UsualPowderDensity)));
            Row = Row with { PowderDensity = null };
        }
    }

    // A number that nobody can read is not the usual one. Who read it has said so.
    private bool IsUnread(Investment row, Shop shop) =>
        row.CannotRead(ShopField.PowderDensity)
        || (row.CannotRead(ShopField.WaterPer100) && shop.FlaskSizes.Any(s => s.Powder is null || s.Water is null))
        || (row.CannotRead(ShopField.WorkingTime) && settings.MixingBowl is not null);

    private Finding? OwnNumbers(Shop shop)
    {
        var missing = new List<(string Field, string Column)>();
        if (!IsGypsum && Row!.WaterPer100 is null && shop.FlaskSizes.Any(s => s.Powder is null || s.Water is null))
        {
            missing.Add((ShopField.WaterPer100, "Water per 100"));
        }

        if (!IsGypsum && Row!.WorkingTime is null && settings.MixingBowl is not null)
        {
            missing.Add((ShopField.WorkingTime, "Working time"));
        }

        return missing.Count == 0 ? null : Catalogue.PowderNumbersMissing.At(
            [.. missing.Select(m => new Subject(SubjectKind.Investment, Row!.Name, m.Field))], Row!.Name, Say.Together([.. missing.Select(m => $"\"{m.Column}\"")]));
    }

    private void LookAtChart(FlaskSize size, Mass chart, Volume water)
    {
        var (least, most) = PowderAndWater.WaterRange(Row?.Kind ?? InvestmentKind.Gypsum);
        var ratio = water.Milliliters / chart.Grams * 100;
        if (ratio < least || ratio > most)
        {
            assumed.Once("water-chart " + size.Name, () => Catalogue.WaterChartUnlikely.At(
                new Subject(SubjectKind.FlaskSize, size.Name, ShopField.Water), size.Name, findings.Units.Say(chart, water), Say.Plain(Math.Round(ratio, 1)), Say.Plain(least), Say.Plain(most)));
        }
    }

    private static string Wanted(Settings settings) => settings.Investment?.Trim() ?? "";

    private void Note(PatternKind kind, bool withDensity)
    {
        if (Row is { Kind: null })
        {
            Once("kind-of", ShopField.Kind, PowderFindingWords.GypsumBonded, "Kind");
        }

        if (Row?.WaterPer100 is null)
        {
            var water = Say.Plain(PowderAndWater.UsualWaterPer100(kind));
            Once("water-to-100 " + water, ShopField.WaterPer100, PowderFindingWords.WaterOfFlasks(water, kind == PatternKind.Resin), "Water per 100");
        }

        if (withDensity && Row?.PowderDensity is null)
        {
            Once("powder-density", ShopField.PowderDensity, PowderFindingWords.DensityOfGrains(Say.Dense(PowderAndWater.UsualPowderDensity)), "Powder density");
        }

        if (withDensity && settings.PowderStep is null)
        {
            assumed.Use(SettingName.PowderStep, settings.Units.Powder.SayExactly(Step));
        }
    }

    private void Once(string key, string field, string value, string column) =>
        assumed.Once("investment-" + key, () => Catalogue.AssumedPowder.At(
            new Subject(SubjectKind.Investment, Row?.Name ?? "", field), Row?.Name ?? PowderFindingWords.UnnamedTitle, value, column));
}
