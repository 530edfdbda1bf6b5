using CastBook.Workbooks.Files;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Files;

public sealed class RefusedBooksTests
{
    [Theory]
    [InlineData("15_password_fern.xlsx", "book-password")]
    [InlineData("17_opendocument.ods", "book-other-format")]
    [InlineData("19_xml2003.xml", "book-other-format")]
    [InlineData("20_html_named.xls", "book-other-format")]
    [InlineData("21_biff8.xls", "book-old-format")]
    [InlineData("23_utf8bom_comma_quotes.csv", "book-csv")]
    [InlineData("25_sep_line.csv", "book-csv")]
    [InlineData("hostile/~$h00_minimal_ok.xlsx", "book-not-workbook")]
    [InlineData("hostile/h01_dtd_xxe_sheet.xlsx", "book-damaged")]
    [InlineData("hostile/h02_billion_laughs.xlsx", "book-damaged")]
    [InlineData("hostile/h03_dtd_in_rels.xlsx", "book-damaged")]
    [InlineData("hostile/h05_deep_nesting.xlsx", "book-too-much")]
    [InlineData("hostile/h06_zip_bomb_400MB.xlsx", "book-too-much")]
    [InlineData("hostile/h07_lying_uncompressed_size.xlsx", "book-damaged")]
    [InlineData("hostile/h09_rel_target_escapes.xlsx", "book-unsafe")]
    [InlineData("hostile/h11_duplicate_entries.xlsx", "book-damaged")]
    public void Read_FileThatIsNoGoodWorkbook_IsRefused(string name, string id)
    {
        var refusal = Should.Throw<BookRefusedException>(() => TestBooks.Read(name));

        refusal.Finding.Id.ShouldBe(id);
    }

    [Theory]
    [InlineData("hostile/h00_minimal_ok.xlsx")]
    [InlineData("hostile/h04_huge_dimension.xlsx")]
    [InlineData("hostile/h08_zip_slip_names.xlsx")]
    [InlineData("hostile/h10_absolute_targets.xlsx")]
    [InlineData("hostile/h13_no_cell_refs.xlsx")]
    public void Read_OddButHonestWorkbook_IsRead(string name)
    {
        var reading = TestBooks.Read(name);

        using (reading.Package)
        {
            var ring = reading.Night.Pieces.ShouldHaveSingleItem();
            (ring.Name, ring.Quantity, ring.Weight!.Value.Grams, ring.Material).ShouldBe(("Plain ring", 2, 3.5, "wax"));
            reading.Package.Parts.ShouldNotContain(p => p.Contains("evil", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Read_TextLikeFormulas_StaysText()
    {
        var reading = TestBooks.Read("hostile/h16_formula_injection_text.xlsx");

        using (reading.Package)
        {
            reading.Night.Pieces[1].Name.ShouldBe("+1+1");
            reading.Lists[0].Grid.Cell(2, 1).HasFormula.ShouldBeFalse();
        }
    }
}
