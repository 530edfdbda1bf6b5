using System.Globalization;
using System.Xml;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;

namespace CastBook.Workbooks.Reading.Package;

/// <summary>What the workbook part says: sheets, defined names and the date system.</summary>
internal sealed class WorkbookContent
{
    private const string RelationshipsEnd = "/relationships";

    private readonly List<SheetPart> sheets = [];
    private readonly List<string> names = [];
    private readonly List<DefinedName> definedNames = [];

    public IReadOnlyList<SheetPart> Sheets => sheets;

    public IReadOnlyList<string> AllSheetNames => names;

    public IReadOnlyList<DefinedName> DefinedNames => definedNames;

    public bool Date1904 { get; private set; }

    public bool IsStrict { get; private set; }

    /// <summary>Refuses packages that are something else than a workbook this program can read.</summary>
    public static void CheckKind(string contentType)
    {
        if (contentType.Contains("sheet.binary", StringComparison.OrdinalIgnoreCase))
        {
            throw BookRefusedException.For(Catalogue.BookBinary);
        }

        if (contentType.Length > 0 && !contentType.EndsWith("xml", StringComparison.OrdinalIgnoreCase)
            || contentType.Contains("wordprocessingml", StringComparison.OrdinalIgnoreCase)
            || contentType.Contains("presentationml", StringComparison.OrdinalIgnoreCase))
        {
            throw BookRefusedException.For(Catalogue.BookNotWorkbook);
        }
    }

    public static WorkbookContent Read(BookPackage package)
    {
        var content = new WorkbookContent();
        var targets = package.Relationships(package.WorkbookPart)
            .Where(r => !r.IsExternal)
            .GroupBy(r => r.Id, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        PackageXml.EachElement(package.OpenPart(package.WorkbookPart), package.WorkbookPart, element => content.Take(element, targets, package));
        return content;
    }

    private void Take(XmlReader element, Dictionary<string, Relationship> targets, BookPackage package)
    {
        switch (element.LocalName)
        {
            case "workbook" when element.Depth == 0:
                IsStrict = element.NamespaceURI.StartsWith("http://purl.oclc.org/", StringComparison.Ordinal);
                break;
            case "workbookPr" when element.Depth == 1:
                Date1904 = PackageXml.IsTrue(element.GetAttribute("date1904"));
                break;
            case "sheet" when element.Depth == 2:
                TakeSheet(element, targets, package);
                break;
            case "definedName" when element.Depth == 2:
                definedNames.Add(Name(element));
                break;
            default:
                break;
        }
    }

    private void TakeSheet(XmlReader element, Dictionary<string, Relationship> targets, BookPackage package)
    {
        var index = names.Count;
        var name = element.GetAttribute("name") ?? "";
        names.Add(name);
        if (element.Attribute("id", RelationshipsEnd) is { } id && targets.TryGetValue(id, out var target)
            && target.Is("worksheet") && package.Has(target.Target))
        {
            var hidden = element.GetAttribute("state") is "hidden" or "veryHidden";
            sheets.Add(new SheetPart(name, target.Target, index, hidden));
        }
    }

    private static DefinedName Name(XmlReader element)
    {
        var name = element.GetAttribute("name") ?? "";
        var sheet = int.TryParse(element.GetAttribute("localSheetId"), NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            ? index
            : (int?)null;
        var hidden = PackageXml.IsTrue(element.GetAttribute("hidden"));
        var text = "";
        if (!element.IsEmptyElement && element.Read() && element.NodeType is XmlNodeType.Text or XmlNodeType.CDATA)
        {
            text = element.Value.Trim();
        }

        return new DefinedName(name, sheet, hidden, text);
    }
}
