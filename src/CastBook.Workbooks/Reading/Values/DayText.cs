using System.Buffers;
using System.Globalization;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>A day typed as text.</summary>
/// <param name="Day">The day; null where the text means none, or may mean two.</param>
/// <param name="Other">The second day it may mean, where nothing settles which.</param>
/// <param name="First">The first of those two.</param>
/// <param name="Ordered">The order of its column was needed to read it.</param>
/// <param name="Settles">What its own form settles about the order of day and month.</param>
internal readonly record struct DayText(DateOnly? Day, DateOnly? First = null, DateOnly? Other = null, bool Ordered = false, DayOrders Settles = DayOrders.None)
{
    private static readonly SearchValues<char> OfTimes = SearchValues.Create("0123456789:.ZzAaPpMm +-");

    private const int MostParts = 8;
    private const int EarliestShortYear = 20;

    /// <summary>Reads a day such as <c>2026-12-24</c>, <c>24.12.2026</c>, <c>24/12/26</c> or <c>Thu, 24. Dezember 2026</c>.</summary>
    /// <param name="text">The text as typed.</param>
    /// <param name="column">What the column settles about day and month.</param>
    public static DayText Read(string text, DayOrders column)
    {
        Span<Range> ranges = stackalloc Range[MostParts];
        var typed = WithoutTime(text);
        var count = typed.SplitAny(ranges, " .,-/\u00A0", StringSplitOptions.RemoveEmptyEntries);
        var month = 0;
        Span<(int Value, int Digits)> numbers = stackalloc (int, int)[MostParts];
        var found = 0;
        for (var at = 0; at < count; at++)
        {
            var part = typed[ranges[at]];
            if (Number(part, out var digits) is { } number)
            {
                numbers[found++] = (number, digits);
            }
            else if (!TakeWord(part, month == 0 || found == 0, ref month))
            {
                return default;
            }
        }

        return (month, found) switch
        {
            ( > 0, 2) => Named(month, numbers[0], numbers[1]),
            (0, 3) => InDigits(typed, numbers[0], numbers[1], numbers[2], column),
            (0, 1) when numbers[0].Digits == 8 => new DayText(Date(numbers[0].Value / 10000, numbers[0].Value / 100 % 100, numbers[0].Value % 100)),
            _ => default,
        };
    }

    // mar is a Tuesday before another month, and March without one: the later word wins.
    private static bool TakeWord(ReadOnlySpan<char> word, bool mayReplace, ref int month)
    {
        if (MonthWords.Month(word) is var named and > 0 && mayReplace)
        {
            month = named;
            return true;
        }

        return word is "de" or "del" or "of" or "the" or "le" or "den" or "di" or "il" or "el" || MonthWords.IsWeekday(word);
    }

    private static DayText Named(int month, (int Value, int Digits) one, (int Value, int Digits) two)
    {
        var (day, year) = one.Digits == 4 ? (two, one) : (one, two);
        return new DayText(Date(Year(year), month, day.Value));
    }

    private static DayText InDigits(
        ReadOnlySpan<char> typed, (int Value, int Digits) one, (int Value, int Digits) two, (int Value, int Digits) three, DayOrders column)
    {
        if (one.Digits == 4)
        {
            return new DayText(Date(one.Value, two.Value, three.Value));
        }

        // With dashes and a year of two digits, the year may come first as well.
        var year = Year(three);
        if (three.Digits != 4 && typed.Contains('-'))
        {
            return default;
        }

        var (dayFirst, monthFirst) = (Date(year, two.Value, one.Value), Date(year, one.Value, two.Value));
        if (typed.Contains('.') || monthFirst is null || dayFirst == monthFirst)
        {
            return new DayText(dayFirst, Settles: typed.Contains('.') || monthFirst is not null ? DayOrders.None : DayOrders.DayFirst);
        }

        if (dayFirst is null)
        {
            return new DayText(monthFirst, Settles: DayOrders.MonthFirst);
        }

        return column switch
        {
            DayOrders.DayFirst => new DayText(dayFirst, Ordered: true),
            DayOrders.MonthFirst => new DayText(monthFirst, Ordered: true),
            _ => new DayText(null, dayFirst, monthFirst),
        };
    }

    private static int Year((int Value, int Digits) year) => year switch
    {
        (_, 4) => year.Value,
        ( >= EarliestShortYear, 2) => 2000 + year.Value,
        _ => 0,
    };

    private static DateOnly? Date(int year, int month, int day) =>
        year is >= 1900 and <= 9998 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month) ? new DateOnly(year, month, day) : null;

    // Digits, with the endings of ordinal numbers: 3rd, 1er, 1º.
    private static int? Number(ReadOnlySpan<char> part, out int digits)
    {
        digits = part.IndexOfAnyExceptInRange('0', '9');
        var ending = digits < 0 ? [] : part[digits..];
        digits = digits < 0 ? part.Length : digits;
        return digits is > 0 and <= 8 && ending is "" or "st" or "nd" or "rd" or "th" or "er" or "º" or "°" or "ª"
            ? int.Parse(part[..digits], NumberStyles.None, CultureInfo.InvariantCulture)
            : null;
    }

    // A time of day behind the day says nothing about it: 2026-03-23 14:30, 2026-03-23T14:30:00Z.
    private static ReadOnlySpan<char> WithoutTime(ReadOnlySpan<char> text)
    {
        var colon = text.IndexOf(':');
        if (colon < 0)
        {
            return text;
        }

        var start = text[..colon].LastIndexOfAny(' ', 'T');
        return start > 0 && !text[(colon + 1)..].ContainsAnyExcept(OfTimes) ? text[..start] : text;
    }
}
