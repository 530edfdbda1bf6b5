using System.IO.Compression;
using System.IO.Pipelines;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Writing;

/// <summary>Writes a package anew: same entries, order, time stamps and attributes; untouched parts copied, touched ones spliced.</summary>
internal static class PackageWriter
{
    private const int PipeBytes = 1 << 20;

    /// <summary>Time stamp of parts we add: no clock goes into a book.</summary>
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Writes the package with the edits in it.</summary>
    /// <param name="package">The package as read.</param>
    /// <param name="edits">What to change.</param>
    /// <param name="output">Where to; must be seekable.</param>
    public static void Write(BookPackage package, BookEdits edits, Stream output)
    {
        var parts = edits.Finish();
        using var archive = new ZipArchive(output, ZipArchiveMode.Create, leaveOpen: true);
        foreach (var source in package.Archive.Entries)
        {
            var entry = archive.CreateEntry(source.FullName, CompressionLevel.Optimal);
            entry.LastWriteTime = source.LastWriteTime;
            entry.ExternalAttributes = source.ExternalAttributes;
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
                WritePart(package, source, edits.Sheets.GetValueOrDefault(source.FullName), target);
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

    private static void WritePart(BookPackage package, ZipArchiveEntry source, SheetEdits? edits, Stream target)
    {
        // An entry whose name would leave the package is no part, but it stays what it was: not ours.
        using var part = package.Has(source.FullName)
            ? package.OpenPart(source.FullName)
            : new CappedStream(source.Open(), source.FullName, source.CompressedLength, new InflatedBytes());
        if (edits is null or { IsEmpty: true })
        {
            part.CopyTo(target);
            return;
        }

        // Splicing and deflating take about as long as each other, so they run side by side.
        var pipe = new Pipe(new PipeOptions(pauseWriterThreshold: PipeBytes, resumeWriterThreshold: PipeBytes / 2));
        var deflating = Task.Run(() => Deflate(pipe.Reader, target));
        try
        {
            using var pieces = new BufferedStream(pipe.Writer.AsStream(), 1 << 16);
            SheetSplicer.Apply(part, pieces, edits);
        }
        finally
        {
            deflating.GetAwaiter().GetResult();
        }
    }

    private static async Task Deflate(PipeReader reader, Stream target)
    {
        try
        {
            await reader.CopyToAsync(target).ConfigureAwait(false);
        }
        finally
        {
            // A disk that is full must not leave the splicer waiting.
            await reader.CompleteAsync().ConfigureAwait(false);
        }
    }
}
