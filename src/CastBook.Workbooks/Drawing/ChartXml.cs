using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Writing;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Drawing;

/// <summary>Writes the part of a chart.</summary>
internal sealed class ChartXml
{
    private const string Quiet = "C9D2D6";
    private const int AcrossAxis = 1;
    private const int UpAxis = 2;

    private readonly StringBuilder xml = new(4096);
    private readonly string sheetName;

    private ChartXml(string sheetName) => this.sheetName = sheetName;

    /// <summary>The part.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="sheetName">The sheet whose cells it shows.</param>
    /// <param name="dialect">The book's namespaces.</param>
    public static byte[] Write(Chart chart, string sheetName, Dialect dialect)
    {
        var writer = new ChartXml(sheetName);
        writer.Append(chart, dialect);
        return Encoding.UTF8.GetBytes(writer.xml.ToString());
    }

    private void Append(Chart chart, Dialect dialect)
    {
        xml.Append("""<?xml version="1.0" encoding="UTF-8" standalone="yes"?>""").Append("\r\n");
        xml.Append(CultureInfo.InvariantCulture, $"""<c:chartSpace xmlns:c="{dialect.DrawingOf("chart")}" xmlns:a="{dialect.DrawingOf("main")}"><c:roundedCorners val="0"/><c:chart>""");
        Title(chart.Title, 1200);
        xml.Append("""<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/><c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>""");
        for (var i = 0; i < chart.Lines.Count; i++)
        {
            Line(chart.Lines[i], i);
        }

        xml.Append(CultureInfo.InvariantCulture, $"""<c:axId val="{AcrossAxis}"/><c:axId val="{UpAxis}"/></c:scatterChart>""");
        Axis(AcrossAxis, UpAxis, "b", chart.Across);
        Axis(UpAxis, AcrossAxis, "l", chart.Up);
        xml.Append("""</c:plotArea><c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend><c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>""");
        xml.Append("""<c:spPr><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill><a:ln><a:noFill/></a:ln></c:spPr>""");
        xml.Append(CultureInfo.InvariantCulture, $"""<c:txPr><a:bodyPr/><a:lstStyle/><a:p><a:pPr><a:defRPr sz="900">{Fill(Shape.Ink)}</a:defRPr></a:pPr>""");
        xml.Append("""<a:endParaRPr lang="en-GB"/></a:p></c:txPr></c:chartSpace>""");
    }

    private void Title(string words, int size)
    {
        xml.Append("<c:title><c:tx><c:rich><a:bodyPr/><a:lstStyle/><a:p>");
        xml.Append(CultureInfo.InvariantCulture, $"""<a:pPr><a:defRPr sz="{size}" b="0"/></a:pPr>""");
        xml.Append(CultureInfo.InvariantCulture, $"""<a:r><a:rPr lang="en-GB" sz="{size}" b="0"/><a:t>{XmlText.EscapeText(words)}</a:t></a:r>""");
        xml.Append("""</a:p></c:rich></c:tx><c:overlay val="0"/></c:title>""");
    }

    private void Line(ChartLine line, int index)
    {
        xml.Append(CultureInfo.InvariantCulture, $"""<c:ser><c:idx val="{index}"/><c:order val="{index}"/><c:tx><c:v>{XmlText.EscapeText(line.Name)}</c:v></c:tx>""");
        if (line.Thickness > 0)
        {
            var width = (int)Math.Round(line.Thickness * 12700);
            var dash = line.Dashed ? """<a:prstDash val="dash"/>""" : "";
            xml.Append(CultureInfo.InvariantCulture, $"""<c:spPr><a:ln w="{width}">{Fill(line.Color)}{dash}<a:round/></a:ln></c:spPr>""");
            xml.Append("""<c:marker><c:symbol val="none"/></c:marker>""");
        }
        else
        {
            xml.Append("""<c:spPr><a:ln><a:noFill/></a:ln></c:spPr><c:marker><c:symbol val="triangle"/><c:size val="8"/>""");
            xml.Append(CultureInfo.InvariantCulture, $"<c:spPr>{Fill(line.Color)}<a:ln><a:noFill/></a:ln></c:spPr></c:marker>");
            xml.Append("""<c:dLbls><c:dLblPos val="t"/><c:showLegendKey val="0"/><c:showVal val="0"/><c:showCatName val="0"/>""");
            xml.Append("""<c:showSerName val="1"/><c:showPercent val="0"/><c:showBubbleSize val="0"/></c:dLbls>""");
        }

        Values("xVal", line.Across, [.. line.Points.Select(p => p.Across)]);
        Values("yVal", line.Up, [.. line.Points.Select(p => p.Up)]);
        xml.Append("""<c:smooth val="0"/></c:ser>""");
    }

    private static string Fill(string color) => $"""<a:solidFill><a:srgbClr val="{color}"/></a:solidFill>""";

    private void Values(string element, CellRange range, IReadOnlyList<double> values)
    {
        var reference = $"{CellRef.Quote(sheetName)}!{Absolute(range)}";
        xml.Append(CultureInfo.InvariantCulture, $"<c:{element}><c:numRef><c:f>{XmlText.EscapeText(reference)}</c:f><c:numCache><c:formatCode>General</c:formatCode>");
        xml.Append(CultureInfo.InvariantCulture, $"""<c:ptCount val="{values.Count}"/>""");
        for (var i = 0; i < values.Count; i++)
        {
            xml.Append(CultureInfo.InvariantCulture, $"""<c:pt idx="{i}"><c:v>{values[i]:R}</c:v></c:pt>""");
        }

        xml.Append(CultureInfo.InvariantCulture, $"</c:numCache></c:numRef></c:{element}>");
    }

    private static string Absolute(CellRange range) => string.Create(
        CultureInfo.InvariantCulture,
        $"${CellRef.ColumnName(range.FirstColumn)}${range.FirstRow}:${CellRef.ColumnName(range.LastColumn)}${range.LastRow}");

    private void Axis(int id, int other, string side, string title)
    {
        xml.Append(CultureInfo.InvariantCulture, $"""<c:valAx><c:axId val="{id}"/><c:scaling><c:orientation val="minMax"/><c:min val="0"/></c:scaling>""");
        xml.Append(CultureInfo.InvariantCulture, $"""<c:delete val="0"/><c:axPos val="{side}"/>""");
        xml.Append(CultureInfo.InvariantCulture, $"""<c:majorGridlines><c:spPr><a:ln w="6350">{Fill(Quiet)}</a:ln></c:spPr></c:majorGridlines>""");
        Title(title, 900);
        xml.Append("""<c:numFmt formatCode="General" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/>""");
        xml.Append(CultureInfo.InvariantCulture, $"""<c:tickLblPos val="nextTo"/><c:crossAx val="{other}"/><c:crosses val="min"/></c:valAx>""");
    }
}
