using System.IO.Compression;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>
/// Compares a book with what it was: every part, element, attribute and text must still be there, in order, but for the
/// short list of what CastBook may touch (the <see cref="PartRule"/>s).
/// </summary>
internal sealed class BookDiff
{
    private readonly BookPackage before;
    private readonly BookPackage after;
    private readonly List<string> losses = [];

    private BookDiff(BookPackage before, BookPackage after) => (this.before, this.after) = (before, after);

    /// <summary>What was lost or altered, one line each.</summary>
    public IReadOnlyList<string> Losses => losses;

    /// <summary>Parts compared.</summary>
    public int Parts { get; private set; }

    /// <summary>Elements compared in parts that may be edited.</summary>
    public int Elements { get; private set; }

    /// <summary>Attributes compared in parts that may be edited.</summary>
    public int Attributes { get; private set; }

    public static BookDiff Of(byte[] before, byte[] after)
    {
        using var was = BookPackage.Open(new MemoryStream(before));
        using var now = BookPackage.Open(new MemoryStream(after));
        var diff = new BookDiff(was, now);
        diff.CompareEntries(before, after);
        diff.CompareParts();
        return diff;
    }

    private void CompareEntries(byte[] bookBefore, byte[] bookAfter)
    {
        using var was = new ZipArchive(new MemoryStream(bookBefore));
        using var now = new ZipArchive(new MemoryStream(bookAfter));
        var (old, kept) = (was.Entries.Select(Say).ToList(), now.Entries.Take(was.Entries.Count).Select(Say).ToList());
        losses.AddRange(old.Except(kept).Select(e => $"entry {e} is gone or out of its place"));
        if (was.Comment != now.Comment)
        {
            losses.Add($"the zip said \"{was.Comment}\", says \"{now.Comment}\"");
        }

        if (losses.Count == 0 && !old.SequenceEqual(kept))
        {
            losses.Add("the entries are in another order");
        }
    }

    private static string Say(ZipArchiveEntry entry) => $"{entry.FullName} of {entry.LastWriteTime:s} ({entry.ExternalAttributes:x}{entry.Comment})";

    private void CompareParts()
    {
        var own = OwnParts();
        foreach (var part in before.Parts.Where(p => after.Has(p) && !own.Contains(p)))
        {
            Parts++;
            var (was, now) = (before.Read(part), after.Read(part));
            if (was.AsSpan().SequenceEqual(now))
            {
                continue;
            }

            if (SheetOfDrawing(part) is { } sheet)
            {
                losses.AddRange(DrawingDiff.Losses(was, now, (NotesOfOurs(before, sheet), NotesOfOurs(after, sheet))).Select(l => $"{part}: {l}"));
            }
            else if (RuleOf(part) is { } rule)
            {
                var diff = PartDiff.Of(was, now, rule);
                (Elements, Attributes) = (Elements + diff.Elements, Attributes + diff.Attributes);
                losses.AddRange(diff.Losses.Select(l => $"{part}: {l}"));
            }
            else
            {
                losses.Add($"{part} was altered");
            }
        }
    }

    /// <summary>The parts of sheets that were ours before already, and drawings on them in which nothing but ours is drawn, with their charts.</summary>
    private HashSet<string> OwnParts()
    {
        var sheets = before.DefinedNames.Where(n => n.Name.StartsWith("CastBook_", StringComparison.Ordinal) && n.Name.EndsWith("Sheet", StringComparison.Ordinal))
            .Select(n => n.TryCell(out var cell) ? cell.Sheet : "").ToHashSet(StringComparer.OrdinalIgnoreCase);
        var own = before.Sheets.Where(s => sheets.Contains(s.Name)).Select(s => s.PartName).ToHashSet(StringComparer.OrdinalIgnoreCase);
        List<string> drawings = [.. own.SelectMany(s => before.Relationships(s)).Where(r => r.Is("drawing") && IsAllOurs(r.Target)).Select(r => r.Target)];
        own.UnionWith(drawings);
        own.UnionWith([.. drawings.SelectMany(d => before.Relationships(d)).Where(r => r.Is("chart")).Select(r => r.Target)]);
        return own;
    }

    private bool IsAllOurs(string drawing) => RawXml.Read(before.Read(drawing)).Elements.All(anchor =>
        anchor.All().FirstOrDefault(e => e.LocalName == "cNvPr")?["name"]?.StartsWith("CastBook ", StringComparison.Ordinal) == true);

    private PartRule? RuleOf(string part)
    {
        if (before.Sheets.FirstOrDefault(s => IsSame(s.PartName, part)) is { } sheet)
        {
            return new SheetRule(OurColumns(after, sheet), OurColumns(before, sheet), string.Equals(sheet.Name, "Shop", StringComparison.OrdinalIgnoreCase));
        }

        return before.Sheets.SelectMany(s => before.Relationships(s.PartName)).FirstOrDefault(r => !r.IsExternal && IsSame(r.Target, part)) is { } relation
            ? relation.Is("table") ? new TablePartRule() : relation.Is("comments") ? new NotesRule() : null
            : IsSame(part, before.WorkbookPart) ? new WorkbookRule()
            : IsSame(part, before.StylesPart) ? new StylesRule()
            : part.EndsWith(".rels", StringComparison.Ordinal) || part == "[Content_Types].xml" ? new RelationshipsRule() : null;
    }

    private static bool IsSame(string? one, string? other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static HashSet<int> OurColumns(BookPackage book, SheetPart sheet) =>
    [
        .. book.DefinedNames.Where(n => n.Name.StartsWith("CastBook_", StringComparison.Ordinal) && !n.Name.EndsWith("Sheet", StringComparison.Ordinal))
            .Where(n => n.TryCell(out var cell) && IsSame(cell.Sheet, sheet.Name)).Select(n => n.TryCell(out var cell) ? cell.Column : 0),
    ];

    private SheetPart? SheetOfDrawing(string part) =>
        before.Sheets.FirstOrDefault(s => before.Relationships(s.PartName).Any(r => r.Is("vmlDrawing") && IsSame(r.Target, part)));

    private static HashSet<(int Row, int Column)> NotesOfOurs(BookPackage book, SheetPart sheet) =>
        book.Relationships(sheet.PartName).FirstOrDefault(r => r.Is("comments")) is { } notes
            ? [.. RawXml.Read(book.Read(notes.Target)).All().Where(e => e.LocalName == "comment" && NotesRule.IsNoteOfOurs(e))
                .Select(e => CellRef.TryParse(e["ref"], out var row, out var column) ? (row, column) : default)]
            : [];
}
