namespace CastBook.Planning.Findings;

/// <content>What can be wrong with the cells of a list.</content>
public static partial class Catalogue
{
    private const string RowNotComputed = "This row is left out until it is mended.";

    /// <summary>A weight, mass or volume that is no number.</summary>
    public static FindingKind WeightNotANumber { get; } = new(
        "weight-not-a-number", Severity.Stop,
        "\"{0}\" is not a number{1}.", RowNotComputed, "Type the {2} as a number, such as 12.4.");

    /// <summary>A quantity that is no number.</summary>
    public static FindingKind QuantityNotANumber { get; } = new(
        "quantity-not-a-number", Severity.Stop,
        "\"{0}\" is not a number{1}.", RowNotComputed, "Type how many to cast as a whole number, such as 6.");

    /// <summary>Any other value that is no number.</summary>
    public static FindingKind ValueNotANumber { get; } = new(
        "value-not-a-number", Severity.Stop,
        "\"{0}\" is not a number{1}.", "The {2} of this row is not known.", "Type it as a number, or leave the cell empty.");

    /// <summary>A number that may be one of two.</summary>
    public static FindingKind NumberUndecided { get; } = new(
        "number-undecided", Severity.Stop,
        "\"{0}\" under {1} can be read as two numbers: the sign in it may mark thousands or decimals.", RowNotComputed,
        "Type it anew as a number without a thousands sign. One number of the column that leaves no doubt, such as 2.5 or 2,5, settles the others.");

    /// <summary>An estimate, a range, a limit or a tolerance.</summary>
    public static FindingKind NumberNotExact { get; } = new(
        "number-not-exact", Severity.Stop,
        "\"{0}\" is {1}, and what it comes to is not guessed.", RowNotComputed, "Type the {2} as one number, such as {3}.");

    /// <summary>A date where a number belongs.</summary>
    public static FindingKind NumberIsDate { get; } = new(
        "number-became-date", Severity.Stop,
        "The {1} shows the date {0}.", "Spreadsheet programs make dates of entries such as 9.10, 1-2 or 7/8. " + RowNotComputed,
        "Set the cell's format to a number, then type the {1} again.");

    /// <summary>A unit of something else.</summary>
    public static FindingKind UnitWrong { get; } = new(
        "unit-wrong", Severity.Stop,
        "\"{0}\" has a unit that does not measure the {1}.", RowNotComputed, "Type it in {2}.");

    /// <summary>A unit in a cell that may be one of two.</summary>
    public static FindingKind UnitInCellAmbiguous { get; } = new(
        "unit-in-cell-ambiguous", Severity.Stop,
        "\"{0}\" has the unit gr, which some read as grams and others as grains.", "The two are 15-fold apart, so it was not read.",
        "Write g for grams or grain for grains.");

    /// <summary>A cell that shows an error.</summary>
    public static FindingKind FormulaError { get; } = new(
        "formula-error", Severity.Stop,
        "The {1} shows {0}.", RowNotComputed, "Mend the formula, or type the value.");

    /// <summary>A formula whose value was not saved.</summary>
    public static FindingKind FormulaWithoutValue { get; } = new(
        "formula-without-value", Severity.Stop,
        "The {0} is a formula whose result is not saved in the file.", RowNotComputed,
        "Open the book in your spreadsheet program, save it there, and run again; or type the value.");

    /// <summary>A value below zero.</summary>
    public static FindingKind ValueBelowZero { get; } = new(
        "value-below-zero", Severity.Stop,
        "The {1} is {0}, which is less than nothing.", RowNotComputed, "Type the {1} as a number above zero.");

    /// <summary>A value of zero where there must be something.</summary>
    public static FindingKind ValueZero { get; } = new(
        "value-zero", Severity.Stop,
        "The {0} is zero.", RowNotComputed, "Type the {0}, or mark the row in a column Leave out.");

    /// <summary>A value beyond anything cast in a shop.</summary>
    public static FindingKind ValueAbsurd { get; } = new(
        "value-absurd", Severity.Stop,
        "The {1} is {0}; more than {2} is taken for a slip of the pen.", RowNotComputed,
        "Look at the decimal sign and the unit, and type the {1} again.");

    /// <summary>A quantity that is no whole number.</summary>
    public static FindingKind QuantityNotWhole { get; } = new(
        "quantity-not-whole", Severity.Stop,
        "The quantity is {0}, but pieces are cast whole.", RowNotComputed, "Type a whole number, such as 2 or 3.");

    /// <summary>A yes-or-no cell that says neither.</summary>
    public static FindingKind YesNoUnreadable { get; } = new(
        "yes-no-unreadable", Severity.Check,
        "\"{0}\" under {1} was not understood and counts as no.", "", "Type yes or no, or leave the cell empty.");

    /// <summary>A word of a status that means neither done nor left out.</summary>
    public static FindingKind StatusStillToCast { get; } = new(
        "status-still-to-cast", Severity.Note,
        "\"{0}\" under {1} was read as still to cast.", "", "Type done there for what is cast already, and cancelled for what is not to be cast.");

    /// <summary>A stones cell that says neither yes nor no.</summary>
    public static FindingKind StonesUnreadable { get; } = new(
        "stones-unreadable", Severity.Stop,
        "\"{0}\" under {1} does not say whether stones are in the pattern.", "A flask with stones in must not be quenched.",
        "Type yes or no.");

    /// <summary>A word for the shape of a piece that nobody can read.</summary>
    public static FindingKind ShapeNotKnown { get; } = new(
        "shape-not-known", Severity.Note,
        "\"{0}\" under {1} was read as a box, in {2}.", "A ring takes more room on a tree.",
        "Type ring there for a finger ring, and other for anything else.");

    /// <summary>A day that cannot be told.</summary>
    public static FindingKind DueUnreadable { get; } = new(
        "due-unreadable", Severity.Check,
        "\"{0}\" was not understood as a day.", "The row is planned as if it had no due date.", "Type it as a date, such as 2026-12-24.");

    /// <summary>A day that may be one of two.</summary>
    public static FindingKind DayUndecided { get; } = new(
        "day-undecided", Severity.Check,
        "\"{0}\" under {1} can be two days: {2} or {3}.", "Rows with such a day are planned as if they had none.",
        "Type it as {2} or {3}. One day of the list that leaves no doubt, such as 24/12/2026, settles the others.");

    /// <summary>Days read in the order their column settles.</summary>
    public static FindingKind DayOrder { get; } = new(
        "day-order", Severity.Note,
        "Days under {0} were read in the order that others of the book settle, such as {1} as {2}, in {3}.", "",
        "If that is wrong, type them as {2}.");

    /// <summary>A per-tree cell that cannot be read.</summary>
    public static FindingKind PerTreeUnreadable { get; } = new(
        "per-tree-unreadable", Severity.Stop,
        "\"{0}\" does not say how many fit a tree.", RowNotComputed,
        "Type a whole number, such as 12, or one for each flask size, such as 75 × 100: 12; 90 × 125: 20.");

    /// <summary>Sizes in one cell that cannot be read.</summary>
    public static FindingKind SizesUnreadable { get; } = new(
        "sizes-unreadable", Severity.Stop,
        "\"{0}\" does not say the piece's sizes.", "No tree can be planned with it.",
        "Type length × width × thickness, such as 20 × 10 × 3, the length from the gate outwards.");

    /// <summary>Commas read as decimal signs.</summary>
    public static FindingKind DecimalComma { get; } = new(
        "decimal-comma", Severity.Note,
        "Commas under {0} were read as decimal signs, such as {1} as {2}, in {3}.", "", "If that is wrong, type the numbers with a point.");

    /// <summary>Signs read as thousands marks.</summary>
    public static FindingKind ThousandsMark { get; } = new(
        "thousands-mark", Severity.Note,
        "Signs under {0} were read as thousands marks, such as {1} as {2}, in {3}.", "", "If that is wrong, type the numbers without them.");

    /// <summary>Values with another unit than their heading.</summary>
    public static FindingKind UnitConverted { get; } = new(
        "unit-converted", Severity.Note,
        "Values under {0} with a unit of their own were read in that unit, such as {1} as {2}, in {3}.", "",
        "If that is wrong, type them without a unit, in that of the heading.");

    /// <summary>Plain ounces in a cell, in a trade that weighs metal in troy ounces.</summary>
    public static FindingKind UnitPlainOunceInCell { get; } = new(
        "unit-plain-ounce-in-cell", Severity.Check,
        "Values under {0} were read in ordinary ounces of 28.35 g, such as {1} as {2}, in {3}.", "Precious metal is often weighed in troy ounces of 31.10 g.",
        "If troy ounces are meant, write ozt behind the number.");

    /// <summary>Liquid measure that is not the same in Britain.</summary>
    public static FindingKind LiquidIsUs { get; } = new(
        "liquid-measure-is-us", Severity.Note,
        "{0}: {1} was read as {2}, in measures of the United States.", "A British pint is a fifth larger, a British fluid ounce 4 % smaller.",
        "If British ones are meant, write imp before the unit.");

    /// <summary>Quantities in pairs.</summary>
    public static FindingKind PairsCounted { get; } = new(
        "pairs-counted", Severity.Note,
        "Pairs under {0} were counted as two pieces each, such as {1} as {2}, in {3}.", "", "If that is wrong, type the number of pieces.");

    /// <summary>Quantities in dozens.</summary>
    public static FindingKind DozensCounted { get; } = new(
        "dozens-counted", Severity.Note,
        "Dozens under {0} were counted as twelve pieces each, such as {1} as {2}, in {3}.", "", "If that is wrong, type the number of pieces.");
}
