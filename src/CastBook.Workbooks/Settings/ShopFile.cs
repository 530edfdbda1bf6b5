using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Settings;

/// <summary>The shop file: a workbook whose shop sheets stand in for those that a book lacks.</summary>
internal static class ShopFile
{
    /// <summary>Reads the shop file that the settings name; null where they name none.</summary>
    /// <exception cref="BookRefusedException">The file is missing or no workbook.</exception>
    public static ShopReading? Read(BookSettings settings)
    {
        if (settings.ShopFile is not { } path)
        {
            return null;
        }

        var name = Path.GetFileName(path);
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            BookGate.Admit(stream, path);
            using var package = BookPackage.Open(stream, settings.Caps);
            var values = new CellValues(NumberFormats.Read(package), package.Date1904);
            var reading = new ShopReader(package, SharedStrings.Read(package), values, OwnMarks.Of(package), BookSettings.None, new CellMap()).Read(null);
            return reading with
            {
                Origins = reading.Origins.ToDictionary(o => o.Key, o => o.Value with { From = $"the shop file {name}, {o.Value.From}" }, StringComparer.OrdinalIgnoreCase),
                Findings = [.. reading.Findings.Select(f => f with { Seen = $"In {name}: {f.Seen}" })],
            };
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookRefusedException(Catalogue.ShopFileUnreadable.At(Subject.Book, path), e);
        }
    }

    /// <summary>The book's own shop, with the sheets it lacks from the shop file.</summary>
    public static Shop Under(ShopReading book, ShopReading file)
    {
        bool Lacks(ShopSheet sheet) => !book.Sheets.ContainsKey(sheet.Name);
        return book.Shop with
        {
            FlaskSizes = Lacks(ShopSheet.Flasks) ? file.Shop.FlaskSizes : book.Shop.FlaskSizes,
            Crucibles = Lacks(ShopSheet.Crucibles) ? file.Shop.Crucibles : book.Shop.Crucibles,
            Kilns = Lacks(ShopSheet.Kilns) ? file.Shop.Kilns : book.Shop.Kilns,
            Alloys = Lacks(ShopSheet.Alloys) ? file.Shop.Alloys : book.Shop.Alloys,
            Materials = Lacks(ShopSheet.Materials) ? file.Shop.Materials : book.Shop.Materials,
            Investments = Lacks(ShopSheet.Investments) ? file.Shop.Investments : book.Shop.Investments,
            Schedules = Lacks(ShopSheet.Schedules) ? file.Shop.Schedules : book.Shop.Schedules,
        };
    }
}
