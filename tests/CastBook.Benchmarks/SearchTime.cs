namespace CastBook.Benchmarks;

/// <summary>How long a search for flasks works, of all processors together, so that a busy machine changes it little; ends it after a time where one is set.</summary>
internal sealed class SearchTime : IProgress<bool>, IDisposable
{
    private const int LookEveryMs = 5;

    private readonly CancellationTokenSource stop = new();
    private readonly Timer? timer;
    private TimeSpan spent;

    // Read by the timer too; 0 while nothing runs.
    private long beganTicks;

    /// <summary>Lets the search take as long as it takes.</summary>
    public SearchTime()
    {
    }

    /// <summary>Ends the search after a time.</summary>
    /// <param name="most">The time.</param>
    public SearchTime(TimeSpan most) => timer = new Timer(_ => StopAfter(most), null, LookEveryMs, LookEveryMs);

    /// <summary>Ends the search.</summary>
    public CancellationToken Stop => stop.Token;

    /// <summary>The time so far.</summary>
    public double Milliseconds => spent.TotalMilliseconds;

    /// <inheritdoc/>
    public void Report(bool value)
    {
        var now = Environment.CpuUsage.TotalTime;
        spent += beganTicks > 0 ? now - TimeSpan.FromTicks(beganTicks) : TimeSpan.Zero;
        Volatile.Write(ref beganTicks, value ? now.Ticks : 0);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        timer?.Dispose();
        stop.Dispose();
    }

    private void StopAfter(TimeSpan most)
    {
        if (Volatile.Read(ref beganTicks) is > 0 and var began && spent + Environment.CpuUsage.TotalTime - TimeSpan.FromTicks(began) >= most)
        {
            stop.Cancel();
        }
    }
}
