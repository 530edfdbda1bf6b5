using System.Buffers;
using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>What the book's cell formats show: a date, a percentage or a plain number, and whether it is struck out.</summary>
public sealed class NumberFormats
{
    private static readonly SearchValues<char> DateLetters = SearchValues.Create("dmyhsDMYHS");

    private readonly List<int> formatOf = [];
    private readonly List<int> fontOf = [];
    private readonly HashSet<int> struckFonts = [];
    private readonly Dictionary<int, (bool Date, bool Hour, bool Percent, DayOrders Days)> shown = [];

    private NumberFormats()
    {
    }

    /// <summary>No formats: a book without styles.</summary>
    public static NumberFormats None { get; } = new();

    /// <summary>Reads the formats of a book.</summary>
    /// <param name="package">The book.</param>
    /// <exception cref="Files.BookRefusedException">The styles part cannot be read.</exception>
    public static NumberFormats Read(BookPackage package)
    {
        ArgumentNullException.ThrowIfNull(package);
        if (package.StylesPart is not { } part)
        {
            return None;
        }

        var formats = new NumberFormats();
        var section = "";
        var font = -1;
        PackageXml.EachElement(package.OpenPart(part), part, element =>
        {
            if (element.Depth == 1)
            {
                section = element.LocalName;
            }
            else if (element.LocalName == "numFmt" && element.Depth == 2)
            {
                formats.shown[Id(element.GetAttribute("numFmtId"))] = Shown(Plain(element.GetAttribute("formatCode") ?? ""));
            }
            else if (section == "cellXfs" && element.LocalName == "xf" && element.Depth == 2)
            {
                formats.formatOf.Add(Id(element.GetAttribute("numFmtId")));
                formats.fontOf.Add(Id(element.GetAttribute("fontId")));
            }
            else if (section == "fonts" && element.Depth == 2)
            {
                font++;
            }
            else if (section == "fonts" && element.LocalName == "strike" && element.Depth == 3 && element.GetAttribute("val") is null or "1" or "true" or "on")
            {
                formats.struckFonts.Add(font);
            }
        });
        return formats;
    }

    /// <summary>Whether any font of the book is struck out.</summary>
    public bool AnyStruck => struckFonts.Count > 0;

    /// <summary>Whether a cell of this format is struck out.</summary>
    /// <param name="style">Index of the cell format.</param>
    public bool IsStruck(int style) => AnyStruck && style >= 0 && style < fontOf.Count && struckFonts.Contains(fontOf[style]);

    /// <summary>Whether a cell of this format shows a date or a time.</summary>
    /// <param name="style">Index of the cell format.</param>
    public bool IsDate(int style)
    {
        var format = FormatOf(style);
        return shown.TryGetValue(format, out var code) ? code.Date : format is (>= 14 and <= 22) or (>= 27 and <= 36) or (>= 45 and <= 47) or (>= 50 and <= 58);
    }

    /// <summary>Whether a cell of this format shows a time of day.</summary>
    /// <param name="style">Index of the cell format.</param>
    public bool ShowsHour(int style)
    {
        var format = FormatOf(style);
        return shown.TryGetValue(format, out var code) ? code.Hour : format is (>= 18 and <= 22) or 32 or 33 or 46;
    }

    /// <summary>Whether a cell of this format shows a percentage, so that 0.02 in it reads 2 %.</summary>
    /// <param name="style">Index of the cell format.</param>
    public bool IsPercent(int style)
    {
        var format = FormatOf(style);
        return shown.TryGetValue(format, out var code) ? code.Percent : format is 9 or 10;
    }

    /// <summary>What the days that cells of the book show settle about the order of day and month; the formats that follow the machine's settle nothing.</summary>
    internal DayOrders Days => formatOf.Distinct().Aggregate(DayOrders.None, (all, format) => shown.TryGetValue(format, out var code) ? all | code.Days : all);

    private static (bool Date, bool Hour, bool Percent, DayOrders Days) Shown(string plainCode) =>
        (plainCode.AsSpan().ContainsAny(DateLetters), plainCode.AsSpan().ContainsAny('h', 'H'), plainCode.Contains('%', StringComparison.Ordinal), OrderIn(plainCode));

    // A month in letters says nothing of how somebody writes it in digits, and minutes have hours or seconds beside them.
    private static DayOrders OrderIn(string plainCode)
    {
        var parts = plainCode.ToUpperInvariant().Split(['/', '-', '.', ' '], StringSplitOptions.RemoveEmptyEntries);
        return parts switch
        {
            ["M" or "MM", "D" or "DD", "YY" or "YYYY", ..] => DayOrders.MonthFirst,
            ["D" or "DD", "M" or "MM", "YY" or "YYYY", ..] => DayOrders.DayFirst,
            _ => DayOrders.None,
        };
    }

    private int FormatOf(int style) => style >= 0 && style < formatOf.Count ? formatOf[style] : 0;

    private static int Id(string? text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? id : 0;

    // A code without its literal parts: quoted text, escaped characters, and brackets other than elapsed time.
    private static string Plain(string code)
    {
        var plain = new StringBuilder(code.Length);
        for (var at = 0; at < code.Length; at++)
        {
            switch (code[at])
            {
                case '"':
                    at = Closing(code, at, '"');
                    break;
                case '\\' or '_' or '*':
                    at++;
                    break;
                case '[':
                    var end = Closing(code, at, ']');
                    var inside = code.AsSpan(at + 1, Math.Max(0, end - at - 1));
                    if (inside.Length > 0 && inside.Trim("hHmMsS").Length == 0)
                    {
                        plain.Append(inside);
                    }

                    at = end;
                    break;
                default:
                    plain.Append(code[at]);
                    break;
            }
        }

        return plain.Replace("General", "").ToString();
    }

    private static int Closing(string code, int from, char close)
    {
        var end = code.IndexOf(close, from + 1);
        return end < 0 ? code.Length : end;
    }
}
