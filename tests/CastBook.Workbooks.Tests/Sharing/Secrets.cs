using System.IO.Compression;
using System.Text;

namespace CastBook.Workbooks.Tests.Sharing;

/// <summary>Words that stand nowhere else, each planted in one place, and the search for them in every byte of a package.</summary>
internal sealed class Secrets
{
    private readonly List<string> all = [];

    /// <summary>A new word; the place is in it, so that a failing test says where it came from.</summary>
    /// <param name="place">Where it is planted; letters only.</param>
    public string this[string place]
    {
        get
        {
            var word = $"Zq{place}xW{all.Count}";
            all.Add(word);
            return word;
        }
    }

    /// <summary>How many were planted.</summary>
    public int Count => all.Count;

    /// <summary>The words found in a package: as UTF-8 and UTF-16, in parts, their names, and in the zip around them.</summary>
    public IReadOnlyList<string> In(byte[] package) => Found(package, all);

    /// <summary>Those of some words that stand in a package.</summary>
    public static IReadOnlyList<string> Found(byte[] package, IEnumerable<string> words)
    {
        var contents = Contents(package).ToList();
        return [.. words.Where(w => contents.Exists(c => c.Contains(w, StringComparison.OrdinalIgnoreCase)))];
    }

    private static IEnumerable<string> Contents(byte[] package)
    {
        foreach (var text in Readings(package))
        {
            yield return text;
        }

        using var archive = new ZipArchive(new MemoryStream(package));
        yield return archive.Comment;
        foreach (var entry in archive.Entries)
        {
            yield return $"{entry.FullName}\n{entry.Comment}";
            using var content = new MemoryStream();
            using (var stream = entry.Open())
            {
                stream.CopyTo(content);
            }

            foreach (var text in Readings(content.ToArray()))
            {
                yield return text;
            }
        }
    }

    private static IEnumerable<string> Readings(byte[] bytes) =>
    [
        Encoding.Latin1.GetString(bytes), Encoding.UTF8.GetString(bytes), Encoding.Unicode.GetString(bytes), Encoding.BigEndianUnicode.GetString(bytes),
        bytes.Length > 1 ? Encoding.Unicode.GetString(bytes, 1, bytes.Length - 1) : "",
    ];
}
