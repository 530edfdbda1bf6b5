namespace CastBook.Planning.Findings;

/// <content>What taking CastBook's work out of a book again can find.</content>
public static partial class Catalogue
{
    /// <summary>Something typed goes with our columns and sheets.</summary>
    public static FindingKind TypedTakenOut { get; } = new(
        "typed-taken-out", Severity.Check,
        "Somebody typed into CastBook's columns or sheets: {0}.",
        "It went with them; the book as it was still has it.",
        "Copy what you need from there.");

    /// <summary>Our columns went, and nothing tells what in them was typed.</summary>
    public static FindingKind TakenOutWithoutRecord { get; } = new(
        "taken-out-without-record", Severity.Check,
        "CastBook's sheet Checks is gone, so nothing tells what in its columns a person typed.",
        "All that stood in them went; the book as it was still has it.",
        "Look there before you delete it.");

    /// <summary>A sheet with questions holds answers.</summary>
    public static FindingKind SheetStaysAnswered { get; } = new(
        "sheet-stays-answered", Severity.Note,
        "The sheet {0} stays: it holds what you typed into it.",
        "",
        "Delete it yourself if you do not need it.");

    /// <summary>Formulas look at a sheet of ours.</summary>
    public static FindingKind SheetStaysLookedAt { get; } = new(
        "sheet-stays-looked-at", Severity.Check,
        "The sheet {0} stays, because formulas of yours look at it.",
        "Without it they would show an error.",
        "Change the formulas, then delete the sheet yourself.");

    /// <summary>Our columns stand between the shop's.</summary>
    public static FindingKind ColumnsEmptied { get; } = new(
        "columns-emptied", Severity.Note,
        "Columns of CastBook's on {0} were emptied and left where they are: columns of yours stand to their right, or formulas look at them.",
        "Nothing of yours was moved.",
        "Delete the empty columns yourself.");

    /// <summary>Nothing to take out.</summary>
    public static FindingKind NothingToTakeOut { get; } = new(
        "nothing-to-take-out", Severity.Note,
        "There is nothing of CastBook's in {0}.",
        "",
        "");
}
