using System.IO.Compression;
using CastBook.Workbooks.Tests.Filling;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>Books of many writers, filled once and again: no part, element, attribute, cell or text of the shop's is lost or altered.</summary>
public sealed class NothingIsLostTests
{
    internal static readonly string[] Names =
    [
        "01_rich_excel365_like.xlsx", "03_chart_pivot_slicer_totals.xlsx", "04_strict_iso29500.xlsx", "06b_libreoffice_macro_ext.xlsm",
        "07_exceljs_webform.xlsx", "09_sheetjs_export.xlsx", "11_spreadcheetah_noref.xlsx", "14_openxmlsdk_minimal.xlsx",
        "hostile/h00_minimal_ok.xlsx", "hostile/h10_absolute_targets.xlsx", "hostile/h13_no_cell_refs.xlsx", "hostile/h16_formula_injection_text.xlsx",
        "templates/casting-night/casting-night.xlsx", "templates/wrenmoor-night/wrenmoor-night.xlsx",
    ];

    public static TheoryData<string> Books => [.. Names];

    [Theory]
    [MemberData(nameof(Books))]
    public void Fill_BookOfAnotherWriter_LosesNothing(string name)
    {
        var book = File.ReadAllBytes(TestBooks.PathOf(name));

        var diff = BookDiff.Of(book, Filled.From(book, name).Bytes);

        diff.Losses.ShouldBeEmpty();
        diff.Parts.ShouldBeGreaterThan(4);
        diff.Elements.ShouldBeGreaterThan(10);
    }

    [Theory]
    [MemberData(nameof(Books))]
    public void Fill_FilledBookWithAChange_LosesNothing(string name)
    {
        var once = Filled.From(TestBooks.Open(name), name);
        var piece = once.Result.Pieces[0].Row;
        var list = TestBooks.Read(new MemoryStream(once.Bytes)).Lists[0].Sheet.Name;
        var typed = Typed.Into(once.Bytes, (list, $"A{piece}", "Tide bell"));

        BookDiff.Of(typed, Filled.From(typed, name).Bytes).Losses.ShouldBeEmpty();
    }

    [Fact]
    public void Fill_WholeNight_LosesNothing()
    {
        var night = Nights.Whole().ToArray();

        BookDiff.Of(night, Filled.From(night).Bytes).Losses.ShouldBeEmpty();
    }

    [Fact]
    public void Fill_ZipWithRemarks_KeepsThem()
    {
        var night = new MemoryStream();
        night.Write(Nights.Whole().ToArray());
        using (var zip = new ZipArchive(night, ZipArchiveMode.Update, leaveOpen: true))
        {
            zip.Comment = "packed on Friday";
            zip.Entries[^1].Comment = "bench copy";
        }

        var filled = Filled.From(night.ToArray()).Bytes;

        BookDiff.Of(night.ToArray(), filled).Losses.ShouldBeEmpty();
        using var after = new ZipArchive(new MemoryStream(filled));
        after.Comment.ShouldBe("packed on Friday");
    }
}
