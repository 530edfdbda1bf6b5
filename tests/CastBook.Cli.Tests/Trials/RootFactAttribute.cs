namespace CastBook.Cli.Tests.Trials;

/// <summary>A test that mounts file systems and changes users, as only root on Linux may.</summary>
internal sealed class RootFactAttribute : FactAttribute
{
    public RootFactAttribute()
    {
        if (!OperatingSystem.IsLinux() || Environment.UserName != "root")
        {
            Skip = "Mounts file systems and changes users: run as root on Linux.";
        }
    }
}
