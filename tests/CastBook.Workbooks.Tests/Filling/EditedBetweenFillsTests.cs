using CastBook.Workbooks.Tests.Fidelity;
using CastBook.Workbooks.Tests.Witnesses;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Between two fills somebody sorts, inserts, renames, copies or deletes in an office program, and saves.</summary>
public sealed class EditedBetweenFillsTests
{
    private const string List = "Harbour list";

    /// <summary>A filled night with a metal typed in the row of the Gull stud, a tree weighed, a remark on the night plan.</summary>
    private static readonly Lazy<byte[]> Before = new(() => Typed.Into(Filled.From(Nights.Whole()).Bytes,
        (List, "K6", 25.5), ("Trees", "E5", 52.0), ("Trees", "F5", 92.32), ("Night plan", "Q5", "tall one at the back")));

    private static readonly Lazy<Dictionary<string, byte[]>> Edited = new(() => LibreOfficeEdits.Of(Before.Value,
        ["sort-rows", "filter-rows", "insert-row", "insert-column", "insert-column-in-ours", "delete-our-column", "rename-sheets", "rename-heading", "copy-sheet"]));

    [LibreOfficeFact]
    public void Fill_RowsSorted_TypedValuesAndMarksTravelled()
    {
        var filled = After("sort-rows");

        new[] { filled[List, "B5"], filled[List, "B6"], filled[List, "B7"] }.ShouldBe(["=Bell clapper", "Gull stud", "Otter signet"]);
        filled[List, "K6"].ShouldBe(25.5);
        filled[List, "L6"].ShouldBe(306.0);
        filled[List, "K7"].ShouldBe(20.72);
        filled[List, "P6"].ShouldBeOfType<string>().ShouldContain("check: metal each.");
        filled.Ids.ShouldNotContain("values-replaced");
    }

    [LibreOfficeFact]
    public void Fill_RowsFiltered_NothingMoved() => After("filter-rows")[List, "K6"].ShouldBe(25.5);

    [LibreOfficeFact]
    public void Fill_RowInserted_ValuesStayWithTheirPieces()
    {
        var filled = After("insert-row");

        filled[List, "B7"].ShouldBe("Gull stud");
        filled[List, "K7"].ShouldBe(25.5);
        filled[List, "K8"].ShouldBe(51.8);
    }

    [LibreOfficeFact]
    public void Fill_ColumnInsertedBeforeOurs_OursAreKnownWhereTheyAreNow()
    {
        var filled = After("insert-column");

        filled[List, "L4"].ShouldBe("Metal each (g)");
        filled[List, "L6"].ShouldBe(25.5);
        filled[List, "K4"].ShouldBe("Bench note");
        filled[List, "R4"].ShouldBeNull();
    }

    [LibreOfficeFact]
    public void Fill_ColumnInsertedAmongOurs_StaysTheShops()
    {
        var filled = After("insert-column-in-ours");

        filled.Row(List, 4).Skip(10).ShouldBe(["Metal each (g)", "Metal (g)", "Flask", "Mix", "Burnout (h)", "Checks"]);
        filled[List, "M5"].ShouldBeNull();
        filled[List, "N5"].ShouldBe("A");
        filled[List, "K6"].ShouldBe(25.5);
    }

    [LibreOfficeFact]
    public void Fill_ColumnOfOursDeleted_IsNotAddedAgain()
    {
        var filled = After("delete-our-column");

        filled.Row(List, 4).Skip(10).ShouldBe(["Metal each (g)", "Metal (g)", "Flask", "Mix", "Checks"]);
        filled[List, "K6"].ShouldBe(25.5);
    }

    [LibreOfficeFact]
    public void Fill_SheetsRenamed_AreKnownUnderTheirNewNames()
    {
        var filled = After("rename-sheets");

        filled.Sheets.ShouldBe(Filled.From(Before.Value).Sheets.Select(s => s == List ? "Friday's list" : s == "Night plan" ? "Tonight" : s));
        filled["Friday's list", "K6"].ShouldBe(25.5);
        filled["Tonight", "Q5"].ShouldBe("tall one at the back");
    }

    [LibreOfficeFact]
    public void Fill_HeadingOfOursRenamed_KeepsTheNewName()
    {
        var filled = After("rename-heading");

        filled.Row(List, 4).Skip(10).ShouldBe(["Grams of metal", "Metal (g)", "Flask", "Mix", "Burnout (h)", "Checks"]);
        filled[List, "K6"].ShouldBe(25.5);
    }

    [LibreOfficeFact]
    public void Fill_ListCopied_TheCopyIsLeftAlone()
    {
        var filled = After("copy-sheet");

        filled.Row(List, 4).Count.ShouldBe(16);
        filled[List, "K6"].ShouldBe(25.5);
        filled.SheetXml("Last week").ShouldBe(Filled.Text(Edited.Value["copy-sheet"], "Last week"));
    }

    /// <summary>The book filled after the edit: what was typed on our sheets is there, nothing of the shop's is lost, and it stays so.</summary>
    private static Filled After(string edit)
    {
        var edited = Edited.Value[edit];
        var filled = Filled.From(edited);
        BookDiff.Of(edited, filled.Bytes).Losses.ShouldBeEmpty();
        Validator.NewMessages(edited, filled.Bytes).ShouldBeEmpty();
        filled["Trees", "E5"].ShouldBe(52.0);
        filled["Trees", "F5"].ShouldBe(92.32);
        filled.Ids.ShouldNotContain("own-sheet-kept");
        filled.Ids.ShouldContain("typed-metal-used");
        filled.Again().Result.Changed.ShouldBeFalse();
        return filled;
    }
}
