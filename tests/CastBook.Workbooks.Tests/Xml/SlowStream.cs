namespace CastBook.Workbooks.Tests.Xml;

/// <summary>A stream that gives only so many bytes at a time, so that every border between two chunks is met.</summary>
internal sealed class SlowStream(byte[] content, int atOnce) : MemoryStream(content)
{
    public override int Read(byte[] buffer, int offset, int count) => base.Read(buffer, offset, Math.Min(count, atOnce));

    public override int Read(Span<byte> buffer) => base.Read(buffer[..Math.Min(buffer.Length, atOnce)]);
}
