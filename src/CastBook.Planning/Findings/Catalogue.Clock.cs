namespace CastBook.Planning.Findings;

/// <content>What can be found about the hours of a night, as planned and as really done.</content>
public static partial class Catalogue
{
    /// <summary>An hour without its day.</summary>
    public static FindingKind HourWithoutDay { get; } = new(
        "hour-without-day", Severity.Check,
        "\"{0}\" is \"{1}\", which does not say a day and an hour.",
        "The clock is counted from the first step, without times of day.",
        "Type both on the Shop sheet, such as 2026-11-25 20:00; a day such as 12/4 can be two.");

    /// <summary>An hour of a day that may be two.</summary>
    public static FindingKind HourOfTwoDays { get; } = new(
        "hour-of-two-days", Severity.Check,
        "\"{0}\" is \"{1}\": {2} or {3}.",
        "Nothing in the book says whether day or month comes first, so the clock is counted from the first step, without times of day.",
        "Type the one that is meant, year first as here.");

    /// <summary>An hour that the clocks skip.</summary>
    public static FindingKind HourSkipped { get; } = new(
        "hour-skipped", Severity.Check,
        "\"{0}\" is \"{1}\", an hour that the clocks skip that night.",
        "Clocks are put forward then, so the clock is counted from the first step.",
        "Type an hour before or after the change on the Shop sheet.");

    /// <summary>A night that is over before the day it is.</summary>
    public static FindingKind HourIsPast { get; } = new(
        "hour-is-past", Severity.Check,
        "\"{0}\" {1} lies in the past: the night that is counted from it was over on {2}.",
        "Its days are those of a night gone by.",
        "Type the day and hour of the next night on the Shop sheet, or clear them there.");

    /// <summary>A pour for which the night should have begun before the day it is.</summary>
    public static FindingKind FirstStepIsPast { get; } = new(
        "first-step-is-past", Severity.Check,
        "To pour at {0} the first step lies in the past: {1}.",
        "Set, burnout and holds are never shortened to make up for it.",
        "If the night is under way, type under \"Done at\" on the Clock sheet when its steps were done; else type \"{2}\" or later as \"Pour at\" on the Shop sheet.");

    /// <summary>Steps at hours in which nobody is there.</summary>
    public static FindingKind StepsOutsideHours { get; } = new(
        "steps-outside-hours", Severity.Check,
        "{0} outside the hours {1}, first this one: {2} ({3}).",
        "Set, burnout and holds are never shortened to fit.",
        "{4}");

    /// <summary>Moulds that stand open for more than a day.</summary>
    public static FindingKind MouldsStandLong { get; } = new(
        "moulds-stand-long", Severity.Check,
        "The moulds {0} stand for {1} h before they go into the kiln.",
        "An open mould dries half way after a day and cracks.",
        "Bag them damp and type yes as \"Kept damp\" on the Shop sheet, or mix their load later{2}.");

    /// <summary>Moulds that are kept damp and stand for more than a week.</summary>
    public static FindingKind DampMouldsStandLong { get; } = new(
        "damp-moulds-stand-long", Severity.Check,
        "The moulds {0} stand for {1} h before they go into the kiln.",
        "Kept damp, moulds keep about a week.",
        "Mix their load later{2}.");

    /// <summary>Beside a step stands something that is no hour.</summary>
    public static FindingKind DoneHourUnreadable { get; } = new(
        "done-hour-unreadable", Severity.Check,
        "\"{0}\" beside \"{1}\" on the Clock sheet is no hour.",
        "The rest of the night is counted from when steps were done.",
        "Type an hour such as 22:40, with its day where it is not plain: 2026-11-25 22:40.");

    /// <summary>An hour at which a step was done, of a day that may be two.</summary>
    public static FindingKind DoneHourOfTwoDays { get; } = new(
        "done-hour-of-two-days", Severity.Check,
        "\"{0}\" beside \"{1}\" on the Clock sheet is {2} or {3}.",
        "Nothing in the book says whether day or month comes first, so it was not counted.",
        "Type the one that is meant, year first as here.");

    /// <summary>Hours of done steps, and no hour from which the night is counted.</summary>
    public static FindingKind DoneHoursWithoutStart { get; } = new(
        "done-hours-without-start", Severity.Check,
        "Hours are typed under \"Done at\" on the Clock sheet, but nothing says from when the night is counted.",
        "Without it an hour has no day, so these hours move nothing.",
        "Type \"Start at\" on the Shop sheet, such as 2026-11-25 20:00.");

    /// <summary>The night runs at other hours than planned.</summary>
    public static FindingKind NightRunsLate { get; } = new(
        "night-runs-late", Severity.Note,
        "By the hours typed on the Clock sheet the night runs {0} than planned: {1} is now at {2}.",
        "", "Nothing to do: all that is not done has moved with it, and nothing was shortened.");

    /// <summary>Steps that were done in an order that cannot be.</summary>
    public static FindingKind DoneOutOfOrder { get; } = new(
        "done-out-of-order", Severity.Check,
        "By the hours typed on the Clock sheet \"{0}\" was done at {1}, before \"{2}\", which comes first and was done at {3}.",
        "The rest of the night is counted from these hours.",
        "Correct one of them, and type the day with it where it is past midnight.");

    /// <summary>A mix was poured or shaken after it had begun to set.</summary>
    public static FindingKind MixOutlived { get; } = new(
        "mix-outlived", Severity.Check,
        "By the hours typed on the Clock sheet mix {0} was worked for {1} from the first powder in the water; its working time is {2}.",
        "Investment that was moved while it set is weak, and gives fins, bubbles and cracks.",
        "Wash the flasks {3} out and invest them again where their pieces must not fail; else pour them last and look at the moulds first.");

    /// <summary>Moulds were taken up before they had set.</summary>
    public static FindingKind TakenUpTooEarly { get; } = new(
        "taken-up-too-early", Severity.Check,
        "By the hours typed on the Clock sheet the moulds {0} were taken up after {1} of set; they need at least {2}.",
        "A green mould cracks when it is moved, and steam bursts it in the kiln.",
        "Put them down again until {3} where the kiln is not on yet; else look for cracks, and dry them longer at the first hold.");

    /// <summary>A stage of a burnout was shorter than asked.</summary>
    public static FindingKind StageTooShort { get; } = new(
        "stage-too-short", Severity.Check,
        "By the hours typed on the Clock sheet \"{0}\" ended after {1} instead of {2}.",
        "A hold that is cut short leaves water or carbon in the mould, which gives gas and rough castings.",
        "Set the kiln back to that stage, hold it {3} longer, and type the new hour beside it.");

    /// <summary>A burnout took longer than its programme, as it does when the kiln was off.</summary>
    public static FindingKind BurnoutInterrupted { get; } = new(
        "burnout-interrupted", Severity.Check,
        "By the hours typed on the Clock sheet \"{0}\" took {1} instead of {2}.",
        "If the kiln was off meanwhile, the moulds cooled, may have cracked, and carbon is not burnt out.",
        "If it was off, begin the burnout again from its first stage and type its new hours; lay the kiln's log over the plan with castbook kiln-log. If the kiln is only slow, give the stage its true time on the Schedules sheet.");

    /// <summary>A flask was poured before its kiln had come down and its core with it.</summary>
    public static FindingKind PouredTooEarly { get; } = new(
        "poured-too-early", Severity.Check,
        "By the hours typed on the Clock sheet {0} was poured {1} before the kiln had fallen to its temperature and held there.",
        "The mould was hotter than asked, which gives rough surfaces, gas and large grain.",
        "Look at these castings first; have the next flask wait until {2}.");

    /// <summary>A flask was quenched before its wait was over.</summary>
    public static FindingKind QuenchedTooEarly { get; } = new(
        "quenched-too-early", Severity.Check,
        "By the hours typed on the Clock sheet flask {0} was quenched {1} after its pour; its alloy asks for {2}.",
        "Metal that is quenched too hot cracks, and the steam spits.",
        "Look for cracks; wait with the next one until the button shows no red in shade.");

    /// <summary>A log that belongs to no load for sure.</summary>
    public static FindingKind LogOfNoLoad { get; } = new(
        "log-of-no-load", Severity.Check,
        "This night has {0}, and nothing says which one the log is of.",
        "It was not laid over the plan. Flasks that are marked as in the kiln or poured are in no load.",
        "Give the log times with their day and the night its hours, or name the load with castbook kiln-log and --load 1.");

    /// <summary>A hold that the kiln's log shows to be too short.</summary>
    public static FindingKind LogHoldShort { get; } = new(
        "log-hold-short", Severity.Check,
        "By its log the kiln held stage {0}, {1}, for {2} instead of {3}; the core of flask {4} had then by estimate between {5}.",
        "A hold that is cut short leaves water or carbon in the mould, which gives gas and rough castings.",
        "While the moulds are in the kiln, hold it there {6} longer before it goes on; else look at these castings first.");

    /// <summary>A stage that the kiln did not reach.</summary>
    public static FindingKind LogStageNotReached { get; } = new(
        "log-stage-not-reached", Severity.Check,
        "By its log the kiln did not reach stage {0}, {1}: it came to {2}, {3} away; the core of flask {4} had then by estimate between {5}.",
        "What that stage is for did not happen: water, wax or carbon is still in the mould, or it is not at its casting temperature.",
        "While the moulds are in the kiln, bring it to {1} and hold it there {6}; if it cannot, look at its elements and sensor.");

    /// <summary>A kiln that fell and came back within a burnout.</summary>
    public static FindingKind LogKilnFell { get; } = new(
        "log-kiln-fell", Severity.Check,
        "By its log the kiln fell at {0} from {1} to {2} and was back after {3}.",
        "A burnout that was interrupted is not a burnout: moulds that cool on the way crack, and carbon stays in them.",
        "Begin the burnout again from its first stage, slowly, and look at the moulds for cracks before they are poured.");

    /// <summary>A kiln that went well over its top.</summary>
    public static FindingKind LogOverTop { get; } = new(
        "log-over-top", Severity.Check,
        "By its log the kiln had {0} at {1}; the schedule goes no higher than {2}.",
        "Gypsum breaks down when it is too hot: it gives off sulphur, spoils the surface and makes the metal brittle.",
        "Look at a first casting before you pour the others, and have the kiln's sensor compared.");

    /// <summary>A log with a gap in it.</summary>
    public static FindingKind LogHasGap { get; } = new(
        "log-has-gap", Severity.Note,
        "The log has no reading for {0}, from {1} on; a straight line was taken.",
        "", "Nothing to do, unless the kiln was off then: what it did meanwhile is not known.");

    /// <summary>A file that does not say which of its columns are time and temperature.</summary>
    public static FindingKind LogColumnsNotFound { get; } = new(
        "log-columns-not-found", Severity.Stop,
        "{0} has no row of headings in which one names a time and one a temperature.",
        "Nothing was compared.",
        "Give the columns headings such as \"Time\" and \"Temperature (°C)\", or name the second one with --column.");

    /// <summary>A column that was named and is not there.</summary>
    public static FindingKind LogColumnMissing { get; } = new(
        "log-column-missing", Severity.Stop,
        "{0} has no column \"{1}\" beside a column of times.",
        "Nothing was compared.",
        "Type its heading after --column as it stands in the file, in quotes.");

    /// <summary>A file without two readings.</summary>
    public static FindingKind LogHasNoReadings { get; } = new(
        "log-has-no-readings", Severity.Stop,
        "{0} has fewer than two rows with a time and a temperature.",
        "Nothing was compared.",
        "Write times as 2026-11-25 22:40 or 22:40:00; a column of plain numbers needs its unit in its heading: \"Time (min)\".");

    /// <summary>Temperatures no kiln of a shop has.</summary>
    public static FindingKind LogTooHot { get; } = new(
        "log-too-hot", Severity.Stop,
        "{0} goes up to {1} under \"{2}\", which is hotter than a burnout kiln in °C.",
        "Nothing was compared: it may be in °F.",
        "Write the unit into the heading: \"Temperature (°F)\".");
}
