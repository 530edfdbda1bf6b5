using System.Collections.Frozen;
using System.Globalization;

namespace CastBook.Workbooks.Sharing;

/// <summary>Decides whether a formula may be shared: it speaks of cells, functions and names that are shared, and quotes nobody's words and prices.</summary>
/// <param name="sheets">The names of the sheets that are shared.</param>
/// <param name="names">The defined names that are shared.</param>
/// <param name="tables">The tables that are shared, with the headings of their columns.</param>
internal sealed class FormulaJudge(
    IReadOnlySet<string> sheets, IReadOnlySet<string> names, IReadOnlyDictionary<string, IReadOnlySet<string>> tables)
{
    private static readonly FrozenSet<string> TableParts = new[] { "#This Row", "#All", "#Data", "#Headers", "#Totals" }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Functions = (
        "ABS AND AVERAGE AVERAGEIF AVERAGEIFS CEILING CHOOSE COLUMN COLUMNS CONCAT CONCATENATE COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS DATE DAY DAYS "
        + "EDATE EOMONTH EXACT EXP FILTER FLOOR HLOOKUP HOUR IF IFERROR IFNA IFS INDEX INT ISBLANK ISERROR ISNA ISNUMBER ISTEXT LARGE LEFT LEN LN LOG LOG10 "
        + "LOOKUP LOWER MATCH MAX MAXIFS MEDIAN MID MIN MINIFS MINUTE MOD MONTH N NA NOT NOW OFFSET OR PI POWER PRODUCT RANK RIGHT ROUND ROUNDDOWN ROUNDUP "
        + "ROW ROWS SEARCH SMALL SORT SQRT SUBTOTAL SUM SUMIF SUMIFS SUMPRODUCT SWITCH TIME TODAY TRIM TRUNC UNIQUE UPPER VALUE VLOOKUP WEEKDAY XLOOKUP YEAR")
        .Split(' ').ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    // They count, round or choose a kind of sum; any other number may be a price.
    private static readonly FrozenSet<string> SmallNumbers =
        "0 1 2 3 10 100 1000 101 102 103 104 105 109".Split(' ').ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a formula may be shared.</summary>
    /// <param name="formula">The formula, without an equals sign.</param>
    /// <param name="anyNumber">Whether numbers of any size may stand in it: limits of entries and marks.</param>
    public bool IsFree(string formula, bool anyNumber = false)
    {
        for (var at = 0; at < formula.Length;)
        {
            var length = Next(formula, at, anyNumber);
            if (length == 0)
            {
                return false;
            }

            at += length;
        }

        return formula.Length > 0;
    }

    // How far the piece of the formula that begins here reaches; 0 where it may not be shared.
    private int Next(string formula, int at, bool anyNumber) => formula[at] switch
    {
        '"' => at + 1 < formula.Length && formula[at + 1] == '"' && (at + 2 == formula.Length || formula[at + 2] != '"') ? 2 : 0,
        '\'' => QuotedSheet(formula, at),
        ' ' or '\n' or '\r' or '\t' or '(' or ')' or '{' or '}' or ',' or ';' or ':' or '+' or '-' or '*' or '/' or '^' or '&' or '%' or '=' or '<' or '>' => 1,
        _ when IsWord(formula[at]) => Word(formula, at, anyNumber),
        _ => 0,
    };

    private int QuotedSheet(string formula, int at)
    {
        var end = at + 1;
        while (end < formula.Length && (formula[end] != '\'' || (end + 1 < formula.Length && formula[end + 1] == '\'')))
        {
            end += formula[end] == '\'' ? 2 : 1;
        }

        return end + 1 < formula.Length && formula[end + 1] == '!' && IsShared(formula[(at + 1)..end].Replace("''", "'", StringComparison.Ordinal))
            ? end + 2 - at
            : 0;
    }

    private int Word(string formula, int at, bool anyNumber)
    {
        var end = at;
        while (end < formula.Length && IsWord(formula[end]))
        {
            end++;
        }

        var word = formula[at..end];
        var after = end < formula.Length ? formula[end] : ' ';
        var length = after switch
        {
            '!' => IsShared(word) ? word.Length + 1 : 0,
            '(' => IsFunction(word) ? word.Length : 0,
            '[' => tables.TryGetValue(word, out var columns) ? Bracket(formula, end, columns) - at : 0,
            _ => IsReference(word, isInRange: after == ':' || (at > 0 && formula[at - 1] == ':')) || IsNumber(word, anyNumber)
                || names.Contains(word) || word.ToUpperInvariant() is "TRUE" or "FALSE" ? word.Length : 0,
        };
        return Math.Max(length, 0);
    }

    // Columns of a table, by headings that are shared.
    private static int Bracket(string formula, int at, IReadOnlySet<string> columns)
    {
        var (depth, inner) = (0, at);
        for (var i = at; i < formula.Length; i++)
        {
            if (formula[i] == '\'')
            {
                i++;
            }
            else if (formula[i] == '[')
            {
                (depth, inner) = (depth + 1, i);
            }
            else if (formula[i] == ']')
            {
                if (formula[inner] == '[' && !IsColumn(formula[(inner + 1)..i], columns))
                {
                    return 0;
                }

                (depth, inner) = (depth - 1, i);
                if (depth == 0)
                {
                    return i + 1;
                }
            }
            else if (formula[inner] == ']' && formula[i] is not (',' or ':' or ' '))
            {
                return 0;
            }
        }

        return 0;
    }

    private static bool IsColumn(string text, IReadOnlySet<string> columns)
    {
        var plain = text.Replace("'", "", StringComparison.Ordinal).TrimStart('@');
        return plain.Length == 0 || TableParts.Contains(plain) || columns.Any(c => c.Replace("'", "", StringComparison.Ordinal) == plain);
    }

    private bool IsShared(string sheet) => sheets.Contains(sheet);

    private static bool IsFunction(string word) =>
        Functions.Contains(word.Replace("_xlfn.", "", StringComparison.Ordinal).Replace("_xlws.", "", StringComparison.Ordinal));

    private static bool IsNumber(string word, bool any) =>
        SmallNumbers.Contains(word) || (any && double.TryParse(word, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _));

    // A cell, or a whole column or row.
    private static bool IsReference(string word, bool isInRange)
    {
        var plain = word.Replace("$", "", StringComparison.Ordinal);
        var letters = plain.TakeWhile(char.IsAsciiLetter).Count();
        var digits = plain.Length - letters;
        return plain.Length > 0 && letters <= 3 && digits <= 7 && plain[letters..].All(char.IsAsciiDigit)
            && ((letters > 0 && digits > 0) || isInRange);
    }

    private static bool IsWord(char c) => char.IsLetterOrDigit(c) || c is '_' or '.' or '$' or '\\';
}
