using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sharing;

/// <summary>Writes a sheet anew with what of it is shared.</summary>
/// <param name="package">The book.</param>
/// <param name="sheet">The sheet.</param>
/// <param name="judge">Says which formulas may be shared.</param>
/// <param name="rules">Shares drop-down lists, limits and marks.</param>
/// <param name="tally">Counts what goes.</param>
internal sealed class SheetSharing(BookPackage package, SharedSheet sheet, FormulaJudge judge, RuleSharing rules, ShareTally tally)
{
    private static readonly XNamespace Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private static readonly AllowList Allowed = new(
        """
        sheetPr
        tabColor auto indexed rgb theme tint
        outlinePr summaryBelow summaryRight
        pageSetUpPr fitToPage
        sheetViews
        sheetView showGridLines showRowColHeaders showZeros rightToLeft zoomScale zoomScaleNormal workbookViewId
        pane xSplit ySplit activePane state
        sheetFormatPr baseColWidth defaultColWidth defaultRowHeight customHeight
        cols
        col min max width style bestFit customWidth
        autoFilter ref
        printOptions horizontalCentered verticalCentered headings gridLines
        pageMargins left right top bottom header footer
        pageSetup paperSize scale fitToWidth fitToHeight pageOrder orientation blackAndWhite draft
        row s customFormat ht customHeight
        c s
        """);

    // The order in which the file format wants them; the rows stand between cols and autoFilter.
    private static readonly string[] Before = ["sheetPr", "sheetViews", "sheetFormatPr", "cols"];

    private static readonly string[] After =
        ["autoFilter", "mergeCells", "conditionalFormatting", "dataValidations", "printOptions", "pageMargins", "pageSetup", "headerFooter"];

    private readonly Dictionary<string, bool> sharedFormulas = new(StringComparer.Ordinal);

    /// <summary>Writes the sheet.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="tables">Relationship ids of its tables.</param>
    public void Write(Stream output, IReadOnlyList<string> tables)
    {
        var around = Around();
        using var writer = XmlWriter.Create(output, PartTree.Plain);
        writer.WriteStartElement("worksheet", AllowList.Main.NamespaceName);
        foreach (var element in Before.SelectMany(n => Shared(n, around)))
        {
            element.WriteTo(writer);
        }

        writer.WriteStartElement("sheetData", AllowList.Main.NamespaceName);
        WriteRows(writer);
        writer.WriteEndElement();
        foreach (var element in After.SelectMany(n => Shared(n, around)))
        {
            element.WriteTo(writer);
        }

        if (tables.Count > 0)
        {
            new XElement(AllowList.Main + "tableParts", new XAttribute("count", tables.Count),
                tables.Select(id => new XElement(AllowList.Main + "tablePart", new XAttribute(Relations + "id", id)))).WriteTo(writer);
        }

        writer.WriteEndElement();
    }

    // Everything of the sheet but its rows.
    private List<XElement> Around()
    {
        var around = new List<XElement>();
        Read(reader =>
        {
            if (reader.LocalName == "sheetData")
            {
                reader.Skip();
            }
            else
            {
                around.Add((XElement)XNode.ReadFrom(reader));
            }
        });
        return around;
    }

    private IEnumerable<XElement> Shared(string name, List<XElement> around)
    {
        var found = around.Where(e => e.Name.LocalName == name && AllowList.IsMain(e));
        return name switch
        {
            "mergeCells" => Merges(),
            "conditionalFormatting" => found.Select(rules.OfMark).OfType<XElement>(),
            "dataValidations" => Entries(around),
            "headerFooter" => found.Take(1).Select(f => MarginSharing.Of(f, tally)).OfType<XElement>(),
            "cols" => found.Take(1).Select(Columns).OfType<XElement>(),
            _ => found.Take(1).Select(Allowed.Copy).OfType<XElement>(),
        };
    }

    // Nothing in a template is hidden: whoever hands it on must see what it has.
    private XElement? Columns(XElement source)
    {
        var copy = Allowed.Copy(source);
        foreach (var column in copy?.Elements().Where(c => c.Attribute("width")?.Value == "0") ?? [])
        {
            column.Attributes().Where(a => a.Name.LocalName is "width" or "customWidth").Remove();
        }

        tally.Add(LeftBehindWords.HiddenColumns, source.Elements().Count(c => AllowList.Plain(c, "hidden") is "1" or "true"));
        return copy;
    }

    private IEnumerable<XElement> Merges()
    {
        var merges = sheet.Grid.Merges.Where(m => m.LastRow <= sheet.LastMergedRow)
            .Select(m => new XElement(AllowList.Main + "mergeCell", new XAttribute("ref", m.ToString()))).ToList();
        return merges.Count == 0 ? [] : [new XElement(AllowList.Main + "mergeCells", new XAttribute("count", merges.Count), merges)];
    }

    // Later programs put lists that look at other sheets into an extension of the file.
    private IEnumerable<XElement> Entries(List<XElement> around)
    {
        var entries = around.Where(e => e.Name.LocalName is "dataValidations" or "extLst").SelectMany(e => e.Descendants())
            .Where(e => e.Name.LocalName == "dataValidation").Select(rules.OfEntry).OfType<XElement>().ToList();
        return entries.Count == 0 ? [] : [new XElement(AllowList.Main + "dataValidations", new XAttribute("count", entries.Count), entries)];
    }

    private void WriteRows(XmlWriter writer)
    {
        var row = 0;
        Read(reader =>
        {
            if (reader.LocalName != "sheetData" || reader.IsEmptyElement)
            {
                reader.Skip();
                return;
            }

            reader.Read();
            while (reader.NodeType != XmlNodeType.EndElement && !reader.EOF)
            {
                if (reader.NodeType == XmlNodeType.Element)
                {
                    var element = (XElement)XNode.ReadFrom(reader);
                    row = int.TryParse(element.Attribute("r")?.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var said) ? said : row + 1;
                    WriteRow(writer, element, row);
                }
                else
                {
                    reader.Read();
                }
            }
        });
    }

    private void WriteRow(XmlWriter writer, XElement source, int row)
    {
        var shared = Allowed.Copy(new XElement(AllowList.Main + "row", source.Attributes().Where(a => a.Name.Namespace == XNamespace.None)))!;
        shared.SetAttributeValue("r", row);
        tally.Add(LeftBehindWords.HiddenRows, AllowList.Plain(source, "hidden") is "1" or "true" ? 1 : 0);
        var column = 0;
        foreach (var cell in source.Elements().Where(e => e.Name.LocalName == "c"))
        {
            column = CellRef.TryParse(cell.Attribute("r")?.Value, out _, out var said) ? said : column + 1;
            if (Cell(cell, row, column) is { } kept)
            {
                shared.Add(kept);
            }
        }

        if (shared.HasElements || shared.Attributes().Skip(1).Any())
        {
            shared.WriteTo(writer);
        }
    }

    private XElement? Cell(XElement source, int row, int column)
    {
        var cell = new XElement(AllowList.Main + "c", new XAttribute("r", CellRef.AddressOf(row, column)));
        if (AllowList.Plain(source, "s") is { } style)
        {
            cell.SetAttributeValue("s", style);
        }

        var formula = source.Elements().FirstOrDefault(e => e.Name.LocalName == "f");
        var value = sheet.Value(row, column);
        if (value.Kind != CellKind.Empty)
        {
            SharedValue.Put(cell, value);
        }
        else if (formula is not null && sheet.KeepsFormulas && Formula(formula) is { } shared)
        {
            cell.Add(shared);
        }
        else if (cell.Attribute("s") is null)
        {
            return null;
        }

        return cell;
    }

    private XElement? Formula(XElement source)
    {
        var (kind, index) = (source.Attribute("t")?.Value, source.Attribute("si")?.Value ?? "");
        var isFree = kind == "shared" && source.Value.Length == 0 ? sharedFormulas.GetValueOrDefault(index) : kind != "dataTable" && judge.IsFree(source.Value);
        if (kind == "shared")
        {
            sharedFormulas.TryAdd(index, isFree);
        }

        if (!isFree)
        {
            tally.Add(LeftBehindWords.QuotingFormulas);
            return null;
        }

        var copy = new XElement(AllowList.Main + "f", source.Value);
        if (kind is "shared" or "array")
        {
            copy.SetAttributeValue("t", kind);
            copy.SetAttributeValue("ref", AllowList.Plain(source, "ref"));
            copy.SetAttributeValue("si", AllowList.Plain(source, "si"));
        }

        return copy;
    }

    private void Read(Action<XmlReader> child)
    {
        try
        {
            using var reader = PackageXml.Open(package.OpenPart(sheet.Part.PartName));
            reader.MoveToContent();
            reader.Read();
            while (!reader.EOF)
            {
                if (reader.NodeType == XmlNodeType.Element)
                {
                    child(reader);
                }
                else
                {
                    reader.Read();
                }
            }
        }
        catch (XmlException e)
        {
            throw BookRefusedException.Damaged(sheet.Part.PartName, e);
        }
    }
}
