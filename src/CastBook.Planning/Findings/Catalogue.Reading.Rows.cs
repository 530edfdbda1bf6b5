namespace CastBook.Planning.Findings;

/// <content>What can be said of rows that are no pieces, or should be none.</content>
public static partial class Catalogue
{
    /// <summary>Hidden rows that were read.</summary>
    public static FindingKind RowsHidden => new(
        "rows-hidden", Severity.Note,
        "Hidden rows were read too: {0}.", "A filter or a hand hides them.", "Use a column Leave out for rows that are not to be cast.");

    /// <summary>Rows of sums without a word that says so.</summary>
    public static FindingKind RowsReadAsSums => new(
        "rows-read-as-sums", Severity.Note,
        "Rows without a name were taken for sums of the rows above: {0}.", "", "If one is a piece, type its name.");

    /// <summary>Rows that are struck out.</summary>
    public static FindingKind RowsStruckOut => new(
        "rows-struck-out", Severity.Note,
        "Rows that are struck out were left out: {0}.", "", "Take the line through the name away from a row that is to be cast.");

    /// <summary>Rows with a name and nothing else.</summary>
    public static FindingKind RowsSections => new(
        "rows-read-as-sections", Severity.Note,
        "Rows with a name and nothing else were taken for section lines: {0}.", "", "If one is a piece, type its quantity and weight.");

    /// <summary>Rows that say something but name no piece.</summary>
    public static FindingKind RowsWithoutPiece => new(
        "rows-without-piece", Severity.Check,
        "Rows that name no piece were left alone: {0}.", "", "If one is to be cast, type its name, quantity and weight.");

    /// <summary>Rows below the end of the list that look like pieces.</summary>
    public static FindingKind RowsOutsideList => new(
        "rows-outside-list", Severity.Check,
        "Rows that look like pieces stand outside the list and were left alone: {0}.", "The list ends at its table, or at three empty rows.",
        "Move them into the list if they belong to it.");
}
