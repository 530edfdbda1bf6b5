namespace CastBook.Workbooks.Verifying;

/// <summary>The column widths of a sheet stand in order, and none is given twice.</summary>
internal sealed class ColumnsRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        foreach (var sheet in book.Sheets)
        {
            var last = 0;
            foreach (var (first, end) in sheet.Around.Columns)
            {
                if (first <= last || end < first)
                {
                    yield return $"{sheet.Sheet.Name}: the widths of the columns {first} to {end} overlap others.";
                }

                last = Math.Max(last, end);
            }
        }
    }
}
