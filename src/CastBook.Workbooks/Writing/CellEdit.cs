using System.Buffers;
using System.Globalization;
using System.Text;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>What CastBook writes into a cell. Text never becomes a formula: it is written as an inline string.</summary>
internal readonly record struct CellValue
{
    private CellValue(double? number, string? text)
    {
        Number = number;
        Text = text;
    }

    /// <summary>An empty cell.</summary>
    public static CellValue Empty => default;

    /// <summary>The number, where it is one.</summary>
    public double? Number { get; }

    /// <summary>The text, where it is one.</summary>
    public string? Text { get; }

    /// <summary>Whether there is no value.</summary>
    public bool IsEmpty => Number is null && Text is null;

    /// <summary>A number, finite.</summary>
    /// <param name="number">The number.</param>
    public static CellValue Of(double number) => double.IsFinite(number)
        ? new CellValue(number, null)
        : throw new ArgumentOutOfRangeException(nameof(number), number, "Bug in CastBook: a cell cannot hold this number.");

    /// <summary>A number, or empty.</summary>
    /// <param name="number">The number.</param>
    public static CellValue Of(double? number) => number is { } some ? Of(some) : Empty;

    /// <summary>Text; empty text is an empty cell.</summary>
    /// <param name="text">The text.</param>
    public static CellValue Of(string? text) => string.IsNullOrEmpty(text) ? Empty : new CellValue(null, text);

    /// <summary>The cell's element.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <param name="style">Cell format; null for none.</param>
    /// <param name="prefix">The part's prefix with its colon, or nothing.</param>
    public string ToXml(int row, int column, int? style, string prefix)
    {
        var bytes = new ArrayBufferWriter<byte>(128);
        Write(bytes, row, column, style, Encoding.UTF8.GetBytes(prefix));
        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }

    /// <summary>Writes the cell's element.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <param name="style">Cell format; null for none.</param>
    /// <param name="prefix">The part's prefix with its colon, or nothing.</param>
    public void Write(ArrayBufferWriter<byte> to, int row, int column, int? style, ReadOnlySpan<byte> prefix)
    {
        Open(to, prefix, "c r=\""u8);
        WriteAddress(to, row, column);
        if (style is > 0)
        {
            to.Write("\" s=\""u8);
            WriteNumber(to, style.Value);
        }

        WriteContent(to, prefix);
    }

    /// <summary>Writes the element from the end of its attributes on: what a cell says, whatever its place and format.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="prefix">The part's prefix with its colon, or nothing.</param>
    public void WriteContent(ArrayBufferWriter<byte> to, ReadOnlySpan<byte> prefix)
    {
        if (Number is { } number)
        {
            to.Write("\">"u8);
            Open(to, prefix, "v>"u8);
            WriteShortest(to, number);
            Close(to, prefix, "v>"u8);
            Close(to, prefix, "c>"u8);
            return;
        }

        if (Text is not { } text)
        {
            to.Write("\"/>"u8);
            return;
        }

        to.Write("\" t=\"inlineStr\">"u8);
        Open(to, prefix, "is>"u8);
        var keep = char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1]) || text.Contains('\n', StringComparison.Ordinal);
        Open(to, prefix, keep ? "t xml:space=\"preserve\">"u8 : "t>"u8);
        Encoding.UTF8.GetBytes(XmlText.EscapeCell(text), to);
        Close(to, prefix, "t>"u8);
        Close(to, prefix, "is>"u8);
        Close(to, prefix, "c>"u8);
    }

    private static void Open(ArrayBufferWriter<byte> to, ReadOnlySpan<byte> prefix, ReadOnlySpan<byte> name)
    {
        to.Write("<"u8);
        to.Write(prefix);
        to.Write(name);
    }

    private static void Close(ArrayBufferWriter<byte> to, ReadOnlySpan<byte> prefix, ReadOnlySpan<byte> name)
    {
        to.Write("</"u8);
        to.Write(prefix);
        to.Write(name);
    }

    private static void WriteAddress(ArrayBufferWriter<byte> to, int row, int column)
    {
        Span<byte> letters = stackalloc byte[4];
        var at = letters.Length;
        for (var rest = column; rest > 0; rest = (rest - 1) / 26)
        {
            letters[--at] = (byte)('A' + ((rest - 1) % 26));
        }

        to.Write(letters[at..]);
        WriteNumber(to, row);
    }

    private static void WriteShortest(ArrayBufferWriter<byte> to, double number)
    {
        var length = ShortNumber.Write(number, to.GetSpan(ShortNumber.MostLength));
        to.Advance(length);
        if (length == 0)
        {
            WriteNumber(to, number);
        }
    }

    private static void WriteNumber<T>(ArrayBufferWriter<byte> to, T number)
        where T : IUtf8SpanFormattable
    {
        number.TryFormat(to.GetSpan(32), out var written, default, CultureInfo.InvariantCulture);
        to.Advance(written);
    }
}

/// <summary>A value for one cell. An existing cell keeps its own format, unless the edit says otherwise.</summary>
/// <param name="Column">Column, from 1.</param>
/// <param name="Value">The value.</param>
/// <param name="NewStyle">Cell format where the cell does not exist yet.</param>
/// <param name="IsRemoval">Whether the cell goes altogether, its format too.</param>
/// <param name="Restyles">Whether a cell that exists gets the format too.</param>
internal readonly record struct CellEdit(int Column, CellValue Value, int? NewStyle, bool IsRemoval = false, bool Restyles = false);
