namespace CastBook.Workbooks.Writing;

/// <summary>A stream that writes the same to one or two others, which it closes.</summary>
/// <param name="first">One.</param>
/// <param name="second">The other, if any.</param>
internal sealed class SplitStream(Stream first, Stream? second) : Stream
{
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
        first.Write(buffer);
        second?.Write(buffer);
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        first.Flush();
        second?.Flush();
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
            first.Dispose();
            second?.Dispose();
        }

        base.Dispose(disposing);
    }
}
