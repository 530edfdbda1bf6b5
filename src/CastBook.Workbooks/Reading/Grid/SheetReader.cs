using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Xml;

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
            using var part = package.OpenPart(sheet.PartName);
            using var utf8 = XmlEncoding.ToUtf8(part);
            var pass = new SheetPass(new XmlScanner(utf8, StringItems.MostHeld), package.Date1904, lastRow);
            pass.Run();
            return new SheetGrid(pass.Cells, strings, pass.Frame);
        }
        catch (InvalidDataException e)
        {
            throw BookRefusedException.Damaged(RefusalWords.Sheet(sheet.Name), e);
        }
    }
}
