using System.Globalization;
using System.Text;

namespace CastBook.Workbooks.Writing;

/// <summary>
/// The drawing behind a sheet's notes: legacy vector markup, which need not be well-formed and is therefore only
/// searched and spliced as text.
/// </summary>
internal static class NoteDrawing
{
    /// <summary>The extension of such a part.</summary>
    public const string Extension = "vml";

    /// <summary>The content type of such a part.</summary>
    public const string ContentType = "application/vnd.openxmlformats-officedocument.vmlDrawing";

    private const string Opening = "<v:shape";

    private const string Closing = "</v:shape>";

    private const string Style = "position:absolute;margin-left:60pt;margin-top:2pt;width:240pt;height:96pt;z-index:1;visibility:hidden";

    private const string ShapeType =
        """<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">"""
        + """<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>""";

    /// <summary>A drawing without shapes.</summary>
    /// <param name="block">Number of the block its shape ids come from; the sheet's place from 1 keeps sheets apart.</param>
    public static string Empty(int block) => string.Create(
        CultureInfo.InvariantCulture,
        $"""<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">"""
        + $"""<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="{block}"/></o:shapelayout></xml>""");

    /// <summary>The drawing without the notes of some cells and with notes for others.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="remove">Cells whose notes go.</param>
    /// <param name="add">Cells that get a note.</param>
    public static string Change(
        string drawing, IReadOnlyCollection<(int Row, int Column)> remove, IReadOnlyList<(int Row, int Column)> add)
    {
        var kept = Kept(drawing, remove);
        var id = Math.Max(Block(kept) * 1024, HighestId(kept));
        var xml = new StringBuilder();
        if (add.Count > 0 && !kept.Contains("id=\"_x0000_t202\"", StringComparison.Ordinal))
        {
            xml.Append(ShapeType);
        }

        foreach (var (row, column) in add)
        {
            xml.Append(CultureInfo.InvariantCulture, $"""<v:shape id="_x0000_s{++id}" type="#_x0000_t202" style='{Style}' fillcolor="#ffffff" o:insetmode="auto">""");
            xml.Append("""<v:fill color2="#ffffff"/><v:path o:connecttype="none"/><v:textbox><div style='text-align:left'></div></v:textbox>""");
            xml.Append("""<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/>""");
            xml.Append(CultureInfo.InvariantCulture, $"<x:Anchor>{column}, 15, {row - 1}, 2, {column + 4}, 15, {row + 5}, 4</x:Anchor><x:AutoFill>False</x:AutoFill>");
            xml.Append(CultureInfo.InvariantCulture, $"<x:Row>{row - 1}</x:Row><x:Column>{column - 1}</x:Column></x:ClientData></v:shape>");
        }

        // Before the first shape: LibreOffice stops reading at markup such as a button's <br></br>, and would lose what follows.
        var first = NextShape(kept, 0);
        var place = first >= 0 ? first : kept.LastIndexOf("</xml>", StringComparison.Ordinal);
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
    public static bool HasShapes(string drawing) => NextShape(drawing, 0) >= 0;

    private static bool IsNoteOf(ReadOnlySpan<char> shape, (int Row, int Column) cell) =>
        shape.IndexOf("ObjectType=\"Note\"") >= 0
        && shape.IndexOf($"Row>{(cell.Row - 1).ToString(CultureInfo.InvariantCulture)}<") >= 0
        && shape.IndexOf($"Column>{(cell.Column - 1).ToString(CultureInfo.InvariantCulture)}<") >= 0;

    private static string Kept(string drawing, IReadOnlyCollection<(int Row, int Column)> remove)
    {
        if (remove.Count == 0)
        {
            return drawing;
        }

        var kept = new StringBuilder(drawing.Length);
        var taken = 0;
        for (var at = NextShape(drawing, 0); at >= 0; at = NextShape(drawing, at))
        {
            var end = EndOfShape(drawing, at);
            foreach (var cell in remove)
            {
                if (IsNoteOf(drawing.AsSpan(at, end - at), cell))
                {
                    kept.Append(drawing, taken, at - taken);
                    taken = end;
                    break;
                }
            }

            at = end;
        }

        return kept.Append(drawing, taken, drawing.Length - taken).ToString();
    }

    private static int NextShape(string drawing, int from)
    {
        var at = drawing.IndexOf(Opening, from, StringComparison.Ordinal);
        while (at >= 0 && !(at + Opening.Length < drawing.Length && char.IsWhiteSpace(drawing[at + Opening.Length])))
        {
            at = drawing.IndexOf(Opening, at + 1, StringComparison.Ordinal);
        }

        return at;
    }

    // A shape that is a single tag, or that never ends, is no note and must not swallow what follows it.
    private static int EndOfShape(string drawing, int at)
    {
        var tag = drawing.IndexOf('>', at);
        if (tag < 0)
        {
            return drawing.Length;
        }

        var end = drawing[tag - 1] == '/' ? -1 : drawing.IndexOf(Closing, tag, StringComparison.Ordinal);
        return end < 0 ? tag + 1 : end + Closing.Length;
    }

    /// <summary>The number of the block that the drawing's ids come from.</summary>
    private static int Block(string drawing)
    {
        var map = drawing.IndexOf("idmap", StringComparison.Ordinal);
        var tag = map < 0 ? [] : drawing.AsSpan(map);
        tag = tag[..Math.Max(0, tag.IndexOf('>'))];
        const string Data = "data=\"";
        return tag.LastIndexOf(Data) is >= 0 and var at && Number(tag[(at + Data.Length)..]) is { } block and < 1_000_000 ? block : 1;
    }

    private static int HighestId(string drawing)
    {
        const string Id = "_x0000_s";
        var highest = 0;
        for (var at = drawing.IndexOf(Id, StringComparison.Ordinal); at >= 0; at = drawing.IndexOf(Id, at + 1, StringComparison.Ordinal))
        {
            highest = Math.Max(highest, Number(drawing.AsSpan(at + Id.Length)) ?? 0);
        }

        return highest;
    }

    private static int? Number(ReadOnlySpan<char> text)
    {
        var end = text.IndexOfAnyExceptInRange('0', '9');
        return int.TryParse(end < 0 ? text : text[..end], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
