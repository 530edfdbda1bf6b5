using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>Everything to stop for, check or note, with a link to the cell, why it matters and what to type.</summary>
internal static class ChecksSheet
{
    /// <summary>The hidden column of the record.</summary>
    public const int RecordColumn = 8;

    private const int HeadingRow = 3;

    /// <summary>Makes the sheet.</summary>
    /// <param name="context">What it is made from.</param>
    public static OwnedSheet Make(SheetContext context)
    {
        var sheet = new OwnedSheet(ChecksSheetWords.Sheet) { Landscape = true, HeadingRow = HeadingRow, HiddenColumns = [RecordColumn], Widths = [10, 38, 46, 40, 44, 24] };
        sheet.Set(1, 1, RowCounts.Of(context.Plan, context.Findings), CellLook.Title);
        var headings = ChecksSheetWords.Headings;
        for (var column = 1; column <= headings.Length; column++)
        {
            sheet.Set(HeadingRow, column, headings[column - 1], column == 1 ? CellLook.FirstHeading : CellLook.Heading);
        }

        var row = HeadingRow;
        foreach (var finding in context.Findings)
        {
            WriteFinding(sheet, ++row, finding, context);
        }

        return sheet;
    }

    private static void WriteFinding(OwnedSheet sheet, int row, Finding finding, SheetContext context)
    {
        sheet.Set(row, 1, MarkRules.WordOf(finding.Severity), CellLook.Strong);
        sheet.Mark(row, 1, finding.Severity);
        sheet.Set(row, 2, Places.Of(finding, context.Reading), CellLook.Text);
        if (finding.Subjects.Select(context.Cells.FindPlace).FirstOrDefault(c => c is not null) is { } cell)
        {
            sheet.Link(row, 2, cell);
            sheet.Set(row, 2, Places.Of(finding, context.Reading), CellLook.Link);
        }

        sheet.Set(row, 3, finding.Seen, CellLook.Text);
        sheet.Set(row, 4, finding.Why, CellLook.Text);
        sheet.Set(row, 5, finding.Remedy, CellLook.Text);
        sheet.Set(row, 6, finding.Id, CellLook.Small);
        var lines = Math.Max(
            Math.Max(Lines(finding.Seen, 46), Lines(finding.Why, 40)),
            Math.Max(Lines(finding.Remedy, 44), Lines(Places.Of(finding, context.Reading), 36)));
        sheet.Height(row, 15 * lines);
    }

    private static int Lines(string text, int width) => Math.Max(1, (int)Math.Ceiling(text.Length / (width * 1.0)));
}

/// <summary>The first line of every answer: what became of the rows.</summary>
internal static class RowCounts
{
    /// <summary>Such as <c>34 rows read, 31 planned, 2 stop, 1 left out on purpose</c>.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="findings">Everything found.</param>
    public static string Of(NightPlan plan, IReadOnlyList<Finding> findings)
    {
        int Rows(params PieceStatus[] statuses) => plan.Pieces.Count(p => statuses.Contains(p.Status));
        var words = new List<string>
        {
            Say(plan.Pieces.Count, ChecksSheetWords.RowsRead(plan.Pieces.Count)),
            Say(Rows(PieceStatus.Planned), ChecksSheetWords.Planned),
        };
        void Add(int count, string what)
        {
            if (count > 0)
            {
                words.Add(Say(count, what));
            }
        }

        Add(Rows(PieceStatus.PartlyPlanned), ChecksSheetWords.PlannedInPart);
        Add(Rows(PieceStatus.NotPlanned), ChecksSheetWords.NotPlanned);
        Add(Rows(PieceStatus.LeftOut), ChecksSheetWords.LeftOut);
        Add(Rows(PieceStatus.OtherNight), ChecksSheetWords.OfOtherNights);
        Add(Rows(PieceStatus.Done), ChecksSheetWords.Done);
        return $"{string.Join(", ", words)}; {Severities(findings)}";
    }

    /// <summary>Such as <c>2 stop, 5 check, 9 note</c>.</summary>
    /// <param name="findings">Everything found.</param>
    public static string Severities(IReadOnlyList<Finding> findings) => string.Join(
        ", ",
        new[] { Severity.Stop, Severity.Check, Severity.Note }.Select(s => Say(findings.Count(f => f.Severity == s), MarkRules.WordOf(s))));

    private static string Say(int count, string what) => string.Create(CultureInfo.InvariantCulture, $"{count:#,##0} {what}");
}
