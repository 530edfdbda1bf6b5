namespace CastBook.Workbooks.Verifying;

/// <summary>What an element of a sheet leads to is among the sheet's relationships.</summary>
internal sealed class SheetRelationsRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        foreach (var sheet in book.Sheets)
        {
            var known = book.Package.Relationships(sheet.Sheet.PartName).Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
            foreach (var id in sheet.Around.RelationIds.Where(id => id.Length > 0 && !known.Contains(id)))
            {
                yield return $"{sheet.Sheet.Name}: an element leads to the relationship {id}, which is not there.";
            }
        }
    }
}
