using System.Buffers;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Xml;

/// <summary>What kind of tag the scanner stands on.</summary>
internal enum TagKind
{
    /// <summary>An opening tag.</summary>
    Start,

    /// <summary>A closing tag.</summary>
    End,

    /// <summary>An element without content, <c>&lt;c/&gt;</c>.</summary>
    Empty,
}

/// <summary>
/// Walks the tags of a UTF-8 part and hands on, byte for byte, whatever its user does not drop.
/// </summary>
/// <remarks>
/// It validates nothing: the part was read by a real XML reader before. Comments, CDATA and processing instructions
/// are passed over as text. Between two calls of <see cref="Keep"/>, <see cref="KeepBefore"/> or <see cref="Drop"/>
/// the bytes passed are held in the buffer, so a user who walks far must keep or drop now and then.
/// </remarks>
internal sealed partial class XmlScanner
{
    /// <summary>What ends a tag's name.</summary>
    public static readonly SearchValues<byte> NameEnds = SearchValues.Create(" \t\r\n/>"u8);

    private readonly Stream? source;
    private readonly int mostHeld;
    private byte[] buffer;
    private long offset;
    private int mark;
    private int tagStart;
    private int tagEnd;
    private int length;

    /// <param name="whole">The whole part.</param>
    public XmlScanner(byte[] whole)
    {
        buffer = whole;
        length = whole.Length;
    }

    /// <param name="source">The part, read in chunks.</param>
    /// <param name="mostHeld">How many bytes may have to be held at once, before the book is refused.</param>
    public XmlScanner(Stream source, int mostHeld = int.MaxValue)
    {
        this.source = source;
        this.mostHeld = mostHeld;
        buffer = new byte[1 << 16];
    }

    /// <summary>The kind of the tag.</summary>
    public TagKind Kind { get; private set; }

    /// <summary>The tag's bytes, from &lt; to &gt;.</summary>
    public ReadOnlySpan<byte> Tag => buffer.AsSpan(tagStart, tagEnd - tagStart);

    /// <summary>Where the tag begins in the part.</summary>
    public long Start => offset + tagStart;

    /// <summary>Where the tag ends in the part.</summary>
    public long End => offset + tagEnd;

    /// <summary>The tag's name without its prefix.</summary>
    public ReadOnlySpan<byte> LocalName
    {
        get
        {
            var name = Name;
            return name[(name.IndexOf((byte)':') + 1)..];
        }
    }

    /// <summary>The tag's name as written.</summary>
    public ReadOnlySpan<byte> Name
    {
        get
        {
            var name = Tag[(Kind == TagKind.End ? 2 : 1)..];
            return name[..name.IndexOfAny(NameEnds)];
        }
    }

    /// <summary>Moves to the next tag; false at the end of the part.</summary>
    public bool Next()
    {
        var at = tagEnd;
        while (true)
        {
            at = Find((byte)'<', at);
            if (at < 0)
            {
                tagStart = tagEnd = length;
                return false;
            }

            at -= Ensure(at, 2);
            if (at + 1 < length && buffer[at + 1] is not ((byte)'!' or (byte)'?'))
            {
                tagStart = at;
                FindTagEnd();
                return true;
            }

            at -= Ensure(at, 9);
            if (StartsWith(at, "<!--"u8))
            {
                at = FindEnd("-->"u8, at);
            }
            else if (StartsWith(at, "<![CDATA["u8))
            {
                at = FindEnd("]]>"u8, at);
            }
            else if (StartsWith(at, "<?"u8))
            {
                at = FindEnd("?>"u8, at);
            }
            else
            {
                throw new InvalidDataException(RefusalWords.DocumentType);
            }
        }
    }

    /// <summary>The raw value of an attribute of the tag, entities not resolved; false where it has none of that name.</summary>
    /// <param name="name">The name as written, prefix included.</param>
    /// <param name="value">The raw value.</param>
    public bool TryGetAttribute(ReadOnlySpan<byte> name, out ReadOnlySpan<byte> value) =>
        TagAttributes.TryGet(Tag, name, out value);

    /// <summary>The bytes between a place passed before and the tag, as far as they were not handed on or dropped yet.</summary>
    /// <param name="from">The place in the part, an earlier <see cref="End"/>.</param>
    public ReadOnlySpan<byte> TextSince(long from)
    {
        var start = Math.Max(mark, (int)(from - offset));
        return buffer.AsSpan(start, tagStart - start);
    }

    /// <summary>Hands on everything up to the end of the tag.</summary>
    /// <param name="output">Where to.</param>
    public void Keep(Stream output)
    {
        output.Write(buffer, mark, tagEnd - mark);
        mark = tagEnd;
    }

    /// <summary>Hands on everything up to the tag, the tag excluded.</summary>
    /// <param name="output">Where to.</param>
    public void KeepBefore(Stream output)
    {
        output.Write(buffer, mark, tagStart - mark);
        mark = tagStart;
    }

    /// <summary>Forgets everything up to the end of the tag.</summary>
    public void Drop() => mark = tagEnd;

    /// <summary>Forgets everything up to the tag, the tag excluded.</summary>
    public void DropBefore() => mark = tagStart;

    /// <summary>Everything passed since it was last handed on or forgotten, the tag included.</summary>
    public ReadOnlySpan<byte> Passed => buffer.AsSpan(mark, tagEnd - mark);

    /// <summary>Walks to the end of the element whose opening tag the scanner stands on.</summary>
    public void SkipElement()
    {
        var depth = Kind == TagKind.Start ? 1 : 0;
        while (depth > 0 && Next())
        {
            depth += Kind switch { TagKind.Start => 1, TagKind.End => -1, _ => 0 };
        }
    }

    /// <summary>Walks to the end of the element and gives its bytes; nothing of them is handed on.</summary>
    public byte[] TakeElement()
    {
        mark = tagStart;
        SkipElement();
        var element = buffer.AsSpan(mark, tagEnd - mark).ToArray();
        mark = tagEnd;
        return element;
    }
}
