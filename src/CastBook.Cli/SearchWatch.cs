using System.Runtime.InteropServices;
using CastBook.Cli.Words;
using CastBook.Planning;

namespace CastBook.Cli;

/// <summary>Watches the search for flasks: on a terminal it says that the book is read and that the search begins, and after a second that Ctrl+C takes the best plan so far.</summary>
/// <remarks>Before and after the search Ctrl+C ends the program, as everywhere; a second one does so during the search too.</remarks>
internal sealed class SearchWatch(TextWriter? terminal, TimeProvider clock) : IProgress<bool>, IDisposable
{
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(1);

    private readonly CancellationTokenSource stop = new();
    private readonly Lock gate = new();
    private ITimer? timer;
    private bool begun;
    private PosixSignalRegistration? signal;

    /// <summary>What the search is to know.</summary>
    public PlanSearch Search => new(stop.Token, this);

    /// <summary>Says that a book is read now, before anything else takes time.</summary>
    /// <param name="book">Its path.</param>
    public void Read(string book) => terminal?.WriteLine(ProgramWords.Complaint(FillWords.Reading(Path.GetFileName(book))));

    /// <summary>The search begins or is over.</summary>
    /// <param name="value">Whether it begins.</param>
    public void Report(bool value)
    {
        lock (gate)
        {
            End();
            if (value && !begun)
            {
                begun = true;
                terminal?.WriteLine(ProgramWords.Complaint(FillWords.Looking));
            }

            timer = value ? clock.CreateTimer(_ => Tell(), null, Long, Timeout.InfiniteTimeSpan) : null;
        }
    }

    /// <summary>Ends watching.</summary>
    public void Dispose()
    {
        Report(false);
        stop.Dispose();
    }

    /// <summary>Ends the search; says whether it was still going on.</summary>
    internal bool Interrupt()
    {
        var first = !stop.IsCancellationRequested;
        stop.Cancel();
        return first;
    }

    private void Tell()
    {
        lock (gate)
        {
            // The search may have ended just now.
            if (timer is not null)
            {
                signal = PosixSignalRegistration.Create(PosixSignal.SIGINT, context => context.Cancel = Interrupt());
                terminal?.WriteLine(ProgramWords.Complaint(FillWords.StillLooking));
            }
        }
    }

    private void End()
    {
        timer?.Dispose();
        signal?.Dispose();
        (timer, signal) = (null, null);
    }
}
