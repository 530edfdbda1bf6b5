namespace CastBook.Workbooks.Verifying;

/// <summary>Formats, marks and shared strings that cells use are there.</summary>
internal sealed class IndexRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        foreach (var sheet in book.Sheets)
        {
            if (sheet.HighestFormat >= book.CellFormats)
            {
                yield return $"{sheet.Sheet.Name}: a cell uses the format {sheet.HighestFormat}, which is not there.";
            }

            if (sheet.Around.HighestMark >= 0 && sheet.Around.HighestMark >= book.Marks)
            {
                yield return $"{sheet.Sheet.Name}: a conditional format uses the format {sheet.Around.HighestMark}, which is not there.";
            }

            if (sheet.HighestString >= 0 && sheet.HighestString >= book.Strings)
            {
                yield return $"{sheet.Sheet.Name}: a cell uses the shared text {sheet.HighestString}, which is not there.";
            }
        }
    }
}
