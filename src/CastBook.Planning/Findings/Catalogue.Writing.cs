namespace CastBook.Planning.Findings;

/// <content>What writing the book back can find.</content>
public static partial class Catalogue
{
    /// <summary>No room beside the list.</summary>
    public static FindingKind ColumnsNoRoom { get; } = new(
        "columns-no-room",
        Severity.Check,
        "There is no room for CastBook's columns beside the list on {0}: the cells to its right are in use, or the list is a table that another program fills.",
        "The values stand on the sheet Computed instead, with each piece's name and row.",
        "Free the columns to the right of the list, and the values will stand beside it.");

    /// <summary>A formula of the shop in a computed column.</summary>
    public static FindingKind FormulaKept { get; } = new(
        "formula-kept",
        Severity.Note,
        "A formula of yours stands in a column that CastBook fills; it was left as it is.",
        "Its result may differ from CastBook's.",
        "Delete the formula to get CastBook's value.");

    /// <summary>The list's print area leaves our columns out.</summary>
    public static FindingKind PrintAreaWithoutColumns { get; } = new(
        "print-area-without-columns",
        Severity.Note,
        "The print area of {0} ends before CastBook's columns, and was left as it is.",
        "They are on the screen and not on paper.",
        "Widen the print area if you want them printed.");

    /// <summary>A name of ours was taken.</summary>
    public static FindingKind SheetNameTaken { get; } = new(
        "sheet-name-taken",
        Severity.Note,
        "You have a sheet called {0} of your own; CastBook's is called {1}.",
        "",
        "");

    /// <summary>Something the shop wrote on a sheet of ours.</summary>
    public static FindingKind OwnSheetKept { get; } = new(
        "own-sheet-kept",
        Severity.Check,
        "Something was typed on {0} outside the framed cells, so that sheet was kept as {1} and a fresh one made.",
        "What you typed is safe there, but CastBook does not read it.",
        "Copy what you need, then delete {1}.");

    /// <summary>A typed value in a computed column.</summary>
    public static FindingKind TypedValueReplaced { get; } = new(
        "typed-value-replaced",
        Severity.Note,
        "{0} held \"{1}\"; CastBook wrote its own value there.",
        "The cell is in a column that CastBook fills.",
        "Keep your own numbers in a column of your own.");
}
