namespace CastBook.Workbooks.Verifying;

/// <summary>Every part has a content type.</summary>
internal sealed class ContentTypesRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book) => book.Package.Parts
        .Where(p => !p.EndsWith('/') && p != "[Content_Types].xml" && book.Package.ContentType(p).Length == 0)
        .Select(p => $"{p} has no content type.");
}
