using System.Buffers;
using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sharing;

/// <summary>Tells which sheets of a book are shared, and what of each: the headings of lists of pieces, and what was settled on the shop's sheets.</summary>
internal sealed class SheetSorter
{
    // What is in the cupboard, and what it cost.
    private static readonly HashSet<string> Stock = new(StringComparer.Ordinal) { ShopField.Fresh, ShopField.Remelt, ShopField.Price, ShopField.InStock };

    // What belongs to one night, and what repeats the words of rows.
    private static readonly HashSet<string> OfOneNight = new(StringComparer.OrdinalIgnoreCase)
    {
        SettingName.Night, SettingName.StartAt, SettingName.PourAt, SettingName.SheetsToFill,
    };

    // Length, width and height in some order, with the sign between them: LxBxH.
    private static readonly SearchValues<char> SideLetters = SearchValues.Create("LlBbHhWwTtDdXx×*/");

    private readonly BookPackage package;
    private readonly SharedStrings strings;
    private readonly CellValues values;
    private readonly OwnMarks marks;
    private readonly BookSettings settings;
    private readonly ShareWishes wishes;

    /// <param name="package">The book, without what is CastBook's.</param>
    /// <param name="settings">What <c>castbook.json</c> says: the shop's own words for headings.</param>
    /// <param name="wishes">What else may be shared.</param>
    public SheetSorter(BookPackage package, BookSettings settings, ShareWishes wishes)
    {
        (this.package, this.settings, this.wishes) = (package, settings, wishes);
        strings = SharedStrings.Read(package);
        values = new CellValues(NumberFormats.Read(package), package.Date1904);
        marks = OwnMarks.Of(package);
    }

    /// <summary>The sheets that are shared, in the order of their tabs.</summary>
    /// <exception cref="BookRefusedException">None is.</exception>
    public IReadOnlyList<SharedSheet> Sort()
    {
        var seen = package.Sheets.Where(s => (!s.IsHidden || IsWished(s)) && !marks.Sheets.Values.Contains(s)).ToList();
        var shared = seen.Select(OfShop).OfType<SharedSheet>().ToList();
        var isShop = shared.Count > 0;
        var left = seen.Where(s => !shared.Exists(k => k.Part == s)).ToList();
        shared.AddRange(left.Select(Guide).OfType<SharedSheet>());
        shared.AddRange(Lists([.. left.Where(s => !shared.Exists(k => k.Part == s))], mayBeNone: isShop));
        shared.AddRange(left.Where(s => IsWished(s) && !shared.Exists(k => k.Part == s)).Select(Vouched));
        return [.. shared.OrderBy(s => s.Part.Index)];
    }

    /// <summary>Whether a field of a shop sheet says what is in the cupboard or what it cost.</summary>
    /// <param name="field">The field.</param>
    public static bool IsStock(string field) => Stock.Contains(field);

    /// <summary>Whether a setting is shared: it is known, and belongs to no one night.</summary>
    /// <param name="setting">Its name.</param>
    /// <param name="value">What it says.</param>
    /// <remarks>Which alloy a name means is shared where the trade knows both: "gold" and "14k yellow", but no name of the shop's own.</remarks>
    public static bool IsShared(string setting, string value) =>
        (!OfOneNight.Contains(setting) && SettingGuide.All.Any(g => g.Name.Equals(setting, StringComparison.OrdinalIgnoreCase)))
        || (setting.Split('"') is [_, var name, _] && setting == SettingName.AlloyMeaning(name) && BuiltInAlloys.Named(name).Count > 0 && BuiltInAlloys.Named(value).Count > 0);

    /// <summary>Whether the owner vouches for a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    public bool IsWished(SheetPart sheet) => wishes.Keep.Contains(sheet.Name, StringComparer.OrdinalIgnoreCase);

    /// <summary>All cells of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    public SheetGrid Grid(SheetPart sheet) => SheetReader.Read(package, sheet, strings);

    private List<SharedSheet> Lists(List<SheetPart> candidates, bool mayBeNone)
    {
        try
        {
            var all = new WantedSheets(["all"], "", Subject.Book);
            return [.. new ListFinder(package, strings, settings.Columns, marks, []).Find(candidates, all).Lists.Select(List)];
        }
        catch (BookRefusedException) when (mayBeNone)
        {
            // A shop file has none.
            return [];
        }
    }

    private SharedSheet List(FoundList list)
    {
        var grid = Grid(list.Sheet);
        var table = TableReader.At(package, list.Sheet, grid, list.Headings.Row, list.Headings.FirstColumn);
        var headings = list.Headings.Again(grid, [.. marks.ColumnsOn(list.Sheet).Values], settings.Columns, table?.Range);
        var units = HasUnitsOnly(grid, headings.Row + 1) ? headings.Row + 1 : headings.Row;
        var columns = headings.Columns;
        var range = new CellRange(
            headings.Top,
            Math.Min(columns.Min(), table?.Range.FirstColumn ?? int.MaxValue),
            Math.Max(headings.Bottom, units),
            Math.Max(columns.Max(), table?.Range.LastColumn ?? 0));
        var known = headings.Match.Fields.Values.Select(f => f.Column).Concat(headings.Match.Ties.SelectMany(t => new[] { t.First, t.Second }))
            .Concat(headings.Unclear.Select(u => u.Column)).ToHashSet();
        bool IsKnown(int row, int column) => row < range.FirstRow && wishes.KnownTexts.Contains(grid.Cell(row, column).Text ?? "");

        // A sum without the word beside it would be read as a row of a piece by whoever uses the template.
        bool NamesSums(int row, int column) => row > range.LastRow && grid.Cell(row, column) is { Kind: CellKind.Text, HasFormula: false, Text: { } text }
            && CellWords.IsTotal(CellValues.Clean(text), mayGoOn: false) && Enumerable.Range(1, grid.LastColumnOf(row)).Any(c => grid.Cell(row, c).HasFormula);
        return new SharedSheet(list.Sheet, grid, (row, column) => (range.Contains(row, column) && grid.Cell(row, column).Kind == CellKind.Text) || IsKnown(row, column) || NamesSums(row, column))
        {
            Called = SharingWords.HeadingsOf(list.Sheet.Name),
            KeepsFormulas = true,
            LastMergedRow = range.LastRow,
            Headings = range,
            UnknownHeadings = [.. Texts(grid, range, (row, column) => row > headings.Row || (row == headings.Row && known.Contains(column)))],
        };
    }

    // Right below the headings, and nothing but units, and sides in the order in which they are typed: in g, LxBxH in mm.
    private static bool HasUnitsOnly(SheetGrid grid, int row)
    {
        List<string> texts = [.. Enumerable.Range(1, grid.LastColumnOf(row)).Select(c => grid.Cell(row, c)).Where(c => !CellValues.IsBlank(c))
            .Select(c => c.Kind == CellKind.Text && !c.HasFormula ? CellValues.Clean(c.Text) : "?")];
        return texts.Count > 0 && texts.TrueForAll(IsUnit);
    }

    private static bool IsUnit(string text)
    {
        var bare = text.Trim(' ', '(', ')', '[', ']');
        var sides = bare.AsSpan(0, bare.AsSpan().IndexOf(' ') is > 0 and var blank ? blank : bare.Length);
        var areSides = sides.Length is >= 3 and <= 5 && !sides.ContainsAnyExcept(SideLetters);
        return areSides ? sides.Length == bare.Length || IsUnit(bare[sides.Length..])
            : HeadingUnit.TryParse(bare, out _) || SmallWords.Counts.Contains(string.Concat(WordKey.Parts(bare)));
    }

    private static IEnumerable<string> Texts(SheetGrid grid, CellRange range, Func<int, int, bool> isKnown) =>
        from row in Enumerable.Range(range.FirstRow, range.LastRow - range.FirstRow + 1)
        from column in Enumerable.Range(range.FirstColumn, range.LastColumn - range.FirstColumn + 1)
        let cell = grid.Cell(row, column)
        where cell.Kind == CellKind.Text && !isKnown(row, column)
        select CellValues.Clean(cell.Text);

    private SharedSheet? OfShop(SheetPart sheet)
    {
        var name = sheet.Name.Trim();
        if (name.Equals("Shop", StringComparison.OrdinalIgnoreCase))
        {
            return Settings(sheet);
        }

        return ShopSheet.OfShop.FirstOrDefault(s => s.MayBeCalled(name)) is { } kind
            && ShopTable.Find(kind, sheet, Grid(sheet), values) is { } table && kind.Is(name, table.Fields.Keys)
            ? Table(table)
            : null;
    }

    private SharedSheet Table(ShopTable table)
    {
        var (grid, own) = (table.Grid, QuestionTexts.Of(table.Part.Name, wishes));
        var rows = table.Rows(continued: true).Select(r => r.SheetRow).ToHashSet();
        var columns = table.Fields.Values.Where(f => !Stock.Contains(f.Field)).ToDictionary(f => f.Column, f => table.DimensionOf(f.Field) != Dimension.None);
        bool IsSettled(int row, int column) =>
            rows.Contains(row) && columns.TryGetValue(column, out var isMeasure) && !(isMeasure && grid.Cell(row, column).Text is { } text && !IsMeasure(text));
        bool IsHeading(int row, int column) => row == table.HeadingsRow && grid.Cell(row, column).Kind == CellKind.Text;
        bool IsOurs(int row, int column) => row < table.HeadingsRow && own.Contains(grid.Cell(row, column).Text ?? "");
        return new SharedSheet(table.Part, grid, (row, column) => IsSettled(row, column) || IsHeading(row, column) || IsOurs(row, column))
        {
            UnknownHeadings =
            [
                .. Texts(
                    grid, new CellRange(table.HeadingsRow, 1, table.HeadingsRow, grid.LastColumnOf(table.HeadingsRow)),
                    (row, column) => table.Fields.Values.Any(f => f.Column == column) || own.Contains(grid.Cell(row, column).Text ?? "")),
            ],
            Called = SharingWords.Rows(table.Part.Name, rows.Count),
        };
    }

    /// <summary>Whether a text is a number: it has no words but units.</summary>
    /// <param name="text">The text.</param>
    public static bool IsMeasure(string text) =>
        text.Split([.. text.Where(c => !char.IsLetter(c) && c is not '°' and not '³')], StringSplitOptions.RemoveEmptyEntries).All(w => CellUnit.TryParse(w, out _));

    private SharedSheet Settings(SheetPart sheet)
    {
        var (grid, own, cells) = (Grid(sheet), QuestionTexts.Of(sheet.Name, wishes), new CellMap());
        var rows = new SettingsRows(values, cells, [], new Planning.Shops.Settings());
        rows.Take(sheet, grid);
        var guides = SettingGuide.All.Select(g => g.Name).Union(rows.Origins.Keys, StringComparer.OrdinalIgnoreCase).Select(SettingGuide.Of)
            .ToDictionary(g => g.Name, StringComparer.OrdinalIgnoreCase);
        var places = guides.Values.Select(g => (Guide: g, Cell: cells.Find(Subject.Setting(g.Name)))).Where(p => p.Cell is not null)
            .ToDictionary(p => p.Cell!.Value.Row, p => (p.Guide, p.Cell!.Value.Column));
        var said = rows.Origins.Where(o => IsShared(o.Key, o.Value.Value)).Select(o => o.Key).ToHashSet(StringComparer.OrdinalIgnoreCase);
        bool Keeps(int row, int column)
        {
            var text = grid.Cell(row, column).Text ?? "";
            return places.TryGetValue(row, out var place)
                ? column == place.Column ? said.Contains(place.Guide.Name)
                    : QuestionTexts.Says(text, place.Guide) && (said.Contains(place.Guide.Name) || SettingGuide.All.Contains(place.Guide))
                : own.Contains(text);
        }

        return new SharedSheet(sheet, grid, Keeps)
        {
            Called = SharingWords.Settings(sheet.Name, said.Count),
        };
    }

    // A page that says how to use a starter book, and nothing else.
    private SharedSheet? Guide(SheetPart sheet)
    {
        var grid = Grid(sheet);
        var cells = grid.Rows.SelectMany(r => Enumerable.Range(1, grid.LastColumnOf(r)).Select(c => grid.Cell(r, c))).Where(c => !c.IsEmpty).ToList();
        return cells.Count > 0 && cells.TrueForAll(c => c.Text is { } text && !c.HasFormula && wishes.KnownTexts.Contains(text))
            ? new SharedSheet(sheet, grid, (_, _) => true) { Called = sheet.Name }
            : null;
    }

    private SharedSheet Vouched(SheetPart sheet) => new(sheet, Grid(sheet), (_, _) => true)
    {
        Called = SharingWords.AsWished(sheet.Name),
        KeepsFormulas = true,
    };
}
