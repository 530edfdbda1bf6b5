namespace CastBook.Planning.Findings;

/// <content>What making a template of a book can find.</content>
public static partial class Catalogue
{
    /// <summary>A sheet that is to be kept is not there.</summary>
    public static FindingKind ShareSheetMissing { get; } = new(
        "share-sheet-missing", Severity.Stop,
        "There is no sheet \"{0}\" to keep; the book has {1}.",
        "Nothing was written.",
        "Type the name after --keep as it stands on the tab.");

    /// <summary>The name of a sheet repeats what a row says.</summary>
    public static FindingKind ShareSheetNameSaysRow { get; } = new(
        "share-sheet-name-says-row", Severity.Stop,
        "The sheet \"{0}\" bears a name that also stands in what is left out: \"{1}\".",
        "Nobody but you can tell whether that name may be passed on, so nothing was written.",
        "Give the sheet another name, or type --keep \"{0}\" if it may.");

    /// <summary>What would be the template is there already.</summary>
    public static FindingKind ShareTemplateExists { get; } = new(
        "share-template-exists", Severity.Stop,
        "{0} stands there already.",
        "What is in it would be lost, so nothing was written.",
        "Type another name after --out, or move it away.");
}
