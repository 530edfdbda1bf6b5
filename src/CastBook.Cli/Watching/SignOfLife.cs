using System.Globalization;
using CastBook.Workbooks.Files;

namespace CastBook.Cli.Watching;

/// <summary>The word that a watcher leaves in <c>.castbook/watching.txt</c>: when it was last there, on which computer, as which process.</summary>
internal static class SignOfLife
{
    /// <summary>Leaves it, or renews it.</summary>
    /// <param name="folder">The watched folder.</param>
    /// <param name="clock">The clock.</param>
    public static void Leave(string folder, TimeProvider clock)
    {
        try
        {
            Directory.CreateDirectory(Path.Combine(folder, BookFile.BackupFolder));
            File.WriteAllText(In(folder), string.Create(CultureInfo.InvariantCulture, $"{clock.GetUtcNow():O} {Environment.MachineName} {Environment.ProcessId}"));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A sign of life that cannot be left says by itself that something is wrong.
        }
    }

    /// <summary>Takes it away again.</summary>
    /// <param name="folder">The watched folder.</param>
    public static void TakeAway(string folder)
    {
        try
        {
            File.Delete(In(folder));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It grows old by itself.
        }
    }

    /// <summary>When a watcher was last there, and on which computer; null where none has left word.</summary>
    /// <param name="folder">The folder.</param>
    public static (DateTimeOffset At, string Machine)? Of(string folder)
    {
        try
        {
            // Shared, as a watcher may be renewing it just now.
            using var file = new FileStream(In(folder), FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            using var reader = new StreamReader(file);
            return reader.ReadToEnd().Split(' ') is [var at, var machine, ..]
                && DateTimeOffset.TryParse(at, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var when)
                ? (when, machine)
                : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string In(string folder) => Path.Combine(folder, BookFile.BackupFolder, "watching.txt");
}
