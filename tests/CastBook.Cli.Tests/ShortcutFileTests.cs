using System.Diagnostics;
using CastBook.Cli.Tests.Watching;
using CastBook.Workbooks.Tests;

namespace CastBook.Cli.Tests;

public sealed class ShortcutFileTests : IDisposable
{
    private readonly Watched folder = new();

    public void Dispose() => folder.Dispose();

    [UnixTheory]
    [InlineData("night.xlsx")]
    [InlineData("Isolde's night, 100 % $HOME `x` ü.xlsx")]
    public void Write_Script_FillsTheBookAndStaysOpenWhereSomethingSaysStop(string name)
    {
        var before = File.ReadAllBytes(folder.Book(name));
        var script = ShortcutFile.Write(folder.Of(name), "macos", CastBookRun.Typed).ShouldHaveSingleItem();

        var (exit, output) = DoubleClicked(script);

        File.ReadAllBytes(folder.Of(name)).ShouldNotBe(before);
        Path.GetFileName(script).ShouldBe($"Fill {Path.GetFileNameWithoutExtension(name)}.command");
        output[0].ShouldStartWith($"{name}: 4 rows read, ");
        output[1].ShouldStartWith("stop ");
        output[^1].ShouldBe("Enter closes this window. ");
        exit.ShouldBe(1);
    }

    [Fact]
    public void Write_Linux_IsAnEntryThatRunsTheScriptInAWindow()
    {
        folder.Book("night 5%.xlsx");

        var written = ShortcutFile.Write(folder.Of("night 5%.xlsx"), "linux", ["/opt/castbook"]);

        written.Select(Path.GetFileName).ShouldBe(["Fill night 5%.desktop", "Fill night 5%.sh"]);
        File.ReadAllLines(written[0]).ShouldBe(
            ["[Desktop Entry]", "Type=Application", "Name=Fill night 5%", $"Exec=\"{folder.Path}/Fill night 5%%.sh\"", "Terminal=true"]);
    }

    [Fact]
    public void Write_Windows_IsACommandFileInItsOwnDialect()
    {
        folder.Book("night 5%.xlsx");

        var written = ShortcutFile.Write(folder.Of("night 5%.xlsx"), "windows", [@"C:\Tools\castbook.exe"]).ShouldHaveSingleItem();

        File.ReadAllText(written).ShouldBe(
            "@echo off\r\nchcp 65001 >nul\r\ncd /d \"%~dp0\"\r\n\"C:\\Tools\\castbook.exe\" \"fill\" \"night 5%%.xlsx\" --brief --strict\r\nif errorlevel 1 (pause) else (timeout /t 5)\r\n");
    }

    [Fact]
    public void Shortcut_Command_SaysWhatToDoubleClick()
    {
        folder.Book();

        var run = CastBookRun.In(folder.Path, ["shortcut", "night.xlsx", "--for", "macos"]);
        run.ExitCode.ShouldBe(0);
        var lines = run.Output.TrimEnd().Split('\n').Select(l => l.TrimEnd()).ToList();
        lines[0].ShouldBe("double-click to fill night.xlsx: Fill night.command");
        lines.Skip(1).ShouldBe(OperatingSystem.IsMacOS() ? [] : ["It names the book and the program where they lie on this computer; make it anew on the other."]);

        CastBookRun.In(folder.Path, ["shortcut", "gone.xlsx"]).Errors.TrimEnd()
            .ShouldBe("castbook: there is no file 'gone.xlsx'. Type the workbook's path, in quotes if it has blanks.");
    }

    private (int Exit, string[] Output) DoubleClicked(string script)
    {
        var start = new ProcessStartInfo(script) { WorkingDirectory = Path.GetTempPath(), RedirectStandardOutput = true, RedirectStandardInput = true };
        start.Environment["XDG_CONFIG_HOME"] = folder.Path;
        using var process = Process.Start(start)!;
        process.StandardInput.WriteLine();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output.Split('\n'));
    }
}
