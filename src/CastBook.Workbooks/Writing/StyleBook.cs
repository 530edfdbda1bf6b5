using System.Globalization;
using System.Text;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>The book's formats, to which CastBook appends its own; what is there is never changed or renumbered.</summary>
internal sealed class StyleBook
{
    /// <summary>Cell formats beyond this many are refused by office programs (65,490 with a margin).</summary>
    private const int MostCellFormats = 65_000;

    /// <summary>What office programs take at most. Beyond it our own sheets are plain.</summary>
    private const int AllCellFormats = 65_490;

    private readonly StyleSections sections;
    private readonly Dictionary<(int, string?, bool?), int> derived = [];
    private readonly Dictionary<CellLook, int> looks = [];

    /// <param name="styles">The styles part.</param>
    public StyleBook(byte[] styles) => sections = new StyleSections(styles);

    /// <summary>A styles part for a book that has none.</summary>
    /// <param name="spreadsheetNamespace">The namespace of the book's dialect.</param>
    public static byte[] Smallest(string spreadsheetNamespace) => Encoding.UTF8.GetBytes(
        $"""
        <?xml version="1.0" encoding="UTF-8" standalone="yes"?>
        <styleSheet xmlns="{spreadsheetNamespace}">
        <fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts>
        <fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>
        <borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>
        <cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>
        <cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>
        <cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>
        </styleSheet>
        """);

    /// <summary>Whether anything was appended.</summary>
    public bool IsEdited => sections.IsEdited;

    /// <summary>A cell format like another one, with our number format, our thin line at its left, and a side to align to.</summary>
    /// <param name="cellFormat">The format to follow; the font, fill and protection of it stay.</param>
    /// <param name="numberFormat">The number format; null keeps the other's.</param>
    /// <param name="alignRight">Right or left; null keeps the other's.</param>
    public int Beside(int cellFormat, string? numberFormat, bool? alignRight)
    {
        if (derived.TryGetValue((cellFormat, numberFormat, alignRight), out var known))
        {
            return known;
        }

        var formats = sections.Of("cellXfs");
        if (formats.Count >= MostCellFormats)
        {
            return cellFormat;
        }

        var format = new XmlPart(Encoding.UTF8.GetBytes(formats[Math.Min(cellFormat, formats.Count - 1)]));
        var border = format.Whole(format.Root, "borderId", 0);
        format.SetAttribute(format.Root, "borderId", Number(sections.Add("borders", WithLeftLine(border))));
        format.SetAttribute(format.Root, "applyBorder", "1");
        if (numberFormat is not null)
        {
            format.SetAttribute(format.Root, "numFmtId", Number(NumberFormat(numberFormat)));
            format.SetAttribute(format.Root, "applyNumberFormat", "1");
        }

        if (alignRight is { } right)
        {
            Align(format, right ? "right" : "left");
        }

        var added = sections.Add("cellXfs", Encoding.UTF8.GetString(format.ToBytes()));
        return derived[(cellFormat, numberFormat, alignRight)] = added;
    }

    /// <summary>A cell format like another one, with another number format of ours; the same where its number format is the shop's.</summary>
    /// <param name="cellFormat">The format to follow.</param>
    /// <param name="from">The number format it has where it is ours.</param>
    /// <param name="to">The number format it gets.</param>
    public int Renumbered(int cellFormat, string from, string to)
    {
        var formats = sections.Of("cellXfs");
        if (formats.Count >= MostCellFormats || cellFormat >= formats.Count)
        {
            return cellFormat;
        }

        var format = new XmlPart(Encoding.UTF8.GetBytes(formats[cellFormat]));
        if (format.Whole(format.Root, "numFmtId", 0) != NumberFormat(from))
        {
            return cellFormat;
        }

        format.SetAttribute(format.Root, "numFmtId", Number(NumberFormat(to)));
        return sections.Add("cellXfs", Encoding.UTF8.GetString(format.ToBytes()));
    }

    /// <summary>The cell format of a look of our own sheets.</summary>
    /// <param name="look">The look.</param>
    public int Format(CellLook look)
    {
        if (looks.TryGetValue(look, out var known))
        {
            return known;
        }

        if (sections.Of("cellXfs").Count >= AllCellFormats)
        {
            return looks[look] = 0;
        }

        var font = sections.Add("fonts", sections.Xml(look.FontXml));
        var fill = look.Fill is { } color
            ? sections.Add("fills", sections.Xml($"""<~fill><~patternFill patternType="solid"><~fgColor rgb="{color}"/><~bgColor indexed="64"/></~patternFill></~fill>"""))
            : 0;
        var border = sections.Add("borders", sections.Xml(look.BorderXml));
        var number = look.NumberFormat is { } code ? NumberFormat(code) : 0;
        var indent = look.Indent > 0 ? $" indent=\"{look.Indent}\"" : "";
        var wrap = look.Wrap ? " wrapText=\"1\"" : "";
        var format = sections.Add("cellXfs", sections.Xml(
            $"""<~xf numFmtId="{number}" fontId="{font}" fillId="{fill}" borderId="{border}" xfId="0" """
            + """applyNumberFormat="1" applyFont="1" applyFill="1" applyBorder="1" applyAlignment="1">"""
            + $"""<~alignment horizontal="{look.Horizontal}" vertical="{look.Vertical}"{indent}{wrap}/></~xf>"""));
        return looks[look] = format;
    }

    /// <summary>The differential format of a mark: fill, border and bold by severity, so that it shows in grey as well.</summary>
    /// <param name="severity">The severity.</param>
    public int Mark(Severity severity) => sections.Add("dxfs", sections.Xml(severity switch
    {
        Severity.Stop => $"<~dxf><~font><~b/></~font>{Ground("FFF6D0C4")}{Frame("thin", "FFB3401F")}</~dxf>",
        Severity.Check => $"<~dxf>{Ground("FFFBE8B5")}{Frame("thin", "FF9A6B00")}</~dxf>",
        _ => $"<~dxf>{Frame("dotted", "FF4B7A99")}</~dxf>",
    }));

    /// <summary>The part with everything appended.</summary>
    public byte[] ToBytes() => sections.ToBytes();

    private static string Ground(string color) =>
        $"""<~fill><~patternFill patternType="solid"><~fgColor rgb="{color}"/><~bgColor rgb="{color}"/></~patternFill></~fill>""";

    private static string Frame(string style, string color)
    {
        string Side(string name) => $"""<~{name} style="{style}"><~color rgb="{color}"/></~{name}>""";
        return $"<~border>{Side("left")}{Side("right")}{Side("top")}{Side("bottom")}</~border>";
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Aligns to a side, a little off the line that stands there.</summary>
    private static void Align(XmlPart format, string side)
    {
        if (format.Child(format.Root, "alignment") is { } alignment)
        {
            format.SetAttribute(alignment, "horizontal", side);
            format.SetAttribute(alignment, "indent", "1");
        }
        else
        {
            var xml = format.Own($"""<~alignment horizontal="{side}" indent="1"/>""");
            if (format.Child(format.Root, "protection") is { } protection)
            {
                format.InsertBefore(protection, xml);
            }
            else
            {
                format.Append(format.Root, xml);
            }
        }

        format.SetAttribute(format.Root, "applyAlignment", "1");
    }

    private string WithLeftLine(int border)
    {
        var borders = sections.Of("borders");
        var source = border < borders.Count ? borders[border] : sections.Xml("<~border/>");
        var edited = new XmlPart(Encoding.UTF8.GetBytes(source));
        var children = edited.Children(edited.Root);
        var name = children.Any(c => c.LocalName == "start") ? "start" : "left";
        var line = edited.Own($"""<~{name} style="thin"><~color rgb="{CellLook.Accent}"/></~{name}>""");
        if (edited.Child(edited.Root, name) is { } old)
        {
            edited.Replace(old, line);
        }
        else if (children.Count > 0)
        {
            edited.InsertBefore(children[0], line);
        }
        else
        {
            edited.Append(edited.Root, line);
        }

        return Encoding.UTF8.GetString(edited.ToBytes());
    }

    private int NumberFormat(string code)
    {
        if (code == "General")
        {
            return 0;
        }

        var formats = sections.Of("numFmts");
        var highest = 163;
        foreach (var child in formats)
        {
            var format = new XmlPart(Encoding.UTF8.GetBytes(child));
            var id = format.Whole(format.Root, "numFmtId", 0);
            if (format.Attribute(format.Root, "formatCode") == code)
            {
                return id;
            }

            highest = Math.Max(highest, id);
        }

        sections.Add("numFmts", sections.Xml($"""<~numFmt numFmtId="{Number(highest + 1)}" formatCode="{XmlText.EscapeAttribute(code)}"/>"""));
        return highest + 1;
    }
}
