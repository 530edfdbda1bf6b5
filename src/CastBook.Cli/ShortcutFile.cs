using System.Text;
using CastBook.Cli.Words;

namespace CastBook.Cli;

/// <summary>Files to double-click: a command file for Windows, a script for macOS and Linux, and for Linux an entry that runs it in a window.</summary>
/// <remarks>They stand beside the book and name it without its folder, so that both can be moved together.</remarks>
internal static class ShortcutFile
{
    /// <summary>The systems there are files for.</summary>
    public static IReadOnlyList<string> Systems { get; } = ["windows", "macos", "linux"];

    /// <summary>The system this runs on.</summary>
    public static string ThisSystem => OperatingSystem.IsWindows() ? "windows" : OperatingSystem.IsMacOS() ? "macos" : "linux";

    /// <summary>The words that start this program: itself, or the runtime and itself.</summary>
    public static IReadOnlyList<string> ThisProgram =>
        Environment.ProcessPath is { } own && !Path.GetFileNameWithoutExtension(own).Equals("dotnet", StringComparison.OrdinalIgnoreCase)
            ? [own]
            : [Environment.ProcessPath ?? "dotnet", Path.Combine(AppContext.BaseDirectory, "castbook.dll")];

    /// <summary>Writes the files.</summary>
    /// <param name="book">Full path of the workbook.</param>
    /// <param name="system">One of <see cref="Systems"/>.</param>
    /// <param name="program">The words that start the program.</param>
    /// <returns>What was written.</returns>
    public static IReadOnlyList<string> Write(string book, string system, IReadOnlyList<string> program)
    {
        var name = Path.GetFileName(book);
        var stem = Path.Combine(Path.GetDirectoryName(book)!, ShortcutWords.Name(Path.GetFileNameWithoutExtension(book)));
        switch (system)
        {
            case "windows":
                return [Save(stem + ".cmd", CommandFile(name, program))];
            case "macos":
                return [Save(stem + ".command", Script(name, program))];
            default:
                var script = Save(stem + ".sh", Script(name, program));
                return [Save(stem + ".desktop", Entry(name, script)), script];
        }
    }

    private static string Save(string path, string text)
    {
        File.WriteAllText(path, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, File.GetUnixFileMode(path) | UnixFileMode.UserExecute | UnixFileMode.GroupExecute | UnixFileMode.OtherExecute);
        }

        return path;
    }

    // A percent sign would begin a variable; quotes cannot stand in a Windows name.
    private static string CommandFile(string name, IReadOnlyList<string> program)
    {
        string[] lines =
        [
            "@echo off",
            "chcp 65001 >nul",
            "cd /d \"%~dp0\"",
            $"{string.Join(' ', program.Append("fill").Select(Quoted))} {Quoted(name)} --brief --strict",
            "if errorlevel 1 (pause) else (timeout /t 5)",
        ];
        return string.Join("\r\n", lines) + "\r\n";

        static string Quoted(string word) => $"\"{word.Replace("%", "%%", StringComparison.Ordinal)}\"";
    }

    private static string Script(string name, IReadOnlyList<string> program)
    {
        string[] lines =
        [
            "#!/bin/sh",
            "cd \"$(dirname \"$0\")\" || exit 2",
            $"{string.Join(' ', program.Append("fill").Select(Quoted))} {Quoted("./" + name)} --brief --strict",
            "result=$?",
            $"if [ $result -ne 0 ]; then printf '{ShortcutWords.EnterCloses}'; read -r line; else sleep \"${{CASTBOOK_SHOW:-5}}\"; fi",
            "exit $result",
        ];
        return string.Join('\n', lines) + "\n";

        static string Quoted(string word) => $"'{word.Replace("'", "'\\''", StringComparison.Ordinal)}'";
    }

    // The quoting of desktop entries: inside double quotes, then the whole as a text value, with a percent sign doubled.
    private static string Entry(string name, string script)
    {
        var quoted = string.Concat(script.Select(c => c is '"' or '`' or '$' or '\\' ? "\\" + c : c.ToString()))
            .Replace("\\", "\\\\", StringComparison.Ordinal).Replace("%", "%%", StringComparison.Ordinal);
        string[] lines =
        [
            "[Desktop Entry]",
            "Type=Application",
            $"Name={ShortcutWords.Name(Path.GetFileNameWithoutExtension(name)).Replace("\\", "\\\\", StringComparison.Ordinal)}",
            $"Exec=\"{quoted}\"",
            "Terminal=true",
        ];
        return string.Join('\n', lines) + "\n";
    }
}
