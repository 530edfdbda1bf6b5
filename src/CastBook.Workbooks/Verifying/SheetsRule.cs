using System.Buffers;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <summary>Sheet names are unique, not too long and of allowed characters; sheet ids are unique.</summary>
internal sealed class SheetsRule : PackageRule
{
    private const int LongestName = 31;
    private static readonly SearchValues<char> Forbidden = SearchValues.Create(@"[]:*?/\");

    /// <inheritdoc/>
    public override IEnumerable<string> Faults(BookFacts book)
    {
        var part = new XmlPart(book.Package.Read(book.Package.WorkbookPart));
        if (part.Child(part.Root, "sheets") is not { } sheets)
        {
            yield break;
        }

        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var sheet in part.Children(sheets))
        {
            var name = part.Attribute(sheet, "name") ?? "";
            if (name.Length is 0 or > LongestName || !names.Add(name))
            {
                yield return $"The sheet name \"{name}\" is too long or used twice.";
            }

            if (name.AsSpan().ContainsAny(Forbidden) || name.StartsWith('\'') || name.EndsWith('\''))
            {
                yield return $"The sheet name \"{name}\" has a character that no sheet name can have.";
            }

            if (!ids.Add(part.Attribute(sheet, "sheetId") ?? ""))
            {
                yield return $"The sheet {name} has the id of another sheet.";
            }
        }
    }
}
