using System.Xml;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>Reads a sheet's part into a grid, in one pass.</summary>
public static class SheetReader
{
    /// <summary>Reads a sheet.</summary>
    /// <param name="package">The book.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="strings">The book's shared strings.</param>
    /// <param name="lastRow">Where to stop: nothing below this row is read, and nothing of what follows the cells.</param>
    /// <exception cref="BookRefusedException">The part cannot be read.</exception>
    public static SheetGrid Read(BookPackage package, SheetPart sheet, SharedStrings strings, int lastRow = CellRef.MaxRow)
    {
        ArgumentNullException.ThrowIfNull(package);
        ArgumentNullException.ThrowIfNull(sheet);
        try
        {
            using var xml = PackageXml.Open(package.OpenPart(sheet.PartName));
            var pass = new SheetPass(xml, package.Date1904, lastRow);
            pass.Run();
            return new SheetGrid(pass.Cells, strings, pass.Frame);
        }
        catch (Exception e) when (e is XmlException or InvalidDataException)
        {
            throw BookRefusedException.Damaged($"sheet {sheet.Name}", e);
        }
    }
}
