namespace CastBook.Benchmarks;

/// <summary>How long a search for flasks works, of all processors together, so that a busy machine changes it little.</summary>
internal sealed class SearchTime : IProgress<bool>
{
    private TimeSpan spent;

    /// <summary>The time so far.</summary>
    public double Milliseconds => spent.TotalMilliseconds;

    /// <inheritdoc/>
    public void Report(bool value) => spent += value ? -Environment.CpuUsage.TotalTime : Environment.CpuUsage.TotalTime;
}
