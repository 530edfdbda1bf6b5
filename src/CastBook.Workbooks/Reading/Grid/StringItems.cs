using System.Globalization;
using System.Text;
using System.Xml;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>Reads string items: the texts of their runs one after the other, without phonetic readings.</summary>
internal static class StringItems
{
    /// <summary>All items of a shared strings part.</summary>
    public static List<string> ReadAll(Stream part, string name)
    {
        var texts = new List<string>();
        try
        {
            using var xml = PackageXml.Open(part);
            var buffer = new char[1024];
            while (xml.Read())
            {
                PackageXml.CheckDepth(xml);
                if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "si")
                {
                    texts.Add(ReadItem(xml, buffer));
                }
            }
        }
        catch (Exception e) when (e is XmlException or InvalidDataException)
        {
            throw BookRefusedException.Damaged(name, e);
        }

        return texts;
    }

    /// <summary>Reads the item the reader stands on (<c>si</c> or <c>is</c>) to its end tag.</summary>
    public static string ReadItem(XmlReader xml, char[] buffer)
    {
        if (xml.IsEmptyElement)
        {
            return "";
        }

        var depth = xml.Depth;
        var phonetic = int.MaxValue;
        var whole = default(TextParts);
        while (xml.Read() && xml.Depth > depth)
        {
            PackageXml.CheckDepth(xml);
            if (xml.Depth <= phonetic)
            {
                phonetic = xml.NodeType == XmlNodeType.Element && xml.LocalName == "rPh" ? xml.Depth : int.MaxValue;
            }

            if (phonetic == int.MaxValue && xml.NodeType == XmlNodeType.Element && xml.LocalName == "t" && !xml.IsEmptyElement)
            {
                whole.Add(ReadText(xml, buffer));
            }
        }

        return Unescape(whole.Text);
    }

    /// <summary>Reads the text of the element the reader stands on, to its end tag; a text longer than a cell may hold refuses the book.</summary>
    public static string ReadText(XmlReader xml, char[] buffer) =>
        xml.Read() && xml.NodeType != XmlNodeType.EndElement ? ReadRest(xml, buffer) : "";

    /// <summary>Reads the text from where the reader stands to the end tag.</summary>
    public static string ReadRest(XmlReader xml, char[] buffer)
    {
        var whole = default(TextParts);
        do
        {
            if (xml.NodeType is not (XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace))
            {
                continue;
            }

            int read;
            while ((read = xml.ReadValueChunk(buffer, 0, buffer.Length)) > 0)
            {
                whole.Add(new string(buffer, 0, read));
                if (whole.Length > Caps.TextLength)
                {
                    throw BookRefusedException.For(Catalogue.BookTooMuch, "a text longer than a cell may hold");
                }
            }
        }
        while (xml.Read() && xml.NodeType != XmlNodeType.EndElement);
        return whole.Text;
    }

    /// <summary>Turns <c>_x000D_</c> into the character it stands for.</summary>
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
}
