using CastBook.Planning.Findings;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Text;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Files;

/// <summary>Fills a list in separated text: a workbook is made of it, from the template beside it where one lies there, and filled. The text is only read.</summary>
public static class TextFile
{
    private static readonly string[] Extensions = [".csv", ".tsv", ".tab", ".txt"];

    /// <summary>Whether a file is separated text, by its name.</summary>
    /// <param name="path">The file.</param>
    public static bool Is(string path) => Extensions.Contains(Path.GetExtension(path), StringComparer.OrdinalIgnoreCase);

    /// <summary>The workbook that a list in text becomes when no other place is named: of its name, beside it.</summary>
    /// <param name="path">The list.</param>
    public static string BookBeside(string path) => Path.ChangeExtension(path, ".xlsx");

    /// <summary>Makes a workbook of a list and fills it.</summary>
    /// <param name="path">The list.</param>
    /// <param name="outPath">Where the workbook goes; null for beside the list, where none of that name may stand yet.</param>
    /// <param name="dryRun">Whether to only say what would be done.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <param name="clock">For the name of a backup.</param>
    /// <returns>What was answered.</returns>
    /// <exception cref="BookRefusedException">The list cannot be read.</exception>
    /// <exception cref="BookNotWrittenException">The workbook could not be put in its place.</exception>
    /// <exception cref="Verifying.BrokenOutputException">A fault of CastBook; nothing was written.</exception>
    public static FillResult Fill(string path, string? outPath, bool dryRun, BookSettings settings, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(path);
        var target = outPath ?? BookBeside(path);
        if (outPath is null && !dryRun && File.Exists(target))
        {
            throw BookNotWrittenException.For(Catalogue.TextHasBook, null, Path.GetFileName(target), Path.GetFileName(path));
        }

        var made = Path.GetTempFileName();
        try
        {
            var rows = TextTable.Read(TextDecoder.Decode(Bytes(path)));
            using (var book = new FileStream(made, FileMode.Create, FileAccess.ReadWrite))
            {
                Make(rows, TemplateBeside(path), settings, book);
            }

            if (!OperatingSystem.IsWindows())
            {
                // A new workbook is for whoever may read the list, not only for who fills it.
                File.SetUnixFileMode(made, File.GetUnixFileMode(path));
            }

            return BookFile.Fill(made, target, dryRun, settings, clock).Result;
        }
        finally
        {
            File.Delete(made);
        }
    }

    /// <summary>A list in text as a plain workbook in memory.</summary>
    /// <param name="path">The list.</param>
    /// <exception cref="BookRefusedException">The list cannot be read.</exception>
    internal static MemoryStream AsBook(string path)
    {
        var book = new MemoryStream();
        TextBook.Write(TextTable.Read(TextDecoder.Decode(Bytes(path))), book);
        book.Position = 0;
        return book;
    }

    private static string? TemplateBeside(string path) =>
        Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, TextTemplate.FileName) is var beside && File.Exists(beside) ? beside : null;

    private static void Make(IReadOnlyList<string[]> rows, string? template, BookSettings settings, Stream book)
    {
        if (template is null)
        {
            TextBook.Write(rows, book);
            return;
        }

        using var list = new MemoryStream();
        TextBook.Write(rows, list);
        try
        {
            using var file = new FileStream(template, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            TextTemplate.Write(file, list, rows, settings, book);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookRefusedException(Catalogue.BookCannotBeOpened.At(Subject.Book, TextTemplate.FileName, e.Message), e);
        }
    }

    /// <summary>The bytes of a text, which another program may have open.</summary>
    /// <param name="path">The file.</param>
    internal static byte[] Bytes(string path)
    {
        try
        {
            using var list = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            if (list.Length > Caps.RatioFrom)
            {
                throw BookRefusedException.For(Catalogue.BookTooMuch, RefusalWords.ListTooLong);
            }

            var bytes = new byte[list.Length];
            list.ReadExactly(bytes);
            return bytes;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookRefusedException(Catalogue.BookCannotBeOpened.At(Subject.Book, Path.GetFileName(path), e.Message), e);
        }
    }
}
