using System.CommandLine;
using System.Globalization;
using CastBook.Cli.Watching;
using CastBook.Cli.Words;

namespace CastBook.Cli;

/// <summary><c>castbook status FOLDER</c>: what became of each book of a watched folder, at a glance.</summary>
internal static class StatusCommand
{
    private static readonly TimeSpan Alive = TimeSpan.FromMinutes(3);

    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    public static Command Make(TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var folder = new Argument<string>("FOLDER") { Description = WatchWords.StatusFolder };
        var command = new Command("status", WatchWords.StatusCommand) { folder };
        command.SetAction(parsed => Run(parsed.GetValue(folder)!, output, errors, clock));
        return command;
    }

    private static int Run(string folder, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        if (!Directory.Exists(folder))
        {
            errors.WriteLine(ProgramWords.Complaint(SharedWords.NoFolder(folder)));
            return ExitCode.Usage;
        }

        output.WriteLine(Watching(folder, clock));
        var entries = Ledger.Of(Path.GetFullPath(folder)).Entries;
        foreach (var (name, entry) in entries)
        {
            var words = entry.Words.StartsWith(Path.GetFileName(name), StringComparison.Ordinal) ? entry.Words : WatchWords.OfBook(name, entry.Words);
            output.WriteLine($"{WordOf(entry.Outcome),-10} {Local(entry.At, clock)}  {words}");
        }

        if (entries.Count == 0)
        {
            output.WriteLine(WatchWords.NothingYet);
        }

        return ExitCode.Filled;
    }

    private static string Watching(string folder, TimeProvider clock)
    {
        if (SignOfLife.Of(folder) is not (var at, var machine))
        {
            return WatchWords.NotWatched;
        }

        return clock.GetUtcNow() - at <= Alive ? WatchWords.Watched(machine, Local(at, clock)) : WatchWords.NoLongerWatched(machine, Local(at, clock));
    }

    private static string Local(DateTimeOffset at, TimeProvider clock) => TimeZoneInfo.ConvertTime(at, clock.LocalTimeZone).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string WordOf(Outcome outcome) => outcome switch
    {
        Outcome.Filled => WatchWords.Filled,
        Outcome.Unchanged => WatchWords.Unchanged,
        Outcome.NotRead => WatchWords.NotRead,
        Outcome.NotWritten => WatchWords.NotWritten,
        Outcome.Waiting => WatchWords.Waits,
        _ => WatchWords.InConflict,
    };
}
