namespace CastBook.Planning.Findings;

/// <content>What can be found about an alloy: its numbers, and how it is poured.</content>
public static partial class Catalogue
{
    /// <summary>An alloy has no density.</summary>
    public static FindingKind AlloyDensityMissing { get; } = new(
        "alloy-density-missing", Severity.Stop,
        "No density is known for {0}.",
        "The metal follows from it.",
        "Type its density or its composition on the Alloys sheet.");

    /// <summary>A density that the alloy cannot have.</summary>
    public static FindingKind AlloyDensityImpossible { get; } = new(
        "alloy-density-impossible", Severity.Stop,
        "{0} cannot have a density of {1}: {2}.",
        "The metal follows from it.",
        "Correct it on the Alloys sheet in g/cm³, or clear it there to have it worked out from the composition. Until then it counts as not given.");

    /// <summary>A density worked out where the rule is known to be off.</summary>
    public static FindingKind AlloyDensityFromComposition { get; } = new(
        "alloy-density-from-composition", Severity.Check,
        "The density of {0}, {1}, is worked out from its composition.",
        "With {2} in it, {3}.",
        "Type its measured density on the Alloys sheet.");

    /// <summary>An alloy named for more than it holds.</summary>
    public static FindingKind AlloyBelowItsMark { get; } = new(
        "alloy-below-its-mark", Severity.Check,
        "{0} is named for {1} parts of {2} in a thousand; its composition has {3}.",
        "A mark is a least value: pieces of it may not bear that one.",
        "Correct the composition on the Alloys sheet, or give the alloy another name{4}.");

    /// <summary>An alloy that reaches its carats in one country only.</summary>
    public static FindingKind AlloyMarkInAmericaOnly { get; } = new(
        "alloy-mark-in-america-only", Severity.Note,
        "{0} has {3} parts of {2} in a thousand, which is under {1}.",
        "In the United States it may be stamped {4}; where thousandths are stamped, {5}.",
        "");

    /// <summary>An alloy whose zinc boils off.</summary>
    public static FindingKind AlloyFumes { get; } = new(
        "alloy-fumes", Severity.Note,
        "{0} has {1} in its composition.",
        "It boils off as a white fume that makes people ill, and each melt has less of it.",
        "Draw the fume off, melt no hotter than the alloy's data sheet says, and use fresh metal for at least half of each melt.");

    /// <summary>Metal that may hold anything.</summary>
    public static FindingKind AlloyIsScrap { get; } = new(
        "alloy-is-scrap", Severity.Check,
        "{0} is scrap, and nobody has said what is in it.",
        "Lead, cadmium or solder in it poison the air and crack the castings; its density and pour temperature may be others.",
        "Have it assayed and type its composition on the Alloys sheet, or send it to be refined.");

    /// <summary>An alloy nobody should melt.</summary>
    public static FindingKind AlloyRefused { get; } = new(
        "alloy-refused", Severity.Stop,
        "{0} has {1} in its composition.",
        "Its fume is poisonous; no piece of it was put into a flask.",
        "Use another alloy.");

    /// <summary>An alloy has no metal temperature.</summary>
    public static FindingKind MetalTemperatureMissing { get; } = new(
        "metal-temperature-missing", Severity.Stop,
        "No metal temperature is known for {0}.",
        "A wrong one ruins the pour, so none is guessed.",
        "Type the temperature of the alloy's data sheet under \"Metal temp\" on the Alloys sheet.");

    /// <summary>An alloy has no flask temperature for the work in hand.</summary>
    public static FindingKind FlaskTemperatureMissing { get; } = new(
        "flask-temperature-missing", Severity.Stop,
        "No flask temperature for {1} is known for {0}.",
        "It decides whether the mould fills, so none is guessed.",
        "Type it under \"Flask temp {2}\" on the Alloys sheet.");

    /// <summary>A metal temperature at which the alloy cannot be poured.</summary>
    public static FindingKind MetalTemperatureImpossible { get; } = new(
        "metal-temperature-impossible", Severity.Stop,
        "{0} cannot be poured at {1}: {2}.",
        "Too cold it freezes in the crucible or the gate; far too hot it breaks the mould down and burns people.",
        "Correct \"Metal temp\" on the Alloys sheet; look whether it was meant in °F. Until then it counts as not given.");

    /// <summary>A flask temperature at which nothing can be poured.</summary>
    public static FindingKind FlaskTemperatureImpossible { get; } = new(
        "flask-temperature-impossible", Severity.Stop,
        "A flask of {0} cannot stand at {1} for the pour: {2}.",
        "The mould breaks down or the metal never freezes in it.",
        "Correct \"Flask temp {3}\" on the Alloys sheet; look whether it was meant in °F. Until then it counts as not given.");

    /// <summary>An alloy has no wait before the quench.</summary>
    public static FindingKind QuenchMissing { get; } = new(
        "quench-missing", Severity.Check,
        "The wait before the quench is not known for {0} in all flasks in use.",
        "Too early is dangerous and cracks the casting; too late makes some alloys brittle.",
        "Type the minutes under \"Quench after\" on the Alloys sheet; whatever the clock says, wait until the button shows no red in shade.");

    /// <summary>Metal poured too close above its liquidus, or too far.</summary>
    public static FindingKind SuperheatOutOfBand { get; } = new(
        "superheat-out-of-band", Severity.Check,
        "{0} is poured at {1}, which is {2} degrees above its liquidus of {3}.",
        "{4} usually wants {5} to {6} degrees: colder does not fill, hotter draws gas and eats the mould.",
        "Check \"Metal temp\" and \"Liquidus\" on the Alloys sheet against the alloy's data sheet.");

    /// <summary>Red gold must not cool slowly.</summary>
    public static FindingKind RedGoldNotSlow { get; } = new(
        "red-gold-not-slow", Severity.Note,
        "{0} is a red gold: it orders and turns brittle when it cools slowly.",
        "", "Quench it as soon as its wait is over and the button shows no red in shade; do not leave the flask to cool.");

    /// <summary>Nickel white gold is not hurried.</summary>
    public static FindingKind NickelGoldNotHurried { get; } = new(
        "nickel-gold-not-hurried", Severity.Note,
        "{0} is a white gold with nickel: quenched too hot it cracks.",
        "", "Wait its full time before the quench, and longer where you are not sure.");

    /// <summary>Metal hotter than gypsum likes.</summary>
    public static FindingKind MetalHotForGypsum { get; } = new(
        "metal-hot-for-gypsum", Severity.Check,
        "{0} is poured at {1} into gypsum-bonded investment.",
        "Above 1,150 °C (2,100 °F) the mould's skin breaks down and the casting is porous.",
        "Check the temperature on the Alloys sheet, or use a high-temperature investment.");

    /// <summary>An alloy that gypsum cannot hold.</summary>
    public static FindingKind NeedsOtherInvestment { get; } = new(
        "needs-high-temperature-investment", Severity.Stop,
        "{0} cannot be cast in gypsum-bonded investment.",
        "Its melt destroys the mould; none of its pieces was put into a flask.",
        "Cast it in a high-temperature investment and give that Kind on the Investments sheet, or leave the pieces out.");
}
