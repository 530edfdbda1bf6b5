using System.Buffers;

namespace CastBook.Workbooks.Files;

/// <summary>
/// A stream from which other threads read what is written, each all of it. They get it in chunks of one length, the last
/// apart, so that what they make of it does not depend on how the threads run.
/// </summary>
/// <param name="readers">Where they read.</param>
internal sealed class ChunkWriter(params ChunkReader[] readers) : Stream
{
    private Chunk chunk = new(readers.Length);

    /// <inheritdoc/>
    public override bool CanRead => false;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        while (true)
        {
            buffer = buffer[chunk.Take(buffer)..];
            if (buffer.IsEmpty)
            {
                return;
            }

            HandOn();
            chunk = new Chunk(readers.Length);
        }
    }

    /// <inheritdoc/>
    public override void Flush()
    {
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            HandOn();
            Array.ForEach(readers, reader => reader.Complete());
        }

        base.Dispose(disposing);
    }

    private void HandOn()
    {
        foreach (var reader in readers)
        {
            reader.Add(chunk);
        }
    }
}

/// <summary>Some bytes on their way between threads; its memory is used again when all have read them.</summary>
/// <param name="readers">How many read them.</param>
internal sealed class Chunk(int readers)
{
    private const int Most = 1 << 15;

    private int holding = readers;

    /// <summary>The bytes, of which the first <see cref="Length"/> are good.</summary>
    public byte[] Bytes { get; } = ArrayPool<byte>.Shared.Rent(Most);

    /// <summary>How many there are.</summary>
    public int Length { get; private set; }

    /// <summary>Takes bytes in as far as there is room.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <returns>How many it took.</returns>
    public int Take(ReadOnlySpan<byte> bytes)
    {
        var taken = Math.Min(bytes.Length, Most - Length);
        bytes[..taken].CopyTo(Bytes.AsSpan(Length));
        Length += taken;
        return taken;
    }

    /// <summary>Says that a reader is through.</summary>
    public void Release()
    {
        if (Interlocked.Decrement(ref holding) == 0)
        {
            ArrayPool<byte>.Shared.Return(Bytes);
        }
    }
}
