namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Says what is wrong with a text that should be a number, where that can be seen.</summary>
internal static class NumberFault
{
    /// <summary>The reason, as the end of a sentence: <c>: it has a letter O</c>; empty where none can be seen.</summary>
    public static string Of(string typed)
    {
        if (typed.StartsWith('='))
        {
            return ": it is a formula typed as text";
        }

        for (var at = 0; at < typed.Length; at++)
        {
            var besideDigit = (at > 0 && IsNumeric(typed[at - 1])) || (at + 1 < typed.Length && IsNumeric(typed[at + 1]));
            if (besideDigit && typed[at] is 'O' or 'o')
            {
                return ": it has a letter O where a zero belongs";
            }

            if (besideDigit && typed[at] is 'l' or 'I')
            {
                return $": it has a letter {typed[at]} where a one belongs";
            }
        }

        return "";
    }

    private static bool IsNumeric(char c) => char.IsAsciiDigit(c) || c is '.' or ',';
}
