namespace CastBook.Workbooks.Verifying;

/// <summary>Cells hold what their type can hold, and each formula that cells share is spelled out in one of them.</summary>
internal sealed class CellContentsRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book) => book.Sheets.SelectMany(s =>
        s.Unholdable.Concat(s.Shared.WithoutMaster.Select(i => $"{s.Sheet.Name}: no cell spells out the shared formula {i}.")));
}
