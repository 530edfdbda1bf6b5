namespace CastBook.Workbooks.Words;

/// <summary>What <c>castbook explain</c> says of a cell; of the numbers themselves their accounts speak.</summary>
internal static class ExplanationWords
{
    // Around an account.
    public static string InWords(string formula) => $"in words: {formula}";

    public static string HoldsFor(string range) => $"holds for: {range}";

    public static string Written(string reckoned, string rounded, string shown) => $"{reckoned}{rounded}, written \"{shown}\"";

    public static string OnSheet(string sheet) => $"the sheet {sheet}";

    // Cells of the shop's.
    public static string HeadingOfOurs => "It is the heading of a column that CastBook fills; ask for a cell below it.";

    public static string YoursAndRead => "It is yours: CastBook reads it and works nothing out in it.";

    public static string Yours => "It is yours: CastBook works nothing out in it.";

    public static string YoursInRow(string use) => $"It is yours; {use}.";

    public static string WorkedOutInRow(IEnumerable<string> cells) => $" Worked out in this row: {string.Join(", ", cells)}.";

    public static string NotRead => "CastBook does not read it";

    public static string ReadAsName => "CastBook reads it as the name of the piece";

    public static string ReadAs(string field) => $"CastBook reads it as the {field}";

    // Cells of ours in which nothing is worked out.
    public static string YoursToFillIn => "It is yours to fill in: CastBook keeps what you type there and works nothing out in it.";

    public static string NeverWritten => "It is empty: CastBook writes nothing there.";

    public static string OnlyWords => "CastBook wrote it: a name, a heading or a sentence, in which nothing is worked out.";

    // Computed cells that are empty, or say something else.
    public static string NothingToSay => "It is empty: there is nothing to say there, or something is not known that it takes.";

    public static string OfAnotherNight => "It is empty: the row is another night's.";

    public static string LeftAlone => "It is left as it is: the row is done or another night's.";

    public static string NothingFound => "It is empty: nothing was found about this row.";

    public static string WhatWasFound => "It says what was found about this row.";

    public static string Kept(string holds, string ours) => $"The cell holds {holds}, and keeps it; CastBook would write {ours}.";

    public static string FormulaOfYours => "a formula of yours";

    public static string TypedByAPerson(string shown) => $"\"{shown}\", which a person typed";

    public static string Nothing => "nothing";

    public static string EmptyBecause => "It is empty, because of this:";

    public static string EmptyAs(string status) => $"It is empty: the row is {status}.";

    public static string LeftOutAsAsked => "left out, as you asked";

    public static string InNoFlask => "in no flask tonight";

    // Names of cells that are none.
    public static string SeveralCells(string typed) => $"'{typed}' is more than one cell. Ask for one at a time, or leave the cell out to have all of them.";

    public static string NoCell(string typed, string sheet) => $"'{typed}' is no cell. Type the sheet, an exclamation mark and the cell, such as \"{sheet}!C2\".";

    public static string NoSheet(string sheet, string nearest, IEnumerable<string> sheets) =>
        $"there is no sheet '{sheet}'. Did you mean \"{nearest}\"? The sheets are: {string.Join(", ", sheets)}.";
}
