using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Drawing;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Sheets;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Writing;

/// <summary>Turns a plan into edits of the book it came from, and writes the book with them.</summary>
internal sealed class PlanWriter
{
    private readonly BookReading reading;
    private readonly NightPlan plan;
    private readonly string bookName;
    private readonly FillRecord before;
    private readonly FillRecord after = new();
    private readonly TypedCells typed;
    private readonly BookEdits edits;
    private readonly WorkbookEdits workbook;
    private readonly StyleBook styles;
    private readonly List<Finding> findings = [];
    private readonly List<(OwnedSheet Sheet, string OwnName)> sheets = [];

    private PlanWriter(BookReading reading, NightPlan plan, FillRecord before, TypedCells typed, string bookName)
    {
        this.reading = reading;
        this.plan = plan;
        this.before = before;
        this.typed = typed;
        this.bookName = bookName;
        edits = new BookEdits(reading.Package);
        workbook = new WorkbookEdits(reading.Package, edits);
        styles = new StyleBook(reading.Package.StylesPart is { } part ? reading.Package.Read(part) : StyleBook.Smallest(edits.Dialect.Spreadsheet));
    }

    /// <summary>Writes the book and checks it.</summary>
    /// <param name="reading">The book as read; cells of new sheets are added to its map.</param>
    /// <param name="plan">The night as answered.</param>
    /// <param name="before">What CastBook wrote last.</param>
    /// <param name="typed">Cells of computed columns in which a person typed.</param>
    /// <param name="bookName">The book's name without its extension.</param>
    /// <param name="output">Where to; must be seekable.</param>
    /// <exception cref="BrokenOutputException">The book as written does not pass its checks.</exception>
    public static WrittenBook Write(
        BookReading reading, NightPlan plan, FillRecord before, TypedCells typed, string bookName, Stream output)
    {
        var writer = new PlanWriter(reading, plan, before, typed, bookName);
        var (found, lists, lines) = writer.Edit();
        var check = new OutputCheck(reading.Package, writer.edits);
        PackageWriter.Write(reading.Package, writer.edits, output, check.Watch);
        return new WrittenBook(found, check.Run(output))
        {
            Lists = lists,
            Lines = lines,
            Sheets = [.. writer.sheets.Select(s => s.Sheet)],
            Computed = writer.sheets.Find(s => s.OwnName == OwnName.ComputedSheet).Sheet,
        };
    }

    private (IReadOnlyList<Finding> Findings, IReadOnlyList<ListColumns> Lists, PieceLines Lines) Edit()
    {
        var units = reading.Night.Shop.Settings.Units;
        var choice = new UnitChoice(before, typed, new Lazy<bool>(() => BookFormulas.Any(reading)));
        var lists = reading.Lists.Select(l => ListColumns.Decide(l, units, choice)).ToList();
        foreach (var (list, column, at) in lists.SelectMany(l => l.Standing.Select(s => (l.List, s.Column, s.At))))
        {
            reading.Cells.Add(list.Column(column.OwnName), new CellRef(list.Sheet.Name, list.HeadingRow, at));
        }

        var around = Surroundings.Say(reading, lists, workbook.StructureIsProtected, Grid);
        findings.AddRange([.. reading.Findings.Where(ConcernsTonight), .. plan.Findings, .. lists.SelectMany(l => l.Findings), .. around]);
        AskWhatIsOpen();
        var lines = Lines();
        if (typed.Any)
        {
            findings.AddRange(typed.Say(reading, lists, lines));
            lines = Lines();
        }

        findings.AddRange(lists.SelectMany(l => new ListWriter(l, edits, styles, workbook, before, typed).Write(lines, after)));
        var context = new SheetContext(bookName, reading, plan, FindingGroups.Fold(findings));
        MakeSheets(context, lists, lines);
        KeepIfTyped(OwnName.ChecksSheet, new OwnedSheet(""));
        context = context with { Findings = FindingGroups.Fold(findings) };
        var checks = Own(ChecksSheet.Make(context), OwnName.ChecksSheet);
        if (BookFormulas.Any(reading))
        {
            workbook.RecalculateOnLoad(after);
        }

        after.Write(checks, ChecksSheet.RecordColumn);
        var asking = WriteSheets(context.Findings);
        new MarkWriter(reading, edits, styles, lists, Grid).Write(context.Findings, asking);
        Finish();
        return (context.Findings, lists, lines);
    }

    // What cannot be read in a row of another night, or in one that is done or left out, is nobody's question tonight.
    private bool ConcernsTonight(Finding finding) => finding.Subjects.Count == 0 || !finding.Subjects.All(subject =>
        subject.Kind == SubjectKind.Piece
        && plan.Pieces[int.Parse(subject.Key, CultureInfo.InvariantCulture)].Status is PieceStatus.OtherNight or PieceStatus.Done or PieceStatus.LeftOut);

    private void AskWhatIsOpen()
    {
        if (reading.ShopSheets.TryGetValue("Shop", out var shop))
        {
            MissingSettings.Add(reading, findings, shop, Grid(shop), edits.Sheet(shop.PartName), after);
        }

        after.CarryOver(before, reading.ColumnsElsewhere);
        foreach (var (sheet, ownName) in QuestionSheets.Make(reading, findings, workbook.FreeSheetName))
        {
            TypedOnSheet.Remember(sheet, ownName, after);
            sheets.Add((sheet, ownName));
        }
    }

    private PieceLines Lines()
    {
        var ofRow = new Dictionary<int, List<RowFinding>>();
        foreach (var finding in FindingGroups.Fold(findings))
        {
            var (field, said) = ("", ChecksColumn.Say(finding, ""));
            foreach (var subject in finding.Subjects.Where(s => s.Kind == SubjectKind.Piece))
            {
                var id = int.Parse(subject.Key, CultureInfo.InvariantCulture);
                if (!ofRow.TryGetValue(id, out var found))
                {
                    ofRow[id] = found = [];
                }

                // Said once a row, at the first of its fields.
                if (found.Count == 0 || !ReferenceEquals(found[^1].Finding, finding))
                {
                    (field, said) = field == subject.Field ? (field, said) : (subject.Field, ChecksColumn.Say(finding, subject.Field));
                    found.Add(new RowFinding(finding, field, said));
                }
            }
        }

        return new PieceLines(reading.Night.Pieces, plan, ofRow);
    }

    private void MakeSheets(SheetContext context, IReadOnlyList<ListColumns> lists, PieceLines lines)
    {
        Add(NightPlanSheet.Make(context, Kept(OwnName.NightPlanSheet, NightPlanSheet.ShopHeadings)), OwnName.NightPlanSheet);
        if (Stands(OwnName.TreesSheet) || plan.Flasks.Count > 0)
        {
            TreesSheet.Map(Add(TreesSheet.Make(context, Kept(OwnName.TreesSheet, TreesSheet.ShopHeadings)), OwnName.TreesSheet), context);
        }

        if (Stands(OwnName.MixesSheet) || plan.Mixes.Count > 0)
        {
            Add(MixesSheet.Make(context, Kept(OwnName.MixesSheet, MixesSheet.ShopHeadings, MixesSheetWords.Flasks)), OwnName.MixesSheet);
        }

        if (Stands(OwnName.ClockSheet) || plan.Clock is not null)
        {
            Add(ClockSheet.Make(context, Kept(OwnName.ClockSheet, ClockSheet.ShopHeadings, ClockSheetWords.Step, ClockSheet.KeyColumn)), OwnName.ClockSheet);
        }

        if (Stands(OwnName.KilnSheet) || plan.Clock is { Loads.Count: > 0 })
        {
            Add(KilnSheet.Make(context), OwnName.KilnSheet);
        }

        if (Stands(OwnName.FloorsSheet) || FloorsSheet.HasAny(plan.Clock))
        {
            Add(FloorsSheet.Make(context), OwnName.FloorsSheet);
        }

        if (Stands(OwnName.MetalSheet) || plan.Flasks.Count > 0)
        {
            Add(MetalSheet.Make(context), OwnName.MetalSheet);
        }

        if (lists.Any(l => l.Elsewhere.Count > 0))
        {
            Add(ComputedSheet.Make(lists, lines, reading.Night.Shop.Settings.Units), OwnName.ComputedSheet);
        }
    }

    private bool Stands(string ownName) => reading.OwnSheets.ContainsKey(ownName);

    private OwnedSheet Add(OwnedSheet sheet, string ownName)
    {
        Own(sheet, ownName);
        KeepIfTyped(ownName, sheet);
        return sheet;
    }

    private KeptCells Kept(string ownName, IReadOnlyCollection<string> headings, string? keyHeading = null, int keyColumn = 1) =>
        reading.OwnSheets.TryGetValue(ownName, out var sheet) ? KeptCells.Read(Grid(sheet), headings, keyHeading, keyColumn) : KeptCells.None;

    /// <summary>Takes a sheet of ours in, under the name it has in the book or a free one.</summary>
    private OwnedSheet Own(OwnedSheet sheet, string ownName)
    {
        if (reading.OwnSheets.TryGetValue(ownName, out var standing))
        {
            sheet.Name = standing.Name;
        }
        else if (workbook.FreeSheetName(sheet.Name) is var free && free != sheet.Name)
        {
            findings.Add(Catalogue.SheetNameTaken.At(Subject.Book, sheet.Name, free));
            sheet.Name = free;
        }

        TypedOnSheet.Remember(sheet, ownName, after);
        sheets.Add((sheet, ownName));
        return sheet;
    }

    /// <summary>Where somebody typed on a sheet of ours it stays under another name, and a fresh one takes its place.</summary>
    private void KeepIfTyped(string ownName, OwnedSheet fresh)
    {
        if (!reading.OwnSheets.TryGetValue(ownName, out var standing) || !TypedOnSheet.Any(Grid(standing), before, ownName, fresh))
        {
            return;
        }

        var copy = workbook.AddSheet(workbook.FreeSheetName($"{standing.Name} (kept)"), reading.Package.Read(standing.PartName));
        edits.HandOver(standing.PartName, copy.PartName);
        findings.Add(Catalogue.OwnSheetKept.At(Subject.Book, standing.Name, copy.Name));
    }

    /// <summary>Writes the sheets, and gives those with questions: from now on they are the shop's, marked and noted like all its sheets.</summary>
    private List<SheetPart> WriteSheets(IReadOnlyList<Finding> found)
    {
        var asking = new List<SheetPart>();
        var drawings = new DrawingWriter(reading.Package, edits);
        // Our own sheets first, those with questions after them.
        foreach (var (sheet, ownName) in sheets.OrderBy(s => OwnName.IsQuestions(s.OwnName)))
        {
            var asks = OwnName.IsQuestions(ownName);
            foreach (var finding in asks ? [] : found)
            {
                foreach (var cell in finding.Subjects.Select(reading.Cells.Find).OfType<CellRef>().Where(c => c.Sheet == sheet.Name))
                {
                    sheet.Mark(cell.Row, cell.Column, finding.Severity);
                }
            }

            var content = OwnedSheetWriter.Write(sheet, styles, edits.Dialect, reading.Night.Shop.Settings.Units.Length == WrittenLength.Inch);
            if (reading.OwnSheets.TryGetValue(ownName, out var standing))
            {
                if (Grid(standing).HasFormulas)
                {
                    edits.DropCalcChain();
                }

                edits.Replace(standing.PartName, content);
                drawings.Write(standing, sheet.Drawing);
                continue;
            }

            var added = workbook.AddSheet(sheet.Name, content);
            drawings.Write(added, sheet.Drawing);
            if (sheet is { HeadingRow: > 0, PrintScale: 0 })
            {
                workbook.PrintTitles(added, sheet.HeadingRow);
            }

            workbook.Name(ownName, new CellRef(sheet.Name, 1, 1));
            if (asks)
            {
                asking.Add(added);
            }
        }

        return asking;
    }

    private void Finish()
    {
        if (styles.IsEdited && reading.Package.StylesPart is { } part)
        {
            edits.Replace(part, styles.ToBytes());
        }
        else if (styles.IsEdited)
        {
            var folder = reading.Package.WorkbookPart[..(reading.Package.WorkbookPart.LastIndexOf('/') + 1)];
            var added = edits.AddPart($"{folder}castbook#.xml", styles.ToBytes(), "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml");
            edits.Relate(reading.Package.WorkbookPart, "styles", added);
        }

        workbook.Finish();
    }

    private SheetGrid Grid(SheetPart sheet) => SheetReader.Read(reading.Package, sheet, reading.Strings);
}
