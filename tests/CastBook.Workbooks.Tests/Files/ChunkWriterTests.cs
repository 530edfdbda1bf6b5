using CastBook.Workbooks.Files;

namespace CastBook.Workbooks.Tests.Files;

public sealed class ChunkWriterTests
{
    private static readonly byte[] Content = [.. Enumerable.Range(0, 500_000).Select(i => (byte)(i * 31 % 251))];

    // Whatever is written at once: none, a byte, more than a chunk.
    [Theory]
    [InlineData(1)]
    [InlineData(700)]
    [InlineData(32_768)]
    [InlineData(200_000)]
    public async Task Write_TwoReaders_EachReadsAllOfItInChunksOfOneLength(int atOnce)
    {
        var (first, second) = (new ChunkReader(), new ChunkReader());
        var beside = new[] { Task.Run(() => Read(first)), Task.Run(() => Read(second)) };

        using (var writer = new ChunkWriter(first, second))
        {
            foreach (var bytes in Content.Chunk(atOnce))
            {
                writer.Write(bytes);
            }
        }

        foreach (var (bytes, lengths) in await Task.WhenAll(beside))
        {
            bytes.ShouldBe(Content);
            lengths.SkipLast(1).Distinct().ShouldBe([32_768]);
        }
    }

    [Fact]
    public void Write_NothingAtAll_IsReadAsNothing()
    {
        var reader = new ChunkReader();
        new ChunkWriter(reader).Dispose();

        reader.ReadByte().ShouldBe(-1);
        reader.ReadByte().ShouldBe(-1);
    }

    [Fact]
    public async Task Write_AReaderThatLeft_HoldsNobodyUp()
    {
        var (stays, leaves) = (new ChunkReader(), new ChunkReader());
        var reading = Task.Run(() => Read(stays));
        await using (var writer = new ChunkWriter(stays, leaves))
        {
            writer.Write(Content.AsSpan(0, 40_000));
            leaves.ReadByte().ShouldBe(Content[0]);
            await leaves.DisposeAsync();
            writer.Write(Content.AsSpan(40_000));
        }

        (await reading).Bytes.ShouldBe(Content);
    }

    private static (byte[] Bytes, List<int> Lengths) Read(ChunkReader reader)
    {
        using var bytes = new MemoryStream();
        var lengths = new List<int>();
        var buffer = new byte[100_000];
        for (int read; (read = reader.Read(buffer)) > 0;)
        {
            bytes.Write(buffer, 0, read);
            lengths.Add(read);
        }

        return (bytes.ToArray(), lengths);
    }
}
