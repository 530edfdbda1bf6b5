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
        "What a formula gives under Metal each is used for the flasks and the melt; elsewhere CastBook goes by its own value.",
        "Delete the formula to get CastBook's value.");

    /// <summary>A column of metal that stays in the unit of its heading.</summary>
    public static FindingKind ColumnUnitStays { get; } = new(
        "column-unit-stays",
        Severity.Note,
        "The column {0} stays in {1} although the Shop sheet says {2}: somebody typed into it, or formulas of yours may look at it.",
        "A number that was meant in one unit must not be read in another.",
        "To change it, see to those numbers and formulas, and type {3} as its heading.");

    /// <summary>The list's print area leaves our columns out.</summary>
    public static FindingKind PrintAreaWithoutColumns { get; } = new(
        "print-area-without-columns",
        Severity.Note,
        "The print area of {0} ends before CastBook's columns, and was left as it is.",
        "They are on the screen and not on paper.",
        "Widen the print area if you want them printed.");

    /// <summary>A sheet that CastBook writes in is protected.</summary>
    public static FindingKind SheetProtected { get; } = new(
        "sheet-protected",
        Severity.Note,
        "The sheet {0} is protected; CastBook writes into the file and left the protection as it is.",
        "In your spreadsheet program nothing can be typed into the cells CastBook added or asks for there, and the rows cannot be sorted.",
        "Unprotect {0} when you want to type there.");

    /// <summary>The sheets of the workbook are protected against being moved or deleted.</summary>
    public static FindingKind StructureProtected { get; } = new(
        "structure-protected",
        Severity.Note,
        "The structure of the workbook is protected; CastBook writes into the file and left the protection as it is.",
        "In your spreadsheet program the sheets, CastBook's among them, cannot be moved, renamed or deleted.",
        "Unprotect the workbook when you want to do that.");

    /// <summary>Formulas that take values from other books.</summary>
    public static FindingKind ExternalLinks { get; } = new(
        "external-links",
        Severity.Note,
        "The workbook takes values from other workbooks; CastBook did not open those.",
        "What your spreadsheet program last fetched from them is what the plan goes by.",
        "Let it fetch them anew before you fill, if they have changed.");

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
    public static FindingKind TypedValueKept { get; } = new(
        "typed-value-kept",
        Severity.Check,
        "Somebody typed \"{1}\" under {0}; it was kept, CastBook's own value is {2}.",
        "The rest of the plan goes by CastBook's value.",
        "Delete the typed value to get CastBook's.");

    /// <summary>A typed metal of one piece, which the plan uses.</summary>
    public static FindingKind TypedMetalUsed { get; } = new(
        "typed-metal-used",
        Severity.Check,
        "Somebody typed {1} under {0}; CastBook works out {2}.",
        "The typed value is used: the metal of the row, its flask and the melt go by it.",
        "Delete the typed value to get CastBook's.");

    /// <summary>Values in a computed column of a book without a record.</summary>
    public static FindingKind ValuesReplaced { get; } = new(
        "values-replaced",
        Severity.Note,
        "The column {0} held other values, and nothing in the book tells whether CastBook or a person wrote them: {1}.",
        "They were replaced.",
        "Keep numbers of your own in a column of your own.");
}
