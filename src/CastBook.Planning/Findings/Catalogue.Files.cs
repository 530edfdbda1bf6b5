namespace CastBook.Planning.Findings;

/// <content>What putting a file in its place can find.</content>
public static partial class Catalogue
{
    /// <summary>The file cannot be opened for reading.</summary>
    public static FindingKind BookCannotBeOpened { get; } = new(
        "book-cannot-be-opened", Severity.Stop,
        "{0} cannot be opened: {1}",
        "Nothing was written.",
        "Close it in other programs, or ask for the right to read it.");

    /// <summary>Another program has the book open.</summary>
    public static FindingKind BookIsOpen { get; } = new(
        "book-is-open", Severity.Stop,
        "{0} is open; {1} has it.",
        "Filling it now would be lost when it is saved there, so nothing was written.",
        "Close it and fill it again.");

    /// <summary>The workbook that a list in text would become stands there already.</summary>
    public static FindingKind TextHasBook { get; } = new(
        "text-has-book", Severity.Stop,
        "{0} stands there already.",
        "What may have been typed into it would be lost, so nothing was written.",
        "Fill {0} itself, or type a new name after --out to make a workbook of {1}.");

    /// <summary>A template into which the rows of a list cannot be put.</summary>
    public static FindingKind TemplateCannotTake { get; } = new(
        "template-cannot-take", Severity.Stop,
        "{0} cannot take the list: {1}.",
        "The workbook would not be what either of them says, so nothing was written.",
        "Have one row of headings in both and nothing below the template's, or move {0} away to make a plain workbook.");

    /// <summary>The book was saved while it was being filled.</summary>
    public static FindingKind BookChangedMeanwhile { get; } = new(
        "book-changed-meanwhile", Severity.Stop,
        "{0} was saved by somebody while it was being filled.",
        "Nothing was written, so that nothing is lost.",
        "Fill it again.");

    /// <summary>Another CastBook has the book in hand.</summary>
    public static FindingKind BookIsBusy { get; } = new(
        "book-is-busy", Severity.Stop,
        "{0} is being filled by another CastBook just now.",
        "Two at once would overwrite each other, so nothing was written.",
        "Wait a moment and fill it again.");

    /// <summary>Somebody marked the book as not to be written.</summary>
    public static FindingKind BookIsProtected { get; } = new(
        "book-is-protected", Severity.Stop,
        "{0} is write-protected.",
        "Somebody wanted it left as it is, so nothing was written.",
        "Take the protection away in the file's properties, or fill a copy with --out.");

    /// <summary>The filled book was made, and could not take the old one's place.</summary>
    public static FindingKind BookLiesBeside { get; } = new(
        "book-lies-beside", Severity.Stop,
        "{0} could not be replaced: {1}",
        "The file is as it was. What was made lies beside it as {2}.",
        "Close what holds {0} and fill it again, or take {2} in its place.");

    /// <summary>The folder of backups cannot be looked into.</summary>
    public static FindingKind BackupsCannotBeRead { get; } = new(
        "backups-cannot-be-read", Severity.Stop,
        "The backups of {0} in the folder .castbook cannot be looked at: {1}.",
        "Nothing was put back.",
        "Ask for the right to read that folder and what is in it.");

    /// <summary>No backup of that number.</summary>
    public static FindingKind BackupNotThere { get; } = new(
        "backup-not-there", Severity.Stop,
        "There is no backup number {1} of {0}; they are numbered 1 to {2}, the newest first.",
        "Nothing was put back.",
        "Type castbook restore and the book's name to see them all.");

    /// <summary>The filled book could not be put in its place.</summary>
    public static FindingKind BookNotWritten { get; } = new(
        "book-not-written", Severity.Stop,
        "{0} could not be written: {1}",
        "The file is as it was.",
        "Check that the disk is not full, that the folder may be written to, and that no other program holds the file.");
}
