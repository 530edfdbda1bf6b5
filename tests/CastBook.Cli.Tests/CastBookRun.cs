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
        using var process = Start(folder, arguments, variables);
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new CastBookRun(process.ExitCode, output, errors.GetAwaiter().GetResult());
    }

    /// <summary>Starts the program in a folder and does not wait for it.</summary>
    public static Process Start(string folder, string[] arguments, params string[] variables)
    {
        var start = new ProcessStartInfo(Host)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add(Program);
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

        return Process.Start(start)!;
    }

    /// <summary>The runtime's program, and the built program it runs.</summary>
    public static string Host => Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet";

    /// <inheritdoc cref="Host"/>
    public static string Program => Path.Combine(AppContext.BaseDirectory, "castbook.dll");
}
