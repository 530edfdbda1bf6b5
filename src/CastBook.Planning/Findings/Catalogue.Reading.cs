namespace CastBook.Planning.Findings;

/// <content>What can be wrong with a file, and what was read otherwise than it stands there.</content>
public static partial class Catalogue
{
    private const string NothingWritten = "Nothing was written.";

    /// <summary>The file is protected by a password.</summary>
    public static FindingKind BookPassword { get; } = new(
        "book-password", Severity.Stop,
        "The workbook is protected by a password to open.", NothingWritten,
        "Save a copy without the password and use that.");

    /// <summary>An .xls file of before 2007.</summary>
    public static FindingKind BookOldFormat { get; } = new(
        "book-old-format", Severity.Stop,
        "The file is an old .xls workbook.", NothingWritten,
        "Open it and save it as .xlsx.");

    /// <summary>A file of another kind, named in the text.</summary>
    public static FindingKind BookOtherFormat { get; } = new(
        "book-other-format", Severity.Stop,
        "The file is {0}, not an .xlsx workbook.", NothingWritten,
        "Open it in your spreadsheet program and save it as .xlsx.");

    /// <summary>A binary .xlsb workbook.</summary>
    public static FindingKind BookBinary { get; } = new(
        "book-binary", Severity.Stop,
        "The file is a binary .xlsb workbook.", NothingWritten,
        "Open it and save it as .xlsx.");

    /// <summary>A csv or other text file.</summary>
    public static FindingKind BookCsv { get; } = new(
        "book-csv", Severity.Stop,
        "The file is plain text, not a workbook.", NothingWritten,
        "If it is a list of pieces, give its name the ending .csv and fill that.");

    /// <summary>No kind of workbook at all.</summary>
    public static FindingKind BookNotWorkbook { get; } = new(
        "book-not-workbook", Severity.Stop,
        "The file is not a workbook.", NothingWritten,
        "Give the .xlsx file that holds your list of pieces.");

    /// <summary>An empty file.</summary>
    public static FindingKind BookEmpty { get; } = new(
        "book-empty", Severity.Stop,
        "The file is empty: it has no bytes.", "It may still be on its way from another program or machine.",
        "Wait until it is complete, or save it again.");

    /// <summary>A workbook under the name of another kind of file.</summary>
    public static FindingKind BookWrongExtension { get; } = new(
        "book-wrong-extension", Severity.Stop,
        "The file is an .xlsx workbook, but its name ends in {0}.", "Other programs would refuse it.",
        "Rename it so that it ends in .xlsx.");

    /// <summary>A damaged file; the text names the place.</summary>
    public static FindingKind BookDamaged { get; } = new(
        "book-damaged", Severity.Stop,
        "The workbook is damaged and cannot be read (at {0}).", NothingWritten,
        "Open it in your spreadsheet program, let it repair the file, save it, and try again.");

    /// <summary>A file that asks for more than any real workbook.</summary>
    public static FindingKind BookTooMuch { get; } = new(
        "book-too-much", Severity.Stop,
        "The file holds {0}.", "No casting list needs that, so it was not read any further, and nothing was written.",
        "Copy the list into a new workbook and use that.");

    /// <summary>A file that asks for more than the shop lets a book ask for.</summary>
    public static FindingKind BookOverLimit { get; } = new(
        "book-over-limit", Severity.Stop,
        "The file holds {0}.", "Files made to harm do that and casting lists hardly ever, so it was not read any further, and nothing was written.",
        "Copy the list into a new workbook and use that. If you know where the file comes from and want it read, raise the limit in castbook.json beside it: {1}.");

    /// <summary>A limit in castbook.json that is none.</summary>
    public static FindingKind LimitUnreadable { get; } = new(
        "limit-unreadable", Severity.Stop,
        "In castbook.json the limits say \"{0}\": \"{1}\", which CastBook does not understand.", NothingWritten,
        "The limits are parts, part megabytes, book megabytes and times packed, each a whole number above 0; or take them out.");

    /// <summary>A digitally signed workbook.</summary>
    public static FindingKind BookSigned { get; } = new(
        "book-signed", Severity.Stop,
        "The workbook is digitally signed.", "Anything written into it would break the signature, so nothing was written.",
        "Save a copy without the signature and fill that.");

    /// <summary>A file whose parts lead outside of it.</summary>
    public static FindingKind BookUnsafe { get; } = new(
        "book-unsafe", Severity.Stop,
        "The file points to something outside of itself ({0}).", "A workbook never needs that, so it was not read, and nothing was written.",
        "Copy the list into a new workbook and use that.");

    /// <summary>Cells merged over several rows.</summary>
    public static FindingKind MergedCellsReadDown { get; } = new(
        "merged-cells-read-down", Severity.Note,
        "A cell under {0} that is merged over several rows was read for each of them: {1}.", "", "If that is wrong, unmerge it and type a value in each row.");

    /// <summary>A column of material whose cells name alloys, in a list without one for those.</summary>
    public static FindingKind MaterialReadAsAlloy { get; } = new(
        "material-read-as-alloy", Severity.Note,
        "\"{0}\" was read as the alloy, because its cells name alloys.", "", "If that is wrong, add a column \"Alloy\" and type the alloys there.");

    /// <summary>Names of waxes or resins under a heading that says no more than wax or resin.</summary>
    public static FindingKind NamesReadAsMaterial { get; } = new(
        "names-read-as-material", Severity.Note,
        "\"{0}\" was read as the pattern's material, because names stand under it.", "", "If that is wrong, add a column \"Material\" and type wax or resin there.");

    /// <summary>Two columns that may name the piece, one of which may name people.</summary>
    public static FindingKind NameOfPieceOrPerson { get; } = new(
        "name-of-piece-or-person", Severity.Check,
        "The pieces' names were read under \"{0}\", but \"{1}\" may name them too.", "If people stand under \"{0}\", the plan names these and not what is cast.",
        "Head the column of the pieces \"Piece\", and one of people \"Customer\".");

    /// <summary>A number or a word alone where sizes could stand, as the size of a ring does.</summary>
    public static FindingKind SizeLeftAlone { get; } = new(
        "size-left-alone", Severity.Note,
        "\"{0}\" under \"{1}\" was taken as the size of a ring and left alone, as is all that stands there alone.", "It does not say how much room the piece takes.",
        "If these are the sizes of the pieces, type length × width × thickness, such as 20 × 10 × 3.");

    /// <summary>Section lines that name an alloy.</summary>
    public static FindingKind SectionReadAsAlloy { get; } = new(
        "section-read-as-alloy", Severity.Note,
        "The section line \"{0}\" in row {1} was read as the alloy of the rows below it that name none: {2}.", "", "If that is wrong, type the alloy in each row.");
}
