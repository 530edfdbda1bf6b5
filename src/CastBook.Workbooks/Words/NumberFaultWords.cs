namespace CastBook.Workbooks.Words;

/// <summary>What is wrong with what was typed for a number. A fault is the end of a sentence: "… is no weight: it is a percentage."</summary>
internal static class NumberFaultWords
{
    public static string FormulaAsText => ": it is a formula typed as text";

    public static string Percentage => ": it is a percentage";

    public static string UnknownCount => ": it does not say how many pieces one of them is";

    public static string SeveralNumbers => ": it holds more than one number";

    public static string LetterForZero => ": it has a letter O where a zero belongs";

    public static string LetterForOne(char letter) => $": it has a letter {letter} where a one belongs";

    public static string LetterForFive(char letter) => $": it has a letter {letter} where a five may belong";

    public static string LetterForEight => ": it has a letter B where an eight may belong";

    public static string NotWhole => ": it is not whole";

    // What a text is that tells of a number without saying it.
    public static string Tolerance => "a number with a tolerance";

    public static string Estimate => "an estimate";

    public static string Limit => "a limit";

    public static string Range => "a range";

    public static string Either(string low, string high) => $"{low} or {high}";
}
