using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Writing;

/// <summary>What to say of the book around the list: protection, links to other books, and a print area without our columns.</summary>
internal static class Surroundings
{
    private const string PrintArea = "_xlnm.Print_Area";

    /// <summary>What to say.</summary>
    /// <param name="reading">The book as read.</param>
    /// <param name="columns">Where our columns stand.</param>
    /// <param name="structureIsProtected">Whether sheets can be neither added nor moved in an office program.</param>
    /// <param name="grid">The cells of a sheet.</param>
    public static IEnumerable<Finding> Say(
        BookReading reading, ListColumns columns, bool structureIsProtected, Func<SheetPart, SheetGrid> grid)
    {
        var list = reading.Pieces;
        if (list.Grid.IsProtected)
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

        if (LastPrinted(reading) is { } last && columns.Standing.Any(c => c.At > last))
        {
            yield return Catalogue.PrintAreaWithoutColumns.At(Subject.Book, list.Sheet.Name);
        }
    }

    // Null where the sheet has no print area, or one that is more than a list of ranges.
    private static int? LastPrinted(BookReading reading)
    {
        int? last = null;
        foreach (var name in reading.Package.DefinedNames.Where(n => n.Name == PrintArea && n.LocalSheet == reading.Pieces.Sheet.Index))
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
