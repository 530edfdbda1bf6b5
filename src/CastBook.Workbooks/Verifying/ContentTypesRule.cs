namespace CastBook.Workbooks.Verifying;

/// <summary>Every part has a content type, and a book with macros says that it is one.</summary>
internal sealed class ContentTypesRule : PackageRule
{
    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book) => book.Package.Parts
        .Where(p => !p.EndsWith('/') && p != "[Content_Types].xml" && book.Package.ContentType(p).Length == 0)
        .Select(p => $"{p} has no content type.")
        .Concat(book.Package.Relationships(book.Package.WorkbookPart).Any(r => r.Is("vbaProject"))
            && !book.Package.ContentType(book.Package.WorkbookPart).Contains("macroEnabled", StringComparison.OrdinalIgnoreCase)
            ? ["The book has macros and the type of a book without."]
            : []);
}
