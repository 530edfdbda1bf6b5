using System.Diagnostics;

namespace CastBook.Cli.Tests;

/// <summary>The scripts for the Tab key, tried in the shells that they are for.</summary>
public sealed class CompletionTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("castbook-shell-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [ShellTheory("bash")]
    [InlineData("castbook fill --metal", "--metal-in-hand")]
    [InlineData("castbook sta", "status")]
    public void Bash_AtTab_CompletesTheWord(string line, string expected) => Run("bash", $$"""
        source <(castbook completion bash)
        COMP_LINE='{{line}}'; COMP_POINT=${#COMP_LINE}; COMP_WORDS=($COMP_LINE); COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
        _castbook
        printf '%s\n' "${COMPREPLY[@]}"
        """).ShouldBe([expected]);

    // What zsh itself calls, and what its completion does with the words, is stood in for: the rest is zsh.
    [ShellTheory("zsh")]
    [InlineData("castbook fill --metal", "--metal-in-hand")]
    [InlineData("castbook sta", "status")]
    [InlineData("castbook fill night.x", "files")]
    public void Zsh_AtTab_CompletesTheWordOrAFile(string line, string expected) => Run("zsh", $$"""
        compdef() :
        compadd() print -l -- ${(P)2}
        _files() print files
        source <(castbook completion zsh)
        words=({{line}}); CURRENT=$#words
        _castbook
        """).ShouldBe([expected]);

    [ShellTheory("fish")]
    [InlineData("castbook fill --metal", "--metal-in-hand")]
    [InlineData("castbook sta", "status")]
    [InlineData("echo a; castbook sta", "status")]
    public void Fish_AtTab_CompletesTheWord(string line, string expected) => Run("fish", $$"""
        castbook completion fish | source
        complete -C '{{line}}'
        """).ShouldBe([expected]);

    private string[] Run(string shell, string script)
    {
        var program = Path.Combine(folder, "castbook");
        File.WriteAllText(program, $"#!/bin/sh\nexec {string.Join(' ', CastBookRun.Typed.Select(t => $"'{t}'"))} \"$@\"\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(program, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        var start = new ProcessStartInfo(shell) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(script);
        start.Environment["PATH"] = $"{folder}{Path.PathSeparator}{Environment.GetEnvironmentVariable("PATH")}";
        start.Environment["HOME"] = folder;
        start.Environment["XDG_CONFIG_HOME"] = folder;
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        errors.GetAwaiter().GetResult().ShouldBe("");
        return output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}

/// <summary>A test that needs a shell: it fails on a build machine that lacks it, and is skipped elsewhere.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class ShellTheoryAttribute : TheoryAttribute
{
    public ShellTheoryAttribute(string shell)
    {
        Shell = shell;
        if (OperatingSystem.IsWindows() || (Environment.GetEnvironmentVariable("CI") != "true" && !IsOnPath(shell)))
        {
            Skip = $"The shell {shell} is not installed: apt-get install {shell}.";
        }
    }

    /// <summary>The shell.</summary>
    public string Shell { get; }

    private static bool IsOnPath(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));
}
