namespace CastBook.Workbooks.Verifying;

/// <summary>Merged ranges do not overlap.</summary>
internal sealed class MergeRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        foreach (var sheet in book.Sheets)
        {
            var merges = sheet.Around.Merges.OrderBy(m => m.FirstRow).ToList();
            for (var i = 0; i < merges.Count; i++)
            {
                for (var j = i + 1; j < merges.Count && merges[j].FirstRow <= merges[i].LastRow; j++)
                {
                    if (merges[j].FirstColumn <= merges[i].LastColumn && merges[j].LastColumn >= merges[i].FirstColumn)
                    {
                        yield return $"{sheet.Sheet.Name}: the merged ranges {merges[i]} and {merges[j]} overlap.";
                    }
                }
            }
        }
    }
}
