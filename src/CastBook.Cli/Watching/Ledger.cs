using CastBook.Workbooks.Files;

namespace CastBook.Cli.Watching;

/// <summary>What is known of each book of a watched folder, kept in <c>.castbook/watched.txt</c> so that a restart does nothing twice.</summary>
internal sealed class Ledger
{
    private const string FileName = "watched.txt";

    private readonly string file;
    private readonly string folder;
    private readonly SortedDictionary<string, LedgerEntry> entries = new(StringComparer.Ordinal);

    private int unsaved;

    private Ledger(string folder)
    {
        this.folder = folder;
        file = Path.Combine(folder, BookFile.BackupFolder, FileName);
    }

    /// <summary>The books by their path below the folder.</summary>
    public IReadOnlyDictionary<string, LedgerEntry> Entries => entries;

    /// <summary>Reads the ledger of a folder; a line that cannot be read is as good as none, and its book is looked at afresh.</summary>
    /// <param name="folder">The folder.</param>
    public static Ledger Of(string folder)
    {
        var ledger = new Ledger(folder);
        if (File.Exists(ledger.file))
        {
            foreach (var line in File.ReadAllLines(ledger.file))
            {
                if (LedgerEntry.TryParse(line, out var name, out var entry))
                {
                    ledger.entries[name] = entry;
                }
            }
        }

        return ledger;
    }

    /// <summary>What is known of a book; null where nothing is.</summary>
    /// <param name="path">The book.</param>
    public LedgerEntry? Find(string path) => entries.GetValueOrDefault(NameOf(path));

    /// <summary>Takes down what became of a book.</summary>
    /// <param name="path">The book.</param>
    /// <param name="entry">What is known of it.</param>
    /// <remarks>A ledger of many books is not written for each: what a crash loses is looked at again, and found to be filled already.</remarks>
    public void Set(string path, LedgerEntry entry)
    {
        entries[NameOf(path)] = entry;
        unsaved++;
        if (unsaved * 20 >= entries.Count)
        {
            Save();
        }
    }

    /// <summary>Forgets books that are gone.</summary>
    /// <param name="there">The paths of those that are there.</param>
    public void KeepOnly(IReadOnlySet<string> there)
    {
        var gone = entries.Keys.Where(name => !there.Contains(Path.GetFullPath(Path.Combine(folder, name)))).ToList();
        gone.ForEach(name => entries.Remove(name));
        unsaved += gone.Count;
    }

    /// <summary>Writes the ledger in one step, where anything has changed.</summary>
    public void Save()
    {
        if (unsaved > 0)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            TemporaryFile.WriteLines(file, entries.Select(e => e.Value.ToLine(e.Key)));
            unsaved = 0;
        }
    }

    private string NameOf(string path) => Path.GetRelativePath(folder, path);
}
