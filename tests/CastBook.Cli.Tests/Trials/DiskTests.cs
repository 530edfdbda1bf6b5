using System.Diagnostics;
using CastBook.Cli.Tests.Watching;

namespace CastBook.Cli.Tests.Trials;

/// <summary>Disks that are full, that may only be read, and folders that belong to others: the book is the old one or the new one, and a word says why.</summary>
[System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
public sealed class DiskTests : IDisposable
{
    private readonly Watched folder = new();
    private bool isMounted;

    public void Dispose()
    {
        if (isMounted)
        {
            Root("umount", folder.Path);
        }

        folder.Dispose();
    }

    [RootFact]
    public void Fill_DiskFullAtAnyStep_LosesNothingAndTheNextRunFills()
    {
        var before = File.ReadAllBytes(folder.Book());
        CastBookRun.In(folder.Path, ["fill", "night.xlsx"]).ExitCode.ShouldBe(0);
        var after = File.ReadAllBytes(folder.Of("night.xlsx"));
        Root("mount", "-t", "tmpfs", "-o", "size=10m", "tmpfs", folder.Path);
        isMounted = true;
        var failed = 0;

        // From hardly any room beside the book to enough for all.
        for (var room = 4; room <= 116; room += 16)
        {
            Root("mount", "-o", "remount,size=10m", folder.Path);
            foreach (var file in Directory.GetFiles(folder.Path, "*", new EnumerationOptions { AttributesToSkip = 0, RecurseSubdirectories = true }))
            {
                File.Delete(file);
            }

            File.WriteAllBytes(folder.Of("night.xlsx"), before);
            Root("mount", "-o", $"remount,size={(before.Length / 1024) + 4 + room}k", folder.Path);

            var run = CastBookRun.In(folder.Path, ["fill", "night.xlsx"]);

            var left = File.ReadAllBytes(folder.Of("night.xlsx"));
            if (run.ExitCode != 0)
            {
                failed++;
                run.ExitCode.ShouldBe(4);
                run.Errors.ShouldContain("Check that the disk is not full, ");
                left.ShouldBe(before);
            }
            else
            {
                left.ShouldBe(after);
            }

            folder.Names.ShouldBe(["night.xlsx"]);
            Root("mount", "-o", "remount,size=10m", folder.Path);
            CastBookRun.In(folder.Path, ["fill", "night.xlsx"]).ExitCode.ShouldBe(0);
            File.ReadAllBytes(folder.Of("night.xlsx")).ShouldBe(after);
        }

        failed.ShouldBeInRange(2, 7);
    }

    [RootFact]
    public void Fill_DiskThatMayOnlyBeRead_SaysSo()
    {
        Root("mount", "-t", "tmpfs", "-o", "size=10m", "tmpfs", folder.Path);
        isMounted = true;
        var before = File.ReadAllBytes(folder.Book());
        Root("mount", "-o", "remount,ro", folder.Path);

        var run = CastBookRun.In(folder.Path, ["fill", "night.xlsx"]);

        run.ExitCode.ShouldBe(4);
        run.Errors.ShouldStartWith("castbook: night.xlsx could not be written: ");
        run.Errors.ShouldContain("Read-only file system");
        File.ReadAllBytes(folder.Of("night.xlsx")).ShouldBe(before);
        CastBookRun.In(folder.Path, ["fill", "night.xlsx", "--out", "/tmp/castbook-from-a-read-only-disk.xlsx"]).ExitCode.ShouldBe(0);
        File.Delete("/tmp/castbook-from-a-read-only-disk.xlsx");
    }

    [RootFact]
    public void Fill_ByAPersonWhoMayNot_SaysSo()
    {
        var before = File.ReadAllBytes(folder.Book());
        File.SetUnixFileMode(folder.Path, (UnixFileMode)0b111_101_101);
        AsNobody("fill", folder.Of("night.xlsx")).Errors.ShouldStartWith("castbook: night.xlsx is write-protected. ");

        File.SetUnixFileMode(folder.Of("night.xlsx"), (UnixFileMode)0b110_110_110);
        var (exit, errors) = AsNobody("fill", folder.Of("night.xlsx"));
        exit.ShouldBe(4);
        errors.ShouldStartWith("castbook: night.xlsx could not be written: ");
        errors.ShouldContain("Access to the path");

        File.SetUnixFileMode(folder.Of("night.xlsx"), (UnixFileMode)0b110_000_000);
        (exit, errors) = AsNobody("fill", folder.Of("night.xlsx"), "--dry-run");
        exit.ShouldBe(3);
        errors.ShouldContain("Access to the path");
        File.ReadAllBytes(folder.Of("night.xlsx")).ShouldBe(before);
        folder.Names.ShouldBe(["night.xlsx"]);
    }

    [RootFact]
    public void Fill_BookOfAnotherPerson_StaysTheirs()
    {
        var book = folder.Of("night.xlsx");
        folder.Book();
        File.SetUnixFileMode(book, (UnixFileMode)0b110_100_000);
        Root("chown", "1234:5678", book);

        CastBookRun.In(folder.Path, ["fill", "night.xlsx"]).ExitCode.ShouldBe(0);

        Told("stat", "-c", "%u:%g %a", book).ShouldBe("1234:5678 640");
    }

    [RootFact]
    public void Fill_BookOfAColleague_KeepsTheGroupBothAreIn()
    {
        var book = folder.Of("night.xlsx");
        folder.Book();
        File.SetUnixFileMode(folder.Path, (UnixFileMode)0b111_111_111);
        File.SetUnixFileMode(book, (UnixFileMode)0b110_110_000);
        Root("chown", "1234:5678", book);

        AsNobody(["--groups=5678"], "fill", book).Exit.ShouldBe(0);

        Told("stat", "-c", "%u:%g %a", book).ShouldBe("65534:5678 660");
    }

    private (int Exit, string Errors) AsNobody(params string[] words) => AsNobody(["--clear-groups"], words);

    private (int Exit, string Errors) AsNobody(string[] groups, params string[] words)
    {
        var start = new ProcessStartInfo("setpriv") { RedirectStandardError = true, RedirectStandardOutput = true, WorkingDirectory = "/" };
        string[] all = ["--reuid=65534", "--regid=65534", .. groups, .. CastBookRun.Typed, .. words];
        Array.ForEach(all, start.ArgumentList.Add);
        start.Environment["HOME"] = "/tmp";
        start.Environment["XDG_CONFIG_HOME"] = folder.Path;
        using var run = Process.Start(start)!;
        var errors = run.StandardError.ReadToEndAsync();
        run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        return (run.ExitCode, errors.GetAwaiter().GetResult());
    }

    private static string Told(params string[] words)
    {
        using var run = Process.Start(new ProcessStartInfo(words[0], words[1..]) { RedirectStandardOutput = true })!;
        var told = run.StandardOutput.ReadToEnd().Trim();
        run.WaitForExit();
        return told;
    }

    private static void Root(params string[] words)
    {
        using var run = Process.Start(words[0], words[1..]);
        run.WaitForExit();
        run.ExitCode.ShouldBe(0);
    }
}
