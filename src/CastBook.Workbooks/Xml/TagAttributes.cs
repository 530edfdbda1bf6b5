using System.Buffers.Text;

namespace CastBook.Workbooks.Xml;

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
        var attributes = new Walk(tag);
        while (attributes.Next())
        {
            if (attributes.Name.SequenceEqual(name))
            {
                value = attributes.Value;
                return true;
            }
        }

        value = default;
        return false;
    }

    /// <summary>The raw value of an attribute whose name has some prefix, as those of other namespaces have.</summary>
    /// <param name="tag">The tag.</param>
    /// <param name="localName">The name behind the prefix.</param>
    /// <param name="value">The raw value.</param>
    public static bool TryGetPrefixed(ReadOnlySpan<byte> tag, ReadOnlySpan<byte> localName, out ReadOnlySpan<byte> value)
    {
        var attributes = new Walk(tag);
        while (attributes.Next())
        {
            var colon = attributes.Name.IndexOf((byte)':');
            if (colon > 0 && attributes.Name[(colon + 1)..].SequenceEqual(localName))
            {
                value = attributes.Value;
                return true;
            }
        }

        value = default;
        return false;
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
        var attributes = new Walk(tag);
        while (attributes.Next())
        {
            if (attributes.Name.SequenceEqual(name))
            {
                (start, length) = (attributes.ValueStart, attributes.Value.Length);
                return true;
            }
        }

        start = length = 0;
        return false;
    }

    /// <summary>Walks a tag's attributes in order.</summary>
    /// <param name="tag">The tag, from &lt; to &gt;.</param>
    internal ref struct Walk(ReadOnlySpan<byte> tag)
    {
        private readonly ReadOnlySpan<byte> tag = tag;
        private int at = tag.IndexOfAny(Blanks);

        /// <summary>The attribute's name as written.</summary>
        public ReadOnlySpan<byte> Name { get; private set; }

        /// <summary>Its raw value.</summary>
        public ReadOnlySpan<byte> Value { get; private set; }

        /// <summary>Where the value begins in the tag.</summary>
        public int ValueStart { get; private set; }

        /// <summary>Moves to the next attribute; false after the last.</summary>
        public bool Next()
        {
            if (at < 0)
            {
                return false;
            }

            var start = at;
            while (start < tag.Length && tag[start] is (byte)' ' or (byte)'\n' or (byte)'\r' or (byte)'\t')
            {
                start++;
            }

            var length = tag[start..].IndexOf((byte)'=');
            var quote = start + length + 1;
            while (length >= 0 && quote < tag.Length && tag[quote] is (byte)' ' or (byte)'\n' or (byte)'\r' or (byte)'\t')
            {
                quote++;
            }

            var close = length < 0 || quote >= tag.Length ? -1 : tag[(quote + 1)..].IndexOf(tag[quote]);
            if (close < 0)
            {
                at = -1;
                return false;
            }

            Name = tag.Slice(start, length).TrimEnd(Blanks);
            ValueStart = quote + 1;
            Value = tag.Slice(ValueStart, close);
            at = ValueStart + close + 1;
            return true;
        }
    }
}
