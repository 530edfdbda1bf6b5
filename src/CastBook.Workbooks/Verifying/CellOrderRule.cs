namespace CastBook.Workbooks.Verifying;

/// <summary>Rows and cells stand in order, none twice.</summary>
internal sealed class CellOrderRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book) => book.Sheets.SelectMany(s => s.Disorder);
}
