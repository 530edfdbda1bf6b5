namespace CastBook.Cli.Tests.Trials;

/// <summary>A test that looks into /proc.</summary>
internal sealed class LinuxFactAttribute : FactAttribute
{
    public LinuxFactAttribute()
    {
        if (!OperatingSystem.IsLinux())
        {
            Skip = "Looks into /proc to see which signals a process catches: run on Linux.";
        }
    }
}
