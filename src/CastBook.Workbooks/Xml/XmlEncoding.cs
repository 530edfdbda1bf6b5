using System.Text;
using CastBook.Workbooks.Files;

namespace CastBook.Workbooks.Xml;

/// <summary>Brings parts in other encodings to UTF-8, the one the scanner walks; UTF-8 parts stay byte for byte.</summary>
internal static class XmlEncoding
{
    private const int LongestDeclaration = 256;

    /// <summary>The part in UTF-8.</summary>
    /// <param name="content">The part as stored.</param>
    public static byte[] ToUtf8(byte[] content)
    {
        var encoding = Other(content);
        if (encoding is null)
        {
            return content;
        }

        var text = encoding.GetString(content).TrimStart('\uFEFF');
        return Encoding.UTF8.GetBytes(Redeclared(text));
    }

    /// <summary>The part in UTF-8, read from a stream; a UTF-8 part is handed through unread.</summary>
    /// <param name="content">The part, at its start.</param>
    public static Stream ToUtf8(Stream content)
    {
        var head = new byte[LongestDeclaration];
        var read = content.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        if (Other(head.AsSpan(0, read)) is null)
        {
            return new HeadedStream(head.AsMemory(0, read), content);
        }

        using var whole = new MemoryStream();
        whole.Write(head, 0, read);
        content.CopyTo(whole);
        return new MemoryStream(ToUtf8(whole.ToArray()));
    }

    // Null where the part is UTF-8 already.
    private static Encoding? Other(ReadOnlySpan<byte> start)
    {
        if (!start.StartsWith("<?xml"u8))
        {
            return Wide(start);
        }

        var head = start[..Math.Min(start.Length, LongestDeclaration)];
        var declaration = head[..Math.Max(0, head.IndexOf("?>"u8))];
        return declaration.IndexOf("encoding"u8) is >= 0 and var at ? Single(Encoding.ASCII.GetString(declaration[at..])) : Wide(start);
    }

    private static Encoding? Single(string says)
    {
        bool Names(string name) => says.Contains(name, StringComparison.OrdinalIgnoreCase);
        return Names("ISO-8859-1\"") || Names("ISO-8859-1'") || Names("latin1") ? Encoding.Latin1
            : Names("windows-1252") ? Windows1252()
            : null;
    }

    // In a method of its own, so that the tables of code pages are loaded for such a part only.
    private static Encoding? Windows1252() => CodePagesEncodingProvider.Instance.GetEncoding("windows-1252");

    private static UnicodeEncoding? Wide(ReadOnlySpan<byte> head) => head switch
    {
        [0xFF, 0xFE, ..] or [(byte)'<', 0, ..] => new UnicodeEncoding(bigEndian: false, byteOrderMark: false),
        [0xFE, 0xFF, ..] or [0, (byte)'<', ..] => new UnicodeEncoding(bigEndian: true, byteOrderMark: false),
        _ => null,
    };

    /// <summary>The text with the encoding that its declaration names, where it has one, changed to UTF-8.</summary>
    private static string Redeclared(string text)
    {
        var declared = text.StartsWith("<?xml", StringComparison.Ordinal) ? text.IndexOf("?>", StringComparison.Ordinal) : -1;
        var name = declared < 0 ? -1 : text.IndexOf("encoding", 0, declared, StringComparison.Ordinal);
        var open = name < 0 ? -1 : text.AsSpan(name, declared - name).IndexOfAny('"', '\'') + name;
        var close = open < name || name < 0 ? -1 : text.IndexOf(text[open], open + 1);
        return close < 0 ? text : string.Concat(text.AsSpan(0, open), "\"UTF-8\"", text.AsSpan(close + 1));
    }

    /// <summary>A stream that gives some bytes read already before the rest.</summary>
    private sealed class HeadedStream(ReadOnlyMemory<byte> head, Stream rest) : ForwardStream(rest)
    {
        private ReadOnlyMemory<byte> head = head;

        public override int Read(Span<byte> buffer)
        {
            if (head.Length == 0)
            {
                return Inner.Read(buffer);
            }

            var taken = Math.Min(buffer.Length, head.Length);
            head.Span[..taken].CopyTo(buffer);
            head = head[taken..];
            return taken;
        }
    }
}
