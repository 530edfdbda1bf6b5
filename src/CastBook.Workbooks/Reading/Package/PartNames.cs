using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;

namespace CastBook.Workbooks.Reading.Package;

/// <summary>The names of parts: which of a zip's entries are parts, and where a relationship leads.</summary>
internal static class PartNames
{
    /// <summary>Whether a zip entry can be a part: no folder, and no name that would leave the package.</summary>
    public static bool IsPart(string entry) =>
        entry.Length > 0 && entry[0] != '/' && entry[^1] != '/' && !entry.Contains('\\', StringComparison.Ordinal)
        && !entry.Contains(':', StringComparison.Ordinal) && !entry.Split('/').Contains("..");

    /// <summary>The relationships part of a part; of the package itself for an empty name.</summary>
    public static string RelationshipsOf(string part)
    {
        var slash = part.LastIndexOf('/');
        return $"{part[..(slash + 1)]}_rels/{part[(slash + 1)..]}.rels";
    }

    /// <summary>The part a relative or absolute target means, seen from its source. A target outside the package refuses the book.</summary>
    /// <param name="source">The part that has the relationship; empty for the package.</param>
    /// <param name="target">The target as written.</param>
    public static string Resolve(string source, string target)
    {
        var path = target.Split('#')[0];
        var folders = path.StartsWith('/') ? [] : new List<string>(source.Split('/')[..^1]);
        foreach (var step in path.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            if (step == ".." && folders.Count == 0)
            {
                throw BookRefusedException.For(Catalogue.BookUnsafe, target);
            }

            if (step == "..")
            {
                folders.RemoveAt(folders.Count - 1);
            }
            else if (step != ".")
            {
                folders.Add(Uri.UnescapeDataString(step));
            }
        }

        return string.Join('/', folders);
    }
}
