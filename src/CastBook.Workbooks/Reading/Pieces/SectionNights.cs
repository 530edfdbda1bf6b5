using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Asks whether section lines such as <c>Friday 27 November</c> and <c>Night 2</c> part a list into casting nights.</summary>
internal static class SectionNights
{
    private const int MostDays = 31;

    /// <summary>The question; missing where fewer than two lines with rows below them name a day or a night.</summary>
    /// <param name="rows">The rows of the list.</param>
    /// <param name="asked">Tells whether a piece, by its place in the list, is still to be cast.</param>
    public static Finding? Ask(ListRows rows, Func<int, bool> asked)
    {
        var named = new List<(string Title, List<int> Rows)>();
        foreach (var (row, first, end) in rows.Sectioned)
        {
            var below = Enumerable.Range(first, end - first).Where(asked).Select(at => rows.Pieces[at]).ToList();
            if (below.Count > 0 && rows.TitleOf(row) is var title && MayBeNight(title))
            {
                named.Add((title, below));
            }
        }

        return named.Select(n => n.Title).Distinct(StringComparer.OrdinalIgnoreCase).Count() < 2
            ? null
            : Catalogue.SectionsMayBeNights.At(
                Subject.Column(PieceField.Piece), string.Join("; ", named.Select(n => CellNameWords.QuotedInRows(n.Title, n.Rows.Count, RowNumbers.Text(n.Rows)))));
    }

    // A day of the week, a month beside a number, 27/11, a day in full, or the word that heads a column of nights.
    private static bool MayBeNight(string title)
    {
        var words = WordKey.Parts(title);
        var hasNumber = words.Exists(w => char.IsAsciiDigit(w[0]));
        return words.Exists(w => MonthWords.IsWeekday(w) || (hasNumber && MonthWords.Month(w) > 0) || IsNight(w))
            || title.Split(' ').Any(IsDayAndMonth) || DayText.Read(title, DayOrders.None) is { Day: not null } or { First: not null };
    }

    private static bool IsNight(string word) =>
        HeadingWords.PieceIndex.Find([word]).Any(known => HeadingWords.PieceIndex.Fields[known.FieldAt].Field == PieceField.Night);

    // 27/11 and 27.11., but neither 7/8 nor 3.5.
    private static bool IsDayAndMonth(string word)
    {
        var bare = word.Trim(',', ':', ';', '(', ')');
        var parts = bare.EndsWith('.') ? bare[..^1].Split('.') : bare.Split('/');
        return parts is [var one, var two] && IsUpTo(one, MostDays) && IsUpTo(two, MostDays) && !Fraction.TryRead(bare, out _, out _);
    }

    private static bool IsUpTo(string text, int most) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= most;
}
