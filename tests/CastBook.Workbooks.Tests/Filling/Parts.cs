using System.IO.Compression;
using System.Security.Cryptography;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>The parts of a book, in order, with the hash of their bytes.</summary>
internal static class Parts
{
    public static IReadOnlyList<(string Name, string Hash)> Of(byte[] book)
    {
        using var archive = new ZipArchive(new MemoryStream(book));
        return [.. archive.Entries.Select(e =>
        {
            using var part = e.Open();
            return (e.FullName, Convert.ToHexString(SHA256.HashData(part)));
        })];
    }
}
