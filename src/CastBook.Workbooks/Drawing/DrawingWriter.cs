using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Drawing;

/// <summary>
/// Writes what is drawn on a sheet of ours. Ours is known again by its name, so that what a person drew beside it stays.
/// </summary>
internal sealed class DrawingWriter(BookPackage package, BookEdits edits)
{
    /// <summary>How the names of our pictures and charts begin.</summary>
    public const string Prefix = "CastBook ";

    private readonly Dialect dialect = edits.Dialect;

    /// <summary>Makes our part of a sheet's drawing be just this; the sheet's content has been written afresh and names no drawing yet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="drawing">What is drawn on it.</param>
    public void Write(SheetPart sheet, SheetDrawing drawing)
    {
        var standing = edits.Relationships(sheet.PartName).FirstOrDefault(r => r.Is("drawing") && package.Has(r.Target));
        if (standing is null && drawing.IsEmpty)
        {
            return;
        }

        var part = new XmlPart(standing is null ? Empty() : package.Read(standing.Target));
        var anchors = part.Children(part.Root);
        var ours = anchors.Where(a => NameOf(part, a)?.StartsWith(Prefix, StringComparison.Ordinal) == true).ToList();
        var charts = standing is null ? [] : ChartsOf(part, ours, standing.Target);
        ours.ForEach(anchor => part.Replace(anchor, ""));
        var name = standing?.Target ?? edits.AddPart("xl/drawings/drawing#.xml", [], "application/vnd.openxmlformats-officedocument.drawing+xml");
        part.Append(part.Root, Anchors(sheet, drawing, name, charts, HighestId(part, anchors.Except(ours))));
        edits.Replace(name, part.ToBytes());
        var id = standing?.Id ?? edits.Relate(sheet.PartName, "drawing", name);
        edits.Sheet(sheet.PartName).Insert("drawing", $"""<~drawing xmlns:r="{dialect.Relationships}" r:id="{id}"/>""");
    }

    private string Anchors(SheetPart sheet, SheetDrawing drawing, string part, Dictionary<string, Relationship> charts, int highestId)
    {
        var xml = new StringBuilder();
        var id = highestId + 1;
        foreach (var picture in drawing.Pictures)
        {
            xml.Append(Anchor(picture.Frame, PictureXml.Write(picture, Prefix + picture.Name, id)));
            id += picture.Shapes.Count + 1;
        }

        foreach (var chart in drawing.Charts)
        {
            var content = ChartXml.Write(chart, sheet.Name, dialect);
            string relation;
            if (charts.Remove(chart.Name, out var known))
            {
                edits.Replace(known.Target, content);
                relation = known.Id;
            }
            else
            {
                var added = edits.AddPart("xl/charts/chart#.xml", content, "application/vnd.openxmlformats-officedocument.drawingml.chart+xml");
                relation = edits.Relate(part, "chart", added);
            }

            xml.Append(Anchor(chart.Frame, ChartFrame(chart, relation, id++)));
        }

        // Charts that are no longer drawn go with what they lead to.
        foreach (var gone in charts.Values)
        {
            edits.Cut(part, gone.Id);
        }

        return xml.ToString();
    }

    private string Anchor(Frame frame, string content) => string.Create(
        CultureInfo.InvariantCulture,
        $"""<xdr:oneCellAnchor xmlns:xdr="{dialect.DrawingOf("spreadsheetDrawing")}" xmlns:a="{dialect.DrawingOf("main")}">"""
        + $"<xdr:from><xdr:col>{frame.Column - 1}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>{frame.Row - 1}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from>"
        + $"""<xdr:ext cx="{PictureXml.Units(frame.WidthMm)}" cy="{PictureXml.Units(frame.HeightMm)}"/>{content}<xdr:clientData/></xdr:oneCellAnchor>""");

    private string ChartFrame(Chart chart, string relation, int id) => string.Create(
        CultureInfo.InvariantCulture,
        $"""<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr>"""
        + $"""<xdr:cNvPr id="{id}" name="{XmlText.EscapeAttribute(Prefix + chart.Name)}" descr="{XmlText.EscapeAttribute(chart.Description)}"/>"""
        + $"""<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>"""
        + $"""<a:graphic><a:graphicData uri="{dialect.DrawingOf("chart")}">"""
        + $"""<c:chart xmlns:c="{dialect.DrawingOf("chart")}" xmlns:r="{dialect.Relationships}" r:id="{relation}"/>"""
        + $"</a:graphicData></a:graphic></xdr:graphicFrame>");

    /// <summary>The charts of ours that stand, by their name without our own before it.</summary>
    private Dictionary<string, Relationship> ChartsOf(XmlPart part, IEnumerable<XmlElement> ours, string drawingPart)
    {
        var relations = package.Relationships(drawingPart);
        var charts = new Dictionary<string, Relationship>(StringComparer.Ordinal);
        foreach (var anchor in ours)
        {
            if (Find(part, anchor, "chart") is { } chart && part.Attribute(chart, "r:id") is { } id
                && relations.FirstOrDefault(r => r.Id == id && package.Has(r.Target)) is { } relation)
            {
                charts.TryAdd(NameOf(part, anchor)![Prefix.Length..], relation);
            }
        }

        return charts;
    }

    private static string? NameOf(XmlPart part, XmlElement anchor) =>
        Find(part, anchor, "cNvPr") is { } names ? XmlText.Unescape(part.Attribute(names, "name") ?? "") : null;

    /// <summary>The highest number of a shape among anchors that stay.</summary>
    private static int HighestId(XmlPart part, IEnumerable<XmlElement> anchors)
    {
        var highest = 1;
        foreach (var anchor in anchors)
        {
            foreach (var names in All(part, anchor).Where(e => e.LocalName == "cNvPr"))
            {
                if (int.TryParse(part.Attribute(names, "id"), NumberStyles.None, CultureInfo.InvariantCulture, out var id))
                {
                    highest = Math.Max(highest, id);
                }
            }
        }

        return highest;
    }

    private static XmlElement? Find(XmlPart part, XmlElement parent, string localName)
    {
        foreach (var element in All(part, parent))
        {
            if (element.LocalName == localName)
            {
                return element;
            }
        }

        return null;
    }

    private static IEnumerable<XmlElement> All(XmlPart part, XmlElement parent)
    {
        foreach (var child in part.Children(parent))
        {
            yield return child;
            foreach (var below in All(part, child))
            {
                yield return below;
            }
        }
    }

    private byte[] Empty() => Encoding.UTF8.GetBytes(
        $"<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\r\n<xdr:wsDr xmlns:xdr=\"{dialect.DrawingOf("spreadsheetDrawing")}\" xmlns:a=\"{dialect.DrawingOf("main")}\"></xdr:wsDr>");
}
