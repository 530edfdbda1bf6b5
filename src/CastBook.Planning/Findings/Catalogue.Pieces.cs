namespace CastBook.Planning.Findings;

/// <content>What can be found about the rows of the list.</content>
public static partial class Catalogue
{
    /// <summary>A row says no quantity.</summary>
    public static FindingKind QuantityMissing { get; } = new(
        "quantity-missing", Severity.Stop,
        "There is no quantity.",
        "Without it nobody knows how many to cast, and the metal of the night cannot be added up.",
        "Type how many, as a whole number.");

    /// <summary>A row says neither weight nor volume.</summary>
    public static FindingKind WeightMissing { get; } = new(
        "weight-missing", Severity.Stop,
        "There is neither a weight nor a volume.",
        "The metal follows from one of them.",
        "Type the weight, or the pattern's volume, in the unit of its heading.");

    /// <summary>A row names no alloy.</summary>
    public static FindingKind AlloyMissing { get; } = new(
        "alloy-missing", Severity.Stop,
        "There is no alloy.",
        "The same pattern takes very different metal in silver, bronze or gold, and alloys never share a flask.",
        "Type the alloy's name.");

    /// <summary>Remarks speak of a resin or a print in rows that are not read as resin.</summary>
    public static FindingKind RemarksSpeakOfResin { get; } = new(
        "remarks-speak-of-resin", Severity.Check,
        "Column \"{0}\" is not read, and speaks of resin or a print where nothing else does: {1}.",
        "Resin has another density than wax and wants a longer burnout; too short a one spoils the castings.",
        "If these rows are resin, type so in a column \"Material\".");

    /// <summary>Remarks speak of wax in rows that are read as resin.</summary>
    public static FindingKind RemarksSpeakOfWax { get; } = new(
        "remarks-speak-of-wax", Severity.Check,
        "Column \"{0}\" is not read, and speaks of wax in rows read as resin: {1}.",
        "The metal follows from the material's density.",
        "If these rows are wax, type so in a column \"Material\".");

    /// <summary>Remarks speak of stones in rows that are read as without.</summary>
    public static FindingKind RemarksSpeakOfStones { get; } = new(
        "remarks-speak-of-stones", Severity.Check,
        "Column \"{0}\" is not read, and speaks of stones where nothing else does: {1}.",
        "A flask with stones in must not be quenched, and is burnt out no hotter than they bear.",
        "If the stones are in the pattern, type yes in a column \"Stones in\"; if they are set later, type no.");

    /// <summary>Remarks say that rows are done.</summary>
    public static FindingKind RemarksSayDone { get; } = new(
        "remarks-say-done", Severity.Check,
        "Column \"{0}\" is not read, and says that rows are done: {1}.",
        "They are planned and their metal is counted all the same.",
        "If these are cast already, type yes in a column \"Done\"; if they are still to be cast, type no there.");

    /// <summary>Remarks say that rows are to wait.</summary>
    public static FindingKind RemarksSayHold { get; } = new(
        "remarks-say-hold", Severity.Check,
        "Column \"{0}\" is not read, and says that rows are to wait: {1}.",
        "They are planned and their metal is counted all the same.",
        "If these are not to be cast tonight, type yes in a column \"Leave out\"; if they are, type no there.");

    /// <summary>Remarks speak of more pieces than the row counts.</summary>
    public static FindingKind RemarksSpeakOfSeveral { get; } = new(
        "remarks-speak-of-several", Severity.Check,
        "Column \"{0}\" is not read, and speaks of more pieces than the quantity does: {1}.",
        "So many are cast as the quantity says.",
        "If it is to be more, type the number in a column \"Qty\".");

    /// <summary>The rows speak of several nights and none is chosen.</summary>
    public static FindingKind NightNotChosen { get; } = new(
        "night-not-chosen", Severity.Stop,
        "The rows belong to several nights: {0}.",
        "Nothing goes into a flask until one night is chosen.",
        "Type the night to plan as \"Night\" on the Shop sheet, written as in the Night column, or fill with --night.");

    /// <summary>The next night by date was chosen.</summary>
    public static FindingKind NightByDate { get; } = new(
        "night-by-date", Severity.Note,
        "The night planned is {0}, the next by date of {1}.", "",
        "To plan another, type it as \"Night\" on the Shop sheet, or fill with --night.");

    /// <summary>The chosen night is not in the list.</summary>
    public static FindingKind NightWithoutRows { get; } = new(
        "night-without-rows", Severity.Stop,
        "No row that is still to be cast belongs to the night \"{0}\" that was asked for.",
        "Nothing was written, and the plan in the book is left as it was.",
        "The nights of the list are {1}: type one of them as \"Night\" on the Shop sheet or after --night, or leave it blank.");

    /// <summary>A night was asked for and no row names one.</summary>
    public static FindingKind NightWithoutColumn { get; } = new(
        "night-without-column", Severity.Check,
        "The night \"{0}\" was asked for, but no row names a night.",
        "So all rows were planned.",
        "Add a column \"Night\" and type the night of each row, or ask for none.");

    /// <summary>Rows the shop leaves out.</summary>
    public static FindingKind RowsLeftOut { get; } = new(
        "rows-left-out", Severity.Note,
        "Left alone: {0} marked to be left out.", "", "Clear \"Leave out\" or their status to plan them.");

    /// <summary>Rows that are done.</summary>
    public static FindingKind RowsDone { get; } = new(
        "rows-done", Severity.Note,
        "Left alone: {0} marked done.", "", "Clear \"Done\" or their status to plan them again.");

    /// <summary>Rows of another night.</summary>
    public static FindingKind RowsOfOtherNights { get; } = new(
        "rows-of-other-nights", Severity.Note,
        "Left alone: {0} of another night than \"{1}\".", "", "Change the Night column or \"Night\" on the Shop sheet to plan them.");

    /// <summary>Rows without a night while a night is planned.</summary>
    public static FindingKind RowsWithoutNight { get; } = new(
        "rows-without-night", Severity.Note,
        "Left alone: {0} without a night, while \"{1}\" is planned.", "", "Type the night into the Night column to plan them.");

    /// <summary>Nobody has said what the weights weigh.</summary>
    public static FindingKind WeightMeaningUnknown { get; } = new(
        "weight-meaning-unknown", Severity.Stop,
        "Nothing says what the weights are of. {0} is {1}: as a pattern it takes {2}, as finished metal it is {3}.",
        "The two differ 9 to 20 times, so no metal is worked out from a weight until this is answered.",
        "Type \"pattern\" or \"finished metal\" as \"Weights are of\" on the Shop sheet.");

    /// <summary>An alloy's name means several alloys.</summary>
    public static FindingKind AlloyAmbiguous { get; } = new(
        "alloy-ambiguous", Severity.Stop,
        "{0} can mean {1}.",
        "They differ in density, pour temperature or quench; the supplier's data sheet says which it is.",
        "Type one of these names in the list, or answer 'Alloy \"{2}\" is' on the Shop sheet{3}.");

    /// <summary>An alloy's name fits only one alloy of the shop.</summary>
    public static FindingKind AlloyTakenAs { get; } = new(
        "alloy-taken-as", Severity.Note,
        "{0} is taken as {1}, the only such alloy on the Alloys sheet.",
        "", "To change it, type another name in the list, or 'Alloy \"{2}\" is' on the Shop sheet.");

    /// <summary>An alloy's name is not known.</summary>
    public static FindingKind AlloyUnknown { get; } = new(
        "alloy-unknown", Severity.Stop,
        "No alloy is called {0}.",
        "The metal follows from its density.",
        "Type the name you mean{1}, or add the alloy with its density to the Alloys sheet.");

    /// <summary>A clay of metal powder in the place of an alloy.</summary>
    public static FindingKind AlloyIsClay { get; } = new(
        "alloy-is-clay", Severity.Stop,
        "{0} is clay: it is shaped by hand and fired, and cannot be cast.",
        "Nothing of it goes into a flask.",
        "Leave the row out, with yes in a column Leave out. If a piece made of something else is to be cast, type the alloy that you pour.");

    /// <summary>Neither sizes nor a number per tree.</summary>
    public static FindingKind SizesOrPerTreeMissing { get; } = new(
        "sizes-or-per-tree-missing", Severity.Stop,
        "There is neither length and width nor how many fit a tree.",
        "Without one of them nobody can say what fits a flask.",
        "Type length (from the gate outwards) and width, or how many fit a tree in \"Per tree\"; a usual number for all such pieces goes under \"Per tree\" on the Flasks sheet.");

    /// <summary>A number per tree of the flask size stood in for sizes.</summary>
    public static FindingKind PerTreeOfFlask { get; } = new(
        "per-tree-of-flask", Severity.Note,
        "There are no sizes; how many fit a tree comes from \"Per tree\" on the Flasks sheet.",
        "Whether the pieces reach the wall or one another is not worked out.",
        "Type length and width to have it worked out.");

    /// <summary>A piece fits no flask of the shop.</summary>
    public static FindingKind PieceFitsNoFlask { get; } = new(
        "piece-fits-no-flask", Severity.Stop,
        "{0} fits no flask: {1}.",
        "{2}",
        "Check its sizes: the length runs from the gate outwards. {3}Or add a larger flask to the Flasks sheet.");

    /// <summary>One piece alone is over the crucible.</summary>
    public static FindingKind PieceOverCrucible { get; } = new(
        "piece-over-crucible", Severity.Stop,
        "One piece of {0} alone needs a charge of {1}, which is {2}.",
        "The largest crucible for {3} takes {4} of melt, filled to four fifths.",
        "Cast it elsewhere, or add a larger crucible to the Crucibles sheet.");

    /// <summary>All flasks that could take the rest are used.</summary>
    public static FindingKind NoFlaskLeft { get; } = new(
        "no-flask-left", Severity.Stop,
        "{0} of {1} found no flask.",
        "All flasks that could take them are used tonight.",
        "Leave something out, cast it another night, or raise \"Owned\" on the Flasks sheet.");

    /// <summary>A wish for a letter could not be met.</summary>
    public static FindingKind KeepInFlaskNotPossible { get; } = new(
        "keep-in-flask-not-possible", Severity.Check,
        "{0} of {1} cannot go into flask {2}.",
        "{3}",
        "Change or clear \"Keep in flask\".");

    /// <summary>More of a row hangs in built trees than the row has.</summary>
    public static FindingKind FrozenQuantityDiffers { get; } = new(
        "frozen-quantity-differs", Severity.Check,
        "{0} of {1} hang in trees that are built, but the quantity is {2}.",
        "Only the quantity was counted.",
        "Correct the quantity, or the Flask column if the tree was built otherwise.");

    /// <summary>A piece is too thin here and too thick there for one flask temperature.</summary>
    public static FindingKind SectionsFarApart { get; } = new(
        "sections-far-apart", Severity.Check,
        "The finest section is {0} and the heaviest {1}.",
        "No one flask temperature suits both; the ordinary one was taken.",
        "Think about its gates, or cast it alone and type your own choice.");

    /// <summary>Gates too thin or too thick for what they feed.</summary>
    public static FindingKind GateSectionOff { get; } = new(
        "gate-section-off", Severity.Check,
        "{0} of {1}: {2} of a round section of {3}, the heaviest of the piece.",
        "{4}",
        "Gates should make 70 to 150 % of the section they feed: change their number or diameter, or correct the section.");

    /// <summary>Stones in red gold.</summary>
    public static FindingKind StonesInRedGold { get; } = new(
        "stones-in-red-gold", Severity.Stop,
        "Stones are set in a pattern for {0}.",
        "Red gold must be quenched before it cools slowly, and stones must not be quenched; it was not put into a flask.",
        "Set the stones after casting and clear \"Stones in\", or use another alloy.");
}
