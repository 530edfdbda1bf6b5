using System.CommandLine;
using System.Globalization;
using CastBook.Cli.Watching;

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
        var folder = new Argument<string>("FOLDER") { Description = "The watched folder." };
        var command = new Command("status", "Say what became of the workbooks of a watched folder.\nAnd whether it is being watched.\n\nExample: castbook status \"Casting nights\"") { folder };
        command.SetAction(parsed => Run(parsed.GetValue(folder)!, output, errors, clock));
        return command;
    }

    private static int Run(string folder, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        if (!Directory.Exists(folder))
        {
            errors.WriteLine($"castbook: there is no folder '{folder}'. Type the folder's path, in quotes if it has blanks.");
            return ExitCode.Usage;
        }

        output.WriteLine(Watching(folder, clock));
        var entries = Ledger.Of(Path.GetFullPath(folder)).Entries;
        foreach (var (name, entry) in entries)
        {
            var at = entry.At.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
            output.WriteLine($"{WordOf(entry.Outcome),-10} {at}  {(entry.Words.StartsWith(Path.GetFileName(name), StringComparison.Ordinal) ? entry.Words : $"{name}: {entry.Words}")}");
        }

        if (entries.Count == 0)
        {
            output.WriteLine("no workbook has been looked at here yet");
        }

        return ExitCode.Filled;
    }

    private static string Watching(string folder, TimeProvider clock)
    {
        var file = Path.Combine(folder, ".castbook", "watching.txt");
        if (File.Exists(file) && File.ReadAllText(file).Split(' ') is [var at, var machine, ..]
            && DateTimeOffset.TryParse(at, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var when))
        {
            var local = when.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
            return clock.GetUtcNow() - when <= Alive ? $"watched by {machine}, last sign of life {local}" : $"not watched: the last sign of life is from {local}, by {machine}";
        }

        return "not watched";
    }

    private static string WordOf(Outcome outcome) => outcome switch
    {
        Outcome.Filled => "filled",
        Outcome.Unchanged => "unchanged",
        Outcome.NotRead => "not read",
        Outcome.NotWritten => "not written",
        Outcome.Waiting => "waits",
        _ => "conflict",
    };
}
