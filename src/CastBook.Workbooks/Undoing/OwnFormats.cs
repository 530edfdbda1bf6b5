using System.Globalization;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Undoing;

/// <summary>The cell formats that CastBook gave cells it made: known by the colour of the line at their left, which other programs keep.</summary>
internal sealed class OwnFormats
{
    private readonly HashSet<int> ours = [];

    /// <summary>Those of a book.</summary>
    /// <param name="package">The book.</param>
    public static OwnFormats Of(BookPackage package)
    {
        var formats = new OwnFormats();
        if (package.StylesPart is not { } name)
        {
            return formats;
        }

        var part = new XmlPart(package.Read(name));
        var lines = Children(part, "borders").Select(b => part.Children(b)
            .Any(side => side.LocalName is "left" or "start" && part.Text(side).Contains(CellLook.Accent, StringComparison.OrdinalIgnoreCase))).ToList();
        var cells = Children(part, "cellXfs");
        for (var i = 0; i < cells.Count; i++)
        {
            if (int.TryParse(part.Attribute(cells[i], "borderId"), NumberStyles.None, CultureInfo.InvariantCulture, out var border)
                && border < lines.Count && lines[border])
            {
                formats.ours.Add(i);
            }
        }

        return formats;
    }

    /// <summary>Whether a cell format is one of ours.</summary>
    /// <param name="format">Its index.</param>
    public bool Contains(int format) => ours.Contains(format);

    private static IReadOnlyList<XmlElement> Children(XmlPart part, string section) =>
        part.Child(part.Root, section) is { } element ? part.Children(element) : [];
}
