using System.Buffers;
using System.Text;

namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>
/// Reads a part into <see cref="RawNode"/>s. It shares no code with the product and folds nothing, where an XML reader
/// would fold line ends, blanks in attributes and entities.
/// </summary>
internal sealed class RawXml
{
    private static readonly SearchValues<char> NameEnds = SearchValues.Create(" \t\r\n/>");

    private readonly string text;
    private int at;

    private RawXml(string text) => this.text = text;

    /// <summary>Reads a part.</summary>
    /// <param name="part">Its bytes.</param>
    /// <returns>A node without name that holds what stands before, in and after the root element.</returns>
    public static RawNode Read(byte[] part)
    {
        var whole = new RawNode("", "");
        new RawXml(TextOf(part)).ReadInto(whole);
        return whole;
    }

    /// <summary>A part's text in the encoding it has; a byte order mark of UTF-8 stays in it.</summary>
    public static string TextOf(byte[] part) => part switch
    {
        [0xFF, 0xFE, ..] or [(byte)'<', 0, ..] => Encoding.Unicode.GetString(part).TrimStart('\uFEFF'),
        [0xFE, 0xFF, ..] or [0, (byte)'<', ..] => Encoding.BigEndianUnicode.GetString(part).TrimStart('\uFEFF'),
        _ when DeclaredEncoding(part) is { } declared => Encoding.GetEncoding(declared).GetString(part),
        _ => new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(part),
    };

    private static string? DeclaredEncoding(byte[] part)
    {
        var head = Encoding.Latin1.GetString(part, 0, Math.Min(part.Length, 100));
        return head.Contains("encoding=\"ISO-8859-1\"", StringComparison.OrdinalIgnoreCase) ? "ISO-8859-1" : null;
    }

    private void ReadInto(RawNode parent)
    {
        while (at < text.Length)
        {
            if (text[at] != '<')
            {
                parent.Children.Add(new RawNode("", TakeTo("<", included: false)));
            }
            else if (Follows("</"))
            {
                _ = TakeTo(">", included: true);
                return;
            }
            else if (Follows("<!--") || Follows("<![CDATA[") || Follows("<?"))
            {
                parent.Children.Add(new RawNode("", TakeTo(Follows("<!--") ? "-->" : Follows("<?") ? "?>" : "]]>", included: true)));
            }
            else
            {
                parent.Children.Add(ReadElement());
            }
        }
    }

    private RawNode ReadElement()
    {
        at++;
        var start = at;
        at = text.AsSpan(at).IndexOfAny(NameEnds) + at;
        var element = new RawNode(text[start..at], "");
        while (true)
        {
            start = at;
            at += text.AsSpan(at).IndexOfAnyExcept(" \t\r\n");
            if (text[at] == '/')
            {
                at += 2;
                return element;
            }

            if (text[at] == '>')
            {
                at++;
                ReadInto(element);
                return element;
            }

            element.Attributes.Add(ReadAttribute(start));
        }
    }

    private RawAttribute ReadAttribute(int start)
    {
        var name = TakeTo("=", included: false).TrimEnd();
        at = text.AsSpan(at).IndexOfAny('"', '\'') + at;
        var open = at;
        at = text.IndexOf(text[open], open + 1) + 1;
        return new RawAttribute(name, text[(open + 1)..(at - 1)], text[start..at]);
    }

    private bool Follows(string start) => string.CompareOrdinal(text, at, start, 0, start.Length) == 0;

    private string TakeTo(string end, bool included)
    {
        var found = text.IndexOf(end, at, StringComparison.Ordinal);
        var to = found < 0 ? text.Length : found + (included ? end.Length : 0);
        var taken = text[at..to];
        at = to;
        return taken;
    }
}
