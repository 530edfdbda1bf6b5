using CastBook.Casting.Burnout;
using CastBook.Casting.Trees;
using CastBook.Planning.Burning;
using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Investing;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
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
        return new(FlaskAccountWords.Pieces, FlaskAccountWords.PiecesOfRows, string.Join(" + ", shares.Select(s => Figures.Plain(s.Quantity))), shares.Sum(s => s.Quantity), "")
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
        var numbers = plan.Weighed ? Figures.Grams(tree) : $"{Figures.Grams(plan.PiecesMetal)} + {Figures.Grams(plan.TreeMetal)}";
        return new(
            FlaskAccountWords.Charge, FlaskAccountWords.ChargeRule(plan.Weighed),
            $"({numbers} + {Figures.Grams(plan.Button)}) × {Figures.Plain(1 + loss.DecimalFractions)}", plan.Charge.Grams, "g")
        {
            Rounded = AccountWords.UpToStep(unit.SayExactly(step)),
            Inputs =
            [
                .. plan.Weighed ? Weighings(plan, work) : Estimates(plan, work),
                AccountInput.Reckoned(FlaskAccountWords.Button, plan.Button, FlaskAccountWords.ButtonRule),
                AlloyInputs.Density(work.Alloy),
                AccountInput.Setting(SettingName.ButtonShare, Say.Percent(settings.ButtonShare ?? Button.UsualShare), settings.ButtonShare is not null, AccountWords.CommonPractice),
                AccountInput.Setting(
                    SettingName.ButtonAtLeast, Say.Millilitres(settings.ButtonAtLeast ?? Button.UsualLeast), settings.ButtonAtLeast is not null, AccountWords.CommonPractice),
                work.Alloy.Row?.Loss is not null
                    ? AccountInput.By(FlaskAccountWords.Loss, Say.Percent(loss), new Subject(SubjectKind.Alloy, work.Alloy.Row.Alloy.Name, ShopField.Loss))
                    : AccountInput.Setting(SettingName.MeltLoss, Say.Percent(loss), settings.MeltLoss is not null, AccountWords.CommonPractice),
                AccountInput.Setting(SettingName.ChargeStep, unit.SayExactly(settings.ChargeStep ?? step), settings.ChargeStep is not null, AccountWords.CommonPractice),
            ],
            ValidFor = FlaskAccountWords.ChargeHolds,
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
                ? AccountInput.By(AccountWords.Schedule, schedule.Name, new Subject(SubjectKind.Schedule, schedule.Name))
                : AccountInput.BuiltIn(AccountWords.Schedule, schedule.Name, FlaskAccountWords.PublishedSchedule),
            AccountInput.By(FlaskAccountWords.FlaskSize, work.Size.Size.Name, new Subject(SubjectKind.FlaskSize, work.Size.Size.Name)),
            AccountInput.Reckoned(
                FlaskAccountWords.BurntOutAs,
                work.StonesIn ? FlaskAccountWords.StonesIn : work.Kind == Casting.Patterns.PatternKind.Wax ? FlaskAccountWords.Wax : FlaskAccountWords.Resin,
                FlaskAccountWords.MaterialsOfPieces),
        ];
        var unit = shop.Settings.Units.Temperature;
        return loads.FirstOrDefault(l => l.Flasks.Contains(letter)) is not { } load
            ? new(FlaskAccountWords.Burnout, FlaskAccountWords.Stages(schedule.Name), string.Join(" + ", StageHours.Of(schedule)), total.Hours, "h")
            {
                Inputs = inputs,
                ValidFor = FlaskAccountWords.BurnoutHolds,
            }
            : new(
                FlaskAccountWords.Burnout, FlaskAccountWords.StagesAsRun(load.Schedule.Name, Figures.Plain(load.Number)),
                string.Join(" + ", StageHours.Of(KilnProgram.Of(load.Schedule, load.CoolsDegreesPerHour))), total.Hours, "h")
            {
                Inputs =
                [
                    .. inputs,
                    AccountInput.Reckoned(FlaskAccountWords.KilnLoad, string.Join(' ', load.Flasks), FlaskAccountWords.StandTogether),
                    AccountInput.Reckoned(
                        FlaskAccountWords.KilnCools, FlaskAccountWords.AnHour(unit.SayDegrees(load.CoolsDegreesPerHour)), FlaskAccountWords.KilnsSheetOr(unit.Degrees(ClockRules.UsualCooling))),
                    AccountInput.Reckoned(FlaskAccountWords.SlowestPouredFirst, AccountWords.Flask(load.SlowestOf(load.Pours[0])), FlaskAccountWords.LastHold),
                ],
                ValidFor = FlaskAccountWords.BurnoutHolds,
            };
    }

    private static IEnumerable<AccountInput> Estimates(FlaskPlan plan, FlaskWork work)
    {
        yield return AccountInput.Reckoned(FlaskAccountWords.PiecesMetal, plan.PiecesMetal, FlaskAccountWords.MetalOnList);
        yield return AccountInput.Reckoned(FlaskAccountWords.TrunkAndGates, plan.TreeMetal, FlaskAccountWords.Estimated(Figures.Millilitres(work.Size.Trunk)));
    }

    private IEnumerable<AccountInput> Weighings(FlaskPlan plan, FlaskWork work)
    {
        var line = work.Line!;
        yield return AccountInput.By(FlaskAccountWords.TreeOnBase, line.TreeOnBase!.Value, Subject.Flask(work.Letter, ShopField.TreeOnBase));
        yield return AccountInput.By(FlaskAccountWords.Base, line.Base!.Value, Subject.Flask(work.Letter, ShopField.Base));
        if (line.OfItWax is { } wax)
        {
            yield return AccountInput.By(FlaskAccountWords.OfItWax, wax, Subject.Flask(work.Letter, ShopField.OfItWax));
        }

        yield return AccountInput.Reckoned(AccountWords.Tree, Figures.Millilitres(plan.Tree), FlaskAccountWords.TreeByDensities);
        if (shop.Settings.SprueWaxDensity is { } density)
        {
            yield return AccountInput.By(SettingName.SprueWaxDensity, Figures.Dense(density), Subject.Setting(SettingName.SprueWaxDensity));
        }
    }
}
