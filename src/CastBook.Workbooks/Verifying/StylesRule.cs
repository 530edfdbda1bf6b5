using System.Globalization;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <summary>What the cell formats are made of is there, and the lists of the styles are as long as they say.</summary>
internal sealed class StylesRule : PackageRule
{
    private const int FirstOwnNumberFormat = 164;

    private static readonly (string Attribute, string Section)[] Uses =
        [("fontId", "fonts"), ("fillId", "fills"), ("borderId", "borders"), ("xfId", "cellStyleXfs")];

    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book) =>
        book.Package.StylesPart is { } name ? FaultsOf(new XmlPart(book.Package.Read(name))).Distinct() : [];

    // No sentence has a number: what the shop's own styles lack must read the same when we have added to them.
    private static IEnumerable<string> FaultsOf(XmlPart part)
    {
        var sections = part.Children(part.Root).GroupBy(s => s.LocalName).ToDictionary(g => g.Key, g => (Element: g.First(), Children: part.Children(g.First())));
        foreach (var (name, section) in sections)
        {
            if (name is "numFmts" or "fonts" or "fills" or "borders" or "cellStyleXfs" or "cellXfs" or "cellStyles" or "dxfs"
                && part.Attribute(section.Element, "count") is { } count && Number(count) != section.Children.Count)
            {
                yield return $"The {name} of the styles say another count than they have.";
            }
        }

        var formats = sections.TryGetValue("numFmts", out var own) ? own.Children.Select(f => Number(part.Attribute(f, "numFmtId"))).ToHashSet() : [];
        foreach (var format in sections.TryGetValue("cellXfs", out var cells) ? cells.Children : [])
        {
            foreach (var (attribute, section) in Uses)
            {
                if (Number(part.Attribute(format, attribute)) is { } id && id >= (sections.TryGetValue(section, out var list) ? list.Children.Count : 0))
                {
                    yield return $"A cell format has a {attribute} that is not there.";
                }
            }

            if (Number(part.Attribute(format, "numFmtId")) is >= FirstOwnNumberFormat and var number && !formats.Contains(number))
            {
                yield return "A cell format has a numFmtId that is not there.";
            }
        }
    }

    private static int? Number(string? text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
