using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Text;

/// <summary>A workbook made of a template and a list in text: the rows go below the template's headings, all else is the template's.</summary>
/// <remarks>
/// Columns find each other by what they mean, then by their words. The words of the list's headings are put in the place of the
/// template's, since the list's numbers are in the units of its own headings. What the template has no column for is put at its right.
/// </remarks>
internal sealed class TextTemplate
{
    /// <summary>The template's name; it lies beside the lists that it is for.</summary>
    public const string FileName = "castbook-template.xlsx";

    private readonly BookPackage template;
    private readonly FoundList place;
    private readonly SheetGrid grid;
    private readonly SheetTable? table;
    private readonly IReadOnlyList<string[]> rows;
    private readonly ListHeadings headings;

    private TextTemplate(BookPackage template, BookPackage list, IReadOnlyList<string[]> rows, BookSettings settings)
    {
        (this.template, this.rows) = (template, rows);
        headings = Find(list, settings).Headings;
        place = Find(template, settings);
        grid = SheetReader.Read(template, place.Sheet, SharedStrings.Read(template));
        table = TableReader.At(template, place.Sheet, grid, place.Headings.Row, place.Headings.FirstColumn);
        var occupied = grid.Rows.FirstOrDefault(IsOccupied);
        if (!headings.IsOneRow || !place.Headings.IsOneRow)
        {
            throw Refused(headings.IsOneRow ? RefusalWords.TemplateHeadings : RefusalWords.ListHeadings);
        }

        if (table is { HasTotalsRow: true } or { IsPlain: false })
        {
            throw Refused(table.HasTotalsRow ? RefusalWords.TemplateTotals : RefusalWords.TemplateFilled);
        }

        if (occupied > 0)
        {
            throw Refused(RefusalWords.TemplateOccupied(occupied));
        }
    }

    /// <summary>Makes the workbook.</summary>
    /// <param name="template">The template; must be able to seek. It is only read.</param>
    /// <param name="list">A plain workbook of the list, as <see cref="TextBook"/> makes it.</param>
    /// <param name="rows">The list's rows.</param>
    /// <param name="settings">The shop's own words for headings, and how much a workbook may ask of the machine.</param>
    /// <param name="output">Where to.</param>
    /// <exception cref="BookRefusedException">The template cannot be read or cannot take the list, or there is no list.</exception>
    public static void Write(Stream template, Stream list, IReadOnlyList<string[]> rows, BookSettings settings, Stream output)
    {
        BookGate.Admit(template, FileName);
        using var listBook = BookPackage.Open(list, settings.Caps);
        using var templateBook = BookPackage.Open(template, settings.Caps);
        var edits = new TextTemplate(templateBook, listBook, rows, settings).Edit();
        var check = new OutputCheck(templateBook, edits);
        PackageWriter.Write(templateBook, edits, output, check.Watch);
        check.Run(output);
    }

    private static FoundList Find(BookPackage book, BookSettings settings)
    {
        var marks = OwnMarks.Of(book);
        var candidates = book.Sheets.Except(marks.Sheets.Values).ToList();
        return new ListFinder(book, SharedStrings.Read(book), settings.Columns, marks, []).Find(candidates, wanted: null).Lists[0];
    }

    private static BookRefusedException Refused(string why) => BookRefusedException.For(Catalogue.TemplateCannotTake, FileName, why);

    private bool IsOccupied(int row)
    {
        if (row <= place.Headings.Row)
        {
            return false;
        }

        for (var column = 1; column <= grid.LastColumnOf(row); column++)
        {
            if (!grid.Cell(row, column).IsEmpty)
            {
                return true;
            }
        }

        return false;
    }

    private BookEdits Edit()
    {
        var edits = new BookEdits(template);
        var sheet = edits.Sheet(place.Sheet.PartName);
        var (columns, added) = Columns();
        var (from, to) = (headings.Row, place.Headings.Row);
        for (var row = from; row <= rows.Count; row++)
        {
            var cells = rows[row - 1];
            foreach (var (column, target) in columns.Where(c => c.Key <= cells.Length))
            {
                if (TextBook.ValueOf(cells[column - 1]) is { IsEmpty: false } value)
                {
                    sheet.Set(to + row - from, target, value, StyleOf(row == from ? to : to + 1, target));
                }
            }
        }

        if (table is not null)
        {
            var wide = added.Count == 0 ? template.Read(table.PartName) : TableEdits.Widen(template.Read(table.PartName), table, added);
            var range = table.Range with { LastColumn = table.Range.LastColumn + added.Count, LastRow = Math.Max(table.Range.LastRow, to + rows.Count - from) };
            edits.Replace(table.PartName, TableEdits.Reach(wide, range, Headings(columns)));
        }

        return edits;
    }

    private int? StyleOf(int row, int column) => column <= grid.LastColumnOf(row) ? grid.Cell(row, column).Style : null;

    // The place of each column of the list in the template, and the headings of those that get a new one.
    private (SortedDictionary<int, int> Columns, List<string> Added) Columns()
    {
        var columns = new SortedDictionary<int, int>();
        var free = place.Headings.Columns;
        foreach (var (field, own) in headings.Match.Fields)
        {
            if (place.Headings.Match.Fields.TryGetValue(field, out var same) && free.Remove(same.Column))
            {
                columns[own.Column] = same.Column;
            }
        }

        var (last, added) = (Math.Max(place.Headings.Columns.Max(), table?.Range.LastColumn ?? 0), new List<string>());
        for (var column = 1; column <= rows.Max(r => r.Length); column++)
        {
            if (columns.ContainsKey(column))
            {
                continue;
            }

            var text = column <= rows[headings.Row - 1].Length ? rows[headings.Row - 1][column - 1] : "";
            var same = place.Headings.Texts.FirstOrDefault(t => text.Length > 0 && free.Contains(t.Column) && WordKey.Of(t.Heading.Text) == WordKey.Of(text));
            if (same.Heading is not null && free.Remove(same.Column))
            {
                columns[column] = same.Column;
            }
            else if (rows.Skip(headings.Row - 1).Any(r => column <= r.Length && r[column - 1].Length > 0))
            {
                added.Add(text.Length > 0 ? text : $"Column {column.ToString(CultureInfo.InvariantCulture)}");
                columns[column] = ++last;
            }
        }

        return (columns, added);
    }

    // A table knows its columns by the words in its heading row.
    private Dictionary<int, string> Headings(SortedDictionary<int, int> columns) => columns
        .Where(c => c.Key <= rows[headings.Row - 1].Length && rows[headings.Row - 1][c.Key - 1].Length > 0)
        .ToDictionary(c => c.Value - table!.Range.FirstColumn, c => rows[headings.Row - 1][c.Key - 1]);
}
