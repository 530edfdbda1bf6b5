namespace CastBook.Cli.Watching;

/// <summary>Looks at the watched folders again and again: every few seconds, and sooner when the system says that something changed.</summary>
/// <param name="folders">The folders.</param>
/// <param name="every">How often a full look is made.</param>
/// <param name="polling">Whether the system's hints are left out, as on network shares that give none or wrong ones.</param>
/// <param name="clock">The clock.</param>
internal sealed class WatchLoop(IReadOnlyList<(string Path, WatchedFolder Folder)> folders, TimeSpan every, bool polling, TimeProvider clock)
{
    private static readonly TimeSpan Beat = TimeSpan.FromMinutes(1);

    /// <summary>Runs until it is told to stop; the book in hand is finished first.</summary>
    /// <param name="stop">Ends it.</param>
    public async Task RunAsync(CancellationToken stop)
    {
        using var hint = new SemaphoreSlim(0, 1);
        var watchers = polling ? [] : folders.Select(f => Listen(f.Path, hint)).OfType<FileSystemWatcher>().ToList();
        var beaten = DateTimeOffset.MinValue;
        try
        {
            while (!stop.IsCancellationRequested)
            {
                var moving = 0;
                foreach (var (_, folder) in folders)
                {
                    moving += folder.Look(stop);
                    if (clock.GetUtcNow() - beaten >= Beat)
                    {
                        folder.Beat();
                    }
                }

                beaten = clock.GetUtcNow() - beaten >= Beat ? clock.GetUtcNow() : beaten;
                var wait = moving > 0 && every > WatchedFolder.Still ? WatchedFolder.Still : every;
                await WaitAsync(hint, wait, stop).ConfigureAwait(false);
            }
        }
        finally
        {
            watchers.ForEach(w => w.Dispose());
            foreach (var (_, folder) in folders)
            {
                folder.Rest();
            }
        }
    }

    /// <summary>Looks until every book has been seen to lie still or not to; for schedulers.</summary>
    /// <param name="stop">Ends it.</param>
    public async Task RunOnceAsync(CancellationToken stop)
    {
        // A book must be seen twice to lie still; one that is still being copied after that is left for the next run.
        for (var look = 0; look < 3; look++)
        {
            if (folders.Sum(f => f.Folder.Look(stop)) == 0 || stop.IsCancellationRequested)
            {
                return;
            }

            await Task.Delay(WatchedFolder.Still, clock, CancellationToken.None).ConfigureAwait(false);
        }
    }

    private async Task WaitAsync(SemaphoreSlim hint, TimeSpan wait, CancellationToken stop)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(stop);
        var timer = Task.Delay(wait, clock, either.Token);
        await Task.WhenAny(timer, hint.WaitAsync(either.Token)).ConfigureAwait(false);
        await either.CancelAsync().ConfigureAwait(false);
    }

    private static FileSystemWatcher? Listen(string folder, SemaphoreSlim hint)
    {
        try
        {
            var watcher = new FileSystemWatcher(folder) { IncludeSubdirectories = true };
            watcher.Created += (_, e) => Hint(hint, e.Name);
            watcher.Changed += (_, e) => Hint(hint, e.Name);
            watcher.Renamed += (_, e) => Hint(hint, e.Name);
            watcher.Error += (_, _) => Hint(hint, name: null);
            watcher.EnableRaisingEvents = true;
            return watcher;
        }
        catch (Exception e) when (e is IOException or PlatformNotSupportedException)
        {
            // No hints here, such as when the system's supply is used up: the full look every few seconds does without.
            return null;
        }
    }

    // What we write ourselves, such as the list of what was left where, is no reason to look again: that look would write it again.
    private static void Hint(SemaphoreSlim hint, string? name)
    {
        if (name is not null && !FolderLook.MayBeBook(name))
        {
            return;
        }

        try
        {
            hint.Release();
        }
        catch (Exception e) when (e is SemaphoreFullException or ObjectDisposedException)
        {
            // A hint is waiting already, or nobody waits any more.
        }
    }
}
