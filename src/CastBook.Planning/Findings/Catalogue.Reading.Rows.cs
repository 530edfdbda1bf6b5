namespace CastBook.Planning.Findings;

/// <content>What can be said of lists without a column for the alloy, and of rows that are no pieces, or should be none.</content>
public static partial class Catalogue
{
    /// <summary>Two numbers under a heading of sizes that may be the size of a ring and how many.</summary>
    public static FindingKind SizesMayBeRings { get; } = new(
        "sizes-or-ring-sizes", Severity.Stop,
        "\"{0}\" may be the size of a ring, {1}, and how many, {2}; or the sizes of the piece.", "The size of a ring does not say how much room it takes on a tree.",
        "For rings type how many under the quantity and the size alone; for the sizes of the piece type their unit too, such as {3}.");

    /// <summary>A list without a column for the alloy.</summary>
    public static FindingKind AlloyColumnMissing { get; } = new(
        "alloy-column-missing", Severity.Stop,
        "The list on sheet {0} has no column for the alloy.", "The metal follows from its density.",
        "Add a column with the heading Alloy in row {1} and type what each is cast in; or, where all are cast in one, type it as \"Alloy where the list gives none\" on the Shop sheet.");

    /// <summary>The shop's answer for a list without a column for the alloy.</summary>
    public static FindingKind AlloyFromShop { get; } = new(
        "alloy-from-shop", Severity.Note,
        "The list on sheet {0} has no column for the alloy; all its pieces are cast in {1}, as the shop says.", "", "To type it row by row, add a column with the heading Alloy in row {2}.");

    /// <summary>Hidden rows that were read.</summary>
    public static FindingKind RowsHidden { get; } = new(
        "rows-hidden", Severity.Note,
        "Hidden rows were read too: {0}.", "A filter or a hand hides them.", "Use a column Leave out for rows that are not to be cast.");

    /// <summary>Rows of sums without a word that says so.</summary>
    public static FindingKind RowsReadAsSums { get; } = new(
        "rows-read-as-sums", Severity.Note,
        "Rows without a name were taken for sums of the rows above: {0}.", "", "If one is a piece, type its name.");

    /// <summary>Rows of sums by their first word and not by their numbers.</summary>
    public static FindingKind RowsReadAsTotals { get; } = new(
        "rows-read-as-totals", Severity.Check,
        "Rows that begin with a word for sums were left out, although their numbers are not those of the rows above: {0}.", "A piece may be called so.",
        "If one is a piece, let its name begin with another word.");

    /// <summary>Rows that are struck out.</summary>
    public static FindingKind RowsStruckOut { get; } = new(
        "rows-struck-out", Severity.Note,
        "Rows that are struck out were left out: {0}.", "", "Take the line through the name away from a row that is to be cast.");

    /// <summary>Rows with a name and nothing else.</summary>
    public static FindingKind RowsSections { get; } = new(
        "rows-read-as-sections", Severity.Note,
        "Rows with a name and nothing else were taken for section lines: {0}.", "", "If one is a piece, type its quantity and weight.");

    /// <summary>Rows that say something but name no piece.</summary>
    public static FindingKind RowsWithoutPiece { get; } = new(
        "rows-without-piece", Severity.Check,
        "Rows that name no piece were left alone: {0}.", "", "If one is to be cast, type its name, quantity and weight.");

    /// <summary>Rows below the end of the list that look like pieces.</summary>
    public static FindingKind RowsOutsideList { get; } = new(
        "rows-outside-list", Severity.Check,
        "Rows that look like pieces stand outside the list and were left alone: {0}.", "The list ends at its table, or at three empty rows.",
        "Move them into the list if they belong to it.");

    /// <summary>Headings that stand once more below rows of the list and differ from those above.</summary>
    public static FindingKind HeadingsDiffer { get; } = new(
        "headings-again-differ", Severity.Stop,
        "Row {0} has headings again, and they differ from those in row {1}: over column {2} stands {3}, and not {4}.",
        "Numbers below it would be read under the wrong headings, so that row and all below it were left alone.",
        "Put the columns in one order under the same headings, or move the second list to a sheet of its own.");

    /// <summary>Section lines that name days or nights.</summary>
    public static FindingKind SectionsMayBeNights { get; } = new(
        "sections-not-read-as-nights", Severity.Check,
        "Section lines name days or nights that were not read as casting nights: {0}.", "All these rows were planned as one night.",
        "If they are casting nights, add a column with the heading Casting night and type the night in each row; if not, nothing need be done.");

    /// <summary>A column that nothing knows says of some rows that they are done or not to be cast.</summary>
    public static FindingKind StandingNotRead { get; } = new(
        "standing-not-read", Severity.Check,
        "Column {0} \"{1}\" is not read, and says of rows that they are done or not to be cast: {2}.", "They are planned and their metal is counted all the same.",
        "If it says which rows are to be cast, change its heading to {3}; if not, nothing need be done.");

    /// <summary>Rows that name a ring and give two sizes and no shape.</summary>
    public static FindingKind RingsReadAsBars { get; } = new(
        "rings-read-as-bars", Severity.Check,
        "Rings by their names, with two sizes and no shape, were read as bars as thick as they are wide: {0}.",
        "A ring is as deep as it is long, so on the tree it would touch its neighbours.", "Type ring in a column Shape, or give the third size.");

    /// <summary>Names that speak of a pair where the quantity is one.</summary>
    public static FindingKind NamesOfPairs { get; } = new(
        "names-speak-of-pairs", Severity.Check,
        "Names speak of a pair, and the quantity is 1: {0}.", "One is cast, and the weight is taken as that of one.",
        "If both are to be cast, type 2, with the weight of one; if one pattern is the pair, nothing need be done.");
}
