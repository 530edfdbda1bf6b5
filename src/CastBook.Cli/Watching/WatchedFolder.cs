using System.Globalization;
using System.IO.Compression;
using CastBook.Cli.Words;
using CastBook.Planning.Findings;
using CastBook.Workbooks;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reports;
using CastBook.Workbooks.Verifying;

namespace CastBook.Cli.Watching;

/// <summary>
/// One watched folder. Each look goes over all books in it; a book is filled once it lies still, nobody has it open and its
/// content is not what CastBook left there last.
/// </summary>
/// <remarks>What tells of changes is only a hint: shared folders lose and double it. The look decides, by content.</remarks>
internal sealed class WatchedFolder
{
    /// <summary>How long a book must lie still.</summary>
    public static readonly TimeSpan Still = TimeSpan.FromSeconds(2);

    private static readonly TimeSpan TryAgain = TimeSpan.FromMinutes(1);

    private readonly string folder;
    private readonly bool subFolders;
    private readonly TimeProvider clock;
    private readonly WatchLog log;
    private readonly Ledger ledger;
    private readonly Func<string, (FillResult Result, string? Backup)> fill;
    private readonly Dictionary<string, (SeenBook Book, DateTimeOffset Since)> seen = new(StringComparer.Ordinal);
    private string trouble = "";

    /// <param name="folder">The folder.</param>
    /// <param name="subFolders">Whether folders in it are watched too.</param>
    /// <param name="output">Where the log's lines go too.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="fill">What fills a book; CastBook's own where nothing is said.</param>
    public WatchedFolder(string folder, bool subFolders, TextWriter output, TimeProvider clock, Func<string, (FillResult Result, string? Backup)>? fill = null)
    {
        this.fill = fill ?? (book => BookFile.Fill(book, outPath: null, dryRun: false, SettingsAround.Of(book, clock), clock));
        (this.folder, this.subFolders, this.clock) = (Path.GetFullPath(folder), subFolders, clock);
        log = new WatchLog(this.folder, output, clock);
        ledger = Ledger.Of(this.folder);
    }

    /// <summary>Says in the log that watching begins or ends.</summary>
    /// <param name="words">What to say.</param>
    public void Say(string words) => log.Say(words);

    /// <summary>Looks once, and fills what is ready.</summary>
    /// <param name="stop">Ends the look between two books; a book is never left half done.</param>
    /// <returns>How many books are to be looked at again soon: they were still moving.</returns>
    public int Look(CancellationToken stop)
    {
        try
        {
            var moving = LookOnce(stop);
            trouble = "";
            return moving;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A share that is away for a while, or a full disk: whoever watches does not give up.
            if (trouble != e.Message)
            {
                log.Say(WatchWords.CannotLook(e.Message.TrimEnd('.')));
                trouble = e.Message;
            }

            return 0;
        }
    }

    private int LookOnce(CancellationToken stop)
    {
        var (books, conflicts) = FolderLook.At(folder, subFolders);
        ledger.KeepOnly(books.Concat(conflicts.SelectMany(c => new[] { c.Copy, c.Of }).OfType<SeenBook>()).Select(b => b.Path).ToHashSet(StringComparer.Ordinal));
        foreach (var (copy, of) in conflicts)
        {
            SayConflict(copy, of);
        }

        var moving = 0;
        foreach (var book in books.TakeWhile(_ => !stop.IsCancellationRequested))
        {
            moving += LookAt(book) ? 0 : 1;
        }

        ledger.Save();
        return moving;
    }

    /// <summary>Leaves word that the folder is being watched, for <c>castbook status</c>.</summary>
    public void Beat() => SignOfLife.Leave(folder, clock);

    /// <summary>Takes the word that <see cref="Beat"/> left away again.</summary>
    public void Rest() => SignOfLife.TakeAway(folder);

    // False while the book does not lie still yet.
    private bool LookAt(SeenBook book)
    {
        var known = ledger.Find(book.Path);
        var isSame = known is not null && known.Length == book.Length && known.Written == book.Written;
        if (isSame && !IsDue(known!))
        {
            seen.Remove(book.Path);
            return true;
        }

        if (!LiesStill(book))
        {
            return false;
        }

        if (ContentOf(book.Path) is not { } content)
        {
            return false;
        }

        var hash = Said(content);
        if (known is not null && known.Hash == hash && !IsDue(known))
        {
            // Only touched, or put back: the content is what was left there.
            ledger.Set(book.Path, known with { Length = book.Length, Written = book.Written });
            return true;
        }

        return FillUnlessBusy(book, content, known);
    }

    private bool IsDue(LedgerEntry known) => known.Outcome switch
    {
        Outcome.Waiting or Outcome.Conflict => true,
        Outcome.NotWritten => (clock.GetUtcNow() - known.At).Duration() >= TryAgain,
        _ => false,
    };

    private bool LiesStill(SeenBook book)
    {
        var now = clock.GetUtcNow();
        if (!seen.TryGetValue(book.Path, out var before) || before.Book != book || before.Since > now)
        {
            seen[book.Path] = (book, now);
            return false;
        }

        return now - before.Since >= Still && (IsWhole(book.Path) || now - before.Since >= TryAgain);
    }

    // The list of a zip stands at its end: while a slow copy runs it is not there yet.
    private static bool IsWhole(string path)
    {
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            using var zip = new ZipArchive(file, ZipArchiveMode.Read);
            return zip.Entries.Count > 0;
        }
        catch (Exception e) when (e is IOException or InvalidDataException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private bool FillUnlessBusy(SeenBook book, UInt128 before, LedgerEntry? known)
    {
        if (OwnerFile.WhoHasOpen(book.Path) is { } who)
        {
            Note(book, Said(before), known, Outcome.Waiting, WatchWords.HasItOpen(book.Name, who));
            return true;
        }

        if (Fill(book) is not (var outcome, var words))
        {
            return false;
        }

        var after = new FileInfo(book.Path);
        if (!after.Exists || ContentOf(book.Path) is not { } left)
        {
            return true;
        }

        // What the shop saved meanwhile is not ours, however soon it came: what is known of the book stays what it was before.
        var isOurs = outcome == Outcome.Filled ? BookFile.Wrote(book.Path, left) : left == before;
        var now = new SeenBook(book.Path, after.Length, after.LastWriteTimeUtc);
        Note(isOurs ? now : now with { Length = 0 }, isOurs ? Said(left) : "", known, outcome, words);
        seen.Remove(book.Path);
        return isOurs;
    }

    // Null where another CastBook has it in hand: the next look tells by its content what became of it.
    private (Outcome Outcome, string Words)? Fill(SeenBook book)
    {
        try
        {
            var (result, backup) = fill(book.Path);
            var words = Summary.Lines(book.Name, result)[0];
            return backup is null ? (Outcome.Unchanged, WatchWords.FilledAlready(words)) : (Outcome.Filled, words);
        }
        catch (BookRefusedException e)
        {
            // What another program holds closed is tried again; what is no good stays as it is until it changes.
            var isHeld = e.Finding.Id == Catalogue.BookCannotBeOpened.Id;
            return (isHeld ? Outcome.NotWritten : Outcome.NotRead, WatchWords.OfBook(book.Name, e.Message));
        }
        catch (BookNotWrittenException e) when (e.Finding.Id == Catalogue.BookIsBusy.Id)
        {
            return null;
        }
        catch (BookNotWrittenException e)
        {
            var waits = e.Finding.Id == Catalogue.BookIsOpen.Id || e.Finding.Id == Catalogue.BookChangedMeanwhile.Id;
            return (waits ? Outcome.Waiting : Outcome.NotWritten, WatchWords.OfBook(book.Name, e.Message));
        }
#pragma warning disable CA1031 // Do not catch general exception types: one book that meets a fault must not keep all others from being filled.
        catch (Exception e)
#pragma warning restore CA1031
        {
            return (Outcome.NotRead, WatchWords.OfBook(book.Name, e is BrokenOutputException ? e.Message : ProgramWords.Bug($"{e.GetType().Name}, {e.Message}")));
        }
    }

    private void SayConflict(SeenBook copy, SeenBook? of)
    {
        var words = of is null ? WatchWords.ConflictAlone(copy.Name) : WatchWords.Conflict(copy.Name, of.Name);
        foreach (var book in new[] { copy, of }.OfType<SeenBook>())
        {
            var known = ledger.Find(book.Path);
            if (known is not { Outcome: Outcome.Conflict } || known.Words != words)
            {
                ledger.Set(book.Path, new LedgerEntry(known?.Hash ?? "", book.Length, book.Written, clock.GetUtcNow(), Outcome.Conflict, words));
                if (book == copy)
                {
                    log.Say(words);
                }
            }
        }
    }

    // A line only where something is new: waiting is said once, and written once.
    private void Note(SeenBook book, string hash, LedgerEntry? known, Outcome outcome, string words)
    {
        if (outcome == Outcome.Waiting && known == new LedgerEntry(hash, book.Length, book.Written, known?.At ?? default, outcome, words))
        {
            return;
        }

        ledger.Set(book.Path, new LedgerEntry(hash, book.Length, book.Written, clock.GetUtcNow(), outcome, words));
        if (known is null || known.Outcome != outcome || known.Words != words || outcome is Outcome.Filled)
        {
            log.Say(words);
        }
    }

    private static UInt128? ContentOf(string path)
    {
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            return ContentHash.Of(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string Said(UInt128 content) => content.ToString("x32", CultureInfo.InvariantCulture);
}
