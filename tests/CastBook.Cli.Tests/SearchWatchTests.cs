namespace CastBook.Cli.Tests;

public sealed class SearchWatchTests
{
    private const string Begun = "castbook: the book is read; looking for flasks\n";

    [Fact]
    public void Report_SearchTakesLong_SaysSoOnce()
    {
        using var terminal = new StringWriter();
        var clock = new HandClock();
        using var watch = new SearchWatch(terminal, clock);

        watch.Report(true);
        terminal.ToString().ReplaceLineEndings("\n").ShouldBe(Begun);
        clock.Ring();

        terminal.ToString().ReplaceLineEndings("\n").ShouldBe(Begun + "castbook: still looking for better flasks; Ctrl+C takes the best plan so far\n");
    }

    [Fact]
    public void Read_OnATerminal_NamesTheBook()
    {
        using var terminal = new StringWriter();
        using var watch = new SearchWatch(terminal, new HandClock());

        watch.Read(Path.Combine("orders", "night.xlsx"));

        terminal.ToString().ReplaceLineEndings("\n").ShouldBe("castbook: reading night.xlsx\n");
    }

    [Fact]
    public void Report_SearchesThatEndSoon_SayOnceThatTheyBegin()
    {
        using var terminal = new StringWriter();
        var clock = new HandClock();
        using var watch = new SearchWatch(terminal, clock);

        watch.Report(true);
        watch.Report(false);
        watch.Report(true);
        watch.Report(false);
        clock.Ring();

        terminal.ToString().ReplaceLineEndings("\n").ShouldBe(Begun);
    }

    // The first Ctrl+C ends the search, the second is not caught.
    [Fact]
    public void Interrupt_Twice_EndsTheSearchThenTheProgram()
    {
        using var watch = new SearchWatch(null, TimeProvider.System);
        var search = watch.Search;

        watch.Interrupt().ShouldBeTrue();
        search.Stop.IsCancellationRequested.ShouldBeTrue();
        watch.Interrupt().ShouldBeFalse();
    }

    // Time passes when the test says so.
    private sealed class HandClock : TimeProvider
    {
        private readonly List<TimerCallback> callbacks = [];

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            dueTime.ShouldBe(TimeSpan.FromSeconds(1));
            callbacks.Add(callback);
            return new Nothing();
        }

        public void Ring() => callbacks.ForEach(c => c(null));

        private sealed class Nothing : ITimer
        {
            public bool Change(TimeSpan dueTime, TimeSpan period) => true;

            public void Dispose()
            {
            }

            public ValueTask DisposeAsync() => ValueTask.CompletedTask;
        }
    }
}
