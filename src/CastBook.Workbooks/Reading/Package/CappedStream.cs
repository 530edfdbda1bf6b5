using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Package;

/// <summary>A part while it inflates, counted. The book is refused as soon as it passes a cap, whatever its headers say.</summary>
internal sealed class CappedStream(Stream inner, string part, long packed, InflatedBytes book, Caps caps) : ForwardStream(inner)
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
        if (count >> 20 >= caps.PartMegabytes)
        {
            throw Refused(RefusalWords.PartTooLarge(caps.PartMegabytes), "part megabytes", caps.PartMegabytes);
        }

        if (count > Caps.RatioFrom && count / caps.TimesPacked > packed)
        {
            throw Refused(RefusalWords.PartSwells(caps.TimesPacked), "times packed", caps.TimesPacked);
        }

        if (book.Raise(part, count) >> 20 >= caps.BookMegabytes)
        {
            throw Refused(RefusalWords.BookTooLarge(caps.BookMegabytes), "book megabytes", caps.BookMegabytes);
        }

        return read;
    }

    internal static BookRefusedException Refused(string what, string name, int limit) =>
        BookRefusedException.For(Catalogue.BookOverLimit, what, $"\"limits\": {{ \"{name}\": {Number(2 * limit)} }}");

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
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
