using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Xml;

/// <content>Reading elements and their texts: here a part that does not close what it opens is damaged.</content>
internal sealed partial class XmlScanner
{
    /// <summary>Moves to the next tag, which must be there; false where it closes an element.</summary>
    /// <exception cref="InvalidDataException">The part ends.</exception>
    public bool NextInside() => Next() ? Kind != TagKind.End : throw new InvalidDataException(RefusalWords.EndsInElement);

    /// <summary>How deep in elements the scanner is after its tag, when it was so deep before.</summary>
    /// <param name="depth">The depth before.</param>
    /// <exception cref="BookRefusedException">Elements are nested deeper than any workbook nests them.</exception>
    public int DepthAfter(int depth)
    {
        depth += Kind switch { TagKind.Start => 1, TagKind.End => -1, _ => 0 };
        return depth <= Caps.Depth
            ? depth
            : throw BookRefusedException.For(Catalogue.BookTooMuch, RefusalWords.NestedTooDeep);
    }

    /// <summary>Walks to the end of the element whose opening tag the scanner stands on, and forgets it.</summary>
    public void SkipAndDrop()
    {
        var depth = DepthAfter(0);
        while (depth > 0)
        {
            Drop();
            NextInside();
            depth = DepthAfter(depth);
        }

        Drop();
    }

    /// <summary>Moves over the next cell where it is a plain one, as over a single tag; false, and nothing moved, where it is anything else.</summary>
    /// <param name="cell">The cell.</param>
    public bool NextPlainCell(out PlainCell cell)
    {
        if (!PlainCell.TryRead(buffer.AsSpan(tagEnd, length - tagEnd), out cell))
        {
            return false;
        }

        (tagStart, tagEnd, Kind) = (tagEnd, tagEnd + cell.Length, TagKind.Empty);
        return true;
    }

    /// <summary>What stands between the tag and the next such closing tag; false where that is not in the buffer as a whole, or comments or text blocks are in it.</summary>
    /// <param name="closing">The closing tag as written.</param>
    /// <param name="content">What stands before it; nothing was passed.</param>
    public bool TryPeek(ReadOnlySpan<byte> closing, out ReadOnlySpan<byte> content)
    {
        // The first that begins like it must be it: "</row >" closes a row too.
        var rest = buffer.AsSpan(tagEnd, length - tagEnd);
        var end = rest.IndexOf(closing[..^1]);
        content = rest[..Math.Max(end, 0)];
        return end >= 0 && rest[end..].StartsWith(closing) && content.IndexOf("<!"u8) < 0;
    }

    /// <summary>Moves over what was peeked at, to the closing tag behind it.</summary>
    /// <param name="contentLength">How long it is.</param>
    /// <param name="closingLength">How long the closing tag is.</param>
    public void PassPeeked(int contentLength, int closingLength)
    {
        tagStart = tagEnd + contentLength;
        (tagEnd, Kind) = (tagStart + closingLength, TagKind.End);
    }

    /// <summary>The raw text of the element whose opening tag the scanner stands on; the scanner then stands on its closing tag.</summary>
    public ReadOnlySpan<byte> ReadText()
    {
        if (Kind == TagKind.Empty)
        {
            return [];
        }

        var from = End;
        if (NextInside())
        {
            throw new InvalidDataException(RefusalWords.ElementsInText);
        }

        return TextSince(from);
    }
}
