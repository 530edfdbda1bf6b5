namespace CastBook.Planning.Findings;

/// <content>What can be found about the shop: what it owns, uses and has decided.</content>
public static partial class Catalogue
{
    /// <summary>Rows that a new book brought along and that nobody has replaced.</summary>
    public static FindingKind ExamplesLeft { get; } = new(
        "examples-left", Severity.Check,
        "Lines called \"Example: …\" still stand there: {0}.", "Their numbers are an invented shop's and nobody's data sheet: nothing may be poured by them.",
        "Type your own in their place, or run castbook clear-examples on the book.");

    /// <summary>Rows that a new book brought along, beside pieces of the shop's own.</summary>
    public static FindingKind ExamplesInUse { get; } = new(
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
        "Type \"vacuum perforated\", \"vacuum solid\", \"spin\" or \"gravity\" as \"Casting method\" on the Shop sheet.");

    /// <summary>Flasks are poured by gravity, of which little is known here.</summary>
    public static FindingKind PouredByGravity { get; } = new(
        "poured-by-gravity", Severity.Check,
        "Flasks are poured by gravity alone.",
        "No published limits are known for it: whether thin places fill, how hot the metal must be and how high it must stand above the pieces is not judged. Above the tree as much is kept as under vacuum, where you type nothing else.",
        "See to vents, thin places and the head of metal yourself, and type \"Above tree\" on the Flasks sheet and \"Button share\" on the Shop sheet as you do it.");

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
        "Type it on the Flasks sheet, in a column with the heading \"{2}\".");

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
