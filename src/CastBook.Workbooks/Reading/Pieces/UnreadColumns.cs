using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>The columns of a list that are no field of a piece: remarks, what the quantity counts, and days that may be nights.</summary>
internal sealed partial class UnreadColumns
{
    // A column with more other words than these for each few days is none of days.
    private const int FewOthers = 2;
    private const int DaysForAnother = 4;

    private const int MostDaysNamed = 4;

    private const int MostRemarksKnown = 1000;

    private readonly SheetGrid grid;
    private readonly CellValues values;
    private readonly List<(int Column, string Heading)> columns;
    private readonly (int Column, string Heading)? remarks;
    private readonly int counted;

    // A list says the same of many rows.
    private readonly Dictionary<string, (RemarkTopics Topics, int Pieces)> known = new(StringComparer.Ordinal);

    private UnreadColumns(SheetGrid grid, CellValues values, List<(int Column, string Heading)> columns)
    {
        (this.grid, this.values, this.columns) = (grid, values, columns);
        foreach (var column in columns)
        {
            var words = WordKey.Parts(column.Heading);
            remarks ??= words.Exists(SmallWords.Remarks.Contains) ? column : null;
            counted = counted == 0 && SmallWords.Counted.Contains(string.Concat(words)) ? column.Column : counted;
        }
    }

    /// <summary>Finds them.</summary>
    /// <param name="sheet">Where the list stands.</param>
    /// <param name="values">How cells are read.</param>
    /// <param name="unread">Columns of fields that stand in the list but cannot be read.</param>
    public static UnreadColumns Of(PieceSheet sheet, CellValues values, IReadOnlyDictionary<string, int> unread)
    {
        var columns = new List<(int, string)>();
        for (var column = sheet.FirstColumn; column <= sheet.LastColumn; column++)
        {
            if (!sheet.Columns.Values.Contains(column) && !sheet.OwnColumns.Values.Contains(column) && !unread.Values.Contains(column))
            {
                columns.Add((column, HeadingRow.TextAt(sheet.Grid, sheet.HeadingRow, column)?.Trim() ?? ""));
            }
        }

        return new UnreadColumns(sheet.Grid, values, columns);
    }

    /// <summary>What a row counts, such as <c>PCS</c> or <c>PRS</c>, where a column beside the quantity says so.</summary>
    /// <param name="row">The row on the sheet.</param>
    public string? Counted(int row) => counted > 0 && grid.Cell(row, counted) is { Kind: CellKind.Text, Text: { } text } ? CellValues.Clean(text) : null;

    /// <summary>What the remark in a row speaks of; missing where it speaks of nothing that a list has columns for.</summary>
    /// <param name="row">The row on the sheet.</param>
    /// <param name="saysStones">Whether the row's own column says yes or no to stones.</param>
    /// <param name="saysDone">Whether the row's own column says whether it is done.</param>
    /// <param name="saysLeaveOut">Whether the row's own column says whether it is left out.</param>
    public PieceRemark? Remark(int row, bool saysStones, bool saysDone, bool saysLeaveOut)
    {
        if (remarks is not { } column || grid.Cell(row, column.Column) is not { Kind: CellKind.Text, Text: { Length: > 0 } text })
        {
            return null;
        }

        var (topics, pieces) = SpokenOf(text);
        topics &= ~((saysStones ? RemarkTopics.Stones : RemarkTopics.None) | (saysDone ? RemarkTopics.Done : RemarkTopics.None)
            | (saysLeaveOut ? RemarkTopics.Hold : RemarkTopics.None));
        return topics == RemarkTopics.None && pieces == 0 ? null : new PieceRemark(column.Heading, CellValues.Clean(text), topics, pieces);
    }

    private (RemarkTopics Topics, int Pieces) SpokenOf(string remark)
    {
        if (!known.TryGetValue(remark, out var spoken))
        {
            spoken = RemarkWords.In(remark);
            if (known.Count < MostRemarksKnown)
            {
                known[remark] = spoken;
            }
        }

        return spoken;
    }

    /// <summary>The first column of several days that may be nights; null where there is none.</summary>
    /// <param name="rows">The rows that are asked for.</param>
    /// <returns>The column, and what is to be said of it.</returns>
    public (int Column, Finding Finding)? MayBeNights(IReadOnlyList<int> rows)
    {
        foreach (var (column, heading) in columns)
        {
            if (!IsOfOtherDays(heading) && Days(column, rows) is { Count: > 1 } days)
            {
                var letter = CellRef.ColumnName(column);
                var named = days.Take(MostDaysNamed).Select(d => CellNameWords.DayInRows(d.Value.Shown, d.Value.Rows.Count, RowNumbers.Text(d.Value.Rows)));
                var all = string.Join("; ", named) + (days.Count > MostDaysNamed ? CellNameWords.AndMoreDays(days.Count - MostDaysNamed) : "");
                var subject = Subject.Column(PieceField.Night);
                return (column, heading.Length == 0
                    ? Catalogue.DaysWithoutHeading.At(subject, letter, all)
                    : Catalogue.DaysNotReadAsNight.At(subject, $"{letter} \"{heading}\"", all, heading.Replace("\"", "\\\"", StringComparison.Ordinal)));
            }
        }

        return null;
    }

    /// <summary>The column that may name the pieces of a list without a heading for names: the one with a text in most rows; null where no column has one in half of them.</summary>
    /// <param name="rows">The rows that are pieces.</param>
    /// <returns>The column, and what is to be said of it.</returns>
    public (int Column, Finding Finding)? MayBeNames(IReadOnlyList<int> rows)
    {
        int Texts((int Column, string Heading) column) => rows.Count(row => grid.Cell(row, column.Column) is { Kind: CellKind.Text } cell && !CellValues.IsBlank(cell));
        var (column, heading) = columns.Where(c => c.Heading.Length > 0 && c != remarks && c.Column != counted).DefaultIfEmpty().MaxBy(Texts);
        return column > 0 && Texts((column, heading)) * 2 >= rows.Count
            ? (column, Catalogue.NamesNotKnown.At(
                Subject.Column(PieceField.Piece), CellRef.ColumnName(column), heading, heading.Replace("\"", "\\\"", StringComparison.Ordinal)))
            : null;
    }

    // "Created", and "Created at" as well.
    private static bool IsOfOtherDays(string heading) =>
        WordKey.Parts(heading) is var words && (SmallWords.OtherDays.Contains(string.Concat(words)) || (words.Count > 0 && SmallWords.OtherDays.Contains(words[0])));

    private SortedDictionary<DateOnly, (string Shown, List<int> Rows)>? Days(int column, IReadOnlyList<int> rows)
    {
        var days = new SortedDictionary<DateOnly, (string Shown, List<int> Rows)>();
        var (read, others) = (0, 0);
        var orders = (DayOrders?)null;
        foreach (var row in rows)
        {
            var cell = grid.Cell(row, column);
            if (CellValues.IsBlank(cell))
            {
                continue;
            }

            if (cell.Kind == CellKind.Text || values.IsDate(cell))
            {
                var text = values.Day(cell, DayOrders.None);
                if (text is { Day: null, First: not null })
                {
                    text = values.Day(cell, orders ??= ColumnHabits.Of(grid, column, rows, isDay: true).Days);
                }

                if ((text.Day ?? text.First) is { } day)
                {
                    read++;
                    if (!days.TryGetValue(day, out var known))
                    {
                        days[day] = known = (values.Shown(cell), []);
                    }

                    known.Rows.Add(row);
                    continue;
                }
            }

            if (++others > FewOthers + (read / DaysForAnother))
            {
                return null;
            }
        }

        return days;
    }
}
