using System.Globalization;
using System.Text;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>Reads string items: the texts of their runs one after the other, without phonetic readings.</summary>
internal static class StringItems
{
    /// <summary>More bytes than the longest cell can take, every character of it written as a reference, formats of runs included.</summary>
    public const int MostHeld = 1 << 22;

    /// <summary>All items of a shared strings part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="name">Its name, for a refusal.</param>
    public static List<string> ReadAll(Stream part, string name)
    {
        var texts = new List<string>();
        try
        {
            using var utf8 = XmlEncoding.ToUtf8(part);
            var scanner = new XmlScanner(utf8, MostHeld);
            if (!scanner.NextInside() || scanner.Kind == TagKind.Empty)
            {
                return texts;
            }

            while (scanner.NextInside())
            {
                if (scanner.LocalName.SequenceEqual("si"u8))
                {
                    texts.Add(ReadItem(scanner));
                    scanner.Drop();
                }
                else
                {
                    scanner.SkipAndDrop();
                }
            }
        }
        catch (InvalidDataException e)
        {
            throw BookRefusedException.Damaged(name, e);
        }

        return texts;
    }

    /// <summary>Reads the item the scanner stands on (<c>si</c> or <c>is</c>) to its end tag.</summary>
    /// <param name="scanner">The scanner.</param>
    public static string ReadItem(XmlScanner scanner)
    {
        var whole = default(TextParts);
        var phonetic = int.MaxValue;
        for (var depth = scanner.DepthAfter(0); depth > 0;)
        {
            var opens = scanner.NextInside();
            if (opens && depth < phonetic && scanner.LocalName.SequenceEqual("t"u8))
            {
                whole.Add(TextOf(scanner.ReadText()));
                if (whole.Length > Caps.TextLength)
                {
                    throw TooLong();
                }

                continue;
            }

            if (opens && depth < phonetic && scanner.LocalName.SequenceEqual("rPh"u8) && scanner.Kind == TagKind.Start)
            {
                phonetic = depth + 1;
            }

            depth = scanner.DepthAfter(depth);
            phonetic = depth < phonetic ? int.MaxValue : phonetic;
        }

        return Unescape(whole.Text);
    }

    /// <summary>The text that the bytes between two tags stand for; longer than a cell may hold refuses the book.</summary>
    /// <param name="raw">As written in the part.</param>
    public static string TextOf(ReadOnlySpan<byte> raw)
    {
        var text = raw.IndexOfAny("&<\r"u8) < 0 ? Encoding.UTF8.GetString(raw) : XmlText.Resolve(Encoding.UTF8.GetString(raw));
        return text.Length <= Caps.TextLength ? text : throw TooLong();
    }

    /// <summary>Turns <c>_x000D_</c> into the character it stands for.</summary>
    /// <param name="text">As written in the part.</param>
    public static string Unescape(string text)
    {
        var at = text.IndexOf("_x", StringComparison.Ordinal);
        if (at < 0)
        {
            return text;
        }

        var plain = new StringBuilder(text.Length);
        var from = 0;
        for (; at >= 0; at = text.IndexOf("_x", at, StringComparison.Ordinal))
        {
            if (at + 6 < text.Length && text[at + 6] == '_'
                && ushort.TryParse(text.AsSpan(at + 2, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var code))
            {
                plain.Append(text, from, at - from).Append((char)code);
                from = at += 7;
            }
            else
            {
                at += 2;
            }
        }

        return plain.Append(text, from, text.Length - from).ToString();
    }

    private static BookRefusedException TooLong() => BookRefusedException.For(Catalogue.BookTooMuch, "a text longer than a cell may hold");
}
