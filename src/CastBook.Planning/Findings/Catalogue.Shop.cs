namespace CastBook.Planning.Findings;

/// <content>What can be found about the shop: what it owns, uses and has decided.</content>
public static partial class Catalogue
{
    /// <summary>Rows that a new book brought along and that nobody has replaced.</summary>
    public static FindingKind ExamplesLeft => new(
        "examples-left", Severity.Check,
        "Lines called \"Example: …\" still stand there: {0}.", "Their numbers are an invented shop's and nobody's data sheet: nothing may be poured by them.",
        "Type your own in their place, or run castbook clear-examples on the book.");

    /// <summary>Rows that a new book brought along, beside pieces of the shop's own.</summary>
    public static FindingKind ExamplesInUse => new(
        "examples-in-use", Severity.Stop,
        "Pieces of your own are planned while lines called \"Example: …\" still stand there: {0}.",
        "Their temperatures, schedules and powder are an invented shop's and nobody's data sheet: nothing may be poured by them.",
        "Type your own in their place from your makers' data sheets, or run castbook clear-examples on the book.");

    /// <summary>A default stood in for a setting.</summary>
    public static FindingKind AssumedDefault { get; } = new(
        "assumed-default", Severity.Note,
        "{0} is taken as {1}.", "", "To change it, type \"{0}\" on the Shop sheet.");

    /// <summary>A usual value stood in for one of the powder's.</summary>
    public static FindingKind AssumedPowder { get; } = new(
        "assumed-powder", Severity.Note,
        "{0}: {1}.", "", "To change it, type \"{2}\" on the Investments sheet.");

    /// <summary>Nothing tells wax from resin.</summary>
    public static FindingKind AssumedResin { get; } = new(
        "assumed-resin", Severity.Note,
        "Nothing says whether {0} is wax or resin; it is burnt out as resin, the longer way.",
        "", "To change it, type wax or resin {1}.");

    /// <summary>The flasks of the shop are not known.</summary>
    public static FindingKind FlasksNotKnown { get; } = new(
        "flasks-not-known", Severity.Stop,
        "The Flasks sheet has no flask that the shop owns.",
        "No piece is put into a flask that nobody has; the metal is worked out all the same.",
        "Type each size with inside diameter, height, how many you own, sprue diameter and base height.");

    /// <summary>How the shop casts is not known.</summary>
    public static FindingKind CastingMethodUnknown { get; } = new(
        "casting-method-unknown", Severity.Stop,
        "Nothing says how the shop casts.",
        "Vacuum needs more investment above the tree than spinning, and a blow-out puts metal into the pump.",
        "Type \"vacuum perforated\", \"vacuum solid\" or \"spin\" as \"Casting method\" on the Shop sheet.");

    /// <summary>No crucible is known.</summary>
    public static FindingKind CrucibleUnknown { get; } = new(
        "crucible-unknown", Severity.Stop,
        "Nothing says what the crucible holds.",
        "A tree must not need more melt than one crucible pours.",
        "Type its volume to the brim in ml as \"Crucible holds\" on the Shop sheet, or fill the Crucibles sheet.");

    /// <summary>A crucible's rating has no metal.</summary>
    public static FindingKind CrucibleRatingUnclear { get; } = new(
        "crucible-rating-unclear", Severity.Stop,
        "Crucible \"{0}\" is rated {1}, but {2}.",
        "The same crucible takes half as much silver as gold, so it is not used.",
        "Type the metal that the rating means under \"Rated for\", or its volume in ml.");

    /// <summary>A crucible row says no size.</summary>
    public static FindingKind CrucibleSizeMissing { get; } = new(
        "crucible-size-missing", Severity.Stop,
        "Crucible \"{0}\" says neither what it holds nor what it is rated for.",
        "It is not used.",
        "Type its volume to the brim in ml.");

    /// <summary>Only graphite, or crucibles of unknown make, for platinum or palladium.</summary>
    public static FindingKind CrucibleOfGraphite { get; } = new(
        "crucible-of-graphite", Severity.Stop,
        "No crucible is known to be free of graphite, and {0} must not be melted in graphite.",
        "Platinum and palladium take up carbon and turn brittle; none of its pieces was put into a flask.",
        "Type what the crucible is made of, such as silica or ceramic, under \"Made of\" on the Crucibles sheet.");

    /// <summary>No crucible may hold the alloy.</summary>
    public static FindingKind NoCrucibleForAlloy { get; } = new(
        "no-crucible-for-alloy", Severity.Stop,
        "No crucible may hold {0}.",
        "One crucible keeps to its alloys; none of its pieces was put into a flask.",
        "Add the alloy to a crucible on the Crucibles sheet.");

    /// <summary>A flask size lacks a measure.</summary>
    public static FindingKind FlaskSizeIncomplete { get; } = new(
        "flask-size-incomplete", Severity.Stop,
        "Flask size \"{0}\" has no {1}.",
        "It is not used until that is known.",
        "Type it on the Flasks sheet.");

    /// <summary>A flask too low for its base and clearance.</summary>
    public static FindingKind FlaskSizeTooSmall { get; } = new(
        "flask-size-too-small", Severity.Stop,
        "Flask size \"{0}\" leaves no room for a tree: {1}.",
        "It is not used.",
        "Check its sizes on the Flasks sheet.");

    /// <summary>Too little investment above the tree.</summary>
    public static FindingKind AboveTreeTooSmall { get; } = new(
        "above-tree-too-small", Severity.Stop,
        "Flask size \"{0}\" keeps only {1} above the tree.",
        "Under 12 mm (0.47 in) the mould can blow out; the size is not used.",
        "Type at least 12 mm (0.47 in) under \"Above tree\", or leave it blank for the usual rule.");

    /// <summary>Less above the tree than vacuum casters keep.</summary>
    public static FindingKind AboveTreeUnderRule { get; } = new(
        "above-tree-under-rule", Severity.Check,
        "Flask size \"{0}\" keeps {1} above the tree; the usual rule under vacuum is {2}.",
        "A quarter of the inside diameter keeps the mould from blowing out into the pump.",
        "Raise \"Above tree\" on the Flasks sheet unless your own castings bear it out.");

    /// <summary>Less to the wall than casters keep.</summary>
    public static FindingKind ToWallTooSmall { get; } = new(
        "to-wall-too-small", Severity.Check,
        "Flask size \"{0}\" keeps only {1} between pieces and wall; under {2} is less than casters keep.",
        "A thin wall of investment can crack, and metal runs out along the flask.",
        "Raise \"To wall\" on the Flasks sheet, or leave it blank for the usual clearance.");

    /// <summary>The cup's volume is unknown.</summary>
    public static FindingKind CupMissing { get; } = new(
        "cup-missing", Severity.Check,
        "Flask size \"{0}\" does not say what its cup holds.",
        "Whether the button fits the cup is not checked.",
        "Fill the cup of the base with water, measure it, and type the ml under \"Cup\" on the Flasks sheet.");

    /// <summary>The least button is too much for the cup.</summary>
    public static FindingKind CupTooSmall { get; } = new(
        "cup-too-small", Severity.Stop,
        "The cup of flask size \"{0}\" holds {1}, too little for the button of {2}.",
        "A cup is filled to four fifths; the melt would run over the rim.",
        "Use a base with a larger cup, or lower \"Button at least\" or \"Button share\" on the Shop sheet.");

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
        "Correct the composition on the Alloys sheet, or give the alloy another name.");

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

    /// <summary>Too little metal for the night.</summary>
    public static FindingKind MetalShort { get; } = new(
        "metal-short", Severity.Stop,
        "{0}: {1} needed{2}, {3} in stock.",
        "{4} are missing.",
        "Buy {4}, leave pieces out, or correct the stock on the Alloys sheet.");

    /// <summary>Metal enough, but too little of it fresh.</summary>
    public static FindingKind FreshMetalShort { get; } = new(
        "fresh-metal-short", Severity.Stop,
        "{0}: {1} needed, {2} fresh and {3} of re-melt in stock.",
        "At least {4} of each melt is to be fresh, so {5} of fresh metal are missing.",
        "Buy {5} fresh, leave pieces out, or lower \"Fresh at least\" on the Shop sheet.");

    /// <summary>An alloy is short, and other metals in the drawer make up for it.</summary>
    public static FindingKind MetalMadeUp { get; } = new(
        "metal-made-up", Severity.Check,
        "{0}: {1} needed, {2} in stock; the rest can be made up from {4}.",
        "The weights for each crucible stand on the sheet Metal.",
        "Melt them together as it says, or buy {3} of fresh {0}.");

    /// <summary>Some flasks have their metal, others wait.</summary>
    public static FindingKind FlasksToPourFirst { get; } = new(
        "flasks-to-pour-first", Severity.Check,
        "{0}: the metal in stock is enough for {1}.",
        "Trees that are under way come first, then pieces that are due; {2} must wait for metal.",
        "Have the metal in hand before you burn out {2}.");

    /// <summary>Pieces left for another night, as was asked.</summary>
    public static FindingKind WaitsForMetal { get; } = new(
        "waits-for-metal", Severity.Check,
        "{0} for {1}: {2} in stock, and what is planned takes {3}.",
        "What is due goes first, then what stands higher in the list, then what still fits.",
        "Buy metal and fill again, or type a day under \"Due\" for what cannot wait.");

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

    /// <summary>No kiln is known.</summary>
    public static FindingKind KilnNotKnown { get; } = new(
        "kiln-not-known", Severity.Note,
        "The Kilns sheet is empty, so nothing is said about kiln loads.",
        "", "Type the kiln's inside sizes on the Kilns sheet.");

    /// <summary>A gate angle nobody can work with.</summary>
    public static FindingKind GateAngleOutOfRange { get; } = new(
        "gate-angle-out-of-range", Severity.Check,
        "\"Gate angle\" is {0}; it is the angle between trunk and piece, from 20 to 90 degrees.",
        "50 degrees was used.",
        "Correct it on the Shop sheet.");
}
