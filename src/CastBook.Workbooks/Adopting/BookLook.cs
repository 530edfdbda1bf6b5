using CastBook.Planning.Findings;
using CastBook.Planning.Rows;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Adopting;

/// <summary>A first look at a shop's own book: where its list stands, which of its columns are known, and what is known of the shop.</summary>
/// <param name="Sheet">The sheet with the list.</param>
/// <param name="HeadingRow">The row of its headings.</param>
/// <param name="Columns">The columns, from left to right.</param>
public sealed record BookLook(string Sheet, int HeadingRow, IReadOnlyList<SeenColumn> Columns)
{
    /// <summary>What the book and the files around it say of the shop; missing where the list is not known well enough to be read.</summary>
    public Shop? Shop { get; private init; }

    /// <summary>The units in which the shop works, as far as its settings and the columns of its book tell.</summary>
    public ShopUnits Units => Shop?.Settings.Units ?? ShopUnits.Metric;

    /// <summary>What the shop file alone says; missing where there is none.</summary>
    public Shop? File { get; private init; }

    /// <summary>Whether the list says by its heading what the weights weigh, or has none.</summary>
    public bool SaysWhatIsWeighed { get; private init; }

    /// <summary>Whether the list says by its heading that the gates are in the weights.</summary>
    public bool SaysGatesAreIn { get; private init; }

    /// <summary>The settings that answer what the list has no column for: how many, and in which alloy.</summary>
    public IReadOnlyList<string> WhereNone { get; private init; } = [];

    /// <summary>The names in the list that several alloys share.</summary>
    public IReadOnlyList<SharedName> SharedNames { get; private init; } = [];

    /// <summary>The settings that somebody has answered, and who, by name.</summary>
    public IReadOnlyDictionary<string, SettingOrigin> Said { get; private init; } = new Dictionary<string, SettingOrigin>();

    /// <summary>The alloys that the list names and the shop has no line of, each once, as first written.</summary>
    public IReadOnlyList<string> Alloys { get; private init; } = [];

    /// <summary>The pattern materials that the list names and the shop has no line of, each once, as first written.</summary>
    public IReadOnlyList<string> Materials { get; private init; } = [];

    /// <summary>What is to be said of lists on other sheets; missing where there are none, or it is settled which are filled.</summary>
    public Finding? OtherLists { get; private init; }

    /// <summary>What is to be said of columns that may mean something else than they were read as.</summary>
    public IReadOnlyList<Finding> OfColumns { get; private init; } = [];

    /// <summary>Why the list cannot be filled as it is; missing where it can.</summary>
    public string? Refusal { get; private init; }

    /// <summary>The columns that a list cannot do without, and that this one lacks.</summary>
    public IReadOnlyList<string> Missing
    {
        get
        {
            List<string> missing = [.. new[] { PieceField.Piece, PieceField.Quantity, PieceField.PatternMass, PieceField.Alloy }.Where(f => !Has(f))];
            if (Has(PieceField.PatternVolume))
            {
                missing.Remove(PieceField.PatternMass);
            }

            return missing;
        }
    }

    /// <summary>Looks at a book, or a list in separated text; it is only read.</summary>
    /// <param name="path">The workbook or the text.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <exception cref="BookRefusedException">It cannot be read, or no row in it looks like headings.</exception>
    public static BookLook At(string path, BookSettings settings)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(settings);
        var file = ShopFile.Read(settings)?.Alone() is { } alone ? OwnOf(alone) : null;
        try
        {
            using Stream book = TextFile.Is(path)
                ? TextFile.AsBook(path)
                : new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            try
            {
                var name = TextFile.Is(path) ? "" : Path.GetFileName(path);
                return Known(BookReader.Read(book, settings, name)) with { File = file };
            }
            catch (BookRefusedException e) when (e.Finding.Kind == Catalogue.ListNotFoundNear)
            {
                book.Position = 0;
                return Unknown(book, settings, e) with { File = file };
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookRefusedException(Catalogue.BookCannotBeOpened.At(Subject.Book, Path.GetFileName(path), e.Message), e);
        }
    }

    private bool Has(string field) => Columns.Any(c => c.Field == field);

    private static BookLook Known(BookReading reading)
    {
        using var package = reading.Package;
        var list = reading.Lists[0];
        var fields = list.Columns.ToDictionary(c => c.Value, c => c.Key);
        var shop = OwnOf(reading.Night.Shop);
        return new BookLook(list.Sheet.Name, list.HeadingRow, Seen(list.Grid, list.HeadingRow, fields, [.. list.OwnColumns.Values]))
        {
            Shop = shop,
            SaysWhatIsWeighed = (reading.Night.WeightsAreOf != WeightMeaning.Unknown && !reading.Origins.ContainsKey(SettingName.WeightsAreOf))
                || !list.Columns.ContainsKey(PieceField.PatternMass),
            SaysGatesAreIn = reading.WeightsHaveGates,
            WhereNone =
            [
                .. Answering(reading, SettingName.QuantityWhereNone, Catalogue.QuantityColumnMissing, Catalogue.QuantityFromShop),
                .. Answering(reading, SettingName.AlloyWhereNone, Catalogue.AlloyColumnMissing, Catalogue.AlloyFromShop),
            ],
            SharedNames = [.. NamesInUse.Shared(reading.Night.Pieces.Select(p => p.Alloy), shop).Where(n => IsName(n.Name))],
            Said = reading.Origins,
            OtherLists = reading.Findings.FirstOrDefault(f => f.Kind == Catalogue.ListsOnOtherSheets),
            OfColumns = [.. reading.Findings.Where(f => f.Kind == Catalogue.SizeLeftAlone || f.Kind == Catalogue.NameOfPieceOrPerson)],
            Alloys = [.. NamesInUse.Alloys(reading.Night.Pieces, shop).Where(IsName)],
            Materials = [.. NamesInUse.Materials(reading.Night.Pieces, shop).Where(IsName)],
        };
    }

    private static IEnumerable<string> Answering(BookReading reading, string setting, FindingKind missing, FindingKind answered) =>
        reading.Findings.Any(f => f.Kind == missing || f.Kind == answered) ? [setting] : [];

    // An invented shop's lines are no answers: what they would answer is asked.
    private static Shop OwnOf(Shop shop) => shop with
    {
        FlaskSizes = [.. shop.FlaskSizes.Where(s => !ExampleName.Is(s.Name))],
        Crucibles = [.. shop.Crucibles.Where(c => !ExampleName.Is(c.Name))],
        Kilns = [.. shop.Kilns.Where(k => !ExampleName.Is(k.Name))],
        Materials = [.. shop.Materials.Where(m => !ExampleName.Is(m.Name))],
    };

    // A sentence in the column of names is a remark, and an example is nobody's.
    private static bool IsName(string text) => text.Length <= ShopTable.LongestName && !ExampleName.Is(text);

    /// <summary>The row with the most headings that are known, else the first with the most texts.</summary>
    private static BookLook Unknown(Stream book, BookSettings settings, BookRefusedException refusal)
    {
        using var package = BookPackage.Open(book, settings.Caps);
        var (strings, marks) = (SharedStrings.Read(package), OwnMarks.Of(package));
        (int Worth, BookLook Look)? best = null;
        foreach (var sheet in package.Sheets.Where(s => !s.IsHidden && !marks.Sheets.Values.Contains(s)))
        {
            var grid = SheetReader.Read(package, sheet, strings, Reading.Headings.HeadingRow.Last);
            foreach (var row in grid.Rows)
            {
                var headings = ListHeadings.Read(grid, row, row, [], settings.Columns);
                var worth = (100 * headings.Match.Fields.Count) + headings.Texts.Count;
                if (headings.Texts.Count >= 2 && worth > (best?.Worth ?? 0))
                {
                    var columns = Seen(grid, row, headings.Match.Fields.ToDictionary(f => f.Value.Column, f => f.Key), []);
                    best = (worth, new BookLook(sheet.Name, row, columns) { Refusal = refusal.Message });
                }
            }
        }

        return best?.Look ?? throw refusal;
    }

    private static List<SeenColumn> Seen(SheetGrid grid, int row, Dictionary<int, string> fields, HashSet<int> own)
    {
        var seen = new List<SeenColumn>();
        for (var column = 1; column <= grid.LastColumnOf(row); column++)
        {
            if (own.Contains(column) || Reading.Headings.HeadingRow.TextAt(grid, row, column) is not { } text)
            {
                continue;
            }

            var field = fields.GetValueOrDefault(column);
            seen.Add(new SeenColumn(CellRef.ColumnName(column), text.Trim(), field, field is null ? Near(text, fields) : null));
        }

        return seen;
    }

    private static string WithoutUnit(string heading) => heading.IndexOfAny(['(', '[', '\n']) is > 0 and var at ? heading[..at] : heading;

    // A heading that is known, and whose field another column is, comes near to nothing else.
    private static string? Near(string heading, Dictionary<int, string> taken) => Heading.Parse(heading).Senses(HeadingWords.PieceIndex).Count > 0 ? null : HeadingWords.Piece
        .Where(f => !taken.ContainsValue(f.Field))
        .FirstOrDefault(f => Nearest.Close(WithoutUnit(heading), f.Words.Select(w => w.Text)) is not null)?.Field;
}
