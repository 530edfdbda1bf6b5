using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Edits of the workbook part: new sheets at the end, our hidden names, and recalculation where the book has formulas.</summary>
internal sealed partial class WorkbookEdits
{
    private static readonly string[] AfterNames =
        ["calcPr", "oleSize", "customWorkbookViews", "pivotCaches", "smartTagPr", "smartTagTypes", "webPublishing", "fileRecoveryPr", "webPublishObjects", "extLst"];

    private const int LongestSheetName = 31;
    private const string CalculationKey = "calcPr";

    private readonly BookPackage package;
    private readonly BookEdits edits;
    private readonly XmlPart part;
    private readonly List<string> newNames = [];
    private readonly List<string> sheetNames;
    private readonly (string Name, string Declaration) relationshipId;
    private int highestSheetId;
    private string? newCalculation;

    /// <param name="package">The package as read.</param>
    /// <param name="edits">Where the edits go.</param>
    public WorkbookEdits(BookPackage package, BookEdits edits)
    {
        this.package = package;
        this.edits = edits;
        part = new XmlPart(package.Read(package.WorkbookPart));
        Sheets = part.Child(part.Root, "sheets") ?? throw new InvalidDataException(RefusalWords.NoSheets);
        var sheets = part.Children(Sheets);
        sheetNames = [.. sheets.Select(s => part.Attribute(s, "name") ?? "")];
        relationshipId = RelationshipId(sheets);
        highestSheetId = sheets.Select(s => part.Whole(s, "sheetId", 0)).DefaultIfEmpty().Max();
    }

    /// <summary>Whether sheets can be neither added nor moved in an office program.</summary>
    public bool StructureIsProtected =>
        part.Child(part.Root, "workbookProtection") is { } protection && part.Attribute(protection, "lockStructure") is ("1" or "true");

    private XmlElement Sheets { get; }

    private IReadOnlyList<XmlElement> Names => part.Child(part.Root, "definedNames") is { } names ? part.Children(names) : [];

    /// <summary>A name for a sheet that no other sheet has, not longer than office programs allow.</summary>
    /// <param name="wanted">The name we would like.</param>
    public string FreeSheetName(string wanted)
    {
        var name = Shortened(wanted, "");
        for (var number = 1; sheetNames.Contains(name, StringComparer.OrdinalIgnoreCase); number++)
        {
            name = Shortened(wanted, number == 1 ? " (CastBook)" : $" (CastBook {number.ToString(CultureInfo.InvariantCulture)})");
        }

        return name;
    }

    /// <summary>Adds a sheet at the end.</summary>
    /// <param name="name">Its name, free.</param>
    /// <param name="content">The sheet part.</param>
    /// <returns>The sheet.</returns>
    public SheetPart AddSheet(string name, byte[] content)
    {
        var folder = package.WorkbookPart[..(package.WorkbookPart.LastIndexOf('/') + 1)];
        var partName = edits.AddPart($"{folder}worksheets/sheet#.xml", content, "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml");
        var id = edits.Relate(package.WorkbookPart, "worksheet", partName);
        part.Append(Sheets, part.Own(string.Create(
            CultureInfo.InvariantCulture,
            $"""<~sheet name="{XmlText.EscapeAttribute(name)}" sheetId="{++highestSheetId}" {relationshipId.Name}="{id}"{relationshipId.Declaration}/>""")));
        sheetNames.Add(name);
        return new SheetPart(name, partName, sheetNames.Count - 1, IsHidden: false);
    }

    /// <summary>Sets one of our hidden names to a cell; a name that stands and still leads to a cell is left as it is.</summary>
    /// <param name="name">The name.</param>
    /// <param name="cell">The cell it leads to.</param>
    public void Name(string name, CellRef cell)
    {
        var standing = package.DefinedNames.FirstOrDefault(n => n.Name == name && n.LocalSheet is null);
        if (standing is not null && standing.TryCell(out var now) && package.AllSheetNames.Contains(now.Sheet, StringComparer.OrdinalIgnoreCase))
        {
            return;
        }

        var column = CellRef.ColumnName(cell.Column);
        var place = string.Create(CultureInfo.InvariantCulture, $"{CellRef.Quote(cell.Sheet)}!${column}${cell.Row}");
        var xml = part.Own($"""<~definedName name="{name}" hidden="1">{XmlText.EscapeText(place)}</~definedName>""");
        if (standing is null)
        {
            newNames.Add(xml);
        }
        else if (part.Child(part.Root, "definedNames") is { } names)
        {
            part.Replace(part.Children(names).First(n => part.Attribute(n, "name") == name && part.Attribute(n, "localSheetId") is null), xml);
        }
    }

    /// <summary>Sets the rows that are printed at the top of every page of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="row">The row.</param>
    public void PrintTitles(SheetPart sheet, int row)
    {
        const string Titles = "_xlnm.Print_Titles";
        if (package.DefinedNames.Any(n => n.Name == Titles && n.LocalSheet == sheet.Index))
        {
            return;
        }

        var rows = string.Create(CultureInfo.InvariantCulture, $"{CellRef.Quote(sheet.Name)}!${row}:${row}");
        newNames.Add(part.Own(string.Create(
            CultureInfo.InvariantCulture, $"""<~definedName name="{Titles}" localSheetId="{sheet.Index}">{XmlText.EscapeText(rows)}</~definedName>""")));
    }

    /// <summary>Makes the hidden name that mirrors a sheet's filter say its new range; how it writes the sheet's name stays.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="range">The filter's new range.</param>
    public void Filter(SheetPart sheet, CellRange range)
    {
        var index = sheet.Index.ToString(CultureInfo.InvariantCulture);
        foreach (var name in Names.Where(n => part.Attribute(n, "name") == "_xlnm._FilterDatabase" && part.Attribute(n, "localSheetId") == index))
        {
            var old = part.InnerText(name);
            var cells = $"${CellRef.ColumnName(range.FirstColumn)}${range.FirstRow}:${CellRef.ColumnName(range.LastColumn)}${range.LastRow}";
            if (old.LastIndexOf('!') is > 0 and var bang)
            {
                part.ReplaceContent(name, string.Concat(old.AsSpan(0, bang + 1), cells));
            }
        }
    }

    /// <summary>Asks office programs to compute the shop's formulas anew when they open the book.</summary>
    /// <param name="record">Takes down how the book said it computes.</param>
    public void RecalculateOnLoad(FillRecord record)
    {
        if (part.Child(part.Root, "calcPr") is not { } calc)
        {
            var whole = part.Own("""<~calcPr fullCalcOnLoad="1"/>""");
            newCalculation = whole; // put in at the end: names that are new too stand before it
            record.Changed(CalculationKey, [], Encoding.UTF8.GetBytes(whole));
        }
        else if (part.Attribute(calc, "fullCalcOnLoad") is not ("1" or "true"))
        {
            var before = Encoding.UTF8.GetBytes(part.Text(calc));
            var element = new XmlPart(before);
            element.SetAttribute(element.Root, "fullCalcOnLoad", "1");
            part.SetAttribute(calc, "fullCalcOnLoad", "1");
            record.Changed(CalculationKey, before, element.ToBytes());
        }
    }

    /// <summary>Hands the edited part to the package's edits.</summary>
    public void Finish()
    {
        if (newNames.Count > 0)
        {
            if (part.Child(part.Root, "definedNames") is { } names)
            {
                part.Append(names, string.Concat(newNames));
            }
            else
            {
                InsertBefore(AfterNames, part.Own("<~definedNames>") + string.Concat(newNames) + part.Own("</~definedNames>"));
            }
        }

        if (newCalculation is not null)
        {
            InsertBefore(AfterNames.AsSpan(1), newCalculation);
        }

        if (part.IsEdited)
        {
            edits.Replace(package.WorkbookPart, part.ToBytes());
        }
    }

    private void InsertBefore(ReadOnlySpan<string> followers, string xml)
    {
        foreach (var child in part.Children(part.Root))
        {
            if (followers.Contains(child.LocalName))
            {
                part.InsertBefore(child, xml);
                return;
            }
        }

        part.Append(part.Root, xml);
    }

    private static string Shortened(string wanted, string ending)
    {
        var room = LongestSheetName - ending.Length;
        return (wanted.Length <= room ? wanted : wanted[..room].TrimEnd()) + ending;
    }

    /// <summary>How a sheet names its relationship: with the prefix that the part's own sheets use, declared where only those declare it.</summary>
    private (string Name, string Declaration) RelationshipId(IReadOnlyList<XmlElement> sheets)
    {
        var name = "r:id";
        foreach (var sheet in sheets)
        {
            var tag = part.Text(sheet);
            var at = tag.IndexOf(":id=", StringComparison.Ordinal);
            if (at > 0)
            {
                name = tag[(tag.LastIndexOfAny([' ', '\t', '\r', '\n'], at) + 1)..(at + 3)];
                break;
            }
        }

        var declaration = $"xmlns:{name[..name.IndexOf(':', StringComparison.Ordinal)]}";
        return part.Attribute(part.Root, declaration) is null && part.Attribute(Sheets, declaration) is null
            ? (name, $" {declaration}=\"{edits.Dialect.Relationships}\"")
            : (name, "");
    }
}
