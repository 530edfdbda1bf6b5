using System.IO.Hashing;
using CastBook.Workbooks.Files;

namespace CastBook.Workbooks.Verifying;

/// <summary>A stream that remembers a hash of what was read from it.</summary>
/// <param name="inner">The other stream.</param>
internal sealed class HashedStream(Stream inner) : ForwardStream(inner)
{
    private readonly XxHash128 hash = new();

    /// <summary>The hash of what was read so far.</summary>
    public UInt128 Hash => hash.GetCurrentHashAsUInt128();

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        var read = Inner.Read(buffer);
        hash.Append(buffer[..read]);
        return read;
    }
}
