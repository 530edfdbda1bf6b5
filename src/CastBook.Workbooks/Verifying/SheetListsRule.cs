namespace CastBook.Workbooks.Verifying;

/// <summary>Conditional formats, data validations and the lists of a sheet have what they must have.</summary>
internal sealed class SheetListsRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book) => book.Sheets.SelectMany(s =>
        s.Around.BadMarks.Concat(s.Around.BadChoices).Concat(s.Around.BadFormulas).Concat(s.Around.BadCounts).Distinct().Select(f => $"{s.Sheet.Name}: {f}"));
}
