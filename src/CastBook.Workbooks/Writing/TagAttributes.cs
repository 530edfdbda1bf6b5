using System.Buffers.Text;

namespace CastBook.Workbooks.Writing;

/// <summary>Finds attributes in the bytes of a tag.</summary>
internal static class TagAttributes
{
    private static ReadOnlySpan<byte> Blanks => " \t\r\n"u8;

    /// <summary>The raw value of an attribute, entities not resolved; false where the tag has none of that name.</summary>
    /// <param name="tag">The tag, from &lt; to &gt;.</param>
    /// <param name="name">The attribute's name as written, prefix included.</param>
    /// <param name="value">The raw value.</param>
    public static bool TryGet(ReadOnlySpan<byte> tag, ReadOnlySpan<byte> name, out ReadOnlySpan<byte> value)
    {
        value = default;
        if (!TryFind(tag, name, out var start, out var length))
        {
            return false;
        }

        value = tag.Slice(start, length);
        return true;
    }

    /// <summary>A whole number from an attribute; null where it is absent or no number.</summary>
    /// <param name="tag">The tag.</param>
    /// <param name="name">The attribute's name.</param>
    public static int? Number(ReadOnlySpan<byte> tag, ReadOnlySpan<byte> name) =>
        TryGet(tag, name, out var raw) && Utf8Parser.TryParse(raw, out int number, out var used) && used == raw.Length
            ? number
            : null;

    /// <summary>Where an attribute's raw value stands in the tag.</summary>
    /// <param name="tag">The tag.</param>
    /// <param name="name">The attribute's name.</param>
    /// <param name="start">First byte of the value.</param>
    /// <param name="length">Bytes of the value.</param>
    public static bool TryFind(ReadOnlySpan<byte> tag, ReadOnlySpan<byte> name, out int start, out int length)
    {
        start = length = 0;
        var at = tag.IndexOfAny(Blanks);
        while (at >= 0 && at < tag.Length)
        {
            var skipped = tag[at..].IndexOfAnyExcept(Blanks);
            if (skipped < 0)
            {
                return false;
            }

            at += skipped;
            var equals = tag[at..].IndexOf((byte)'=');
            if (equals < 0)
            {
                return false;
            }

            var found = tag.Slice(at, equals).TrimEnd(Blanks);
            at += equals + 1;
            at += tag[at..].IndexOfAnyExcept(Blanks);
            var quote = tag[at++];
            var close = tag[at..].IndexOf(quote);
            if (found.SequenceEqual(name))
            {
                start = at;
                length = close;
                return true;
            }

            at += close + 1;
        }

        return false;
    }
}
