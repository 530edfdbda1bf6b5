using System.Diagnostics;

namespace CastBook.Cli.Tests;

/// <summary>A run of the built program, as a person starts it.</summary>
/// <param name="ExitCode">How it ended.</param>
/// <param name="Output">What it printed.</param>
/// <param name="Errors">What it printed to the error stream.</param>
internal sealed record CastBookRun(int ExitCode, string Output, string Errors)
{
    /// <summary>Runs the program in a folder; variables are <c>NAME=value</c>.</summary>
    public static CastBookRun In(string folder, string[] arguments, params string[] variables)
    {
        var start = new ProcessStartInfo(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "castbook.dll"));
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        // No settings of whoever runs the tests.
        start.Environment["XDG_CONFIG_HOME"] = folder;
        foreach (var variable in variables)
        {
            start.Environment[variable.Split('=')[0]] = variable.Split('=')[1];
        }

        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new CastBookRun(process.ExitCode, output, errors.GetAwaiter().GetResult());
    }
}
