using System.Globalization;
using System.Text;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Xml;

/// <summary>An element of a part: where it begins, where its opening tag ends, where it ends.</summary>
/// <param name="Start">First byte.</param>
/// <param name="TagEnd">One past the opening tag.</param>
/// <param name="End">One past the element.</param>
/// <param name="LocalName">Its name without prefix.</param>
internal readonly record struct XmlElement(int Start, int TagEnd, int End, string LocalName)
{
    /// <summary>Whether the element is written as <c>&lt;c/&gt;</c>.</summary>
    public bool IsEmptyTag => TagEnd == End;
}

/// <summary>
/// A small part (workbook, styles, relationships, a table) with edits spliced into its bytes; all other bytes stay.
/// </summary>
/// <remarks>Elements given to <see cref="Own"/> carry <c>~</c> where the part's own prefix belongs: <c>&lt;~font&gt;</c>.</remarks>
internal sealed class XmlPart
{
    private readonly byte[] bytes;
    private readonly List<(int Start, int End, byte[] New)> edits = [];
    private readonly Dictionary<int, StringBuilder> opened = [];

    /// <param name="content">The part's bytes, in any encoding XML knows.</param>
    public XmlPart(byte[] content)
    {
        bytes = XmlEncoding.ToUtf8(content);
        Root = ReadRoot();
        var name = bytes.AsSpan(Root.Start + 1, Root.TagEnd - Root.Start - 1);
        name = name[..name.IndexOfAny(XmlScanner.NameEnds)];
        Prefix = Encoding.UTF8.GetString(name[..(name.IndexOf((byte)':') + 1)]);
    }

    /// <summary>The root element.</summary>
    public XmlElement Root { get; }

    /// <summary>The prefix of the part's own elements with its colon, or nothing.</summary>
    public string Prefix { get; }

    /// <summary>Whether anything was edited.</summary>
    public bool IsEdited => edits.Count > 0 || opened.Count > 0;

    /// <summary>The children of an element, in order.</summary>
    /// <param name="parent">The element.</param>
    public IReadOnlyList<XmlElement> Children(XmlElement parent)
    {
        var children = new List<XmlElement>();
        if (parent.IsEmptyTag)
        {
            return children;
        }

        var inner = bytes.AsSpan(parent.TagEnd, parent.End - parent.TagEnd).ToArray();
        var scanner = new XmlScanner(inner);
        while (scanner.Next() && scanner.Kind != TagKind.End)
        {
            var start = (int)scanner.Start + parent.TagEnd;
            var tagEnd = (int)scanner.End + parent.TagEnd;
            var name = Encoding.UTF8.GetString(scanner.LocalName);
            scanner.SkipElement();
            children.Add(new XmlElement(start, tagEnd, (int)scanner.End + parent.TagEnd, name));
            scanner.Drop();
        }

        return children;
    }

    /// <summary>The first child of that name; null where there is none.</summary>
    /// <param name="parent">The element.</param>
    /// <param name="localName">The child's name without prefix.</param>
    public XmlElement? Child(XmlElement parent, string localName)
    {
        foreach (var child in Children(parent))
        {
            if (child.LocalName == localName)
            {
                return child;
            }
        }

        return null;
    }

    /// <summary>An attribute's value, entities resolved; null where the element has none of that name.</summary>
    /// <param name="element">The element.</param>
    /// <param name="name">The attribute's name, prefix included.</param>
    public string? Attribute(XmlElement element, string name) =>
        TagAttributes.TryGet(TagOf(element), Encoding.UTF8.GetBytes(name), out var raw)
            ? XmlText.Unescape(Encoding.UTF8.GetString(raw))
            : null;

    /// <summary>The element as it stands in the part.</summary>
    /// <param name="element">The element.</param>
    public string Text(XmlElement element) => Encoding.UTF8.GetString(bytes, element.Start, element.End - element.Start);

    /// <summary>What stands between the tags of the element.</summary>
    /// <param name="element">The element.</param>
    public string InnerText(XmlElement element)
    {
        if (element.IsEmptyTag)
        {
            return "";
        }

        var all = Encoding.UTF8.GetString(bytes, element.TagEnd, element.End - element.TagEnd);
        return all.LastIndexOf("</", StringComparison.Ordinal) is >= 0 and var end ? all[..end] : throw new InvalidDataException(RefusalWords.NotClosed);
    }

    /// <summary>A whole number in an attribute.</summary>
    /// <param name="element">The element.</param>
    /// <param name="name">The attribute's local name.</param>
    /// <param name="otherwise">What counts where the attribute is missing.</param>
    /// <exception cref="InvalidDataException">It is none, or larger than any that workbooks have.</exception>
    public int Whole(XmlElement element, string name, int otherwise)
    {
        const int Most = 1_000_000_000;
        return Attribute(element, name) is not { } text ? otherwise
            : int.TryParse(text, NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var number) && number <= Most ? number
            : throw new InvalidDataException(RefusalWords.NoNumber(name, element.LocalName));
    }

    /// <summary>Our element written with the part's own prefix.</summary>
    /// <param name="xml">The element, <c>~</c> where the prefix belongs.</param>
    public string Own(string xml) => WithPrefix(xml, Prefix);

    /// <summary>An element of ours written with a prefix.</summary>
    /// <param name="xml">The element, <c>~</c> where the prefix belongs.</param>
    /// <param name="prefix">The prefix with its colon, or nothing.</param>
    public static string WithPrefix(string xml, string prefix) =>
        xml.Replace("</~", "</" + prefix, StringComparison.Ordinal).Replace("<~", "<" + prefix, StringComparison.Ordinal);

    /// <summary>Sets an attribute; adds it where the element has none of that name.</summary>
    /// <param name="element">The element.</param>
    /// <param name="name">The attribute's name, prefix included.</param>
    /// <param name="value">The new value.</param>
    public void SetAttribute(XmlElement element, string name, string value)
    {
        var escaped = Encoding.UTF8.GetBytes(XmlText.EscapeAttribute(value));
        if (TagAttributes.TryFind(TagOf(element), Encoding.UTF8.GetBytes(name), out var start, out var length))
        {
            if (!bytes.AsSpan(element.Start + start, length).SequenceEqual(escaped))
            {
                edits.Add((element.Start + start, element.Start + start + length, escaped));
            }

            return;
        }

        var at = element.TagEnd - (element.IsEmptyTag ? 2 : 1);
        edits.Add((at, at, [.. Encoding.UTF8.GetBytes(" " + name + "=\""), .. escaped, (byte)'"']));
    }

    /// <summary>Appends children to an element, whatever way it is written; may be called again.</summary>
    /// <param name="parent">The element.</param>
    /// <param name="xml">The children, prefix in place.</param>
    public void Append(XmlElement parent, string xml)
    {
        if (parent.IsEmptyTag)
        {
            if (!opened.TryGetValue(parent.Start, out var content))
            {
                opened[parent.Start] = content = new StringBuilder();
            }

            content.Append(xml);
            return;
        }

        InsertAt(parent.Start + bytes.AsSpan(parent.Start, parent.End - parent.Start).LastIndexOf("</"u8), xml);
    }

    /// <summary>Inserts before an element.</summary>
    /// <param name="element">The element.</param>
    /// <param name="xml">What to insert.</param>
    public void InsertBefore(XmlElement element, string xml) => InsertAt(element.Start, xml);

    /// <summary>Puts something in an element's place; nothing removes it.</summary>
    /// <param name="element">The element.</param>
    /// <param name="xml">What stands there instead.</param>
    public void Replace(XmlElement element, string xml) =>
        edits.Add((element.Start, element.End, Encoding.UTF8.GetBytes(xml)));

    /// <summary>Puts something between an element's two tags, in place of what stands there.</summary>
    /// <param name="element">The element; not written as one tag.</param>
    /// <param name="xml">What stands there instead.</param>
    public void ReplaceContent(XmlElement element, string xml)
    {
        var end = element.Start + bytes.AsSpan(element.Start, element.End - element.Start).LastIndexOf("</"u8);
        edits.Add((element.TagEnd, end, Encoding.UTF8.GetBytes(xml)));
    }

    /// <summary>The part with all edits in it.</summary>
    public byte[] ToBytes()
    {
        var result = new MemoryStream(bytes.Length + 1024);
        var at = 0;
        foreach (var (start, end, text) in edits.Concat(opened.Select(o => Open(o.Key, o.Value))).OrderBy(e => e.Start).ThenBy(e => e.End))
        {
            result.Write(bytes, at, start - at);
            result.Write(text);
            at = end;
        }

        result.Write(bytes, at, bytes.Length - at);
        return result.ToArray();
    }

    /// <summary>The edit that turns the empty tag at a place into two tags with content between.</summary>
    private (int Start, int End, byte[] New) Open(int start, StringBuilder content)
    {
        var scanner = new XmlScanner(bytes[start..]);
        scanner.Next();
        var end = start + (int)scanner.End;
        return (end - 2, end, Encoding.UTF8.GetBytes($">{content}</{Encoding.UTF8.GetString(scanner.Name)}>"));
    }

    private void InsertAt(int at, string xml) => edits.Add((at, at, Encoding.UTF8.GetBytes(xml)));

    private ReadOnlySpan<byte> TagOf(XmlElement element) => bytes.AsSpan(element.Start, element.TagEnd - element.Start);

    private XmlElement ReadRoot()
    {
        var scanner = new XmlScanner(bytes);
        if (!scanner.Next())
        {
            throw new InvalidDataException(RefusalWords.NoRoot);
        }

        var start = (int)scanner.Start;
        var tagEnd = (int)scanner.End;
        var name = Encoding.UTF8.GetString(scanner.LocalName);
        scanner.SkipElement();
        return new XmlElement(start, tagEnd, (int)scanner.End, name);
    }
}
