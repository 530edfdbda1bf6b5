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
        var start = new ProcessStartInfo(Typed[0])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var argument in Typed[1..].Concat(arguments))
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

    /// <summary>What starts the program: the one that <c>CASTBOOK_PROGRAM</c> names, or else the runtime and the built one.</summary>
    public static string[] Typed { get; } = Environment.GetEnvironmentVariable("CASTBOOK_PROGRAM") is { Length: > 0 } program
        ? [program]
        : [Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", Path.Combine(AppContext.BaseDirectory, "castbook.dll")];
}
