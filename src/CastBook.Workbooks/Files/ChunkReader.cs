namespace CastBook.Workbooks.Files;

/// <summary>The end of a <see cref="ChunkWriter"/> at which another thread reads; closing it early lets the writer run on.</summary>
/// <remarks>Who has to wait sleeps: a thread that spins meanwhile, as those of the usual collections do, slows the others down.</remarks>
internal sealed class ChunkReader() : ForwardStream(Null)
{
    private const int MostWaiting = 4;

    private readonly Queue<Chunk> waiting = new(MostWaiting);
    private bool complete;
    private bool left;
    private Chunk? chunk;
    private int at;

    /// <summary>Takes a chunk in, as soon as there is room for it.</summary>
    /// <param name="filled">The chunk.</param>
    public void Add(Chunk filled)
    {
        lock (waiting)
        {
            while (waiting.Count == MostWaiting && !left)
            {
                Monitor.Wait(waiting);
            }

            if (!left)
            {
                waiting.Enqueue(filled);
                Monitor.Pulse(waiting);
            }
        }
    }

    /// <summary>Says that nothing more comes.</summary>
    public void Complete()
    {
        lock (waiting)
        {
            complete = true;
            Monitor.Pulse(waiting);
        }
    }

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        if (chunk is null && (chunk = Next()) is null)
        {
            return 0;
        }

        var read = Math.Min(buffer.Length, chunk.Length - at);
        chunk.Bytes.AsSpan(at, read).CopyTo(buffer);
        at += read;
        if (at == chunk.Length)
        {
            chunk.Release();
            (chunk, at) = (null, 0);
        }

        return read;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        lock (waiting)
        {
            left = true;
            waiting.Clear();
            Monitor.Pulse(waiting);
        }

        base.Dispose(disposing);
    }

    private Chunk? Next()
    {
        lock (waiting)
        {
            while (waiting.Count == 0 && !complete)
            {
                Monitor.Wait(waiting);
            }

            if (!waiting.TryDequeue(out var next))
            {
                return null;
            }

            Monitor.Pulse(waiting);
            return next;
        }
    }
}
