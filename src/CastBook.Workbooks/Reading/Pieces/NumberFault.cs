using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Says what is wrong with a text that should be a number, where that can be seen.</summary>
internal static class NumberFault
{
    private static readonly string[] SetWords = ["set", "sets", "satz", "sätze", "jeu", "jeux", "juego", "juegos", "serie", "conjunto", "conjuntos", "lot", "batch"];

    /// <summary>The reason, as the end of a sentence: <c>: it has a letter O</c>; empty where none can be seen.</summary>
    public static string Of(string typed)
    {
        if (typed.StartsWith('='))
        {
            return NumberFaultWords.FormulaAsText;
        }

        if (typed.EndsWith('%'))
        {
            return NumberFaultWords.Percentage;
        }

        for (var at = 0; at < typed.Length; at++)
        {
            if (LetterForDigit(typed, at) is { } reason)
            {
                return reason;
            }
        }

        if (SetWords.Any(w => typed.EndsWith(" " + w, StringComparison.OrdinalIgnoreCase)))
        {
            return NumberFaultWords.UnknownCount;
        }

        return NumbersIn(typed) > 1 ? NumberFaultWords.SeveralNumbers : "";
    }

    // A letter counts as a slip where it stands between digits or signs of a number, not before a unit or at the start of a word.
    private static string? LetterForDigit(string typed, int at)
    {
        var before = at > 0 && IsNumeric(typed[at - 1]);
        var after = at + 1 < typed.Length && IsNumeric(typed[at + 1]);
        if (!before && !after)
        {
            return null;
        }

        return typed[at] switch
        {
            'O' or 'o' => NumberFaultWords.LetterForZero,
            'l' or 'I' => NumberFaultWords.LetterForOne(typed[at]),
            'S' or 's' when before && after => NumberFaultWords.LetterForFive(typed[at]),
            'B' when before && after => NumberFaultWords.LetterForEight,
            _ => null,
        };
    }

    // Numbers parted by anything else than the signs inside one.
    private static int NumbersIn(string typed)
    {
        var numbers = 0;
        for (var at = 0; at < typed.Length; at++)
        {
            if (!char.IsAsciiDigit(typed[at]))
            {
                continue;
            }

            numbers++;
            while (at + 1 < typed.Length && IsNumeric(typed[at + 1]))
            {
                at++;
            }
        }

        return numbers;
    }

    private static bool IsNumeric(char c) => char.IsAsciiDigit(c) || c is '.' or ',';
}
