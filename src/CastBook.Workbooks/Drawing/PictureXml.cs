using System.Globalization;
using System.Text;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Drawing;

/// <summary>Writes a picture as grouped vector shapes.</summary>
internal static class PictureXml
{
    private const int UnitsPerMm = 36000;
    private const int UnitsPerPoint = 12700;

    /// <summary>Lengths in the units of the file format.</summary>
    /// <param name="millimetres">Millimetres.</param>
    public static long Units(double millimetres) => (long)Math.Round(millimetres * UnitsPerMm);

    /// <summary>The group.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="name">Its name in the book.</param>
    /// <param name="id">Number of the group on its drawing; those of its shapes follow.</param>
    public static string Write(Picture picture, string name, int id)
    {
        var xml = new StringBuilder(1024);
        var size = $"cx=\"{Number(Units(picture.Frame.WidthMm))}\" cy=\"{Number(Units(picture.Frame.HeightMm))}\"";
        xml.Append("<xdr:grpSp><xdr:nvGrpSpPr>");
        xml.Append(CultureInfo.InvariantCulture, $"""<xdr:cNvPr id="{id}" name="{XmlText.EscapeAttribute(name)}" descr="{XmlText.EscapeAttribute(picture.Description)}"/>""");
        xml.Append("<xdr:cNvGrpSpPr/></xdr:nvGrpSpPr>");
        xml.Append(CultureInfo.InvariantCulture, $"""<xdr:grpSpPr><a:xfrm><a:off x="0" y="0"/><a:ext {size}/><a:chOff x="0" y="0"/><a:chExt {size}/></a:xfrm></xdr:grpSpPr>""");
        foreach (var shape in picture.Shapes)
        {
            Append(xml, shape, ++id);
        }

        return xml.Append("</xdr:grpSp>").ToString();
    }

    private static void Append(StringBuilder xml, Shape shape, int id)
    {
        var turn = shape.Turn == 0 ? "" : $" rot=\"{Number((long)Math.Round(Turned(shape.Turn) * 60000))}\"";
        xml.Append(CultureInfo.InvariantCulture, $"""<xdr:sp macro="" textlink=""><xdr:nvSpPr><xdr:cNvPr id="{id}" name="{WordFor(shape)} {id}"/><xdr:cNvSpPr/></xdr:nvSpPr><xdr:spPr>""");
        xml.Append(CultureInfo.InvariantCulture, $"""<a:xfrm{turn}><a:off x="{Units(shape.X)}" y="{Units(shape.Y)}"/><a:ext cx="{Units(shape.Width)}" cy="{Units(shape.Height)}"/></a:xfrm>""");
        xml.Append(CultureInfo.InvariantCulture, $"""<a:prstGeom prst="{Preset(shape.Kind)}"><a:avLst/></a:prstGeom>""");
        xml.Append(shape.Fill is null ? "<a:noFill/>" : $"""<a:solidFill><a:srgbClr val="{shape.Fill}"/></a:solidFill>""");
        xml.Append(Outline(shape)).Append("</xdr:spPr>");
        if (shape.Text is { } text)
        {
            var size = Number((long)Math.Round(shape.TextPoints * 100));
            xml.Append("""<xdr:txBody><a:bodyPr wrap="none" lIns="0" tIns="0" rIns="0" bIns="0" anchor="ctr"/><a:lstStyle/><a:p><a:pPr algn="ctr"/><a:r>""");
            xml.Append(CultureInfo.InvariantCulture, $"""<a:rPr lang="en-GB" sz="{size}"><a:solidFill><a:srgbClr val="{Shape.Ink}"/></a:solidFill><a:latin typeface="Calibri"/></a:rPr>""");
            xml.Append(CultureInfo.InvariantCulture, $"<a:t>{XmlText.EscapeText(text)}</a:t></a:r></a:p></xdr:txBody>");
        }

        xml.Append("</xdr:sp>");
    }

    private static string Outline(Shape shape)
    {
        if (shape.Outline is null)
        {
            return "<a:ln><a:noFill/></a:ln>";
        }

        var width = Number((long)Math.Round(shape.OutlinePoints * UnitsPerPoint));
        return $"""<a:ln w="{width}"><a:solidFill><a:srgbClr val="{shape.Outline}"/></a:solidFill>{(shape.Dashed ? "<a:prstDash val=\"dash\"/>" : "")}</a:ln>""";
    }

    private static string Preset(ShapeKind kind) => kind switch
    {
        ShapeKind.Box => "rect",
        ShapeKind.RoundBox => "roundRect",
        ShapeKind.Ellipse => "ellipse",
        _ => "line",
    };

    private static string WordFor(Shape shape) => shape.Text is not null ? "words" : Preset(shape.Kind);

    private static double Turned(double degrees) => degrees < 0 ? degrees + 360 : degrees;

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
