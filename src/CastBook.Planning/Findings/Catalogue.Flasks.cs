namespace CastBook.Planning.Findings;

/// <content>What can be found about the flasks of the night.</content>
public static partial class Catalogue
{
    /// <summary>A weighed tree counts as built.</summary>
    public static FindingKind TreeWeighedCountsAsWaxed { get; } = new(
        "tree-weighed-counts-as-waxed", Severity.Note,
        "The tree of flask {0} is weighed, so it counts as waxed and nothing in it is moved.",
        "", "Clear the weighing to plan it anew.");

    /// <summary>A flask that the clock says is under way counts as built.</summary>
    public static FindingKind FlaskDoneCountsAsWaxed { get; } = new(
        "flask-done-counts-as-waxed", Severity.Note,
        "A step of flask {0} is done on the Clock sheet, so it counts as waxed and nothing in it is moved.",
        "", "Clear the hour to plan it anew; say under State how far it is.");

    /// <summary>A word under State that is none of the states.</summary>
    public static FindingKind FlaskStateUnreadable { get; } = new(
        "flask-state-unreadable", Severity.Check,
        "\"{1}\" beside flask {0} on Trees is not a state.",
        "It counts as waxed, so that nothing in the flask is moved.",
        "Type planned, waxed, invested, in kiln or poured.");

    /// <summary>Pieces were left in their flasks although a better plan is known.</summary>
    public static FindingKind PiecesKeptInFlasks { get; } = new(
        "pieces-kept-in-flasks", Severity.Note,
        "Nothing moves: every piece stays in the flask it was planned for. Planned afresh, {0}.",
        "", "To have that, type \"best\" as \"When little changed\" on the Shop sheet.");

    /// <summary>The search was ended early.</summary>
    public static FindingKind SearchStopped { get; } = new(
        "search-stopped", Severity.Check,
        "The search for flasks was stopped before its end.",
        "The flasks are the best found by then; fewer or smaller ones may do.",
        "Fill again and let it end.");

    /// <summary>Nothing in the list is in a flask that is under way.</summary>
    public static FindingKind FrozenFlaskEmpty { get; } = new(
        "flask-without-pieces", Severity.Check,
        "Flask {0} is under way, but no row of tonight has it in the Flask column.",
        "Nothing is worked out for it.",
        "Type its letter into the Flask column of the rows that hang in it, or clear its line on Trees.");

    /// <summary>A flask under way has no known size.</summary>
    public static FindingKind FrozenFlaskSizeUnknown { get; } = new(
        "flask-size-unknown", Severity.Check,
        "Flask {0} is under way, but its size {1}.",
        "Nothing is worked out for it, and its pieces stay where they are.",
        "Type the name of a size of the Flasks sheet beside it on Trees.");

    /// <summary>Two alloys in one flask under way.</summary>
    public static FindingKind AlloysMixedInFlask { get; } = new(
        "alloys-mixed-in-flask", Severity.Stop,
        "Flask {0} is under way with pieces of {1}.",
        "One flask takes one metal.",
        "Correct the Flask column or the alloy of its rows.");

    /// <summary>The tree weighs no more than its base.</summary>
    public static FindingKind TreeNotOverBase { get; } = new(
        "tree-not-over-base", Severity.Stop,
        "Flask {0}: the tree on its base weighs {1}, the base alone {2}.",
        "The tree itself must weigh something, so the charge is still the estimate.",
        "Weigh both again and correct the cell.");

    /// <summary>More wax than tree.</summary>
    public static FindingKind WaxOverTree { get; } = new(
        "wax-over-tree", Severity.Stop,
        "Flask {0}: {1} of wax is more than the tree of {2} weighs.",
        "The charge is still the estimate.",
        "Correct \"of it wax\" or the weighing.");

    /// <summary>Wax and pattern shares of a weighed tree are not known.</summary>
    public static FindingKind WaxShareUnknown { get; } = new(
        "wax-share-unknown", Severity.Stop,
        "The tree of flask {0} weighs {1}, but how much of that is wax and how much pattern is not known.",
        "Wax takes more metal than the same weight of resin, so the charge is still the estimate.",
        "Type the weight of trunk and gates as \"of it wax\", and the pattern density if it is missing.");

    /// <summary>The patterns alone outweigh the tree.</summary>
    public static FindingKind TreeLighterThanPatterns { get; } = new(
        "tree-lighter-than-patterns", Severity.Check,
        "The tree of flask {0} weighs {1}, less than its patterns together, {2}.",
        "Either a piece is missing on the tree or a weight is wrong; all of it was taken as pattern.",
        "Count the pieces and weigh again.");

    /// <summary>The wax of a weighed tree is what the patterns leave.</summary>
    public static FindingKind WaxFromWeighing { get; } = new(
        "wax-from-weighing", Severity.Note,
        "{1} of the tree of flask {0} are taken as wax: what it weighs beyond its patterns.",
        "", "To change it, type \"of it wax\" beside the flask on Trees.");

    /// <summary>The weighing is far from the estimate.</summary>
    public static FindingKind WeighedTreeDiffers { get; } = new(
        "weighed-tree-differs", Severity.Check,
        "Flask {0} takes {1} by its weighing, {2} by the estimate.",
        "More than a tenth apart: a piece may be missing or doubled, or a density wrong. The weighing was used.",
        "Count the pieces on the tree and look at the pattern density and trunk sizes.");

    /// <summary>A trunk that stands far above its last gate.</summary>
    public static FindingKind TrunkLong { get; } = new(
        "trunk-long", Severity.Note,
        "The trunk of flask {0} is {1} long; its last gate needs {2} of that.",
        "Of the charge of {4}, {3} would fill the rest.",
        "Cut the trunk there, weigh the tree and type it on the Trees sheet: the charge follows the weighing.");

    /// <summary>A built tree needs more melt than any crucible takes.</summary>
    public static FindingKind ChargeOverCrucible { get; } = new(
        "charge-over-crucible", Severity.Stop,
        "Flask {0} needs a charge of {1}, which is {2}.",
        "The largest crucible for {3} takes {4} of melt, filled to four fifths.",
        "Take pieces off the tree, or add a larger crucible to the Crucibles sheet.");

    /// <summary>The button of a built tree does not fit its cup.</summary>
    public static FindingKind ButtonOverCup { get; } = new(
        "button-over-cup", Severity.Stop,
        "The button of flask {0} is {1}, but its cup holds {2} and may be filled to four fifths.",
        "The melt would run over the rim.",
        "Take pieces off the tree, or lower \"Button share\" on the Shop sheet.");

    /// <summary>One flask needs more slurry than the bowl takes.</summary>
    public static FindingKind FlaskOverBowl { get; } = new(
        "flask-over-bowl", Severity.Stop,
        "Flask {0} alone needs {1} of slurry; the bowl holds {2} and is filled to {3} % at most.",
        "Slurry rises under vacuum and runs over, and a mould that is filled from two mixes parts where they meet.",
        "Use a larger bowl and type it as \"Mixing bowl\" on the Shop sheet, or hang the pieces in smaller flasks.");

    /// <summary>Resin in the steamer.</summary>
    public static FindingKind SteamWithResin { get; } = new(
        "steam-with-resin", Severity.Check,
        "Flask {0} is to be steamed, but not all in it is wax.",
        "Resin does not melt out in steam: it swells in the wet and cracks the mould.",
        "Leave it out of the steamer, or clear \"Steam dewax\" on the Shop sheet.");

    /// <summary>Steam for longer than moulds bear.</summary>
    public static FindingKind SteamTooLong { get; } = new(
        "steam-too-long", Severity.Check,
        "\"Steam dewax\" is {0}.",
        "Beyond an hour steam washes the skin of the mould away.",
        "Steam for an hour at most; what is left of the wax burns out.");

    /// <summary>No burnout for so large a flask.</summary>
    public static FindingKind ScheduleMissing { get; } = new(
        "schedule-missing", Severity.Stop,
        "No burnout is known for flask {0}: {1}.",
        "A mould that is not burnt out to its core spits metal or casts full of gas.",
        "Add the schedule of your investment's maker to the Schedules sheet.");

    /// <summary>A stone schedule hotter than stones bear.</summary>
    public static FindingKind StonesScheduleTooHot { get; } = new(
        "stones-schedule-too-hot", Severity.Stop,
        "The schedule \"{0}\" goes to {1} with stones in the mould.",
        "Stones cast in place are burnt out below 454 °C (850 °F), so its programme is not given.",
        "Correct the schedule, or take the stones out.");

    /// <summary>Shipped resin schedules want the maker's.</summary>
    public static FindingKind ScheduleOfMakerMissing { get; } = new(
        "schedule-of-maker-missing", Severity.Check,
        "Resin is burnt out by a usual schedule and not by its maker's.",
        "Resin does not melt out; it needs the times its maker has tried.",
        "Add your maker's schedule to the Schedules sheet with \"resin\" under For.");

    /// <summary>A schedule over the powder's limit.</summary>
    public static FindingKind ScheduleAboveLimit { get; } = new(
        "schedule-above-limit", Severity.Check,
        "The schedule \"{0}\" goes to {1}; {2} should not go above {3}.",
        "Overheated investment loses its skin and gives off sulphur gas.",
        "Lower the schedule, or type the maker's limit as \"Never above\" on the Investments sheet.");

    /// <summary>A schedule within the shop's own limit and near to where gypsum breaks down.</summary>
    public static FindingKind ScheduleNearBreakdown { get; } = new(
        "schedule-near-breakdown", Severity.Check,
        "The schedule \"{0}\" goes to {1}, which {2} bears by its row.",
        "Gypsum-bonded investment breaks down above {3} with the carbon of a burnt pattern in it, and many a kiln reads wrong by more than what is left.",
        "Measure what the kiln reaches, or lower the schedule.");

    /// <summary>A schedule at which gypsum breaks down.</summary>
    public static FindingKind ScheduleTooHot { get; } = new(
        "schedule-too-hot", Severity.Stop,
        "The schedule \"{0}\" goes to {1}.",
        "Gypsum-bonded investment breaks down above {2} with the carbon of a burnt pattern in it, so its programme is not given.",
        "Lower the schedule.");

    /// <summary>The tree estimate exceeds a weighing so that nothing is left for the trunk.</summary>
    public static FindingKind WeighedBelowPieces { get; } = new(
        "weighed-below-pieces", Severity.Check,
        "The weighed tree of flask {0} takes {1}, less than its pieces alone should, {2}.",
        "A piece may be missing, or a density or weight is wrong.",
        "Count the pieces and weigh again.");
}
