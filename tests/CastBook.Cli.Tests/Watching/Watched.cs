using CastBook.Cli.Watching;

namespace CastBook.Cli.Tests.Watching;

/// <summary>A watched folder of its own for one test, with a clock that moves only when told.</summary>
internal sealed class Watched : IDisposable
{
    public const string Sample = "09_sheetjs_export.xlsx";

    private readonly StringWriter said = new();
    private WatchedFolder folder;

    public Watched(bool subFolders = false)
    {
        SubFolders = subFolders;
        folder = Start();
    }

    public string Path { get; } = Directory.CreateTempSubdirectory("castbook-watch-").FullName;

    public SetClock Clock { get; } = new();

    /// <summary>What was said since the last time it was asked.</summary>
    public string[] Said
    {
        get
        {
            var lines = said.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries).Select(l => l["2026-12-01 19:54:00  ".Length..]).ToArray();
            said.GetStringBuilder().Clear();
            return lines;
        }
    }

    private bool SubFolders { get; }

    /// <summary>What stands in the folder, in order of names, without the folder of backups and the log.</summary>
    public IEnumerable<string> Names => Directory.GetFileSystemEntries(Path).Select(p => System.IO.Path.GetFileName(p))
        .Where(n => n is not ".castbook" and not "castbook.log").Order(StringComparer.Ordinal);

    public int Backups(string stem) => Directory.GetFiles(System.IO.Path.Combine(Path, ".castbook"), stem + " *.xlsx").Length;

    public string Of(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Puts a small workbook there.</summary>
    public string Book(string name = "night.xlsx")
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(Of(name))!);
        File.Copy(System.IO.Path.Combine(AppContext.BaseDirectory, "Books", Sample), Of(name), overwrite: true);
        return Of(name);
    }

    /// <summary>One look; how many books do not lie still yet.</summary>
    public int Look() => folder.Look(CancellationToken.None);

    /// <summary>Two looks, so far apart that a book in between lies still.</summary>
    public int LookTwice()
    {
        Look();
        Clock.Now += WatchedFolder.Still;
        return Look();
    }

    /// <summary>As after a restart of the computer.</summary>
    public void Restart() => folder = Start();

    public void Dispose()
    {
        said.Dispose();
        Directory.Delete(Path, recursive: true);
    }

    private WatchedFolder Start() => new(Path, SubFolders, said, Clock);

    internal sealed class SetClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 12, 1, 19, 54, 0, TimeSpan.Zero);

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
