using System.IO.Compression;
using System.Text;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Files;

/// <summary>Decides from its first bytes what a file is, and refuses in one sentence what cannot be read.</summary>
/// <remarks>The package checks the rest: caps, duplicates, names and targets that leave the file.</remarks>
public static class BookGate
{
    private const int Peek = 4096;

    private static readonly string[] BookExtensions = [".xlsx", ".xlsm", ".xltx", ".xltm"];

    /// <summary>Lets a workbook through and refuses anything else; the stream stands at its start again.</summary>
    /// <param name="book">The file's bytes; must be able to seek.</param>
    /// <param name="fileName">The file's name, by which a wrong extension is recognised; empty to leave that out.</param>
    /// <exception cref="BookRefusedException">The file is no .xlsx workbook.</exception>
    public static void Admit(Stream book, string fileName = "")
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(fileName);
        book.Position = 0;
        var first = new byte[Peek];
        var start = first.AsSpan(0, book.ReadAtLeast(first, Peek, throwOnEndOfStream: false));
        if (start.Length == 0)
        {
            throw BookRefusedException.For(Catalogue.BookEmpty);
        }

        if (OleFile.Is(start))
        {
            throw BookRefusedException.For(OleFile.KindOf(book));
        }

        if (!start.StartsWith("PK"u8))
        {
            throw Text(start, fileName);
        }

        RefuseOtherPackages(book);
        var extension = Path.GetExtension(fileName);
        if (fileName.Length > 0 && !BookExtensions.Contains(extension, StringComparer.OrdinalIgnoreCase))
        {
            throw BookRefusedException.For(Catalogue.BookWrongExtension, extension.Length == 0 ? RefusalWords.NoEnding : extension);
        }

        book.Position = 0;
    }

    private static void RefuseOtherPackages(Stream book)
    {
        book.Position = 0;
        try
        {
            using var archive = new ZipArchive(book, ZipArchiveMode.Read, leaveOpen: true);
            if (archive.GetEntry("mimetype") is { } mime && Start(mime).StartsWith("application/vnd.oasis.opendocument", StringComparison.Ordinal))
            {
                throw BookRefusedException.For(Catalogue.BookOtherFormat, RefusalWords.OpenDocument);
            }

            if (archive.GetEntry("[Content_Types].xml") is null)
            {
                throw BookRefusedException.For(Catalogue.BookNotWorkbook);
            }
        }
        catch (InvalidDataException e)
        {
            throw BookRefusedException.Damaged(RefusalWords.EndOfZip, e);
        }
    }

    private static string Start(ZipArchiveEntry entry)
    {
        using var stream = entry.Open();
        Span<byte> bytes = stackalloc byte[64];
        return Encoding.ASCII.GetString(bytes[..stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)]);
    }

    private static BookRefusedException Text(ReadOnlySpan<byte> start, string fileName)
    {
        var text = Decode(start);
        if (text is null)
        {
            return BookRefusedException.For(Catalogue.BookNotWorkbook);
        }

        var trimmed = text.TrimStart();
        if (trimmed.StartsWith('<'))
        {
            return Markup(trimmed);
        }

        var extension = Path.GetExtension(fileName);
        var firstLine = trimmed.Split('\n')[0];
        var isTable = firstLine.AsSpan().ContainsAny(",;\t")
            || extension.Equals(".csv", StringComparison.OrdinalIgnoreCase) || extension.Equals(".tsv", StringComparison.OrdinalIgnoreCase);
        return BookRefusedException.For(isTable ? Catalogue.BookCsv : Catalogue.BookNotWorkbook);
    }

    private static BookRefusedException Markup(string text)
    {
        bool Says(string words) => text.Contains(words, StringComparison.OrdinalIgnoreCase);
        if (Says("urn:schemas-microsoft-com:office:spreadsheet") || Says("mso-application"))
        {
            return BookRefusedException.For(Catalogue.BookOtherFormat, RefusalWords.XmlSpreadsheet);
        }

        return Says("<html") || Says("<table") || Says("<!doctype html")
            ? BookRefusedException.For(Catalogue.BookOtherFormat, RefusalWords.WebPage)
            : BookRefusedException.For(Catalogue.BookNotWorkbook);
    }

    // Null where the bytes are no text. UTF-16 by its byte order mark; anything else must be free of zero bytes.
    private static string? Decode(ReadOnlySpan<byte> start)
    {
        if (start.StartsWith<byte>([0xFF, 0xFE]))
        {
            return Encoding.Unicode.GetString(start[2..]);
        }

        if (start.StartsWith<byte>([0xFE, 0xFF]))
        {
            return Encoding.BigEndianUnicode.GetString(start[2..]);
        }

        return start.Contains((byte)0) ? null : Encoding.UTF8.GetString(start).TrimStart('\uFEFF');
    }
}
