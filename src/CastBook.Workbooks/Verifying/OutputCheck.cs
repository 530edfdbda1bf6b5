using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Verifying;

/// <summary>Checks a book before it is handed over: what was not ours is as it was, what we wrote can be read back, no rule is broken anew.</summary>
/// <remarks>
/// A spliced sheet is read while it is being deflated, by <see cref="Watch"/>; once it is written, inflating it must
/// give the very bytes that were read then.
/// </remarks>
/// <param name="source">The book as read.</param>
/// <param name="edits">What is to change.</param>
internal sealed class OutputCheck(BookPackage source, BookEdits edits)
{
    private readonly Dictionary<string, SheetFacts> watched = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, UInt128> hashes = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads a sheet while it is written.</summary>
    /// <param name="part">Its part.</param>
    /// <param name="content">What is written; read to its end.</param>
    public void Watch(string part, Stream content)
    {
        if (source.Sheets.FirstOrDefault(s => string.Equals(s.PartName, part, StringComparison.OrdinalIgnoreCase)) is not { } sheet)
        {
            return;
        }

        using var hashed = new HashedStream(content);
        var facts = SheetFacts.Read(hashed, sheet, edits.Sheets.GetValueOrDefault(part));
        lock (watched)
        {
            (watched[part], hashes[part]) = (facts, hashed.Hash);
        }
    }

    /// <summary>Checks the output against the book it came from.</summary>
    /// <param name="output">The book as written.</param>
    /// <returns>Whether any part differs from the source.</returns>
    /// <exception cref="BrokenOutputException">Something is wrong with the output.</exception>
    public bool Run(Stream output)
    {
        output.Position = 0;
        using var written = BookPackage.Open(output);
        var changed = Changed(written);
        var touched = edits.TouchedParts;
        var faults = changed.Where(p => source.Has(p) && !touched.Contains(p)).Select(p => $"{p} was altered.")
            .Concat(source.Parts.Where(p => !written.Has(p) && !edits.RemovedParts.Contains(p)).Select(p => $"{p} is missing."))
            .Concat(hashes.Where(h => written.Has(h.Key) && HashOf(written, h.Key) != h.Value).Select(h => $"{h.Key} is not what was written."))
            .ToList();
        foreach (var (part, sheet) in edits.Sheets.Where(s => s.Value.HasCells && !watched.ContainsKey(s.Key)))
        {
            watched[part] = SheetFacts.Read(written, written.Sheets.First(s => string.Equals(s.PartName, part, StringComparison.OrdinalIgnoreCase)), sheet);
        }

        var facts = new BookFacts(written, [.. changed, .. watched.Keys], watched);
        faults.AddRange(facts.Sheets.SelectMany(s => s.Unwritten.Select(cell => $"{s.Sheet.PartName}: cell {cell} was not written.")));
        var broken = PackageRules.Faults(facts);
        if (broken.Count > 0)
        {
            var before = PackageRules.Faults(new BookFacts(source, [.. changed, .. watched.Keys]));
            faults.AddRange(broken.Except(before));
        }

        return faults.Count == 0 ? changed.Count > 0 || edits.RemovedParts.Count > 0 : throw new BrokenOutputException(faults);
    }

    private HashSet<string> Changed(BookPackage written)
    {
        // A set, as entries that are no parts may stand in a zip twice.
        var before = source.Archive.Entries.Select(e => (e.FullName, e.Crc32, e.Length)).ToHashSet();
        return written.Archive.Entries
            .Where(e => !before.Contains((e.FullName, e.Crc32, e.Length)))
            .Select(e => e.FullName).ToHashSet(StringComparer.OrdinalIgnoreCase);
    }

    private static UInt128 HashOf(BookPackage written, string part)
    {
        using var content = written.OpenPart(part);
        return ContentHash.Of(content);
    }
}
