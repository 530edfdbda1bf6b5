using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Pieces;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Reading;

/// <summary>Reads a workbook; the only way in.</summary>
public static class BookReader
{
    /// <summary>Reads a workbook.</summary>
    /// <param name="book">Its bytes; the caller keeps the stream open as long as the reading's package, and closes it. A stream that cannot seek is copied to memory first.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <param name="fileName">The file's name, by which a wrong extension is recognised; empty to leave that out.</param>
    /// <returns>The reading; its <see cref="BookReading.Package"/> is the caller's to dispose.</returns>
    /// <exception cref="BookRefusedException">The file is no workbook this program can read, or has no list of pieces.</exception>
    public static BookReading Read(Stream book, BookSettings settings, string fileName = "")
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(settings);
        var bytes = Seekable(book);
        BookGate.Admit(bytes, fileName);
        var package = BookPackage.Open(bytes);
        try
        {
            return Read(package, settings);
        }
        catch
        {
            package.Dispose();
            throw;
        }
    }

    private static BookReading Read(BookPackage package, BookSettings settings)
    {
        var strings = SharedStrings.Read(package);
        var formats = NumberFormats.Read(package);
        var values = new CellValues(formats, package.Date1904);
        var marks = OwnMarks.Of(package);
        var cells = new CellMap();
        var file = ShopFile.Read(settings);
        var shop = new ShopReader(package, strings, values, marks, settings, cells).Read(file?.Shop.Settings);
        if (file is not null)
        {
            shop = shop with { Shop = ShopFile.Under(shop, file), Findings = [.. shop.Findings, .. file.Findings] };
        }

        var taken = marks.Sheets.Values.Concat(shop.Sheets.Values).ToHashSet();
        var found = new ListFinder(package, strings, settings, marks).Find([.. package.Sheets.Where(s => !taken.Contains(s))]);
        var list = ListReader.Read(package, strings, formats, values, marks, found, settings.Columns);
        cells.AddList(list.Sheet);
        foreach (var (field, column) in list.Unread)
        {
            cells.Add(Subject.Column(field), new CellRef(list.Sheet.Sheet.Name, list.Sheet.HeadingRow, column));
        }

        return new BookReading
        {
            Package = package,
            Pieces = list.Sheet,
            Night = new Night
            {
                Pieces = list.Pieces,
                Shop = settings.Night is { } night
                    ? shop.Shop with { Settings = shop.Shop.Settings with { Night = NightName.Of(night) } }
                    : shop.Shop,
                Today = settings.Today,
                WeightsAreOf = list.WeightsAreOf != WeightMeaning.Unknown ? list.WeightsAreOf : shop.Shop.Settings.WeightsAreOf,
                Trees = shop.Trees,
            },
            Cells = cells,
            OwnSheets = marks.Sheets,
            ShopSheets = shop.Sheets,
            Findings = [.. list.Findings, .. shop.Findings, .. UnknownColumns(settings)],
        };
    }

    private static IEnumerable<Finding> UnknownColumns(BookSettings settings)
    {
        var known = HeadingWords.Piece.Select(f => f.Field).ToList();
        return settings.Columns.Keys
            .Where(k => !known.Contains(k, StringComparer.OrdinalIgnoreCase))
            .Select(k => Catalogue.SettingUnknown.At(Subject.Book, k, Nearest.To(k, known)));
    }

    private static Stream Seekable(Stream book)
    {
        if (book.CanSeek)
        {
            return book;
        }

        var copy = new MemoryStream();
        book.CopyTo(copy);
        return copy;
    }
}
