namespace CastBook.Planning.Findings;

/// <content>What can be wrong with the sheets that hold a list, and with its headings.</content>
public static partial class Catalogue
{
    /// <summary>The book has no worksheet that could hold the list.</summary>
    public static FindingKind ListNoSheet { get; } = new(
        "list-no-sheet", Severity.Stop,
        "The workbook has no sheet with a list of pieces.", NothingWritten,
        "Put the list on a sheet of its own, with a row of headings such as Piece, Qty, Pattern weight (g), Alloy.");

    /// <summary>No row looks like headings at all.</summary>
    public static FindingKind ListNotFound { get; } = new(
        "list-not-found", Severity.Stop,
        "No list of pieces was found on {0}.", NothingWritten,
        "Give the list a row of headings within its first 30 rows: Piece, Qty, Pattern weight (g), Alloy.");

    /// <summary>Sheets of the shop and no list: a shop file.</summary>
    public static FindingKind ListInNoShopFile { get; } = new(
        "list-in-no-shop-file", Severity.Stop,
        "The workbook has sheets of the shop ({0}) and no list of pieces.", "It is a shop file: other books use it, and there is nothing in it to fill. " + NothingWritten,
        "Fill a book that names it in castbook.json, or add a sheet with the columns Piece, Qty, Pattern weight (g), Alloy.");

    /// <summary>No row has headings enough; the nearest is named.</summary>
    public static FindingKind ListNotFoundNear { get; } = new(
        "list-headings-unknown", Severity.Stop,
        "No list of pieces was found. The nearest is {0}, which says: {1}.",
        "It takes at least a column for the piece and one for its quantity or weight, such as Piece, Qty, Pattern weight (g), Alloy. " + NothingWritten,
        "Name the columns so, or add your own words for them to castbook.json under \"columns\".");

    /// <summary>No sheet that the shop wants filled is there.</summary>
    public static FindingKind ListSheetMissing { get; } = new(
        "list-sheet-missing", Severity.Stop,
        "The workbook has no sheet called {0} with a list of pieces, which {1} wants filled.", NothingWritten,
        "Write the name of the sheet with the list into {1}, or take that line out.");

    /// <summary>One of several sheets that the shop wants filled is not there.</summary>
    public static FindingKind ListSheetMissingAmongSeveral { get; } = new(
        "list-sheet-missing-among-several", Severity.Stop,
        "The workbook has no sheet called {0} with a list of pieces, which {1} wants filled.", "The pieces that should stand on it are in no flask of this plan.",
        "Mend the name in {1}, or take it out.");

    /// <summary>One of several sheets that the shop wants filled has no list.</summary>
    public static FindingKind ListNotOnSheet { get; } = new(
        "list-not-on-sheet", Severity.Stop,
        "No list of pieces was found on {0}, which {1} wants filled.", "Its pieces are in no flask of this plan.",
        "Give the list a row of headings within its first 30 rows: Piece, Qty, Pattern weight (g), Alloy; or take the sheet's name out of {1}.");

    /// <summary>Other sheets that hold a list too.</summary>
    public static FindingKind ListsOnOtherSheets { get; } = new(
        "lists-on-other-sheets", Severity.Check,
        "The list on sheet {0} was read; a list of pieces stands on {1} too.", "What stands there is neither counted nor planned.",
        "To fill several, or another one, type their names, or all, behind Sheets to fill on the Shop sheet; or write \"sheet\": [{2}] into castbook.json.");

    /// <summary>Headings without rows.</summary>
    public static FindingKind ListEmpty { get; } = new(
        "list-empty", Severity.Stop,
        "The list on sheet {0} has headings in row {1} but no pieces under them.", NothingWritten,
        "Type at least one piece with its quantity and weight below the headings.");

    /// <summary>Headings without rows on one of several sheets.</summary>
    public static FindingKind ListEmptyAmongSeveral { get; } = new(
        "list-empty-among-several", Severity.Note,
        "The list on sheet {0} has headings in row {1} but no pieces under them.", "", "");

    /// <summary>Two columns claim the same field in different words.</summary>
    public static FindingKind HeadingAmbiguous { get; } = new(
        "heading-ambiguous", Severity.Stop,
        "Column {0} \"{1}\" and column {2} \"{3}\" may both be the {4}.", "Which of the two counts cannot be told, so neither was read.",
        "Rename the one that is not meant, or write \"columns\": {{ \"{5}\": [\"{6}\"] }} into castbook.json, with the heading that is meant.");

    /// <summary>Two columns have the same heading.</summary>
    public static FindingKind HeadingTwice { get; } = new(
        "heading-twice", Severity.Stop,
        "Columns {0} and {1} both say \"{2}\".", "Which of the two counts cannot be told, so neither was read.",
        "Rename the one that is not meant.");

    /// <summary>A heading that may stand below the group on its left or alone.</summary>
    public static FindingKind HeadingGroupUnclear { get; } = new(
        "heading-group-unclear", Severity.Stop,
        "Column {0} \"{1}\" may belong to \"{2}\" on its left or stand alone.", "The two mean different things, so it was not read.",
        "Merge the cells of \"{2}\" over the columns that belong to it, or type \"{3}\" if this is one of them.");

    /// <summary>A heading's unit that may be one of two.</summary>
    public static FindingKind UnitAmbiguous { get; } = new(
        "unit-ambiguous", Severity.Stop,
        "\"{0}\" has the unit gr, which some read as grams and others as grains.", "The two are 15-fold apart, so the column was not read.",
        "Write g for grams or grain for grains.");

    /// <summary>The sign gr in a language whose shops do not weigh in grains.</summary>
    public static FindingKind UnitGrIsGram { get; } = new(
        "unit-gr-read-as-grams", Severity.Note,
        "\"{0}\" was read in grams.", "", "If gr means grains there, write grain in the heading.");

    /// <summary>Plain ounces in a trade that weighs metal in troy ounces.</summary>
    public static FindingKind UnitPlainOunce { get; } = new(
        "unit-plain-ounce", Severity.Check,
        "\"{0}\" was read in ordinary ounces of 28.35 g.", "Precious metal is often weighed in troy ounces of 31.10 g.",
        "If troy ounces are meant, write ozt in the heading.");

    /// <summary>A heading without unit.</summary>
    public static FindingKind UnitAssumed { get; } = new(
        "unit-assumed", Severity.Note,
        "No unit stands in {0}; read in {1}.", "", "If that is wrong, write the unit in the heading, such as {2}.");

    /// <summary>A height read as the length from the gate.</summary>
    public static FindingKind HeightIsLength { get; } = new(
        "height-read-as-length", Severity.Note,
        "\"{0}\" was read as the piece's length from the gate outwards.", "It decides how far a piece reaches towards the flask wall.",
        "If pieces stand otherwise on the tree, add a column Length (mm).");

    /// <summary>A list without a column for the quantity.</summary>
    public static FindingKind QuantityColumnMissing { get; } = new(
        "quantity-column-missing", Severity.Stop,
        "The list on sheet {0} has no column for the quantity.", "Without it nobody knows how many to cast.",
        "Add a column with the heading Qty in row {1} and type how many of each; or, where every row is one piece, type 1 as \"Quantity where the list gives none\" on the Shop sheet.");

    /// <summary>The shop's answer for a list without a column for the quantity.</summary>
    public static FindingKind QuantityFromShop { get; } = new(
        "quantity-from-shop", Severity.Note,
        "The list on sheet {0} has no column for the quantity; each row counts as {1}, as the shop says.", "", "To type it row by row, add a column with the heading Qty in row {2}.");

    /// <summary>Several days under a heading that nothing knows, in a list that names no nights.</summary>
    public static FindingKind DaysNotReadAsNight { get; } = new(
        "days-not-read-as-night", Severity.Check,
        "Column {0} holds days that were not read as casting nights: {1}.", "All these rows were planned as one night.",
        "If they are casting nights, change the heading to Casting night, or write \"columns\": {{ \"night\": [\"{2}\"] }} into castbook.json; if not, name them in the heading, such as Ordered or Received.");

    /// <summary>The same, where the column has no heading.</summary>
    public static FindingKind DaysWithoutHeading { get; } = new(
        "days-without-heading", Severity.Check,
        "Column {0} has no heading and holds days, which were not read as casting nights: {1}.", "All these rows were planned as one night.",
        "If they are casting nights, type the heading Casting night; if not, name them there, such as Ordered or Received.");

    /// <summary>No heading is known for the names of the pieces.</summary>
    public static FindingKind NamesNotKnown { get; } = new(
        "names-not-known", Severity.Check,
        "No column is known to name the pieces; {0} \"{1}\" may.", "Without names trees and cards can only say unnamed.",
        "If it names them, change its heading to Piece, or write \"columns\": {{ \"piece\": [\"{2}\"] }} into castbook.json.");
}
