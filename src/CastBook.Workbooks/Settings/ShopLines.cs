using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Settings;

/// <summary>The lines of one of the shop's sheets: those of the book over those of the shop file, by name.</summary>
internal static class ShopLines
{
    /// <summary>The book's lines, each over the shop file's of the same name, then the lines that only the shop file has.</summary>
    /// <param name="book">The book's sheet; missing where it has none.</param>
    /// <param name="cells">Takes down where the book's lines stand.</param>
    /// <param name="file">The shop file; missing where there is none.</param>
    /// <param name="under">Its sheet; missing where it has none.</param>
    public static IEnumerable<ShopRow> Of(ShopTable? book, CellMap cells, ShopFile? file, ShopTable? under)
    {
        List<ShopRow> below = [.. under?.NamedRows() ?? []];
        book?.Map(cells);
        foreach (var row in book?.NamedRows() ?? [])
        {
            var line = row;
            if (below.Find(r => IsSame(r.Name, row.Name)) is { } found)
            {
                below.Remove(found);
                var lower = found.Named(row.Name);
                lower.Map(file!.Cells);
                line = row.Over(lower);
                Compare(book!, row, lower, file);
            }

            line.Map(cells);
            yield return line;
        }

        foreach (var row in below)
        {
            row.Map(file!.Cells);
            yield return row;
        }
    }

    /// <summary>Whether two names are the same but for capitals, blanks and the sign between measures.</summary>
    /// <param name="one">A name.</param>
    /// <param name="other">Another.</param>
    public static bool IsSame(string one, string other) => string.Equals(Plain(one), Plain(other), StringComparison.OrdinalIgnoreCase);

    private static string Plain(string name) => string.Concat(name.Where(c => !char.IsWhiteSpace(c))).Replace('×', 'x');

    private static void Compare(ShopTable book, ShopRow row, ShopRow file, ShopFile from)
    {
        foreach (var field in book.Sheet.Columns.Select(c => c.Field).Where(f => f != ShopField.Name && row.Contradicts(file, f)))
        {
            var subject = new Subject(book.Sheet.Kind, row.Name, field);
            book.Findings.Add(Catalogue.ShopFileDiffers.At(
                subject, $"{book.Sheet.Called} {row.Name}", row.Shown(field), book.Fields[field].Heading.Text, from.PlaceOf(subject)!, file.Shown(field)));
        }
    }
}
