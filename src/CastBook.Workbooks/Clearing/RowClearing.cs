using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Clearing;

/// <summary>Empties the rows of a book that stand exactly as a new book holds them; a row in which anything was changed stays.</summary>
/// <remarks>Cells are emptied, not deleted: formats, lists and whatever looks at other rows stay where they are.</remarks>
internal sealed class RowClearing
{
    private const double SameNumber = 1e-9;

    private readonly BookPackage package;
    private readonly SharedStrings strings;
    private readonly OwnMarks marks;
    private readonly ILookup<string, KnownRow> known;

    private RowClearing(BookPackage package, IReadOnlyList<KnownRow> rows)
    {
        this.package = package;
        strings = SharedStrings.Read(package);
        marks = OwnMarks.Of(package);
        known = rows.ToLookup(r => r.Sheet, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Empties the rows.</summary>
    /// <param name="book">The workbook; must be able to seek. It is only read.</param>
    /// <param name="output">Where the workbook goes; must be able to read, write and seek.</param>
    /// <param name="bookName">The book's file name with its extension.</param>
    /// <param name="rows">The rows.</param>
    /// <returns>What was cleared, and whether any part of the book differs from before.</returns>
    public static (ClearedRows Cleared, bool Changed) Clear(Stream book, Stream output, string bookName, IReadOnlyList<KnownRow> rows)
    {
        BookGate.Admit(book, bookName);
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);
        var cleared = new RowClearing(package, rows).Edit(edits);
        var check = new OutputCheck(package, edits);
        PackageWriter.Write(package, edits, output, check.Watch);
        return (cleared, check.Run(output));
    }

    private ClearedRows Edit(BookEdits edits)
    {
        var (cleared, kept) = (new List<(string, int)>(), new List<(string, int)>());
        foreach (var sheet in package.Sheets.Where(s => known.Contains(s.Name) && !marks.Sheets.Values.Contains(s)))
        {
            var grid = SheetReader.Read(package, sheet, strings);
            var (headingRow, headings) = Headings(grid, sheet);
            var (empty, changed) = (0, 0);
            foreach (var row in grid.Rows.Where(r => headingRow > 0 && r > headingRow))
            {
                if (IsKnown(grid, row, sheet, headings))
                {
                    Empty(edits.Sheet(sheet.PartName), grid, row);
                    empty++;
                }
                else if (headings.Keys.Any(column => ExampleName.Is(grid.Cell(row, column).Text)))
                {
                    changed++;
                }
            }

            Add(cleared, sheet.Name, empty);
            Add(kept, sheet.Name, changed);
        }

        return new ClearedRows(cleared, kept);
    }

    // What CastBook worked out from the row goes with it.
    private static void Empty(SheetEdits edits, SheetGrid grid, int row)
    {
        for (var column = grid.LastColumnOf(row); column > 0; column--)
        {
            if (!grid.Cell(row, column).IsEmpty)
            {
                edits.Set(row, column, CellValue.Empty, newStyle: null);
            }
        }
    }

    private static void Add(List<(string, int)> counts, string sheet, int count)
    {
        if (count > 0)
        {
            counts.Add((sheet, count));
        }
    }

    /// <summary>The row that holds the most headings of the sheet's known rows, and these by column; our own columns are none of them.</summary>
    private (int Row, Dictionary<int, string> Headings) Headings(SheetGrid grid, SheetPart sheet)
    {
        var words = known[sheet.Name].SelectMany(r => r.Values.Keys).ToHashSet(StringComparer.Ordinal);
        var own = marks.ColumnsOn(sheet).Values.ToHashSet();
        var best = (Row: 0, Headings: new Dictionary<int, string>());
        foreach (var row in grid.Rows.TakeWhile(r => r <= HeadingRow.Last))
        {
            var found = new Dictionary<int, string>();
            for (var column = grid.LastColumnOf(row); column > 0; column--)
            {
                if (!own.Contains(column) && HeadingRow.TextAt(grid, row, column) is { } text && words.Contains(text))
                {
                    found[column] = text;
                }
            }

            best = found.Count > best.Headings.Count ? (row, found) : best;
        }

        return best;
    }

    private bool IsKnown(SheetGrid grid, int row, SheetPart sheet, Dictionary<int, string> headings)
    {
        var own = marks.ColumnsOn(sheet).Values.ToHashSet();
        var typed = new Dictionary<string, GridCell>(StringComparer.Ordinal);
        for (var column = grid.LastColumnOf(row); column > 0; column--)
        {
            var cell = grid.Cell(row, column);
            if (cell.IsEmpty || own.Contains(column))
            {
                continue;
            }

            // Something of the shop's own stands in this row, or the same heading stands twice.
            if (!headings.TryGetValue(column, out var heading) || !typed.TryAdd(heading, cell))
            {
                return false;
            }
        }

        return typed.Count > 0 && known[sheet.Name].Any(k => k.Values.Count == typed.Count
            && k.Values.All(v => typed.TryGetValue(v.Key, out var cell) && Says(cell, v.Value)));
    }

    private bool Says(GridCell cell, object value) => !cell.HasFormula && value switch
    {
        string text => cell.Kind == CellKind.Text && cell.Text == text,
        int whole => Is(cell, whole),
        double number => Is(cell, number),
        DateOnly day => Is(cell, day.ToDateTime(TimeOnly.MinValue).ToOADate() - (package.Date1904 ? 1462 : 0)),
        _ => false,
    };

    private static bool Is(GridCell cell, double number) =>
        cell.Kind is CellKind.Number or CellKind.Date && Math.Abs(cell.Number - number) <= SameNumber * Math.Max(1, Math.Abs(number));
}
