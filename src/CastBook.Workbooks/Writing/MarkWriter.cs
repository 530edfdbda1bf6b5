using System.Globalization;
using System.Text;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Writing;

/// <summary>
/// Marks the cells that findings speak of, and says it in notes. Cells of a list are marked through their Checks cell,
/// so that marks travel when rows are sorted; everything else is marked where it stands.
/// </summary>
internal sealed class MarkWriter(BookReading reading, BookEdits edits, StyleBook styles, IReadOnlyList<ListColumns> lists, Func<SheetPart, SheetGrid> gridOf)
{
    /// <summary>Beyond so many rows that share a finding, the note stands once, on the column's heading.</summary>
    private const int MostNotesOfOneFinding = 3;

    private readonly HashSet<(int FirstId, int Column, string Field, Severity Severity)> rowMarks = [];
    private readonly Dictionary<CellRef, Severity> cellMarks = [];
    private readonly Dictionary<CellRef, List<string>> notes = [];

    /// <summary>Writes marks and notes into the shop's sheets.</summary>
    /// <param name="findings">Everything found.</param>
    /// <param name="added">Sheets with questions that were just added, without marks or notes yet.</param>
    public void Write(IReadOnlyList<Finding> findings, IReadOnlyList<SheetPart> added)
    {
        foreach (var finding in findings)
        {
            foreach (var subject in finding.Subjects)
            {
                Mark(finding, subject);
            }

            Note(finding);
        }

        foreach (var sheet in reading.ShopSheets.Values.Concat(reading.Lists.Select(l => l.Sheet)).DistinctBy(s => s.PartName))
        {
            var grid = reading.Lists.FirstOrDefault(l => l.Sheet.PartName == sheet.PartName)?.Grid ?? gridOf(sheet);
            Write(sheet, grid.HighestPriority, grid.LegacyDrawingId);
        }

        foreach (var sheet in added)
        {
            Write(sheet, highestPriority: 0, legacyDrawingId: null);
        }
    }

    private void Write(SheetPart sheet, int highestPriority, string? legacyDrawingId)
    {
        WriteRules(sheet, highestPriority);
        new NoteWriter(reading.Package, edits).Write(
            sheet,
            legacyDrawingId,
            notes.Where(n => n.Key.Sheet == sheet.Name).ToDictionary(n => (n.Key.Row, n.Key.Column), n => string.Join("\n", n.Value)));
    }

    private void Mark(Finding finding, Subject subject)
    {
        if (subject.Kind == SubjectKind.Piece && ListOf(subject) is { Checks: not null, List: var list })
        {
            rowMarks.Add((list.FirstId, ColumnOf(list, subject.Field), subject.Field, finding.Severity));
            return;
        }

        if (reading.Cells.Find(subject) is { } cell)
        {
            cellMarks[cell] = cellMarks.TryGetValue(cell, out var worse) && worse > finding.Severity ? worse : finding.Severity;
        }
    }

    private void Note(Finding finding)
    {
        if (finding.Severity == Severity.Note)
        {
            return;
        }

        var text = $"{NoteWriter.Prefix}{MarkRules.WordOf(finding.Severity)}: {string.Join(' ', new[] { finding.Seen, finding.Why, finding.Remedy }.Where(t => t.Length > 0))}";
        var subjects = finding.Subjects.Count > MostNotesOfOneFinding && finding.Subjects.All(s => s.Kind == SubjectKind.Piece)
            ? finding.Subjects.Select(s => ListOf(s).List.Column(s.Field)).Distinct()
            : finding.Subjects;
        foreach (var subject in subjects)
        {
            var cell = subject.Kind == SubjectKind.Column ? HeadingOf(subject) : reading.Cells.Find(subject);
            if (cell is not { } at)
            {
                continue;
            }

            if (!notes.TryGetValue(at, out var texts))
            {
                notes[at] = texts = [];
            }

            texts.Add(text);
        }
    }

    private ListColumns ListOf(Subject piece) =>
        lists.Count == 1 ? lists[0] : lists.First(l => l.List.Holds(int.Parse(piece.Key, CultureInfo.InvariantCulture)));

    private CellRef HeadingOf(Subject column)
    {
        var list = reading.Cells.ListOf(column);
        return new CellRef(list.Sheet.Name, list.HeadingRow, ColumnOf(list, column.Key));
    }

    /// <summary>The column of a field; a field without a column is marked on the piece's name.</summary>
    private static int ColumnOf(PieceSheet list, string field) =>
        list.Columns.TryGetValue(field, out var column) || list.OwnColumns.TryGetValue(field, out column)
            || list.Columns.TryGetValue(PieceField.Piece, out column)
            ? column
            : list.FirstColumn;

    private void WriteRules(SheetPart sheet, int priority)
    {
        var xml = new StringBuilder();
        if (lists.FirstOrDefault(l => l.List.Sheet.PartName == sheet.PartName) is { Checks: { } checks, List: var list })
        {
            var rows = new CellRange(list.HeadingRow + 1, list.FirstColumn, Math.Max(list.LastRow, list.HeadingRow + 1), list.LastColumn);
            var marks = rowMarks.Where(m => m.FirstId == list.FirstId);
            foreach (var (_, column, field, severity) in marks.OrderByDescending(m => m.Severity).ThenBy(m => m.Column).ThenBy(m => m.Field, StringComparer.Ordinal))
            {
                xml.Append(MarkRules.WhereChecksSay(
                    rows with { FirstColumn = column, LastColumn = column }, checks, ChecksColumn.Words(severity, field), severity, styles.Mark(severity), ++priority));
            }
        }

        foreach (var group in cellMarks.Where(m => m.Key.Sheet == sheet.Name).GroupBy(m => m.Value).OrderByDescending(g => g.Key))
        {
            var cells = string.Join(' ', group.Select(m => m.Key).OrderBy(c => c.Row).ThenBy(c => c.Column).Select(c => c.Address));
            xml.Append(MarkRules.Always(cells, group.Key, styles.Mark(group.Key), ++priority));
        }

        var sheetEdits = edits.Sheet(sheet.PartName);
        sheetEdits.Change("conditionalFormatting", MarkRules.WithoutOurs);
        if (xml.Length > 0)
        {
            sheetEdits.Insert("conditionalFormatting", xml.ToString());
        }
    }
}
