using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Writing;

/// <summary>What to say of the book around the lists: protection, links to other books, and a print area without our columns.</summary>
internal static class Surroundings
{
    private const string PrintArea = "_xlnm.Print_Area";

    /// <summary>What to say.</summary>
    /// <param name="reading">The book as read.</param>
    /// <param name="lists">The lists, and where our columns stand in them.</param>
    /// <param name="structureIsProtected">Whether sheets can be neither added nor moved in an office program.</param>
    /// <param name="grid">The cells of a sheet.</param>
    public static IEnumerable<Finding> Say(
        BookReading reading, IReadOnlyList<ListColumns> lists, bool structureIsProtected, Func<SheetPart, SheetGrid> grid)
    {
        foreach (var list in reading.Lists.Where(l => l.Grid.IsProtected))
        {
            yield return Catalogue.SheetProtected.At(Subject.Book, list.Sheet.Name);
        }

        foreach (var sheet in reading.ShopSheets.Values.Distinct().Where(s => grid(s).IsProtected).OrderBy(s => s.Index))
        {
            yield return Catalogue.SheetProtected.At(Subject.Book, sheet.Name);
        }

        if (structureIsProtected)
        {
            yield return Catalogue.StructureProtected.At(Subject.Book);
        }

        if (reading.Package.Relationships(reading.Package.WorkbookPart).Any(r => r.Is("externalLink")))
        {
            yield return Catalogue.ExternalLinks.At(Subject.Book);
        }

        foreach (var list in lists.Where(l => LastPrinted(reading.Package, l.List.Sheet) is { } last && l.Standing.Any(c => c.At > last)))
        {
            yield return Catalogue.PrintAreaWithoutColumns.At(Subject.Book, list.List.Sheet.Name);
        }
    }

    // Null where the sheet has no print area, or one that is more than a list of ranges.
    private static int? LastPrinted(BookPackage package, SheetPart sheet)
    {
        int? last = null;
        foreach (var name in package.DefinedNames.Where(n => n.Name == PrintArea && n.LocalSheet == sheet.Index))
        {
            foreach (var area in name.Text.Split(','))
            {
                if (!CellRange.TryParse(area.AsSpan(area.LastIndexOf('!') + 1), out var range))
                {
                    return null;
                }

                last = Math.Max(last ?? 0, range.LastColumn);
            }
        }

        return last;
    }
}
