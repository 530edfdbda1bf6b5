using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Sheets;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Undoing;

/// <summary>Takes everything of CastBook's out of a book again, by the markers it bears; whatever is the shop's stays.</summary>
public sealed class BookUndo
{
    private const int MostTypedSaid = 40;

    private readonly BookPackage package;
    private readonly OwnMarks marks;
    private readonly BookEdits edits;
    private readonly WorkbookEdits workbook;
    private readonly SharedStrings strings;
    private readonly FillRecord record;
    private readonly List<Finding> findings = [];
    private readonly List<string> taken = [];
    private readonly List<(CellRef Cell, string Text)> typed = [];

    private BookUndo(BookPackage package)
    {
        this.package = package;
        marks = OwnMarks.Of(package);
        edits = new BookEdits(package);
        workbook = new WorkbookEdits(package, edits);
        strings = SharedStrings.Read(package);
        record = FillRecord.Read(marks.Sheets.TryGetValue(OwnName.ChecksSheet, out var checks) ? Grid(checks) : null, ChecksSheet.RecordColumn);
    }

    /// <summary>Takes out what is CastBook's.</summary>
    /// <param name="book">The workbook; must be able to seek. It is only read.</param>
    /// <param name="output">Where the workbook goes; must be able to read, write and seek.</param>
    /// <param name="bookName">The book's file name with its extension, for telling a wrong extension.</param>
    /// <param name="caps">How much the book may ask of the machine; the usual where nothing is said.</param>
    /// <returns>What was taken out, and what a person should know of it.</returns>
    /// <exception cref="BookRefusedException">The workbook cannot be read. Nothing was written.</exception>
    /// <exception cref="BrokenOutputException">A fault of CastBook: the book does not pass its own checks.</exception>
    public static UndoResult Undo(Stream book, Stream output, string bookName, Caps? caps = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(output);
        BookGate.Admit(book, bookName);
        using var package = BookPackage.Open(book, caps);
        var undo = new BookUndo(package);
        undo.Edit();
        var check = new OutputCheck(package, undo.edits);
        PackageWriter.Write(package, undo.edits, output, check.Watch);
        var changed = check.Run(output);
        if (!changed)
        {
            undo.findings.Add(Catalogue.NothingToTakeOut.At(Subject.Book, bookName));
        }

        return new UndoResult(changed, IsExact: false, undo.taken, undo.findings);
    }

    /// <summary>Whether a book bears any marker of CastBook's.</summary>
    /// <param name="book">The workbook; must be able to seek.</param>
    /// <param name="caps">How much it may ask of the machine.</param>
    internal static bool IsClean(Stream book, Caps? caps)
    {
        book.Position = 0;
        using var package = BookPackage.Open(book, caps);
        return !package.DefinedNames.Any(n => n.Name.StartsWith(OwnName.Prefix, StringComparison.Ordinal));
    }

    private void Edit()
    {
        var going = GoingSheets();
        var left = package.Sheets.Except(going).ToList();
        var columns = OwnColumns(left).ToList();
        var looks = FormulaTexts.Find(package, going, [.. going.Select(LookAt), .. columns.SelectMany(c => c.TableColumns.Select(t => t.Needle))]);
        foreach (var sheet in going.Where(s => looks.Contains(LookAt(s))).ToList())
        {
            findings.Add(Catalogue.SheetStaysLookedAt.At(Subject.Book, sheet.Name));
            going.Remove(sheet);
            left.Add(sheet);
        }

        foreach (var list in columns)
        {
            typed.AddRange(list.Remove(edits, workbook, record, looks, findings));
            taken.Add(UndoWords.Columns(list.Count, list.Sheet.Name));
        }

        SayTypedOn(going);
        if (going.Any(s => Grid(s).HasFormulas))
        {
            edits.DropCalcChain();
        }

        if (going.Count > 0)
        {
            taken.Add(UndoWords.Sheets([.. going.Select(s => s.Name)]));
        }

        RemoveMarks(left);
        RemoveQuestions(left);
        workbook.Remove(going);
        workbook.RestoreCalculation(record);
        workbook.Finish();
        Say();
    }

    /// <summary>Our sheets, and those with questions that nobody has answered.</summary>
    private List<SheetPart> GoingSheets()
    {
        var going = marks.Sheets.Values.ToList();
        foreach (var (ownName, sheet) in marks.Questions)
        {
            if (record.Knows(ownName) && !TypedOnSheet.Cells(Grid(sheet), record, ownName).Any())
            {
                going.Add(sheet);
            }
            else
            {
                findings.Add(Catalogue.SheetStaysAnswered.At(Subject.Book, sheet.Name));
            }
        }

        return [.. going.DistinctBy(s => s.PartName).OrderBy(s => s.Index)];
    }

    private IEnumerable<OwnColumns> OwnColumns(List<SheetPart> sheets) =>
        package.DefinedNames
            .Where(n => n.Name.StartsWith(OwnName.Prefix, StringComparison.Ordinal) && !OwnMarks.IsSheet(n.Name))
            .Select(n => (n.Name, IsCell: n.TryCell(out var cell), Cell: cell))
            .Where(n => n.IsCell)
            .GroupBy(n => (Sheet: n.Cell.Sheet.ToUpperInvariant(), n.Cell.Row))
            .Select(g => (Sheet: sheets.FirstOrDefault(s => string.Equals(s.Name, g.Key.Sheet, StringComparison.OrdinalIgnoreCase)), Names: g))
            .Where(g => g.Sheet is not null)
            .Select(g => new OwnColumns(package, g.Sheet!, Grid(g.Sheet!), g.Names.Key.Row, [.. g.Names.Select(n => (n.Name, n.Cell.Column))]));

    private void SayTypedOn(List<SheetPart> going)
    {
        foreach (var (ownName, sheet) in marks.Sheets.Where(s => going.Contains(s.Value) && record.Knows(s.Key)))
        {
            typed.AddRange(TypedOnSheet.Cells(Grid(sheet), record, ownName).Select(c => (new CellRef(sheet.Name, c.Row, c.Column), c.Text)));
        }
    }

    private void RemoveMarks(List<SheetPart> sheets)
    {
        var (marked, notes) = (false, 0);
        foreach (var sheet in sheets)
        {
            if (MarkRules.IsIn(package, sheet))
            {
                edits.Sheet(sheet.PartName).Change("conditionalFormatting", MarkRules.WithoutOurs);
                marked = true;
            }

            notes += new NoteWriter(package, edits).Remove(sheet, Grid(sheet).LegacyDrawingId);
        }

        if (marked)
        {
            taken.Add(UndoWords.Marks);
        }

        if (notes > 0)
        {
            taken.Add(UndoWords.Notes(notes));
        }
    }

    /// <summary>Lines that CastBook added to the shop's own Shop sheet go where nobody answered them.</summary>
    private void RemoveQuestions(List<SheetPart> sheets)
    {
        if (record.Knows(OwnName.ShopQuestions)
            && sheets.FirstOrDefault(s => s.Name.Equals(QuestionSheets.ShopName, StringComparison.OrdinalIgnoreCase) && !marks.Questions.Values.Contains(s)) is { } shop)
        {
            MissingSettings.Remove(Grid(shop), () => edits.Sheet(shop.PartName), record);
        }
    }

    private void Say()
    {
        if (typed.Count > 0)
        {
            var words = string.Join("; ", typed.Take(MostTypedSaid).Select(t => $"{t.Cell} \"{t.Text}\""));
            var more = typed.Count > MostTypedSaid ? PlaceWords.More(typed.Count - MostTypedSaid) : "";
            findings.Add(Catalogue.TypedTakenOut.At(Subject.Book, words + more));
        }

        if (taken.Count > 0 && !marks.Sheets.ContainsKey(OwnName.ChecksSheet))
        {
            findings.Add(Catalogue.TakenOutWithoutRecord.At(Subject.Book));
        }
    }

    private static string LookAt(SheetPart sheet) => $"{sheet.Name}!";

    private SheetGrid Grid(SheetPart sheet) => SheetReader.Read(package, sheet, strings);
}
