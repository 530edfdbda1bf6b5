namespace CastBook.Workbooks.Writing;

/// <summary>The two families of namespaces of the file format: Transitional, which nearly all books use, and Strict.</summary>
/// <param name="Spreadsheet">Namespace of sheets, styles and notes.</param>
/// <param name="Relationships">Namespace of <c>r:id</c>, and what relationship types begin with.</param>
/// <param name="DrawingMarkup">What the namespaces of drawings begin with.</param>
internal sealed record Dialect(string Spreadsheet, string Relationships, string DrawingMarkup)
{
    /// <summary>The dialect of a book.</summary>
    /// <param name="isStrict">Whether the book is Strict.</param>
    public static Dialect Of(bool isStrict) => isStrict
        ? new("http://purl.oclc.org/ooxml/spreadsheetml/main", "http://purl.oclc.org/ooxml/officeDocument/relationships", "http://purl.oclc.org/ooxml/drawingml/")
        : new("http://schemas.openxmlformats.org/spreadsheetml/2006/main", "http://schemas.openxmlformats.org/officeDocument/2006/relationships", "http://schemas.openxmlformats.org/drawingml/2006/");

    /// <summary>The full type of a relationship.</summary>
    /// <param name="shortName">Its last word, such as <c>worksheet</c>.</param>
    public string TypeOf(string shortName) => $"{Relationships}/{shortName}";

    /// <summary>A namespace of drawings.</summary>
    /// <param name="shortName">Its last word: <c>main</c>, <c>chart</c> or <c>spreadsheetDrawing</c>.</param>
    public string DrawingOf(string shortName) => DrawingMarkup + shortName;
}
