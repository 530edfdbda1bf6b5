using System.Xml;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Verifying;

/// <summary>Checks a book before it is handed over: what was not ours is as it was, what we wrote can be read back, no rule is broken anew.</summary>
/// <remarks>
/// A spliced sheet is read while it is being deflated, by <see cref="Watch"/>; once it is written, the checksum that the
/// zip made of it must be that of the bytes that were read then.
/// </remarks>
/// <param name="source">The book as read.</param>
/// <param name="edits">What is to change.</param>
internal sealed class OutputCheck(BookPackage source, BookEdits edits)
{
    private readonly Dictionary<string, SheetFacts> watched = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, (uint Crc32, long Length)> checksums = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads a sheet while it is written.</summary>
    /// <param name="part">Its part.</param>
    /// <param name="content">What is written; read to its end.</param>
    public void Watch(string part, Stream content)
    {
        if (source.Sheets.FirstOrDefault(s => string.Equals(s.PartName, part, StringComparison.OrdinalIgnoreCase)) is not { } sheet)
        {
            return;
        }

        using var summed = new ChecksumStream(content);
        var facts = SheetFacts.Read(summed, sheet, edits.Sheets.GetValueOrDefault(part));
        lock (watched)
        {
            (watched[part], checksums[part]) = (facts, summed.Checksum);
        }
    }

    /// <summary>Checks the output against the book it came from.</summary>
    /// <param name="output">The book as written.</param>
    /// <returns>Whether any part differs from the source.</returns>
    /// <exception cref="BookRefusedException">The source is damaged, which only writing met.</exception>
    /// <exception cref="BrokenOutputException">Something is wrong with the output.</exception>
    public bool Run(Stream output)
    {
        output.Position = 0;
        using var written = BookPackage.Open(output, source.Caps);
        var changed = Changed(written);
        var touched = edits.TouchedParts;
        var altered = changed.Where(p => source.Has(p) && !touched.Contains(p)).ToList();
        if (altered.Find(IsDamagedInTheSource) is { } damaged)
        {
            throw BookRefusedException.Damaged(RefusalWords.Changed(damaged));
        }

        var faults = altered.Select(p => $"{p} was altered.")
            .Concat(source.Parts.Where(p => !written.Has(p) && !edits.RemovedParts.Contains(p)).Select(p => $"{p} is missing."))
            .Concat(written.Archive.Entries.Where(e => checksums.TryGetValue(e.FullName, out var sum) && sum != (e.Crc32, e.Length)).Select(e => $"{e.FullName} is not what was written."))
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
            var anew = broken.Except(before).ToList();
            if (anew.Count > 0 && before.Count > 0 && faults.Count == 0)
            {
                // Where the book itself breaks rules, what is put into it cannot stand right.
                throw BookRefusedException.Damaged(RefusalWords.Fault(before[0]));
            }

            faults.AddRange(anew);
        }

        if (faults.Count > 0 && source.Parts.Where(touched.Contains).FirstOrDefault(p => !IsWellFormed(p)) is { } malformed)
        {
            throw BookRefusedException.Damaged(RefusalWords.NotWellFormed(malformed));
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

    private bool IsDamagedInTheSource(string part)
    {
        var entry = source.Archive.Entries.First(e => string.Equals(e.FullName, part, StringComparison.OrdinalIgnoreCase));
        var sum = new System.IO.Hashing.Crc32();
        using var content = new MemoryStream();
        using (var packed = entry.Open())
        {
            packed.CopyTo(content);
        }

        sum.Append(content.GetBuffer().AsSpan(0, (int)content.Length));
        return sum.GetCurrentHashAsUInt32() != entry.Crc32 || content.Length != entry.Length;
    }

    private bool IsWellFormed(string part)
    {
        try
        {
            using var content = source.OpenPart(part);
            using var reader = XmlReader.Create(content, new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
            while (reader.Read())
            {
            }

            return true;
        }
        catch (XmlException)
        {
            return false;
        }
    }
}
