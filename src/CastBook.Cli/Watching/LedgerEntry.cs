using System.Globalization;

namespace CastBook.Cli.Watching;

/// <summary>What became of a book.</summary>
/// <param name="Hash">Hash of the book as it lay there after that.</param>
/// <param name="Length">Its bytes then.</param>
/// <param name="Written">When it was written, UTC.</param>
/// <param name="At">When it was looked at.</param>
/// <param name="Outcome">What became of it.</param>
/// <param name="Words">One line for a person.</param>
internal sealed record LedgerEntry(string Hash, long Length, DateTime Written, DateTimeOffset At, Outcome Outcome, string Words)
{
    /// <summary>The entry as a line of the ledger; blanks and such in names are escaped, so that a tab always parts fields.</summary>
    /// <param name="name">The book's path below the folder.</param>
    public string ToLine(string name) => string.Join('\t',
        Uri.EscapeDataString(name), Outcome, At.ToString("O", CultureInfo.InvariantCulture), Hash,
        Length.ToString(CultureInfo.InvariantCulture), Written.Ticks.ToString(CultureInfo.InvariantCulture), Uri.EscapeDataString(Words));

    /// <summary>Reads a line of the ledger.</summary>
    /// <param name="line">The line.</param>
    /// <param name="name">The book's path below the folder.</param>
    /// <param name="entry">What is known of it.</param>
    public static bool TryParse(string line, out string name, out LedgerEntry entry)
    {
        (name, entry) = ("", null!);
        if (line.Split('\t') is not [var escaped, var outcome, var at, var hash, var length, var ticks, var words]
            || !Enum.TryParse<Outcome>(outcome, out var became)
            || !DateTimeOffset.TryParse(at, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var when)
            || !long.TryParse(length, NumberStyles.None, CultureInfo.InvariantCulture, out var bytes)
            || !long.TryParse(ticks, NumberStyles.None, CultureInfo.InvariantCulture, out var written) || written > DateTime.MaxValue.Ticks)
        {
            return false;
        }

        name = Uri.UnescapeDataString(escaped);
        entry = new LedgerEntry(hash, bytes, new DateTime(written, DateTimeKind.Utc), when, became, Uri.UnescapeDataString(words));
        return true;
    }
}

/// <summary>What can become of a book.</summary>
internal enum Outcome
{
    /// <summary>It was filled.</summary>
    Filled,

    /// <summary>It was filled already: nothing had changed.</summary>
    Unchanged,

    /// <summary>It cannot be read; it is left alone until it changes.</summary>
    NotRead,

    /// <summary>It could not be written; it is tried again.</summary>
    NotWritten,

    /// <summary>It waits: somebody has it open, or it is still being copied.</summary>
    Waiting,

    /// <summary>Two copies of it lie there; neither is filled.</summary>
    Conflict,
}
