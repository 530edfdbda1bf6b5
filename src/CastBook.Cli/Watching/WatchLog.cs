using System.Globalization;

namespace CastBook.Cli.Watching;

/// <summary>The log of a watched folder, <c>castbook.log</c>, for a person to read; a long one becomes <c>castbook.1.log</c>, and an older one of that name goes.</summary>
/// <param name="folder">The folder.</param>
/// <param name="output">Takes each line too.</param>
/// <param name="clock">The clock.</param>
internal sealed class WatchLog(string folder, TextWriter output, TimeProvider clock)
{
    private const long Longest = 1_000_000;

    /// <summary>Writes a line.</summary>
    /// <param name="words">What happened.</param>
    public void Say(string words)
    {
        var line = string.Create(CultureInfo.InvariantCulture, $"{clock.GetLocalNow():yyyy-MM-dd HH:mm:ss}  {words}");
        output.WriteLine(line);
        try
        {
            var file = Path.Combine(folder, "castbook.log");
            if (File.Exists(file) && new FileInfo(file).Length > Longest)
            {
                File.Move(file, Path.Combine(folder, "castbook.1.log"), overwrite: true);
            }

            File.AppendAllLines(file, [line]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A log that cannot be written stops no filling; it is still on the screen.
        }
    }
}
