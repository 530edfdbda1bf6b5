using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Planning.Metals;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Explaining;

/// <summary>A plan together with how each of its numbers came to be. Accounts are made when they are asked for, out of what the plan was made of.</summary>
public sealed class NightAccounts
{
    private readonly IReadOnlyList<PieceMetal?> metals;
    private readonly ShopUnits units;
    private readonly FlaskAccounts flasks;
    private readonly PieceAccounts pieces;
    private readonly MetalAccounts metal;
    private readonly MixAccounts mixes;
    private readonly ClockAccounts? clock;
    private readonly KilnAccounts? kiln;

    private NightAccounts(Night night, PlannedNight planned)
    {
        Plan = planned.Plan;
        metals = planned.Metals;
        units = night.Shop.Settings.Units;
        flasks = new FlaskAccounts(night.Shop, Plan.Flasks, planned.Work, Plan.Clock?.Loads ?? []);
        pieces = new PieceAccounts(night, Plan, flasks);
        metal = new MetalAccounts(night, Plan);
        mixes = new MixAccounts(night.Shop.Settings, Plan.Mixes, flasks);
        clock = Plan.Clock is { } hours ? new ClockAccounts(night.Shop.Settings, hours) : null;
        kiln = Plan.Clock is { } loads ? new KilnAccounts(loads, units.Temperature) : null;
    }

    /// <summary>The plan.</summary>
    public NightPlan Plan { get; }

    /// <summary>Plans a night and keeps what its accounts need.</summary>
    /// <param name="night">The night.</param>
    /// <exception cref="ArgumentNullException"><paramref name="night"/> is null.</exception>
    /// <exception cref="ArgumentException">A piece's id is not its index.</exception>
    public static NightAccounts Of(Night night) => new(night, NightPlanner.Run(night, PlanSearch.Unwatched));

    /// <summary>How an answer came to be; nothing where the plan has no such answer.</summary>
    /// <param name="subject">What the answer is about: a piece, a flask, an alloy, a step or a moment of a load.</param>
    /// <param name="answer">Which answer, a constant of <see cref="AnswerField"/>.</param>
    public Account? Of(Subject subject, string answer) => Reckoned(subject, answer) is { } account ? WrittenAccount.Of(account, answer, units) : null;

    private Account? Reckoned(Subject subject, string answer) => subject.Kind switch
    {
        SubjectKind.Piece => OfPiece(int.Parse(subject.Key, CultureInfo.InvariantCulture), answer),
        SubjectKind.Flask => flasks.Flask(subject.Key) is null ? null : OfFlask(subject.Key, answer),
        SubjectKind.Alloy => OfAlloy(subject.Key, answer),
        SubjectKind.Step => OfStep(int.Parse(subject.Key, CultureInfo.InvariantCulture), answer),
        SubjectKind.Moment when subject.Key.Split('.') is [var load, var place] =>
            kiln?.Course(int.Parse(load, CultureInfo.InvariantCulture), int.Parse(place, CultureInfo.InvariantCulture), answer),
        _ => null,
    };

    private Account? OfPiece(int id, string answer)
    {
        if (metals[id] is not { } row)
        {
            return null;
        }

        return answer switch
        {
            AnswerField.MetalEach => pieces.MetalEach(row),
            AnswerField.Metal => PieceAccounts.Metal(row),
            AnswerField.Flask => pieces.Flask(row.Piece),
            AnswerField.Mix => pieces.Mix(row.Piece),
            AnswerField.Burnout => pieces.Burnout(row.Piece),
            _ => null,
        };
    }

    private Account? OfFlask(string letter, string answer) => answer switch
    {
        AnswerField.Charge => flasks.Charge(letter),
        AnswerField.Powder => flasks.Powder(letter),
        AnswerField.Water => flasks.Water(letter),
        AnswerField.Burnout => flasks.Burnout(letter),
        AnswerField.MetalTemperature => PourAccounts.Metal(flasks.Flask(letter)!, flasks.Work(letter), units.Temperature),
        AnswerField.FlaskTemperature => PourAccounts.Flask(flasks.Flask(letter)!, flasks.Work(letter), units.Temperature),
        AnswerField.QuenchAfter => PourAccounts.Quench(flasks.Flask(letter)!, flasks.Work(letter)),
        AnswerField.Fresh => metal.Fresh(letter),
        AnswerField.Remelt => metal.Remelt(letter),
        AnswerField.Pieces => flasks.Pieces(letter),
        AnswerField.MadeUp => metal.MadeUp(letter),
        AnswerField.PourAt => clock?.PourAt(letter),
        AnswerField.QuenchAt => clock?.QuenchAt(letter),
        _ => mixes.Of(letter) is { } mix ? OfMix(mix, answer) : null,
    };

    private Account? OfMix(MixPlan mix, string answer) => answer switch
    {
        AnswerField.Mix => mixes.Number(mix),
        AnswerField.MixBegins => clock?.MixBegins(mix.Number),
        AnswerField.MixPowder => mixes.Powder(mix),
        AnswerField.MixWater => mixes.Water(mix),
        AnswerField.MixSlurry => mixes.Slurry(mix),
        AnswerField.MixTakes => mixes.Takes(mix),
        AnswerField.MixPourDoneBy => mixes.PourDoneBy(mix),
        AnswerField.MixGlossOff => mixes.GlossOff(mix),
        _ => null,
    };

    private Account? OfStep(int place, string answer) => clock?.Step(place) is not { } step ? null : answer switch
    {
        AnswerField.StepBegins => clock.Begins(step),
        AnswerField.StepEnds => clock.Ends(step),
        AnswerField.StageTarget => kiln?.Target(step, fahrenheit: false),
        AnswerField.StageTargetFahrenheit => kiln?.Target(step, fahrenheit: true),
        AnswerField.StageRate => kiln?.Rate(step, fahrenheit: false),
        AnswerField.StageRateFahrenheit => kiln?.Rate(step, fahrenheit: true),
        AnswerField.StageHold => kiln?.Hold(step),
        AnswerField.CoreSlow => kiln?.Core(step, slow: true),
        AnswerField.CoreFast => kiln?.Core(step, slow: false),
        AnswerField.CoreArrivesSlow or AnswerField.CoreArrivesFast => kiln?.CoreArrives(step),
        _ => null,
    };

    private Account? OfAlloy(string name, string answer) => Plan.Metal.FirstOrDefault(m => m.Alloy == name) is not { } alloy ? null : answer switch
    {
        AnswerField.Needed => metal.Needed(alloy),
        AnswerField.Charges => metal.Charges(alloy),
        AnswerField.Fresh => MetalAccounts.FreshOf(alloy),
        AnswerField.Remelt => MetalAccounts.RemeltOf(alloy),
        AnswerField.ToBuy or AnswerField.ToBuyAsSold => metal.ToBuy(alloy),
        AnswerField.InStock => MetalAccounts.InStock(alloy),
        AnswerField.FreshInStock => MetalAccounts.FreshInStock(alloy),
        AnswerField.RemeltInStock => MetalAccounts.RemeltInStock(alloy),
        AnswerField.FreshAtLeast => metal.FreshAtLeast(alloy),
        _ => null,
    };
}
