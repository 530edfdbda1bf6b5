using System.Buffers;
using System.Buffers.Text;

namespace CastBook.Workbooks.Writing;

/// <summary>The <c>spans</c> of a row: between which columns its cells stand, for readers that make room before they read.</summary>
internal static class RowSpans
{
    private const int MostDigits = 11;

    private static ReadOnlySpan<byte> Name => " spans=\""u8;

    /// <summary>Writes the row's opening tag with spans that hold the edited cells, and no longer reach over cells taken out at their end.</summary>
    /// <param name="tag">The tag.</param>
    /// <param name="cells">The row's edits, in column order.</param>
    /// <param name="to">Where to.</param>
    public static void WriteFitted(ReadOnlySpan<byte> tag, List<CellEdit> cells, IBufferWriter<byte> to)
    {
        var start = tag.IndexOf(Name) + Name.Length;
        var length = start < Name.Length ? -1 : tag[start..].IndexOf((byte)'"');
        var spans = length < 0 ? [] : tag.Slice(start, length);
        var colon = spans.IndexOf((byte)':');
        var lastColon = spans.LastIndexOf((byte)':');
        if (colon < 0 || !IsNumber(spans[..colon], out var first) || !IsNumber(spans[(lastColon + 1)..], out var last))
        {
            to.Write(tag);
            return;
        }

        var (newFirst, newLast) = (first, last);
        for (var at = cells.Count - 1; at >= 0 && cells[at].IsRemoval && cells[at].Column >= newLast && newLast > first; at--)
        {
            // What is taken out beyond them was never there.
            newLast -= cells[at].Column == newLast ? 1 : 0;
        }

        foreach (var edit in cells)
        {
            newFirst = edit.IsRemoval ? newFirst : Math.Min(newFirst, edit.Column);
            newLast = edit.IsRemoval ? newLast : Math.Max(newLast, edit.Column);
        }

        if ((newFirst, newLast) == (first, last))
        {
            to.Write(tag);
            return;
        }

        to.Write(tag[..start]);
        Write(newFirst, to);
        to.Write(spans[colon..(lastColon + 1)]);
        Write(newLast, to);
        to.Write(tag[(start + length)..]);
    }

    private static bool IsNumber(ReadOnlySpan<byte> text, out int number) =>
        Utf8Parser.TryParse(text, out number, out var used) && used == text.Length && number >= 0;

    private static void Write(int number, IBufferWriter<byte> to)
    {
        _ = Utf8Formatter.TryFormat(number, to.GetSpan(MostDigits), out var written);
        to.Advance(written);
    }
}
