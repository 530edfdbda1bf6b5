using System.IO.Hashing;
using CastBook.Workbooks.Files;

namespace CastBook.Workbooks.Verifying;

/// <summary>A stream that keeps the checksum of what was read from it, as a zip keeps it of its entries.</summary>
/// <param name="inner">The other stream.</param>
internal sealed class ChecksumStream(Stream inner) : ForwardStream(inner)
{
    private readonly Crc32 sum = new();
    private long length;

    /// <summary>The checksum and the number of the bytes read so far.</summary>
    public (uint Crc32, long Length) Checksum => (sum.GetCurrentHashAsUInt32(), length);

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        var read = Inner.Read(buffer);
        sum.Append(buffer[..read]);
        length += read;
        return read;
    }
}
