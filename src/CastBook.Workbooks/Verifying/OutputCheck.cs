using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Verifying;

/// <summary>Checks a book before it is handed over: what was not ours is as it was, what we wrote can be read back, no rule is broken anew.</summary>
internal static class OutputCheck
{
    /// <summary>Checks the output against the book it came from.</summary>
    /// <param name="source">The book as read.</param>
    /// <param name="edits">What was to change.</param>
    /// <param name="output">The book as written.</param>
    /// <returns>Whether any part differs from the source.</returns>
    /// <exception cref="BrokenOutputException">Something is wrong with the output.</exception>
    public static bool Run(BookPackage source, BookEdits edits, Stream output)
    {
        output.Position = 0;
        using var written = BookPackage.Open(output);
        var changed = Changed(source, written);
        var touched = edits.TouchedParts;
        var faults = changed.Where(p => source.Has(p) && !touched.Contains(p)).Select(p => $"{p} was altered.")
            .Concat(source.Parts.Where(p => !written.Has(p)).Select(p => $"{p} is missing."))
            .ToList();
        var facts = new BookFacts(written, [.. changed, .. edits.Sheets.Where(s => s.Value.HasCells).Select(s => s.Key)], edits.Sheets);
        faults.AddRange(facts.Sheets.SelectMany(s => s.Unwritten.Select(cell => $"{s.Sheet.PartName}: cell {cell} was not written.")));
        var broken = PackageRules.Faults(facts);
        if (broken.Count > 0)
        {
            var before = PackageRules.Faults(new BookFacts(source, changed));
            faults.AddRange(broken.Except(before));
        }

        return faults.Count == 0 ? changed.Count > 0 : throw new BrokenOutputException(faults);
    }

    private static HashSet<string> Changed(BookPackage source, BookPackage written)
    {
        // A set, as entries that are no parts may stand in a zip twice.
        var before = source.Archive.Entries.Select(e => (e.FullName, e.Crc32, e.Length)).ToHashSet();
        return written.Archive.Entries
            .Where(e => !before.Contains((e.FullName, e.Crc32, e.Length)))
            .Select(e => e.FullName).ToHashSet(StringComparer.OrdinalIgnoreCase);
    }
}
