using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Tells whether a book computes anything, so that a book of plain values is not asked to.</summary>
internal static class BookFormulas
{
    /// <summary>Whether any sheet of the shop's has a formula.</summary>
    /// <param name="reading">The book as read.</param>
    public static bool Any(BookReading reading)
    {
        var package = reading.Package;
        return reading.Lists.Any(l => l.Grid.HasFormulas)
            || package.Relationships(package.WorkbookPart).Any(r => r.Is("calcChain"))
            || package.Sheets.Except(reading.OwnSheets.Values.Concat(reading.Lists.Select(l => l.Sheet))).Any(sheet => IsIn(package, sheet));
    }

    private static bool IsIn(BookPackage package, SheetPart sheet)
    {
        using var raw = package.OpenPart(sheet.PartName);
        using var stream = XmlEncoding.ToUtf8(raw);
        var scanner = new XmlScanner(stream);
        while (scanner.Next())
        {
            if (scanner.LocalName.SequenceEqual("f"u8))
            {
                return true;
            }

            scanner.Drop();
        }

        return false;
    }
}
