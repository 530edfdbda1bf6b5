namespace CastBook.Workbooks.Verifying;

/// <summary>A sheet with notes has the drawing that shows them.</summary>
internal sealed class NotesRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book) => book.Sheets
        .Where(s => book.Package.Relationships(s.Sheet.PartName).Any(r => r.Is("comments")) && !s.Elements.Contains("legacyDrawing"))
        .Select(s => $"{s.Sheet.Name}: notes without the drawing that shows them.");
}
