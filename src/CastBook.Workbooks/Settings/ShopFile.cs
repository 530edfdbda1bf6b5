using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Settings;

/// <summary>The shop file: a workbook whose shop sheets stand below those of a book, line by line.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Tables">Its sheets, by their usual name.</param>
/// <param name="Settings">What its Shop sheet says.</param>
/// <param name="Origins">Who said which setting.</param>
/// <param name="Cells">Where its lines stand.</param>
/// <param name="Findings">What was found in its Shop sheet.</param>
internal sealed record ShopFile(
    string Name, IReadOnlyDictionary<string, ShopTable> Tables, Planning.Shops.Settings Settings,
    IReadOnlyDictionary<string, SettingOrigin> Origins, CellMap Cells, IReadOnlyList<Finding> Findings)
{
    /// <summary>Reads the shop file that the settings name; null where they name none.</summary>
    /// <exception cref="BookRefusedException">The file is missing or no workbook.</exception>
    public static ShopFile? Read(BookSettings settings)
    {
        if (settings.ShopFile is not { } path)
        {
            return null;
        }

        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            BookGate.Admit(stream, path);
            using var package = BookPackage.Open(stream, settings.Caps);
            var values = new CellValues(NumberFormats.Read(package), package.Date1904);
            var cells = new CellMap();
            return new ShopReader(package, SharedStrings.Read(package), values, OwnMarks.Of(package), BookSettings.None, cells).AsFile(Path.GetFileName(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookRefusedException(Catalogue.ShopFileUnreadable.At(Subject.Book, path), e);
        }
    }

    /// <summary>The shop as this file alone says it.</summary>
    public Shop Alone() => new()
    {
        FlaskSizes = Lines(ShopSheet.Flasks, ShopRecords.Flask),
        Crucibles = Lines(ShopSheet.Crucibles, ShopRecords.Crucible),
        Kilns = Lines(ShopSheet.Kilns, ShopRecords.Kiln),
        Alloys = Lines(ShopSheet.Alloys, ShopRecords.Alloy),
        Materials = Lines(ShopSheet.Materials, ShopRecords.Material),
        Settings = Settings,
    };

    private IReadOnlyList<T> Lines<T>(ShopSheet sheet, Func<ShopRow, T> record) =>
        [.. Tables.GetValueOrDefault(sheet.Name)?.NamedRows().Select(record) ?? []];

    /// <summary>Where a subject stands in it: <c>shop.xlsx, Flasks!I2</c>; null where it has no cell there.</summary>
    /// <param name="subject">The subject.</param>
    public string? PlaceOf(Subject subject) => Cells.Find(subject) is { } cell ? $"{Name}, {cell}" : null;

    /// <summary>Findings about it, saying so.</summary>
    /// <param name="findings">What was found.</param>
    public IEnumerable<Finding> Said(IEnumerable<Finding> findings) => findings.Select(f => f with { Seen = $"In {Name}: {f.Seen}" });
}
