using System.IO.Compression;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Writing;

/// <summary>Writes a package anew: same entries, order, time stamps and attributes; untouched parts copied, touched ones spliced.</summary>
internal static class PackageWriter
{
    /// <summary>Time stamp of parts we add: no clock goes into a book.</summary>
    public static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Writes the package with the edits in it.</summary>
    /// <param name="package">The package as read.</param>
    /// <param name="edits">What to change.</param>
    /// <param name="output">Where to; must be seekable.</param>
    /// <param name="watch">Looks at each spliced part as it is made, by name, beside the deflating; reads it to its end.</param>
    public static void Write(BookPackage package, BookEdits edits, Stream output, Action<string, Stream>? watch = null)
    {
        var parts = edits.Finish();
        using var archive = new ZipArchive(output, ZipArchiveMode.Create, leaveOpen: true);
        archive.Comment = package.Archive.Comment;
        foreach (var source in package.Archive.Entries.Where(e => !edits.RemovedParts.Contains(e.FullName)))
        {
            var entry = archive.CreateEntry(source.FullName, CompressionLevel.Optimal);
            entry.LastWriteTime = source.LastWriteTime;
            entry.ExternalAttributes = source.ExternalAttributes;
            entry.Comment = source.Comment;
            if (source.FullName.EndsWith('/'))
            {
                // A folder's entry has no content.
                continue;
            }

            using var target = entry.Open();
            if (parts.TryGetValue(source.FullName, out var bytes))
            {
                target.Write(bytes);
            }
            else
            {
                WritePart(package, source, edits.Sheets.GetValueOrDefault(source.FullName), target, watch);
            }
        }

        foreach (var (name, bytes) in parts.Where(p => !package.Has(p.Key)))
        {
            var entry = archive.CreateEntry(name, CompressionLevel.Optimal);
            entry.LastWriteTime = NoTime;
            using var target = entry.Open();
            target.Write(bytes);
        }
    }

    private static void WritePart(BookPackage package, ZipArchiveEntry source, SheetEdits? edits, Stream target, Action<string, Stream>? watch)
    {
        // An entry whose name would leave the package is no part, but it stays what it was: not ours.
        using var part = package.Has(source.FullName)
            ? package.OpenPart(source.FullName)
            : new CappedStream(source.Open(), source.FullName, source.CompressedLength, new InflatedBytes(), package.Caps);
        if (edits is null or { IsEmpty: true })
        {
            part.CopyTo(target);
            return;
        }

        // Splicing, deflating and watching run side by side.
        List<Action<Stream>> wanted = [pieces => pieces.CopyTo(target)];
        if (watch is not null)
        {
            wanted.Add(pieces => watch(source.FullName, pieces));
        }

        var readers = wanted.ConvertAll(_ => new ChunkReader());
        var beside = wanted.Zip(readers, (read, reader) => Task.Run(() => Read(reader, read))).ToList();
        try
        {
            using var pieces = new ChunkWriter([.. readers]);
            SheetSplicer.Apply(part, pieces, edits);
        }
        finally
        {
            Task.WhenAll(beside).GetAwaiter().GetResult();
        }
    }

    // Whatever becomes of the reader: a disk that is full must not leave the splicer waiting.
    private static void Read(ChunkReader pieces, Action<Stream> read)
    {
        using (pieces)
        {
            read(pieces);
        }
    }
}
