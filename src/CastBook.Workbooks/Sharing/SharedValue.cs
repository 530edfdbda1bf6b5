using System.Buffers;
using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Sharing;

/// <summary>Writes the values of cells that are shared; texts stand in their cells, so that no list of texts is needed.</summary>
internal static class SharedValue
{
    private static readonly SearchValues<char> Hex = SearchValues.Create("0123456789abcdefABCDEF");

    private static readonly XName Space = XNamespace.Xml + "space";

    /// <summary>Puts a value into a cell.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="value">The value.</param>
    public static void Put(XElement cell, GridCell value)
    {
        if (value.Kind == CellKind.Text)
        {
            cell.SetAttributeValue("t", "inlineStr");
            var text = new XElement(AllowList.Main + "t", Escape(value.Text ?? ""));
            text.SetAttributeValue(Space, text.Value.Length > 0 && (char.IsWhiteSpace(text.Value[0]) || char.IsWhiteSpace(text.Value[^1])) ? "preserve" : null);
            cell.Add(new XElement(AllowList.Main + "is", text));
            return;
        }

        cell.SetAttributeValue("t", value.Kind == CellKind.Boolean ? "b" : null);
        cell.Add(new XElement(AllowList.Main + "v", value.Number.ToString("R", CultureInfo.InvariantCulture)));
    }

    // What XML cannot write stands as _xHHHH_, and so does what only looks like that.
    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1]))
            {
                escaped.Append(text, i++, 2);
            }
            else if (IsMarked(text.AsSpan(i)) || !XmlConvert.IsXmlChar(text[i]))
            {
                escaped.Append(CultureInfo.InvariantCulture, $"_x{(int)text[i]:X4}_");
            }
            else
            {
                escaped.Append(text[i]);
            }
        }

        return escaped.ToString();
    }

    private static bool IsMarked(ReadOnlySpan<char> text) =>
        text.Length > 6 && text[0] == '_' && text[1] == 'x' && text[6] == '_' && !text.Slice(2, 4).ContainsAnyExcept(Hex);
}
