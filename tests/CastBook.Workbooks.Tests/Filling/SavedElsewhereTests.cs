using CastBook.Workbooks.Tests.Fidelity;
using CastBook.Workbooks.Tests.Fidelity.RandomBooks;
using CastBook.Workbooks.Tests.Witnesses;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Between two fills another program opens the book and saves it: what is ours is known again, what was typed stays.</summary>
public sealed class SavedElsewhereTests
{
    private const string List = "Harbour list";
    private const int RandomBooks = 25;

    [LibreOfficeFact]
    public void Fill_SavedByLibreOffice_KnowsItsOwnAgain() => IsKnownAgain(LibreOffice.Resave([("night.xlsx", Typed())])[0]);

    // It writes a relationship to a theme that the book never had, so that the validator does not open what it saved.
    [NodeFact]
    public void Fill_SavedByExceljs_KnowsItsOwnAgain() => IsKnownAgain(NodeLibraries.Resave("exceljs", Typed()), isValid: false);

    [NodeFact]
    public void Fill_SavedBySheetJs_KnowsItsOwnAgain() => IsKnownAgain(NodeLibraries.Resave("xlsx", Typed()));

    // Whatever the book: nobody typed anything, so nothing may look typed, be replaced, or stand there twice.
    [LibreOfficeFact]
    public void Fill_RandomBooksSavedByLibreOffice_KnowTheirOwnAgain()
    {
        var once = Enumerable.Range(1, RandomBooks).Select(seed => Filled.From(RandomBook.Make(seed))).ToList();
        var saved = LibreOffice.Resave(once.Select((f, i) => ($"random-{i + 1}.xlsx", f.Bytes)));

        once.Zip(saved).SelectMany((books, i) => Faults(books.First, books.Second).Select(fault => $"random {i + 1} {fault}")).ShouldBeEmpty();
    }

    private static IEnumerable<string> Faults(Filled once, byte[] saved)
    {
        var again = Filled.From(saved);
        return
        [
            .. BookDiff.Of(saved, again.Bytes).Losses.Select(l => $"lost {l}"),
            .. Validator.NewMessages(saved, again.Bytes).Select(m => $"says {m}"),
            .. again.Ids.Where(id => id is "typed-value-kept" or "typed-metal-used" or "values-replaced" or "own-sheet-kept" or "sheet-name-taken").Select(id => $"finds {id}"),
            .. again.Sheets.Except(once.Sheets).Select(s => $"got the sheet {s}"),
            .. again.Again().Result.Changed ? ["changes when filled again"] : Array.Empty<string>(),
        ];
    }

    /// <summary>A filled night in which a metal was typed, a flask ticked and weighed, and a remark made.</summary>
    private static byte[] Typed() => Filling.Typed.Into(Filled.From(Nights.Whole()).Bytes,
        (List, "K5", 25.5), (List, "J6", "thin bail"), ("Trees", "E5", 52.0), ("Trees", "F5", 92.32), ("Night plan", "Q5", "tall one at the back"));

    private static void IsKnownAgain(byte[] saved, bool isValid = true)
    {
        var direct = Filled.From(Typed());

        var filled = Filled.From(saved);

        filled.Sheets.ShouldBe(direct.Sheets);
        filled.Row(List, 4).ShouldBe(direct.Row(List, 4));
        foreach (var sheet in new[] { List, "Night plan", "Trees" })
        {
            foreach (var row in direct.Grid(sheet).Rows)
            {
                filled.Row(sheet, row).ShouldBe(direct.Row(sheet, row), $"{sheet} {row}");
            }
        }

        filled[List, "K5"].ShouldBe(25.5);
        filled["Trees", "F5"].ShouldBe(92.32);
        filled["Night plan", "Q5"].ShouldBe("tall one at the back");
        filled.Ids.Order().ShouldBe(direct.Ids.Order());
        Marks.Of(filled, List).ShouldBe(Marks.Of(direct, List), ignoreOrder: true);
        BookDiff.Of(saved, filled.Bytes).Losses.ShouldBeEmpty();
        if (isValid)
        {
            Validator.NewMessages(saved, filled.Bytes).ShouldBeEmpty();
        }

        filled.Again().Result.Changed.ShouldBeFalse();
    }
}
