using CastBook.Workbooks.Tests.Fidelity;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Books of other writers, filled: nothing of theirs is lost, and no validator finds anything new.</summary>
public sealed class BooksOfOtherWritersTests
{
    public static TheoryData<string> Books =>
    [
        "01_rich_excel365_like.xlsx", "03_chart_pivot_slicer_totals.xlsx", "04_strict_iso29500.xlsx", "06b_libreoffice_macro_ext.xlsm",
        "07_exceljs_webform.xlsx", "09_sheetjs_export.xlsx", "11_spreadcheetah_noref.xlsx", "14_openxmlsdk_minimal.xlsx",
    ];

    [Theory]
    [MemberData(nameof(Books))]
    public void Fill_Twice_ChangesNoPart(string name)
    {
        var once = Filled.From(TestBooks.Open(name), name);

        Parts.Of(Filled.From(once.Bytes, name).Bytes).ShouldBe(Parts.Of(once.Bytes));
    }

    [Theory]
    [MemberData(nameof(Books))]
    public void Fill_ValidatorFindsNothingNew(string name)
    {
        var book = File.ReadAllBytes(TestBooks.PathOf(name));

        Validator.NewMessages(book, Filled.From(book, name).Bytes).ShouldBeEmpty();
    }
}
