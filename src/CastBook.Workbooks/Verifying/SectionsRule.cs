using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <summary>The workbook part and the styles have each section once and in the order of the format.</summary>
internal sealed class SectionsRule : PackageRule
{
    private static readonly string[] OfWorkbook =
    [
        "fileVersion", "fileSharing", "workbookPr", "workbookProtection", "bookViews", "sheets", "functionGroups", "externalReferences", "definedNames",
        "calcPr", "oleSize", "customWorkbookViews", "pivotCaches", "smartTagPr", "smartTagTypes", "webPublishing", "webPublishObjects", "extLst",
    ];

    private static readonly string[] OfStyles =
        ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs", "tableStyles", "colors", "extLst"];

    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book) =>
        OutOfOrder(book, book.Package.WorkbookPart, OfWorkbook)
            .Concat(book.Package.StylesPart is { } styles ? OutOfOrder(book, styles, OfStyles) : []);

    private static IEnumerable<string> OutOfOrder(BookFacts book, string name, string[] order)
    {
        var part = new XmlPart(book.Package.Read(name));
        var last = -1;
        foreach (var section in part.Children(part.Root))
        {
            var rank = Array.IndexOf(order, section.LocalName);
            if (rank >= 0 && rank <= last)
            {
                yield return $"{name}: {section.LocalName} stands in the wrong place or twice.";
            }

            last = Math.Max(last, rank);
        }
    }
}
