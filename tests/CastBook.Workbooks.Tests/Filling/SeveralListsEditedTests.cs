using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Tests.Fidelity;
using CastBook.Workbooks.Tests.Witnesses;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Between two fills of a book with two lists somebody works on the second one in an office program.</summary>
public sealed class SeveralListsEditedTests
{
    private const string First = "Harbour list";
    private const string Second = "Quarry list";

    private static readonly BookSettings All = new() { Sheets = ["all"] };

    /// <summary>Two lists filled, with a metal typed in the row of the second's gull stud.</summary>
    private static readonly Lazy<byte[]> Before = new(() => Typed.Into(
        Filled.From(Nights.TwoListsBuilder().Build(), settings: All).Bytes, (Second, "I3", 5.0)));

    private static readonly Lazy<Dictionary<string, byte[]>> Edited = new(() => LibreOfficeEdits.Of(
        Before.Value, ["sort-second", "insert-in-second", "rename-second", "delete-second"]));

    [LibreOfficeFact]
    public void Fill_SecondListSorted_TypedValuesTravelled()
    {
        var filled = After("sort-second");

        (filled[Second, "C2"], filled[Second, "I2"], filled[Second, "J2"]).ShouldBe(("Gull stud", 5.0, 40.0));
        (filled[Second, "C3"], filled[Second, "I3"]).ShouldBe(("Slate fob", 31.08));
        filled[Second, "N2"].ShouldBeOfType<string>().ShouldContain("check: metal each.");
    }

    [LibreOfficeFact]
    public void Fill_RowAndColumnInsertedInTheSecondList_OursAreKnownWhereTheyAreNow()
    {
        var filled = After("insert-in-second");

        (filled[Second, "J1"], filled[Second, "J3"], filled[Second, "J4"]).ShouldBe(("Metal each (g)", 31.08, 5.0));
        filled[Second, "P1"].ShouldBeNull();
    }

    [LibreOfficeFact]
    public void Fill_SecondSheetRenamed_IsKnownUnderItsNewName()
    {
        var filled = After("rename-second");

        (filled["Quarry, late", "I2"], filled["Quarry, late", "I3"]).ShouldBe((31.08, 5.0));
        filled["Quarry, late", "O1"].ShouldBeNull();
    }

    [LibreOfficeFact]
    public void Fill_SecondSheetDeleted_TheFirstIsStillFilled()
    {
        var filled = Filled.From(Edited.Value["delete-second"], settings: All);

        (filled[First, "K5"], filled.Result.Night.Pieces.Count).ShouldBe((20.72, 3));
        filled.Row(First, 4).Count.ShouldBe(16);
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    private static Filled After(string edit)
    {
        var edited = Edited.Value[edit];
        var filled = Filled.From(edited, settings: All);
        BookDiff.Of(edited, filled.Bytes).Losses.ShouldBeEmpty();
        Validator.NewMessages(edited, filled.Bytes).ShouldBeEmpty();
        filled[First, "K5"].ShouldBe(20.72);
        filled.Ids.ShouldContain("typed-metal-used");
        filled.Ids.ShouldNotContain("typed-value-kept");
        filled.Ids.ShouldNotContain("values-replaced");
        filled.Again().Result.Changed.ShouldBeFalse();
        return filled;
    }
}
