namespace CastBook.Workbooks.Verifying;

/// <summary>Every relationship of the workbook and of the sheets we touched leads to a part that is there, and no id is used twice.</summary>
internal sealed class RelationshipsRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        foreach (var part in book.Sheets.Select(s => s.Sheet.PartName).Append(book.Package.WorkbookPart))
        {
            var relations = book.Package.Relationships(part);
            foreach (var relation in relations.Where(r => !r.IsExternal && !book.Package.Has(r.Target)))
            {
                yield return $"{part} leads to {relation.Target}, which is missing.";
            }

            foreach (var twice in relations.GroupBy(r => r.Id).Where(g => g.Count() > 1))
            {
                yield return $"{part} uses the relationship {twice.Key} twice.";
            }
        }
    }
}
