namespace CastBook.Cli.Tests.Trials;

/// <summary>A test that opens a terminal, by the program <c>script</c> of every Linux.</summary>
internal sealed class TerminalFactAttribute : FactAttribute
{
    public TerminalFactAttribute()
    {
        if (!File.Exists("/usr/bin/script") || !OperatingSystem.IsLinux())
        {
            Skip = "Opens a terminal with \"script\": run on Linux.";
        }
    }
}
