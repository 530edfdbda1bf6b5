using System.IO.Compression;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Package;

/// <summary>A workbook's package, open for reading: its parts and how they hang together.</summary>
/// <remarks>
/// Parts are found by relationships and never by customary names; lookups ignore case.
/// Entries whose names would leave the package are no parts: they are neither listed nor read.
/// Not safe for use by several threads at once.
/// </remarks>
public sealed class BookPackage : IDisposable
{
    private readonly Dictionary<string, ZipArchiveEntry> entries = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, IReadOnlyList<Relationship>> relationships = new(StringComparer.OrdinalIgnoreCase);
    private readonly InflatedBytes inflated = new();
    private readonly ContentTypes contentTypes;

    private BookPackage(ZipArchive archive, Caps caps)
    {
        Archive = archive;
        Caps = caps;
        Parts = [.. archive.Entries.Select(e => e.FullName).Where(PartNames.IsPart)];
        if (archive.Entries.Count > caps.Parts)
        {
            throw CappedStream.Refused(RefusalWords.Parts(archive.Entries.Count), "parts", caps.Parts);
        }

        foreach (var entry in archive.Entries.Where(e => PartNames.IsPart(e.FullName)))
        {
            if (!entries.TryAdd(entry.FullName, entry))
            {
                throw BookRefusedException.Damaged(RefusalWords.Twice(entry.FullName));
            }
        }

        contentTypes = ContentTypes.Read(this);
        WorkbookPart = Relationships("").FirstOrDefault(r => r.Is("officeDocument") && Has(r.Target))?.Target
            ?? throw BookRefusedException.For(Catalogue.BookNotWorkbook);
        WorkbookContent.CheckKind(ContentType(WorkbookPart));
        if (Relationships("").Any(r => r.Type.EndsWith("/digital-signature/origin", StringComparison.OrdinalIgnoreCase)))
        {
            throw BookRefusedException.For(Catalogue.BookSigned);
        }

        var workbook = WorkbookContent.Read(this);
        Sheets = workbook.Sheets;
        AllSheetNames = workbook.AllSheetNames;
        DefinedNames = workbook.DefinedNames;
        Date1904 = workbook.Date1904;
        IsStrict = workbook.IsStrict;
        StylesPart = PartOf("styles");
        SharedStringsPart = PartOf("sharedStrings");
        foreach (var sheet in Sheets)
        {
            // Read now, so that a harmful one refuses the book before anything is made of it.
            _ = Relationships(sheet.PartName);
        }
    }

    /// <summary>Names of the parts in the order of the zip, as the zip writes them.</summary>
    public IReadOnlyList<string> Parts { get; }

    /// <summary>How much the book may ask of the machine.</summary>
    public Caps Caps { get; }

    /// <summary>The part that is the workbook.</summary>
    public string WorkbookPart { get; }

    /// <summary>The worksheets in the order of their tabs; chart sheets are left out, but <see cref="SheetPart.Index"/> counts them.</summary>
    public IReadOnlyList<SheetPart> Sheets { get; }

    /// <summary>Names on all tabs, chart sheets and dialogue sheets too.</summary>
    public IReadOnlyList<string> AllSheetNames { get; }

    /// <summary>The styles part, where the book has one.</summary>
    public string? StylesPart { get; }

    /// <summary>The shared strings part, where the book has one.</summary>
    public string? SharedStringsPart { get; }

    /// <summary>All defined names, built-in ones too, in order.</summary>
    public IReadOnlyList<DefinedName> DefinedNames { get; }

    /// <summary>Whether dates count from 1904.</summary>
    public bool Date1904 { get; }

    /// <summary>Whether the book is written in the Strict family of namespaces.</summary>
    public bool IsStrict { get; }

    /// <summary>The zip itself, for copying entries.</summary>
    internal ZipArchive Archive { get; }

    /// <summary>Opens a package.</summary>
    /// <param name="book">The bytes of the workbook; must be able to seek. The caller keeps it open as long as the package, and closes it.</param>
    /// <param name="caps">How much it may ask of the machine; the usual where nothing is said.</param>
    /// <exception cref="BookRefusedException">It is no workbook, is damaged, or is over the caps.</exception>
    public static BookPackage Open(Stream book, Caps? caps = null)
    {
        caps ??= Caps.Usual;
        ZipArchive? archive = null;
        try
        {
            archive = new ZipArchive(book, ZipArchiveMode.Read, leaveOpen: true);
            return new BookPackage(archive, caps);
        }
        catch (Exception e)
        {
            archive?.Dispose();
            throw e is InvalidDataException ? BookRefusedException.Damaged(RefusalWords.Zip, e) : e;
        }
    }

    /// <summary>Whether the package has this part.</summary>
    /// <param name="part">Part name, without leading slash.</param>
    public bool Has(string part) => entries.ContainsKey(part);

    /// <summary>The whole of a part.</summary>
    /// <param name="part">Part name, without leading slash.</param>
    /// <exception cref="BookRefusedException">The part is missing, damaged or over the caps.</exception>
    public byte[] Read(string part)
    {
        using var stream = OpenPart(part);
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }

    /// <summary>A part while it inflates, counted against the caps.</summary>
    /// <param name="part">Part name, without leading slash.</param>
    /// <exception cref="BookRefusedException">The part is missing, damaged or over the caps.</exception>
    public Stream OpenPart(string part)
    {
        if (!entries.TryGetValue(part, out var entry))
        {
            throw BookRefusedException.Damaged(RefusalWords.Missing(part));
        }

        try
        {
            return new CappedStream(entry.Open(), entry.FullName, entry.CompressedLength, inflated, Caps);
        }
        catch (InvalidDataException e)
        {
            throw BookRefusedException.Damaged(part, e);
        }
    }

    /// <summary>The content type of a part; empty where none is declared.</summary>
    /// <param name="part">Part name, without leading slash.</param>
    public string ContentType(string part) => contentTypes.Of(part);

    /// <summary>The relationships of a part, in order; of the package for an empty name.</summary>
    /// <param name="part">Part name, without leading slash.</param>
    /// <exception cref="BookRefusedException">A target leaves the package, or the relationships cannot be read.</exception>
    public IReadOnlyList<Relationship> Relationships(string part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (!relationships.TryGetValue(part, out var found))
        {
            relationships[part] = found = RelationshipsPart.Read(this, part);
        }

        return found;
    }

    /// <summary>Closes the package, not the stream under it.</summary>
    public void Dispose() => Archive.Dispose();

    /// <summary>The name of a part as the zip writes it, found without regard to case.</summary>
    internal string NameInZip(string part) => entries.TryGetValue(part, out var entry) ? entry.FullName : part;

    private string? PartOf(string word) =>
        Relationships(WorkbookPart).FirstOrDefault(r => !r.IsExternal && r.Is(word) && Has(r.Target))?.Target;
}
