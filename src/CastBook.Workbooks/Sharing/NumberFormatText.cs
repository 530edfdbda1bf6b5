using System.Text;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Sharing;

/// <summary>Takes words out of number formats: units and signs stay, names go.</summary>
internal static class NumberFormatText
{
    private const int LongestSign = 3;

    // What a format is made of besides text in quotes: digits, days and hours, colours, conditions.
    private const string Signs = "0#?.,%/ -+():;@*$€£¥<>=!~'{}^&";

    private static readonly string[] Words =
    [
        "General", "Standard", "yyyy", "yyy", "yy", "y", "mmmmm", "mmmm", "mmm", "mm", "m", "dddd", "ddd", "dd", "d", "hh", "h", "ss", "s", "AM/PM", "A/P", "E+", "E-", "e",
    ];

    /// <summary>The format without anybody's words.</summary>
    /// <param name="code">The format as the file has it.</param>
    public static string Clean(string code)
    {
        var clean = new StringBuilder(code.Length);
        for (var at = 0; at < code.Length;)
        {
            var length = code[at] switch
            {
                '"' => Until(code, at, '"'),
                '[' => Until(code, at, ']'),
                '\\' or '_' => Math.Min(2, code.Length - at),
                _ => Word(code, at),
            };
            var piece = code.Substring(at, Math.Max(length, 1));
            if (length > 0 && IsFree(piece))
            {
                clean.Append(piece);
            }

            at += piece.Length;
        }

        return clean.Length == 0 ? "General" : clean.ToString();
    }

    private static int Until(string code, int at, char end) =>
        code.IndexOf(end, at + 1) is >= 0 and var close ? close + 1 - at : code.Length - at;

    private static int Word(string code, int at) =>
        Signs.Contains(code[at], StringComparison.Ordinal) ? 1
        : Array.Find(Words, w => string.Compare(code, at, w, 0, w.Length, StringComparison.OrdinalIgnoreCase) == 0)?.Length ?? 0;

    private static bool IsFree(string piece) => piece[0] switch
    {
        '"' => piece.Length > 1 && piece[^1] == '"' && IsUnit(piece[1..^1]),
        '[' => piece[^1] == ']' && IsBracket(piece[1..^1]),
        '\\' or '_' => piece.Length == 2 && !char.IsLetterOrDigit(piece[1]),
        _ => true,
    };

    private static bool IsUnit(string text) =>
        !text.Any(char.IsLetter) ? text.Length <= LongestSign && !text.Any(char.IsDigit) : CellUnit.TryParse(text, out _);

    // A sign of money, a language, a colour, a condition, or hours beyond a day.
    private static bool IsBracket(string text) =>
        text.StartsWith('$')
            ? text.Split('-') is var parts && parts.Length <= 2 && parts[0].Length <= LongestSign + 1 && (parts.Length == 1 || parts[1].All(char.IsAsciiHexDigit))
            : text.TrimStart('<', '>', '=') is var rest && (rest.Length < text.Length ? rest.All(c => char.IsDigit(c) || c is '.' or '-')
                : text.ToUpperInvariant() is "BLACK" or "BLUE" or "CYAN" or "GREEN" or "MAGENTA" or "RED" or "WHITE" or "YELLOW" or "H" or "HH" or "M" or "MM" or "S" or "SS"
                    || (text.StartsWith("Color", StringComparison.OrdinalIgnoreCase) && text[5..].Trim().All(char.IsDigit)));
}
