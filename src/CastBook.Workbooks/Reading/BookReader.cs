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
using CastBook.Workbooks.Words;

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
        var package = BookPackage.Open(bytes, settings.Caps);
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
        var shop = new ShopReader(package, strings, values, marks, settings, cells).Read(ShopFile.Read(settings));
        var taken = marks.Sheets.Values.Concat(shop.Sheets.Values).ToHashSet();
        var wanted = WantedSheets.Of(shop.Shop.Settings, settings, cells);
        var found = new ListFinder(package, strings, settings.Columns, marks, [.. shop.Sheets.Keys]).Find([.. package.Sheets.Where(s => !taken.Contains(s))], wanted);
        var lists = ListsReading.Read(new ListReader(package, strings, formats, values, marks, settings.Columns, shop.Shop), found, marks);
        Place(lists.Lists, cells);

        var tonight = settings.Night is { } night
            ? shop.Shop with { Settings = shop.Shop.Settings with { Night = NightName.Of(night) } }
            : shop.Shop;
        var more = new List<Finding>();
        if (lists.WeightsHaveGates)
        {
            tonight = tonight with { Settings = tonight.Settings with { WeightsIncludeGates = true } };
        }

        tonight = tonight with { Settings = UnitsOfBook.Fill(tonight.Settings, lists.Lists, shop.Columns, more) };
        var days = lists.Lists.Aggregate(formats.Days, (all, l) => all | l.Days);
        var clock = ClockReader.Read(settings, tonight.Settings, days, more);
        return new BookReading
        {
            Package = package,
            Strings = strings,
            Lists = [.. lists.Lists.Select(l => l.Sheet)],
            Night = new Night
            {
                Pieces = lists.Pieces,
                Shop = tonight,
                Clock = clock,
                Log = settings.Log,
                MetalInHandOnly = settings.MetalInHandOnly,
                Today = settings.Today,
                WeightsAreOf = lists.WeightsAreOf is not WeightMeaning.Unknown and var said ? said : shop.Shop.Settings.WeightsAreOf,
                Trees = shop.Trees,
            },
            WeightsHaveGates = lists.WeightsHaveGates,
            Cells = cells,
            Days = ClockReader.Orders(tonight.Settings, days),
            ColumnsElsewhere = [.. marks.ColumnNames.Except(lists.Lists.SelectMany(l => l.Sheet.OwnColumns.Keys.Select(l.Sheet.NameOf)))],
            OwnSheets = marks.Sheets,
            ShopSheets = shop.Sheets,
            Origins = settings.Night is { } asked
                ? new Dictionary<string, SettingOrigin>(shop.Origins, StringComparer.OrdinalIgnoreCase) { [SettingName.Night] = new(asked, OriginWords.CommandLine) }
                : shop.Origins,
            Findings = [.. lists.Findings, .. shop.Findings, .. more, .. UnknownColumns(settings)],
        };
    }

    private static void Place(IReadOnlyList<ListReading> lists, CellMap cells)
    {
        foreach (var (sheet, unread) in lists.Select(l => (l.Sheet, l.Unread)))
        {
            cells.AddList(sheet);
            foreach (var (field, column) in unread)
            {
                cells.Add(sheet.Column(field), new CellRef(sheet.Sheet.Name, sheet.HeadingRow, column));
            }
        }
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
