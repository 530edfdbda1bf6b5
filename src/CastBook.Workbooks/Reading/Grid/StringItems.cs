using System.Globalization;
using System.Text;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;
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
    /// <param name="struck">Takes those of which every run is struck out, as the objects they are.</param>
    public static List<string> ReadAll(Stream part, string name, HashSet<string> struck)
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
                    texts.Add(ReadItem(scanner, struck));
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
    /// <param name="struck">Takes the text, as the object it is, where every run of it is struck out.</param>
    public static string ReadItem(XmlScanner scanner, HashSet<string> struck)
    {
        var whole = default(TextParts);
        var (runIsStruck, anyStruck, allStruck) = (false, false, true);
        var phonetic = int.MaxValue;
        for (var depth = scanner.DepthAfter(0); depth > 0;)
        {
            var opens = scanner.NextInside();
            if (opens && depth < phonetic && scanner.LocalName.SequenceEqual("t"u8))
            {
                var text = TextOf(scanner.ReadText());
                whole.Add(text);
                (anyStruck, allStruck) = (anyStruck || runIsStruck, allStruck && (runIsStruck || string.IsNullOrWhiteSpace(text)));
                if (whole.Length > Caps.TextLength)
                {
                    throw TooLong();
                }

                continue;
            }

            if (opens && scanner.LocalName.SequenceEqual("r"u8))
            {
                runIsStruck = false;
            }
            else if (opens && scanner.LocalName.SequenceEqual("strike"u8))
            {
                runIsStruck = !TagAttributes.TryGet(scanner.Tag, "val"u8, out var value) || PackageXml.IsTrue(Encoding.UTF8.GetString(value));
            }

            if (opens && depth < phonetic && scanner.LocalName.SequenceEqual("rPh"u8) && scanner.Kind == TagKind.Start)
            {
                phonetic = depth + 1;
            }

            depth = scanner.DepthAfter(depth);
            phonetic = depth < phonetic ? int.MaxValue : phonetic;
        }

        var item = Unescape(whole.Text);
        if (anyStruck && allStruck)
        {
            struck.Add(item);
        }

        return item;
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

    private static BookRefusedException TooLong() => BookRefusedException.For(Catalogue.BookTooMuch, RefusalWords.TextTooLong);
}
