namespace CastBook.Workbooks.Xml;

/// <summary>A cell as nearly every cell of nearly every book is written, and nothing else: <c>&lt;c r="B7" s="3" t="s"&gt;&lt;v&gt;12&lt;/v&gt;&lt;/c&gt;</c>.</summary>
/// <remarks>Its spans are good until the scanner moves on.</remarks>
internal readonly ref struct PlainCell
{
    private PlainCell(ReadOnlySpan<byte> address, ReadOnlySpan<byte> style, ReadOnlySpan<byte> type, ReadOnlySpan<byte> value, int length)
    {
        Address = address;
        Style = style;
        Type = type;
        Value = value;
        Length = length;
    }

    /// <summary>Its address; nothing where it follows from its place.</summary>
    public ReadOnlySpan<byte> Address { get; }

    /// <summary>Its cell format; nothing for none.</summary>
    public ReadOnlySpan<byte> Style { get; }

    /// <summary>Its type as written; nothing for a number.</summary>
    public ReadOnlySpan<byte> Type { get; }

    /// <summary>Its raw value; nothing for an empty cell.</summary>
    public ReadOnlySpan<byte> Value { get; }

    /// <summary>How many bytes it takes.</summary>
    public int Length { get; }

    /// <summary>Reads the cell at the start of some bytes; false where something else stands there, or not all of it.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="cell">The cell.</param>
    public static bool TryRead(ReadOnlySpan<byte> bytes, out PlainCell cell)
    {
        cell = default;
        if (!bytes.StartsWith("<c"u8) || !TryAttributes(bytes, out var address, out var style, out var type, out var at))
        {
            return false;
        }

        if (bytes[at] == (byte)'/')
        {
            cell = new PlainCell(address, style, type, [], at + 2);
            return at + 1 < bytes.Length && bytes[at + 1] == (byte)'>';
        }

        var content = bytes[(at + 1)..];
        if (content.StartsWith("</c>"u8))
        {
            cell = new PlainCell(address, style, type, [], at + 5);
            return true;
        }

        if (!content.StartsWith("<v>"u8))
        {
            return false;
        }

        var value = content[3..];
        var end = 0;
        while (end < value.Length && value[end] != (byte)'<')
        {
            end++;
        }

        cell = new PlainCell(address, style, type, value[..end], at + 4 + end + 8);
        return value[end..].StartsWith("</v></c>"u8);
    }

    // Up to the end of the opening tag; false at any attribute that is not one letter in double quotes behind one blank.
    private static bool TryAttributes(
        ReadOnlySpan<byte> bytes, out ReadOnlySpan<byte> address, out ReadOnlySpan<byte> style, out ReadOnlySpan<byte> type, out int at)
    {
        address = style = type = default;
        for (at = 2; at + 5 < bytes.Length && bytes[at] == (byte)' '; at++)
        {
            if (bytes[at + 2] != (byte)'=' || bytes[at + 3] != (byte)'"')
            {
                return false;
            }

            var name = bytes[at + 1];
            var start = at += 4;
            while (at < bytes.Length && bytes[at] != (byte)'"')
            {
                at++;
            }

            var value = bytes[start..at];
            switch (name)
            {
                case (byte)'r':
                    address = value;
                    break;
                case (byte)'s':
                    style = value;
                    break;
                case (byte)'t':
                    type = value;
                    break;
                default:
                    return false;
            }
        }

        return at < bytes.Length && bytes[at] is (byte)'>' or (byte)'/';
    }
}
