using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;

namespace CastBook.Workbooks.Reading.Package;

/// <summary>A part while it inflates, counted. The book is refused as soon as it passes a cap, whatever its headers say.</summary>
internal sealed class CappedStream(Stream inner, string part, long packed, InflatedBytes book) : ForwardStream(inner)
{
    private long count;

    public override int Read(Span<byte> buffer)
    {
        int read;
        try
        {
            read = Inner.Read(buffer);
        }
        catch (InvalidDataException e)
        {
            throw BookRefusedException.Damaged(part, e);
        }

        count += read;
        if (count > Caps.PartBytes || (count > Caps.RatioFrom && count / Caps.Ratio > packed) || book.Raise(part, count) > Caps.BookBytes)
        {
            var size = (count >> 20).ToString(CultureInfo.InvariantCulture);
            throw BookRefusedException.For(Catalogue.BookTooMuch, $"a part that swells to more than {size} MB");
        }

        return read;
    }
}

/// <summary>How far each part has been inflated; reading a part twice counts once.</summary>
internal sealed class InflatedBytes
{
    private readonly Dictionary<string, long> parts = new(StringComparer.OrdinalIgnoreCase);
    private long total;

    /// <summary>Notes how far a part has come; returns the sum over all parts.</summary>
    public long Raise(string part, long count)
    {
        lock (parts)
        {
            var before = parts.GetValueOrDefault(part);
            if (count > before)
            {
                parts[part] = count;
                total += count - before;
            }

            return total;
        }
    }
}
