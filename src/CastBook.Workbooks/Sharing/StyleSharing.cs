using System.Globalization;
using System.Xml.Linq;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Sharing;

/// <summary>The formats of a book without names: fonts, fills, borders, cell formats and those of marks.</summary>
internal static class StyleSharing
{
    private static readonly AllowList Allowed = new(
        """
        styleSheet
        numFmts count
        numFmt numFmtId
        fonts count
        font
        b val
        i val
        strike val
        outline val
        shadow val
        condense val
        extend val
        u val
        vertAlign val
        scheme val
        sz val
        family val
        charset val
        name
        color auto indexed rgb theme tint
        fills count
        fill
        patternFill patternType
        fgColor auto indexed rgb theme tint
        bgColor auto indexed rgb theme tint
        gradientFill type degree left right top bottom
        stop position
        borders count
        border diagonalUp diagonalDown outline
        left style
        right style
        start style
        end style
        top style
        bottom style
        diagonal style
        vertical style
        horizontal style
        cellStyleXfs count
        cellXfs count
        xf numFmtId fontId fillId borderId xfId quotePrefix applyNumberFormat applyFont applyFill applyBorder applyAlignment
        alignment horizontal vertical textRotation wrapText indent relativeIndent justifyLastLine shrinkToFit readingOrder
        cellStyles count
        cellStyle xfId builtinId
        dxfs count
        dxf
        colors
        indexedColors
        rgbColor rgb
        """);

    /// <summary>The styles part to share.</summary>
    /// <param name="package">The book.</param>
    /// <param name="removed">The texts that go.</param>
    public static XElement Of(BookPackage package, RemovedTexts removed)
    {
        if (package.StylesPart is not { } part)
        {
            return Plain();
        }

        var source = PartTree.Load(package, part);
        var copy = Allowed.Copy(source) ?? Plain();
        foreach (var (from, to) in Same(source, copy, "name"))
        {
            to.SetAttributeValue("val", from.Attribute("val")?.Value is { } font && IsFontName(font) && removed.In(font) is null ? font : "Calibri");
        }

        foreach (var (from, to) in Same(source, copy, "numFmt"))
        {
            to.SetAttributeValue("formatCode", NumberFormatText.Clean(from.Attribute("formatCode")?.Value ?? ""));
        }

        var number = 0;
        foreach (var style in copy.Descendants(AllowList.Main + "cellStyle"))
        {
            number++;
            var isNormal = style.Attribute("builtinId")?.Value == "0";
            style.SetAttributeValue("name", isNormal ? "Normal" : string.Create(CultureInfo.InvariantCulture, $"Style {number}"));
            style.SetAttributeValue("builtinId", isNormal ? "0" : null);
        }

        return copy;
    }

    /// <summary>Whether a text can be the name of a font: short, and no sentence.</summary>
    /// <param name="name">The text.</param>
    internal static bool IsFontName(string name) => name.Length is > 0 and <= 31 && name.All(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '_' or '+' or '@' or '.');

    // The elements of a name stand in the same order in both, as none of them is left out alone.
    private static IEnumerable<(XElement From, XElement To)> Same(XElement source, XElement copy, string name) =>
        Within(source).Where(e => e.Name.LocalName == name).Zip(copy.Descendants(AllowList.Main + name));

    private static IEnumerable<XElement> Within(XElement element) =>
        element.Elements().Where(e => AllowList.IsMain(e) && Allowed.Names(e.Name.LocalName)).SelectMany(e => Within(e).Prepend(e));

    private static XElement Plain() => PartTree.Parse(
        """
        <styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts>
        <fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>
        <borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>
        <cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>
        <cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs></styleSheet>
        """);
}
