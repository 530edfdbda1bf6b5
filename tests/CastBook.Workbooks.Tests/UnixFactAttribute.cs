namespace CastBook.Workbooks.Tests;

/// <summary>A test of what Windows lacks, or all systems but Linux: elsewhere it is skipped, and does not count as passed.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class UnixFactAttribute : FactAttribute
{
    public UnixFactAttribute(bool linuxAlone = false, bool notAsRoot = false)
    {
        (LinuxAlone, NotAsRoot) = (linuxAlone, notAsRoot);
        Skip = ReasonToSkip(linuxAlone) ?? (notAsRoot && Environment.IsPrivilegedProcess ? "Runs as somebody who may not read everything." : null);
    }

    /// <summary>Whether no other Unix will do.</summary>
    public bool LinuxAlone { get; }

    /// <summary>Whether it says nothing where it runs as one who may do everything.</summary>
    public bool NotAsRoot { get; }

    /// <summary>Why a test is skipped on this system; missing where it runs.</summary>
    /// <param name="linuxAlone">Whether it runs on Linux alone.</param>
    internal static string? ReasonToSkip(bool linuxAlone) =>
        OperatingSystem.IsLinux() || (OperatingSystem.IsMacOS() && !linuxAlone) ? null : linuxAlone ? "Runs on Linux." : "Runs on Linux and macOS.";
}

/// <summary>The same for a test with rows of data.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class UnixTheoryAttribute : TheoryAttribute
{
    public UnixTheoryAttribute() => Skip = UnixFactAttribute.ReasonToSkip(linuxAlone: false);
}
