using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Sheets;

namespace CastBook.Workbooks.Reports;

/// <summary>Where a finding stands.</summary>
/// <param name="Cell">Its first cell; null where it has none.</param>
/// <param name="Text">The place in words, such as <c>Pieces!C14 Otter ring and rows 15, 17–20</c>.</param>
public sealed record FindingPlace(CellRef? Cell, string Text)
{
    internal static FindingPlace Of(Finding finding, BookReading reading) => new(
        finding.Subjects.Select(reading.Cells.FindPlace).FirstOrDefault(c => c is not null), Places.Of(finding, reading).Trim());
}
