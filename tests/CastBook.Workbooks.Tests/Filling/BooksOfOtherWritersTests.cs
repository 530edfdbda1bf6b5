using CastBook.Workbooks.Tests.Reading;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;

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
        var before = Messages(File.ReadAllBytes(TestBooks.PathOf(name)));
        var after = Messages(Filled.From(TestBooks.Open(name), name).Bytes);

        foreach (var message in before)
        {
            after.Remove(message);
        }

        after.ShouldBeEmpty();
    }

    private static List<string> Messages(byte[] book)
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(book), isEditable: false);
        return [.. new OpenXmlValidator(FileFormatVersions.Office2019).Validate(document).Select(e => $"{e.Part?.Uri} {e.Path?.XPath} {e.Description}")];
    }
}
