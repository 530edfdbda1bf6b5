using CastBook.Casting.Burnout;
using CastBook.Casting.Trees;
using CastBook.Planning.Burning;
using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Investing;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How a flask's charge, powder, water and burnout came to be.</summary>
internal sealed class FlaskAccounts
{
    private readonly Shop shop;
    private readonly Dictionary<string, FlaskPlan> plans;
    private readonly Dictionary<string, FlaskWork> works;
    private readonly PowderAccounts powders;
    private readonly BurnoutChoice burnouts;
    private readonly IReadOnlyList<KilnLoad> loads;

    /// <summary>Takes what the plan was made of.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="flasks">The flasks as answered.</param>
    /// <param name="works">The flasks as settled.</param>
    /// <param name="loads">The kiln loads.</param>
    public FlaskAccounts(Shop shop, IReadOnlyList<FlaskPlan> flasks, IReadOnlyList<FlaskWork> works, IReadOnlyList<KilnLoad> loads)
    {
        this.loads = loads;
        // What would be found was found when the night was planned.
        var unheard = new FindingList();
        var assumed = new Assumptions(unheard);
        this.shop = shop;
        plans = flasks.ToDictionary(f => f.Letter, StringComparer.Ordinal);
        this.works = works.ToDictionary(w => w.Letter, StringComparer.Ordinal);
        var powder = new PowderChoice(shop, assumed, unheard);
        Powders = new PowderInputs(shop.Settings, powder);
        powders = new PowderAccounts(Powders);
        burnouts = new BurnoutChoice(shop, powder, assumed, unheard);
    }

    /// <summary>The numbers of the investment in use.</summary>
    public PowderInputs Powders { get; }

    /// <summary>A flask's answer; nothing where its numbers are not known.</summary>
    /// <param name="letter">Its letter.</param>
    public FlaskPlan? Flask(string letter) => plans.GetValueOrDefault(letter);

    /// <summary>A flask as settled.</summary>
    /// <param name="letter">The letter of a flask that has an answer.</param>
    public FlaskWork Work(string letter) => works[letter];

    /// <summary>How many pieces hang in it.</summary>
    /// <param name="letter">The letter of a flask that has an answer.</param>
    public Account Pieces(string letter)
    {
        var shares = plans[letter].Pieces;
        return new("Pieces", "the pieces of its rows", string.Join(" + ", shares.Select(s => Figures.Plain(s.Quantity))), shares.Sum(s => s.Quantity), "")
        {
            Inputs = [.. works[letter].Rows.Select(r => AccountInput.By(r.Metal.Piece.Name, Figures.Plain(r.Count), Subject.Piece(r.Metal.Piece.Id, PieceField.Quantity)))],
        };
    }

    /// <summary>The charge.</summary>
    /// <param name="letter">The letter of a flask that has an answer.</param>
    public Account Charge(string letter)
    {
        var (plan, work, settings) = (plans[letter], works[letter], shop.Settings);
        var loss = ChargeRules.LossOf(settings, work.Alloy);
        var (unit, step) = (settings.Units.Metal, ChargeRules.StepOf(settings));
        var tree = plan.Tree * work.Alloy.Density!.Value;
        var (words, numbers) = plan.Weighed
            ? ("weighed tree in metal", Figures.Grams(tree))
            : ("pieces + trunk and gates", $"{Figures.Grams(plan.PiecesMetal)} + {Figures.Grams(plan.TreeMetal)}");
        return new("Charge", $"({words} + button) × (1 + melt loss)", $"({numbers} + {Figures.Grams(plan.Button)}) × {Figures.Plain(1 + loss.DecimalFractions)}", plan.Charge.Grams, "g")
        {
            Rounded = $"up to a whole step of {unit.SayExactly(step)}",
            Inputs =
            [
                .. plan.Weighed ? Weighings(plan, work) : Estimates(plan, work),
                AccountInput.Reckoned("button", plan.Button, "the larger of its share of pieces and tree and its least volume"),
                AlloyInputs.Density(work.Alloy),
                AccountInput.Setting(SettingName.ButtonShare, Say.Percent(settings.ButtonShare ?? Button.UsualShare), settings.ButtonShare is not null, "common practice"),
                AccountInput.Setting(SettingName.ButtonAtLeast, Say.Millilitres(settings.ButtonAtLeast ?? Button.UsualLeast), settings.ButtonAtLeast is not null, "common practice"),
                work.Alloy.Row?.Loss is not null
                    ? AccountInput.By("loss", Say.Percent(loss), new Subject(SubjectKind.Alloy, work.Alloy.Row.Alloy.Name, ShopField.Loss))
                    : AccountInput.Setting(SettingName.MeltLoss, Say.Percent(loss), settings.MeltLoss is not null, "common practice"),
                AccountInput.Setting(SettingName.ChargeStep, unit.SayExactly(settings.ChargeStep ?? step), settings.ChargeStep is not null, "common practice"),
            ],
            ValidFor = "one alloy to a flask; weighing the tree takes the place of the estimate",
        };
    }

    /// <summary>The powder; nothing where it is not known.</summary>
    /// <param name="letter">The letter of a flask that has an answer.</param>
    public Account? Powder(string letter) => powders.Powder(plans[letter], works[letter]);

    /// <summary>The water; nothing where it is not known.</summary>
    /// <param name="letter">The letter of a flask that has an answer.</param>
    public Account? Water(string letter) => powders.Water(plans[letter], works[letter]);

    /// <summary>The burnout; nothing where no schedule is known.</summary>
    /// <param name="letter">The letter of a flask that has an answer.</param>
    public Account? Burnout(string letter)
    {
        var (plan, work) = (plans[letter], works[letter]);
        if (plan.Burnout is not { } total || burnouts.For(letter, work.Size, work.Kind, work.StonesIn) is not { } schedule)
        {
            return null;
        }

        AccountInput[] inputs =
        [
            shop.Schedules.Any(s => s.Name == schedule.Name)
                ? AccountInput.By("schedule", schedule.Name, new Subject(SubjectKind.Schedule, schedule.Name))
                : AccountInput.BuiltIn("schedule", schedule.Name, "published schedule; for resin with hours added by common practice"),
            AccountInput.By("flask size", work.Size.Size.Name, new Subject(SubjectKind.FlaskSize, work.Size.Size.Name)),
            AccountInput.Reckoned("burnt out as", work.StonesIn ? "stones in" : work.Kind == Casting.Patterns.PatternKind.Wax ? "wax" : "resin", "the materials of its pieces"),
        ];
        const string Range = "kilns that follow the schedule; set, hold and soak are never shortened";
        var unit = shop.Settings.Units.Temperature;
        return loads.FirstOrDefault(l => l.Flasks.Contains(letter)) is not { } load
            ? new("Burnout", $"the stages of \"{schedule.Name}\", ways and holds", string.Join(" + ", StageHours.Of(schedule)), total.Hours, "h") { Inputs = inputs, ValidFor = Range }
            : new(
                "Burnout", $"the stages of \"{load.Schedule.Name}\" as the kiln runs them, ways and holds, to the first pour of load {Figures.Plain(load.Number)}",
                string.Join(" + ", StageHours.Of(KilnProgram.Of(load.Schedule, load.CoolsDegreesPerHour))), total.Hours, "h")
            {
                Inputs =
                [
                    .. inputs,
                    AccountInput.Reckoned("kiln load", string.Join(' ', load.Flasks), "the flasks that stand in the kiln together; they run the longest of their schedules"),
                    AccountInput.Reckoned("kiln cools", $"{unit.SayDegrees(load.CoolsDegreesPerHour)}/h", $"the Kilns sheet, or {unit.Degrees(ClockRules.UsualCooling)} where it does not say"),
                    AccountInput.Reckoned("slowest mould poured first", $"flask {load.SlowestOf(load.Pours[0])}", "the last hold is as long as its core needs, if that is longer than the schedule's"),
                ],
                ValidFor = Range,
            };
    }

    private static IEnumerable<AccountInput> Estimates(FlaskPlan plan, FlaskWork work)
    {
        yield return AccountInput.Reckoned("pieces", plan.PiecesMetal, "the metal of its pieces on the list");
        yield return AccountInput.Reckoned("trunk and gates", plan.TreeMetal, $"estimated: a trunk of {Figures.Millilitres(work.Size.Trunk)}, the rest gates");
    }

    private IEnumerable<AccountInput> Weighings(FlaskPlan plan, FlaskWork work)
    {
        var line = work.Line!;
        yield return AccountInput.By("tree on base", line.TreeOnBase!.Value, Subject.Flask(work.Letter, ShopField.TreeOnBase));
        yield return AccountInput.By("base", line.Base!.Value, Subject.Flask(work.Letter, ShopField.Base));
        if (line.OfItWax is { } wax)
        {
            yield return AccountInput.By("of it wax", wax, Subject.Flask(work.Letter, ShopField.OfItWax));
        }

        yield return AccountInput.Reckoned("tree", Figures.Millilitres(plan.Tree), "its wax by the density of sprue wax, the rest by that of its patterns");
        if (shop.Settings.SprueWaxDensity is { } density)
        {
            yield return AccountInput.By(SettingName.SprueWaxDensity, Figures.Dense(density), Subject.Setting(SettingName.SprueWaxDensity));
        }
    }
}
