using System.Xml.Linq;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Undoing;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sharing;

/// <summary>Makes a template for others of a shop's own book.</summary>
/// <remarks>
/// The template is a new package. Into it goes only what is known to be nobody's secret: layout, formats, headings, and what the
/// shop's sheets settle. Nothing is copied that is not named here, so that what nobody thought of stays behind.
/// </remarks>
public sealed class BookShare
{
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private readonly BookPackage package;
    private readonly ShareWishes wishes;
    private readonly SheetSorter sorter;
    private readonly IReadOnlyList<SharedSheet> sheets;
    private readonly RemovedTexts removed = new();
    private readonly HashSet<string> known = new(StringComparer.OrdinalIgnoreCase);
    private readonly ShareTally tally = new();
    private readonly List<string> named = [];

    private BookShare(BookPackage package, BookSettings settings, ShareWishes wishes)
    {
        (this.package, this.wishes) = (package, wishes);
        sorter = new SheetSorter(package, settings, wishes);
        sheets = sorter.Sort();
    }

    /// <summary>Makes the template.</summary>
    /// <param name="book">The workbook; must be able to seek. It is only read.</param>
    /// <param name="output">Where the template goes; must be able to read, write and seek.</param>
    /// <param name="wishes">What else may be shared.</param>
    /// <param name="settings">What <c>castbook.json</c> says: the shop's own words for headings, and caps.</param>
    /// <returns>What was kept and what was left behind.</returns>
    /// <exception cref="BookRefusedException">The workbook cannot be read, or nobody can tell what may be shared. Nothing was written.</exception>
    /// <exception cref="BrokenOutputException">A fault of CastBook: the template does not pass its own checks.</exception>
    public static ShareResult Share(Stream book, Stream output, ShareWishes wishes, BookSettings settings)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(wishes);
        ArgumentNullException.ThrowIfNull(settings);
        BookGate.Admit(book);
        using var clean = new MemoryStream();
        var isClean = BookUndo.IsClean(book, settings.Caps);
        if (!isClean)
        {
            BookUndo.Undo(book, clean, "", settings.Caps);
        }

        using var package = BookPackage.Open(isClean ? book : clean, settings.Caps);
        if (wishes.Keep.FirstOrDefault(k => !package.AllSheetNames.Contains(k, StringComparer.OrdinalIgnoreCase)) is { } missing)
        {
            throw BookRefusedException.For(Catalogue.ShareSheetMissing, missing, string.Join(", ", package.AllSheetNames));
        }

        var share = new BookShare(package, settings, wishes);
        share.Gather();
        share.CheckSheetNames();
        var around = ShareAround.Of(settings);
        using var bare = new MemoryStream();
        share.Write(around is null ? output : bare);
        share.Check(around is null ? output : bare);
        around?.Write(bare, output);
        return share.Result(around, settings);
    }

    // What goes and what stays, told from all cells before the first is written.
    private void Gather()
    {
        foreach (var part in package.Sheets)
        {
            var shared = sheets.FirstOrDefault(s => s.Part == part);
            var grid = shared?.Grid ?? sorter.Grid(part);
            foreach (var row in grid.Rows)
            {
                Gather(shared, grid, row);
            }
        }

        foreach (var text in known.Concat(wishes.KnownTexts))
        {
            removed.Remove(text);
        }
    }

    private void Gather(SharedSheet? sheet, SheetGrid grid, int row)
    {
        var isEmptied = false;
        for (var column = grid.LastColumnOf(row); column > 0; column--)
        {
            var cell = grid.Cell(row, column);
            if (sheet is not null && sheet.Value(row, column) is { Kind: not CellKind.Empty } value)
            {
                _ = value.Text is { } text && known.Add(text);
            }
            else if (cell.Kind != CellKind.Empty)
            {
                removed.Add(cell.Text ?? "");
                isEmptied |= !cell.HasFormula;
            }
        }

        if (sheet is not null && isEmptied)
        {
            tally.Add(sheet.Headings is not { } headings ? LeftBehindWords.RowsOfShopSheets
                : row > headings.LastRow ? LeftBehindWords.RowsOfPieces : LeftBehindWords.RowsAboveHeadings);
        }
    }

    private void CheckSheetNames()
    {
        foreach (var sheet in sheets.Where(s => !sorter.IsWished(s.Part)))
        {
            if (removed.In(sheet.Part.Name) is { } text)
            {
                throw BookRefusedException.For(Catalogue.ShareSheetNameSaysRow, sheet.Part.Name, text);
            }
        }
    }

    private void Write(Stream output)
    {
        using var target = new SharedPackage(output);
        var tables = sheets.ToDictionary(s => s, Tables);
        var names = NameSharing.Of(package, sheets, removed, tally);
        named.AddRange(tables.Values.SelectMany(t => t).Select(t => SharingWords.Table(t.Name)));
        named.AddRange(names.Where(n => n.LocalSheet is null).Select(n => SharingWords.Name(n.Name)));
        var judge = new FormulaJudge(
            sheets.Select(s => s.Part.Name).ToHashSet(StringComparer.OrdinalIgnoreCase),
            names.Where(n => n.LocalSheet is null).Select(n => n.Name).ToHashSet(StringComparer.OrdinalIgnoreCase),
            tables.Values.SelectMany(t => t).ToDictionary(t => t.Name, t => (IReadOnlySet<string>)t.Columns.ToHashSet(StringComparer.OrdinalIgnoreCase), StringComparer.OrdinalIgnoreCase));
        var settled = sheets.Where(s => s.IsSettings).SelectMany(TextsOf).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var rules = new RuleSharing(judge, settled, wishes.KnownTexts, tally);
        target.Relate("", [("rId1", "officeDocument", "xl/workbook.xml")]);
        target.Add("xl/workbook.xml", "sheet.main+xml", Workbook(names));
        var relations = new List<(string Id, string Kind, string Target)>();
        var tableCount = 0;
        for (var at = 0; at < sheets.Count; at++)
        {
            var (sheet, part) = (sheets[at], Name($"xl/worksheets/sheet{at + 1}.xml"));
            var own = tables[sheet].Select((t, i) => (Id: Name($"rId{i + 1}"), Number: tableCount + i + 1, Table: t)).ToList();
            tableCount += own.Count;
            target.Add(part, "worksheet+xml", s => new SheetSharing(package, sheet, judge, rules, tally).Write(s, [.. own.Select(t => t.Id)]));
            foreach (var (_, number, table) in own)
            {
                target.Add(Name($"xl/tables/table{number}.xml"), "table+xml", table.Shared(number, judge, tally));
            }

            if (own.Count > 0)
            {
                target.Relate(part, own.Select(t => (t.Id, "table", Name($"../tables/table{t.Number}.xml"))));
            }

            relations.Add((Name($"rId{at + 1}"), "worksheet", Name($"worksheets/sheet{at + 1}.xml")));
        }

        AddLook(target, relations);
        target.Relate("xl/workbook.xml", relations);
    }

    private void AddLook(SharedPackage target, List<(string Id, string Kind, string Target)> relations)
    {
        target.Add("xl/styles.xml", "styles+xml", StyleSharing.Of(package, removed));
        relations.Add(("rIdStyles", "styles", "styles.xml"));
        if (ThemeSharing.Of(package, removed) is { } theme)
        {
            target.Add("xl/theme/theme1.xml", "application/vnd.openxmlformats-officedocument.theme+xml", theme);
            relations.Add(("rIdTheme", "theme", "theme/theme1.xml"));
        }
    }

    private List<SharedTable> Tables(SharedSheet sheet)
    {
        var tables = new List<SharedTable>();
        foreach (var part in package.Relationships(sheet.Part.PartName).Where(r => r.Is("table") && !r.IsExternal && package.Has(r.Target)).Select(r => r.Target))
        {
            if (SharedTable.Of(package, part, sheet, removed) is { } table)
            {
                tables.Add(table);
            }
            else
            {
                tally.Add(LeftBehindWords.Tables);
            }
        }

        return tables;
    }

    private static IEnumerable<string> TextsOf(SharedSheet sheet) =>
        sheet.Grid.Rows.SelectMany(r => Enumerable.Range(1, sheet.Grid.LastColumnOf(r)).Select(c => sheet.Value(r, c).Text)).OfType<string>();

    private XElement Workbook(IReadOnlyList<DefinedName> names)
    {
        var root = new XElement(AllowList.Main + "workbook",
            new XAttribute(XNamespace.Xmlns + "r", Relations),
            new XElement(AllowList.Main + "workbookPr", package.Date1904 ? new XAttribute("date1904", 1) : null),
            new XElement(AllowList.Main + "bookViews", new XElement(AllowList.Main + "workbookView")),
            new XElement(AllowList.Main + "sheets", sheets.Select((s, i) => new XElement(
                AllowList.Main + "sheet", new XAttribute("name", s.Part.Name), new XAttribute("sheetId", i + 1), new XAttribute((XNamespace)Relations + "id", Name($"rId{i + 1}"))))));
        if (names.Count > 0)
        {
            root.Add(new XElement(AllowList.Main + "definedNames", names.Select(n => new XElement(
                AllowList.Main + "definedName", new XAttribute("name", n.Name), n.LocalSheet is { } local ? new XAttribute("localSheetId", local) : null, n.Text))));
        }

        root.Add(new XElement(AllowList.Main + "calcPr", new XAttribute("fullCalcOnLoad", 1)));
        return root;
    }

    private void Check(Stream output)
    {
        output.Position = 0;
        using var written = BookPackage.Open(output, package.Caps);
        if (PackageRules.Faults(FactsOf(written)) is { Count: > 0 } faults)
        {
            // What is broken in the book itself cannot stand right in what is made of it.
            throw PackageRules.Faults(FactsOf(package)) is { Count: > 0 } before ? BookRefusedException.Damaged(RefusalWords.Fault(before[0])) : new BrokenOutputException(faults);
        }
    }

    private static BookFacts FactsOf(BookPackage book) => new(book, [.. book.Sheets.Select(s => s.PartName)]);

    private ShareResult Result(ShareAround? around, BookSettings settings)
    {
        PartKinds.Count(package, tally);
        var left = package.AllSheetNames.Where(n => !sheets.Any(s => s.Part.Name == n)).Select(Why).ToList();
        return new ShareResult(
            [.. sheets.Select(s => s.Called), .. around?.Kept ?? [], .. named, SharingWords.Layout],
            [.. tally.Lines, .. around?.Left ?? []], left, [.. sheets.SelectMany(s => s.UnknownHeadings).Distinct()])
        {
            Words = WordsOf(settings),
        };
    }

    // The shop's own words for headings that stand in the template.
    private Dictionary<string, IReadOnlyList<string>> WordsOf(BookSettings settings)
    {
        var headings = sheets.Where(s => s.Headings is not null).SelectMany(TextsOf).Select(CellValues.Clean).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return settings.Columns.Select(c => (c.Key, Words: c.Value.Where(headings.Contains).ToList())).Where(c => c.Words.Count > 0)
            .ToDictionary(c => c.Key, c => (IReadOnlyList<string>)c.Words);
    }

    private string Why(string name) => package.Sheets.FirstOrDefault(s => s.Name == name) switch
    {
        null => SharingWords.NoSheetOfCells(name),
        { IsHidden: true } => SharingWords.Hidden(name),
        _ => SharingWords.NeitherListNorSettings(name),
    };

    private static string Name(FormattableString name) => FormattableString.Invariant(name);
}
