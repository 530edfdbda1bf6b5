using CastBook.Planning.Findings;
using CastBook.Planning.Mixes;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How the numbers of a mix of investment came to be. A mix is known by any of its flasks.</summary>
/// <param name="settings">The shop's settings.</param>
/// <param name="mixes">The mixes of the night.</param>
/// <param name="flasks">The accounts of its flasks.</param>
internal sealed class MixAccounts(Settings settings, IReadOnlyList<MixPlan> mixes, FlaskAccounts flasks)
{
    private readonly MixRules rules = new(settings);

    /// <summary>The mix of a flask; nothing where it is in none.</summary>
    /// <param name="letter">The flask's letter.</param>
    public MixPlan? Of(string letter) => mixes.FirstOrDefault(m => m.Flasks.Contains(letter));

    /// <summary>Which mix it is.</summary>
    /// <param name="mix">The mix.</param>
    public Account Number(MixPlan mix) => new(AccountWords.Mix, MixAccountWords.NumberRule, "", mix.Number, "")
    {
        Inputs =
        [
            .. settings.MixingBowl is { } bowl
                ? [AccountInput.By(SettingName.MixingBowl, Figures.Millilitres(bowl), Subject.Setting(SettingName.MixingBowl))] : Array.Empty<AccountInput>(),
            AccountInput.Setting(SettingName.BowlFill, Say.Percent(rules.Fill), settings.BowlFill is not null, AccountWords.CommonPractice),
            flasks.Powders.OfWorkingTime(mix.GlossOff),
        ],
        ValidFor = MixAccountWords.StepsHold,
    };

    /// <summary>Its powder.</summary>
    /// <param name="mix">The mix.</param>
    public Account Powder(MixPlan mix)
    {
        var (fills, inputs) = (mix.Flasks.Select(l => (Letter: l, Fill: flasks.Flask(l)!.Fill!)).ToList(), flasks.Powders);
        var moulds = fills.Where(f => f.Fill.Net > Volume.Zero).ToList();
        var charts = fills.Where(f => f.Fill.Chart > Mass.Zero).ToList();
        var numbers = "";
        if (moulds.Count > 0)
        {
            var net = moulds.Aggregate(Volume.Zero, (sum, f) => sum + f.Fill.Net);
            var waste = Casting.Investing.FillVolume.Compute(net, Volume.Zero) - net;
            numbers = $"({Sum(moulds.Select(f => Figures.Millilitres(f.Fill.Net)))} + {Figures.Millilitres(waste)}) ÷ (1 ÷ {Figures.Dense(inputs.Density)} + {Figures.Plain(Ratio(mix))} ÷ 100)";
        }

        if (charts.Count > 0)
        {
            numbers += (numbers.Length > 0 ? " + " : "") + Sum(charts.Select(f => Figures.Grams(f.Fill.Chart)));
        }

        return new(MixAccountWords.Powder, MixAccountWords.PowderRule(moulds.Count > 0, charts.Count > 0), numbers, mix.Powder.Grams, "g")
        {
            Rounded = moulds.Count > 0 ? AccountWords.UpToStep(settings.Units.Powder.SayExactly(inputs.Step)) : "",
            Inputs =
            [
                .. moulds.Select(f => AccountInput.Reckoned(MixAccountWords.MouldOf(f.Letter), Figures.Millilitres(f.Fill.Net), MixAccountWords.InsideLess)),
                .. charts.Select(f => AccountInput.By(
                    MixAccountWords.PowderOf(f.Letter), Figures.Grams(f.Fill.Chart), new Subject(SubjectKind.FlaskSize, flasks.Flask(f.Letter)!.Size.Name, ShopField.Powder))),
                .. moulds.Count > 0 ? [PowderInputs.OfWaste(), inputs.OfDensity(), OfWater(mix), inputs.OfStep()] : Array.Empty<AccountInput>(),
            ],
            ValidFor = PowderAccountWords.RangeHolds,
        };
    }

    /// <summary>Its water.</summary>
    /// <param name="mix">The mix.</param>
    public Account Water(MixPlan mix) => new(
        MixAccountWords.Water, PowderAccountWords.WaterRule, $"{Figures.Grams(mix.Powder)} × {Figures.Plain(Ratio(mix))} ÷ 100", mix.Water.Milliliters, "ml")
    {
        Inputs = [AccountInput.Reckoned(PowderAccountWords.PowderMass, Figures.Grams(mix.Powder), MixAccountWords.PowderAsRounded), OfWater(mix)],
        ValidFor = PowderAccountWords.RangeHolds,
    };

    /// <summary>What both fill of the bowl.</summary>
    /// <param name="mix">The mix.</param>
    public Account Slurry(MixPlan mix) => new(
        MixAccountWords.Slurry, MixAccountWords.SlurryRule,
        $"{Figures.Grams(mix.Powder)} ÷ {Figures.Dense(flasks.Powders.Density)} + {Figures.Millilitres(mix.Water)}", mix.Slurry.Milliliters, "ml")
    {
        Inputs =
        [
            AccountInput.Reckoned(PowderAccountWords.PowderMass, Figures.Grams(mix.Powder), MixAccountWords.PowderOfMix),
            flasks.Powders.OfDensity(),
            AccountInput.Reckoned(PowderAccountWords.WaterVolume, Figures.Millilitres(mix.Water), MixAccountWords.WaterOfMix),
        ],
        ValidFor = MixAccountWords.SlurryHolds,
    };

    /// <summary>How long it takes.</summary>
    /// <param name="mix">The mix.</param>
    public Account Takes(MixPlan mix)
    {
        var steps = rules.Steps;
        return new(
            MixAccountWords.Takes, MixAccountWords.TakesRule,
            $"{Say.Minutes(steps.Mixing)} + {Say.Minutes(steps.BowlVacuum)} + {mix.Flasks.Count} × {Say.Minutes(steps.Filling)} + {Say.Minutes(steps.FlaskVacuum)}",
            mix.Takes.Minutes, "min")
        {
            Inputs =
            [
                Step(SettingName.MixingTakes, steps.Mixing, settings.MixingTakes),
                Step(SettingName.BowlVacuum, steps.BowlVacuum, settings.BowlVacuum),
                Step(SettingName.FlaskFilling, steps.Filling, settings.FlaskFilling),
                Step(SettingName.FlaskVacuum, steps.FlaskVacuum, settings.FlaskVacuum),
            ],
            ValidFor = MixAccountWords.StepsHold,
        };
    }

    /// <summary>By when the last flask must be full.</summary>
    /// <param name="mix">The mix.</param>
    public Account PourDoneBy(MixPlan mix)
    {
        var steps = rules.Steps;
        return new(
            MixAccountWords.PourDoneBy, MixAccountWords.PourDoneByRule,
            $"{Say.Minutes(mix.GlossOff)} − {Say.Minutes(steps.Margin)} − {Say.Minutes(steps.FlaskVacuum)}", mix.PourDoneBy.Minutes, "min")
        {
            Inputs =
            [
                flasks.Powders.OfWorkingTime(mix.GlossOff),
                Step(SettingName.GlossOffMargin, steps.Margin, settings.GlossOffMargin),
                Step(SettingName.FlaskVacuum, steps.FlaskVacuum, settings.FlaskVacuum),
            ],
            ValidFor = MixAccountWords.StepsHold,
        };
    }

    /// <summary>When it loses its gloss.</summary>
    /// <param name="mix">The mix.</param>
    public Account GlossOff(MixPlan mix) => new(MixAccountWords.GlossOff, MixAccountWords.GlossOffRule, "", mix.GlossOff.Minutes, "min")
    {
        Inputs = [flasks.Powders.OfWorkingTime(mix.GlossOff)],
        ValidFor = MixAccountWords.GlossOffHolds,
    };

    private static string Sum(IEnumerable<string> parts) => string.Join(" + ", parts);

    private static AccountInput Step(string setting, Duration value, Duration? said) =>
        AccountInput.Setting(setting, Say.Minutes(value), said is not null, AccountWords.NotesOfPractitioners);

    private double Ratio(MixPlan mix) => flasks.Flask(mix.Flasks[0])!.Fill!.WaterPer100;

    private AccountInput OfWater(MixPlan mix) => flasks.Powders.OfWater(flasks.Work(mix.Flasks[0]), Ratio(mix));
}
