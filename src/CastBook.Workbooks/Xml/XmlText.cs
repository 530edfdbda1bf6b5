using System.Globalization;
using System.Text;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Xml;

/// <summary>Text as XML and as cells write it.</summary>
internal static class XmlText
{
    private const string BlockStart = "<![CDATA[";

    /// <summary>An attribute's value, line breaks and tabs kept as references so that readers do not fold them.</summary>
    /// <param name="text">The value.</param>
    public static string EscapeAttribute(string text) => Escape(text, inAttribute: true);

    /// <summary>Text between tags.</summary>
    /// <param name="text">The text.</param>
    public static string EscapeText(string text) => Escape(text, inAttribute: false);

    /// <summary>A cell's text: as <see cref="EscapeText"/>, with <c>_xHHHH_</c> made literal, as spreadsheets read that as a character.</summary>
    /// <param name="text">The text.</param>
    public static string EscapeCell(string text)
    {
        var literal = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '_' && i + 6 < text.Length && text[i + 1] == 'x' && text[i + 6] == '_'
                && IsHex(text.AsSpan(i + 2, 4)))
            {
                literal.Append("_x005F_");
                continue;
            }

            literal.Append(text[i]);
        }

        return EscapeText(literal.ToString());
    }

    /// <summary>The text an escaped attribute or text block stands for.</summary>
    /// <param name="raw">As written in the part.</param>
    public static string Unescape(string raw)
    {
        if (!raw.Contains('&', StringComparison.Ordinal))
        {
            return raw;
        }

        var text = new StringBuilder(raw.Length);
        for (var i = 0; i < raw.Length; i++)
        {
            var semicolon = raw[i] == '&' ? raw.IndexOf(';', i) : -1;
            if (semicolon < 0)
            {
                text.Append(raw[i]);
                continue;
            }

            text.Append(Entity(raw[(i + 1)..semicolon]));
            i = semicolon;
        }

        return text.ToString();
    }

    /// <summary>The text that stands between two tags: references resolved, text blocks opened, comments left out, line ends as one.</summary>
    /// <param name="raw">As written in the part.</param>
    /// <exception cref="InvalidDataException">A comment or text block does not end.</exception>
    public static string Resolve(string raw)
    {
        var text = new StringBuilder(raw.Length);
        for (var at = 0; at < raw.Length;)
        {
            var open = raw.IndexOf('<', at);
            text.Append(Unescape(LineEnds(raw[at..(open < 0 ? raw.Length : open)])));
            if (open < 0)
            {
                break;
            }

            var isBlock = string.CompareOrdinal(raw, open, BlockStart, 0, BlockStart.Length) == 0;
            var end = isBlock ? "]]>" : raw[open + 1] == '!' ? "-->" : "?>";
            var close = raw.IndexOf(end, open, StringComparison.Ordinal);
            if (close < 0)
            {
                throw new InvalidDataException(RefusalWords.EndsInComment);
            }

            text.Append(isBlock ? LineEnds(raw[(open + BlockStart.Length)..close]) : "");
            at = close + end.Length;
        }

        return text.ToString();
    }

    // A carriage return that is meant stands as a reference.
    private static string LineEnds(string raw) => raw.Contains('\r', StringComparison.Ordinal)
        ? raw.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n')
        : raw;

    private static bool IsHex(ReadOnlySpan<char> text)
    {
        foreach (var c in text)
        {
            if (!char.IsAsciiHexDigit(c))
            {
                return false;
            }
        }

        return true;
    }

    private static string Entity(string name) => name switch
    {
        "amp" => "&",
        "lt" => "<",
        "gt" => ">",
        "quot" => "\"",
        "apos" => "'",
        ['#', 'x', .. var hex] when int.TryParse(hex, NumberStyles.HexNumber, CultureInfo.InvariantCulture, out var code) && Rune.IsValid(code) =>
            char.ConvertFromUtf32(code),
        ['#', .. var number] when int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var code) && Rune.IsValid(code) =>
            char.ConvertFromUtf32(code),
        _ => $"&{name};",
    };

    private static string Escape(string text, bool inAttribute)
    {
        var result = new StringBuilder(text.Length + 8);
        foreach (var rune in text.EnumerateRunes())
        {
            var escaped = rune.Value switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' when inAttribute => "&quot;",
                '\r' => "&#13;",
                '\n' when inAttribute => "&#10;",
                '\t' when inAttribute => "&#9;",
                '\t' or '\n' => null,
                < 0x20 or 0xFFFE or 0xFFFF => "",
                _ => null,
            };
            _ = escaped is null ? result.Append(rune.ToString()) : result.Append(escaped);
        }

        return result.ToString();
    }
}
