using System.Xml.Linq;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Sharing;

/// <summary>The theme of a book, made anew of its twelve colours and two fonts.</summary>
internal static class ThemeSharing
{
    private static readonly XNamespace Drawing = "http://schemas.openxmlformats.org/drawingml/2006/main";

    private static readonly string[] Colours = ["dk1", "lt1", "dk2", "lt2", "accent1", "accent2", "accent3", "accent4", "accent5", "accent6", "hlink", "folHlink"];

    /// <summary>The theme part to share; null where the book has none that is whole.</summary>
    /// <param name="package">The book.</param>
    /// <param name="removed">The texts that go.</param>
    public static XElement? Of(BookPackage package, RemovedTexts removed)
    {
        if (package.Relationships(package.WorkbookPart).FirstOrDefault(r => r.Is("theme") && !r.IsExternal && package.Has(r.Target)) is not { } relation)
        {
            return null;
        }

        var source = PartTree.Load(package, relation.Target);
        var colours = Colours.Select(c => (Name: c, Value: ColourOf(source, c))).ToList();
        string Font(string which) => source.Descendants().FirstOrDefault(e => e.Name.LocalName == which)?.Elements()
            .FirstOrDefault(e => e.Name.LocalName == "latin")?.Attribute("typeface")?.Value is { } font && StyleSharing.IsFontName(font) && removed.In(font) is null ? font : "Calibri";
        return colours.TrueForAll(c => c.Value is not null) ? Make(colours, Font("majorFont"), Font("minorFont")) : null;
    }

    private static string? ColourOf(XElement theme, string name)
    {
        var colour = theme.Descendants().FirstOrDefault(e => e.Name.LocalName == name)?.Elements().FirstOrDefault();
        var value = (colour?.Attribute("lastClr") ?? colour?.Attribute("val"))?.Value;
        return value is { Length: 6 } && value.All(char.IsAsciiHexDigit) ? value : null;
    }

    private static XElement Make(List<(string Name, string? Value)> colours, string major, string minor)
    {
        XElement Font(string name, string face) => new(Drawing + name, Face("latin", face), Face("ea", ""), Face("cs", ""));
        XElement Face(string name, string face) => new(Drawing + name, new XAttribute("typeface", face));
        XElement Fill() => new(Drawing + "solidFill", new XElement(Drawing + "schemeClr", new XAttribute("val", "phClr")));
        IEnumerable<XElement> Three(Func<XElement> make) => [make(), make(), make()];
        return new XElement(Drawing + "theme", new XAttribute(XNamespace.Xmlns + "a", Drawing), new XAttribute("name", "Theme"),
            new XElement(Drawing + "themeElements",
                new XElement(Drawing + "clrScheme", new XAttribute("name", "Theme"),
                    colours.Select(c => new XElement(Drawing + c.Name, new XElement(Drawing + "srgbClr", new XAttribute("val", c.Value!))))),
                new XElement(Drawing + "fontScheme", new XAttribute("name", "Theme"), Font("majorFont", major), Font("minorFont", minor)),
                new XElement(Drawing + "fmtScheme", new XAttribute("name", "Theme"),
                    new XElement(Drawing + "fillStyleLst", Three(Fill)),
                    new XElement(Drawing + "lnStyleLst", Three(() => new XElement(Drawing + "ln", new XAttribute("w", 6350), Fill()))),
                    new XElement(Drawing + "effectStyleLst", Three(() => new XElement(Drawing + "effectStyle", new XElement(Drawing + "effectLst")))),
                    new XElement(Drawing + "bgFillStyleLst", Three(Fill)))));
    }
}
