using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace CastBook.Workbooks.Writing;

/// <summary>
/// The drawing behind a sheet's notes: legacy vector markup, which need not be well-formed and is therefore only
/// searched and spliced as text.
/// </summary>
internal static partial class NoteDrawing
{
    /// <summary>The extension of such a part.</summary>
    public const string Extension = "vml";

    /// <summary>The content type of such a part.</summary>
    public const string ContentType = "application/vnd.openxmlformats-officedocument.vmlDrawing";

    private const string ShapeType =
        "<v:shapetype id=\"_x0000_t202\" coordsize=\"21600,21600\" o:spt=\"202\" path=\"m,l,21600r21600,l21600,xe\"><v:stroke joinstyle=\"miter\"/><v:path gradientshapeok=\"t\" o:connecttype=\"rect\"/></v:shapetype>";

    /// <summary>A drawing without shapes.</summary>
    /// <param name="block">Number of the block its shape ids come from; the sheet's place from 1 keeps sheets apart.</param>
    public static string Empty(int block) => string.Create(
        CultureInfo.InvariantCulture,
        $"<xml xmlns:v=\"urn:schemas-microsoft-com:vml\" xmlns:o=\"urn:schemas-microsoft-com:office:office\" xmlns:x=\"urn:schemas-microsoft-com:office:excel\"><o:shapelayout v:ext=\"edit\"><o:idmap v:ext=\"edit\" data=\"{block}\"/></o:shapelayout></xml>");

    /// <summary>The drawing without the notes of some cells and with notes for others.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="remove">Cells whose notes go.</param>
    /// <param name="add">Cells that get a note.</param>
    public static string Change(
        string drawing, IReadOnlyCollection<(int Row, int Column)> remove, IReadOnlyList<(int Row, int Column)> add)
    {
        var kept = Shape().Replace(drawing, m => remove.Any(cell => IsNoteOf(m.Value, cell)) ? "" : m.Value);
        var block = IdMap().Match(kept) is { Success: true } map && int.TryParse(map.Groups[1].Value, out var some) && some < 1_000_000 ? some : 1;
        var id = ShapeId().Matches(kept).Select(m => int.TryParse(m.Groups[1].Value, out var n) ? n : 0).Append(block * 1024).Max();
        var xml = new StringBuilder();
        if (add.Count > 0 && !kept.Contains("id=\"_x0000_t202\"", StringComparison.Ordinal))
        {
            xml.Append(ShapeType);
        }

        foreach (var (row, column) in add)
        {
            xml.Append(CultureInfo.InvariantCulture, $"<v:shape id=\"_x0000_s{++id}\" type=\"#_x0000_t202\" style='position:absolute;margin-left:60pt;margin-top:2pt;width:240pt;height:96pt;z-index:1;visibility:hidden' fillcolor=\"#ffffff\" o:insetmode=\"auto\"><v:fill color2=\"#ffffff\"/><v:path o:connecttype=\"none\"/><v:textbox><div style='text-align:left'></div></v:textbox><x:ClientData ObjectType=\"Note\"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>{column}, 15, {row - 1}, 2, {column + 4}, 15, {row + 5}, 4</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>{row - 1}</x:Row><x:Column>{column - 1}</x:Column></x:ClientData></v:shape>");
        }

        // Before the first shape: LibreOffice stops reading at markup such as a button's <br></br>, and would lose what follows.
        var place = Opening().Match(kept) is { Success: true } first
            ? first.Index
            : kept.LastIndexOf("</xml>", StringComparison.Ordinal);
        return place < 0 ? kept : kept.Insert(place, xml.ToString());
    }

    /// <summary>The drawing without the notes of some cells, and without the type of shape they alone used.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="remove">Cells whose notes go.</param>
    public static string Without(string drawing, IReadOnlyCollection<(int Row, int Column)> remove)
    {
        var kept = Change(drawing, remove, []);
        return kept.Contains("\"#_x0000_t202\"", StringComparison.Ordinal) ? kept : kept.Replace(ShapeType, "", StringComparison.Ordinal);
    }

    /// <summary>Whether anything is drawn.</summary>
    /// <param name="drawing">The drawing.</param>
    public static bool HasShapes(string drawing) => Opening().IsMatch(drawing);

    private static bool IsNoteOf(string shape, (int Row, int Column) cell) =>
        shape.Contains("ObjectType=\"Note\"", StringComparison.Ordinal)
        && shape.Contains($"Row>{(cell.Row - 1).ToString(CultureInfo.InvariantCulture)}<", StringComparison.Ordinal)
        && shape.Contains($"Column>{(cell.Column - 1).ToString(CultureInfo.InvariantCulture)}<", StringComparison.Ordinal);

    /// <summary>A shape with content; one that is a single tag is no note, and must not swallow what follows it.</summary>
    [GeneratedRegex(@"<v:shape\s[^>]*(?<!/)>.*?</v:shape>", RegexOptions.Singleline)]
    private static partial Regex Shape();

    [GeneratedRegex(@"<v:shape\s")]
    private static partial Regex Opening();

    [GeneratedRegex("idmap[^>]*data=\"([0-9]+)")]
    private static partial Regex IdMap();

    [GeneratedRegex("_x0000_s([0-9]+)\"")]
    private static partial Regex ShapeId();
}
