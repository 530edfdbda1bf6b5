namespace CastBook.Workbooks.Xml;

/// <summary>A cell as nearly every cell of nearly every book is written, and nothing else: <c>&lt;c r="B7" s="3" t="s"&gt;&lt;v&gt;12&lt;/v&gt;&lt;/c&gt;</c>.</summary>
/// <remarks>A formula of its own may stand before the value, <c>&lt;f&gt;C7*D7&lt;/f&gt;</c>. Its spans are good until the scanner moves on.</remarks>
internal readonly ref struct PlainCell
{
    private PlainCell(ReadOnlySpan<byte> address, ReadOnlySpan<byte> style, ReadOnlySpan<byte> type, bool hasFormula, ReadOnlySpan<byte> value, int length)
    {
        Address = address;
        Style = style;
        Type = type;
        HasFormula = hasFormula;
        Value = value;
        Length = length;
    }

    /// <summary>Its address; nothing where it follows from its place.</summary>
    public ReadOnlySpan<byte> Address { get; }

    /// <summary>Its cell format; nothing for none.</summary>
    public ReadOnlySpan<byte> Style { get; }

    /// <summary>Its type as written; nothing for a number.</summary>
    public ReadOnlySpan<byte> Type { get; }

    /// <summary>Whether a formula stands behind it.</summary>
    public bool HasFormula { get; }

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
            cell = new PlainCell(address, style, type, false, [], at + 2);
            return at + 1 < bytes.Length && bytes[at + 1] == (byte)'>';
        }

        var content = bytes[(at + 1)..];
        var formula = 0;
        if (content.StartsWith("<f>"u8))
        {
            formula = "<f>".Length + TextLength(content["<f>".Length..]);
            if (!content[formula..].StartsWith("</f>"u8))
            {
                return false;
            }

            formula += "</f>".Length;
        }

        var hasFormula = formula > 0;
        var rest = content[formula..];
        if (rest.StartsWith("</c>"u8))
        {
            cell = new PlainCell(address, style, type, hasFormula, [], at + 1 + formula + "</c>".Length);
            return true;
        }

        if (!rest.StartsWith("<v>"u8))
        {
            return false;
        }

        var value = rest["<v>".Length..];
        var end = TextLength(value);
        cell = new PlainCell(address, style, type, hasFormula, value[..end], at + 1 + formula + "<v>".Length + end + "</v></c>".Length);
        return value[end..].StartsWith("</v></c>"u8);
    }

    // Shorter by a loop of one's own: most texts of cells are a few bytes long.
    private static int TextLength(ReadOnlySpan<byte> bytes)
    {
        var length = 0;
        while (length < bytes.Length && bytes[length] != (byte)'<')
        {
            length++;
        }

        return length;
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
