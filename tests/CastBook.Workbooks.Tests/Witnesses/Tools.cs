using System.Diagnostics;

namespace CastBook.Workbooks.Tests.Witnesses;

/// <summary>Programs of other people that the tests call, where the machine has them; the build machine must.</summary>
internal static class Tools
{
    public static bool IsBuildMachine { get; } = Environment.GetEnvironmentVariable("CI") == "true";

    /// <summary>Where <c>tests/witness</c> is, with its scripts.</summary>
    public static string WitnessFolder { get; } = Path.Combine(SourceFolder(), "tests", "witness");

    public static bool HasLibreOffice { get; } = IsOnPath("soffice");

    // The library that was added last: an older folder of libraries lacks it.
    public static bool HasNode { get; } = IsOnPath("node") && Directory.Exists(Path.Combine(WitnessFolder, "node_modules", "periodic-table"));

    /// <summary>Runs a program and gives what it printed.</summary>
    public static string Run(string program, params IEnumerable<string> arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        process.ExitCode.ShouldBe(0, errors.GetAwaiter().GetResult());
        return output;
    }

    /// <summary>Puts books into a new folder, lets something work on it, and removes it.</summary>
    public static T InFolder<T>(IEnumerable<(string Name, byte[] Book)> books, Func<string, string[], T> work)
    {
        var folder = Directory.CreateTempSubdirectory("castbook-witness-").FullName;
        try
        {
            return work(folder, [.. books.Select(b =>
            {
                var path = Path.Combine(folder, b.Name);
                File.WriteAllBytes(path, b.Book);
                return path;
            })]);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static bool IsOnPath(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Any(folder => File.Exists(Path.Combine(folder, program)) || File.Exists(Path.Combine(folder, program + ".exe")));

    private static string SourceFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "CastBook.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("The tests must run inside the source tree.");
    }
}
