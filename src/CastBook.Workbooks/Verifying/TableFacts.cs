using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <summary>A table of the book.</summary>
/// <param name="Sheet">The sheet it lies on.</param>
/// <param name="Name">Its name in formulas.</param>
/// <param name="Part">Its part.</param>
internal sealed record TableFacts(SheetPart Sheet, string Name, XmlPart Part)
{
    /// <summary>Its range; null where that cannot be read.</summary>
    public CellRange? Range => CellRange.TryParse(Part.Attribute(Part.Root, "ref"), out var range) ? range : null;

    /// <summary>The tables of a sheet.</summary>
    /// <param name="package">The book.</param>
    /// <param name="sheet">The sheet.</param>
    public static IEnumerable<TableFacts> Of(BookPackage package, SheetPart sheet) => package.Relationships(sheet.PartName)
        .Where(r => !r.IsExternal && r.Is("table") && package.Has(r.Target))
        .Select(r => (r.Target, Part: new XmlPart(package.Read(r.Target))))
        .Select(t => new TableFacts(sheet, t.Part.Attribute(t.Part.Root, "displayName") ?? t.Target, t.Part));
}
