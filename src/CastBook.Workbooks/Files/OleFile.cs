using System.Text;
using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Files;

/// <summary>Compound files: the container of password-protected workbooks and of old .xls ones.</summary>
internal static class OleFile
{
    // More than any directory of such a file needs; a file is looked through in pieces, not loaded.
    private const int Window = 1 << 16;

    public static bool Is(ReadOnlySpan<byte> start) =>
        start.StartsWith<byte>([0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1]);

    /// <summary>What the compound file is, by the names of its streams.</summary>
    public static FindingKind KindOf(Stream file)
    {
        var password = Encoding.Unicode.GetBytes("EncryptedPackage");
        var workbook = Encoding.Unicode.GetBytes("Workbook");
        var book = Encoding.Unicode.GetBytes("Book");
        var old = false;
        var window = new byte[Window];
        var kept = 0;
        file.Position = 0;
        int read;
        while ((read = file.Read(window, kept, window.Length - kept)) > 0)
        {
            var seen = window.AsSpan(0, kept + read);
            if (seen.IndexOf(password) >= 0)
            {
                return Catalogue.BookPassword;
            }

            old |= seen.IndexOf(workbook) >= 0 || seen.IndexOf(book) >= 0;

            // A name may lie across two pieces.
            kept = Math.Min(seen.Length, password.Length);
            seen[^kept..].CopyTo(window);
        }

        return old ? Catalogue.BookOldFormat : Catalogue.BookNotWorkbook;
    }
}
