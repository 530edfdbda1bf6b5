using System.Globalization;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>The sections of a styles part (fonts, fills, borders, formats …), to which elements are appended.</summary>
internal sealed class StyleSections
{
    private static readonly string[] Order =
        ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs", "tableStyles", "colors", "extLst"];

    private readonly XmlPart part;
    private readonly Dictionary<string, StyleSection> sections = new(StringComparer.Ordinal);

    /// <param name="styles">The styles part.</param>
    public StyleSections(byte[] styles)
    {
        part = new XmlPart(styles);
        foreach (var child in part.Children(part.Root))
        {
            sections[child.LocalName] = new StyleSection(child.LocalName, child, [.. part.Children(child).Select(part.Text)]);
        }
    }

    /// <summary>Whether anything was appended.</summary>
    public bool IsEdited => sections.Values.Any(s => s.Added.Count > 0);

    /// <summary>The elements of a section, as text.</summary>
    /// <param name="name">The section.</param>
    public IReadOnlyList<string> Of(string name) => Section(name).Children;

    /// <summary>Appends an element, unless the section has the same one.</summary>
    /// <param name="name">The section.</param>
    /// <param name="xml">The element.</param>
    /// <returns>Its place in the section.</returns>
    public int Add(string name, string xml)
    {
        var section = Section(name);
        var known = section.Children.IndexOf(xml);
        if (known >= 0)
        {
            return known;
        }

        section.Children.Add(xml);
        section.Added.Add(xml);
        return section.Children.Count - 1;
    }

    /// <summary>The part with everything appended.</summary>
    public byte[] ToBytes()
    {
        foreach (var section in sections.Values.Where(s => s.Added.Count > 0).OrderBy(s => Array.IndexOf(Order, s.Name)))
        {
            var count = section.Children.Count.ToString(CultureInfo.InvariantCulture);
            if (section.Element is { } element)
            {
                part.Append(element, string.Concat(section.Added));
                part.SetAttribute(element, "count", count);
            }
            else
            {
                var xml = Xml($"""<~{section.Name} count="{count}">""") + string.Concat(section.Added) + Xml($"</~{section.Name}>");
                Place(section.Name, xml);
            }
        }

        return part.ToBytes();
    }

    /// <summary>An element of ours in the prefix of the part.</summary>
    /// <param name="own">The element, <c>~</c> where the prefix belongs.</param>
    public string Xml(string own) => part.Own(own);

    private StyleSection Section(string name)
    {
        if (!sections.TryGetValue(name, out var section))
        {
            sections[name] = section = new StyleSection(name, null, []);
        }

        while (section.Children.Count < Reserved(name).Length)
        {
            // Places that cells without a format of their own mean, and that office programs give a meaning of their own.
            var xml = Xml(Reserved(name)[section.Children.Count]);
            section.Children.Add(xml);
            section.Added.Add(xml);
        }

        return section;
    }

    private static string[] Reserved(string name) => name switch
    {
        "fonts" => ["""<~font><~sz val="11"/><~name val="Calibri"/></~font>"""],
        "fills" => ["""<~fill><~patternFill patternType="none"/></~fill>""", """<~fill><~patternFill patternType="gray125"/></~fill>"""],
        "borders" => ["<~border><~left/><~right/><~top/><~bottom/><~diagonal/></~border>"],
        "cellXfs" => ["""<~xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>"""],
        _ => [],
    };

    private void Place(string name, string xml)
    {
        var rank = Array.IndexOf(Order, name);
        foreach (var child in part.Children(part.Root))
        {
            if (Array.IndexOf(Order, child.LocalName) > rank)
            {
                part.InsertBefore(child, xml);
                return;
            }
        }

        part.Append(part.Root, xml);
    }

    private sealed record StyleSection(string Name, XmlElement? Element, List<string> Children)
    {
        public List<string> Added { get; } = [];
    }
}
