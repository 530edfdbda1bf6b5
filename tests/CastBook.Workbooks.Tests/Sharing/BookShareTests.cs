using System.IO.Compression;
using System.Text;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Sharing;
using CastBook.Workbooks.Tests.Fidelity;
using CastBook.Workbooks.Tests.Filling;
using CastBook.Workbooks.Tests.Reading;
using CastBook.Workbooks.Tests.Witnesses;

namespace CastBook.Workbooks.Tests.Sharing;

/// <summary>A template of a shop's own book: layout and settings stay, and nothing of the rows or of anybody is left in it.</summary>
public sealed class BookShareTests
{
    private static readonly string[] Names =
    [
        "01_rich_excel365_like.xlsx", "03_chart_pivot_slicer_totals.xlsx", "04_strict_iso29500.xlsx", "06b_libreoffice_macro_ext.xlsm",
        "07_exceljs_webform.xlsx", "09_sheetjs_export.xlsx", "11_spreadcheetah_noref.xlsx", "14_openxmlsdk_minimal.xlsx",
    ];

    // Words of the trade that these books let people choose from.
    private static readonly string[] InDropDownLists = ["resin", "silver", "bronze", "gold 9ct", "brass"];

    public static TheoryData<string> Books => new(Names);

    [Fact]
    public void Share_SecretsInEveryPlace_LeavesNone()
    {
        var secrets = new Secrets();
        var book = SecretBook.Make(secrets);

        var (template, _) = Share(book);

        secrets.Count.ShouldBeGreaterThan(150);
        secrets.In(book).Count.ShouldBe(secrets.Count);
        secrets.In(template).ShouldBeEmpty();
        Secrets.Found(template, ["91827.25", "73645.75", "314.159"]).ShouldBeEmpty();
    }

    [Fact]
    public void Share_SecretsInEveryPlace_KeepsLayoutListsAndSettings()
    {
        var (template, _) = Share(SecretBook.Make(new Secrets()));

        using var package = BookPackage.Open(new MemoryStream(template));
        var pieces = Encoding.UTF8.GetString(package.Read(package.Sheets[0].PartName));
        package.AllSheetNames.ShouldBe(["Pieces", "Shop", "Alloys"]);
        package.DefinedNames.Select(n => (n.Name, n.Text)).ShouldBe([("Weights", "Pieces!$C$5:$C$8")]);
        Row(package, "Pieces", 4).ShouldBe(["Piece", "Qty", "Pattern weight (g)", "Alloy", "Customer", "Sum (g)"]);
        Row(package, "Shop", 3).ShouldBe(["Crucible holds", "60", "ml"]);
        Row(package, "Alloys", 2).ShouldBe(["sterling silver", "10.36"]);
        pieces.ShouldContain("width=\"31.5\"");
        pieces.ShouldContain("state=\"frozen\"");
        pieces.ShouldContain("<f>B5*C5</f></c>");
        pieces.ShouldContain("<formula1>\"sterling silver,tin bronze\"</formula1>");
        pieces.ShouldContain("<formula>50</formula>");
        pieces.ShouldContain("<oddFooter>&amp;R&amp;P / &amp;N</oddFooter>");
        pieces.ShouldContain("orientation=\"landscape\"");
        pieces.ShouldNotContain("hidden=");
        Encoding.UTF8.GetString(package.Read("xl/styles.xml")).ShouldContain("formatCode=\" 0.00 &quot;g&quot;\"");
        Encoding.UTF8.GetString(package.Read("xl/tables/table1.xml")).ShouldContain("displayName=\"Jobs\"");
    }

    [Fact]
    public void Share_SecretsInEveryPlace_SaysWhatItKeptAndLeftOut()
    {
        var secrets = new Secrets();

        var (_, result) = Share(SecretBook.Make(secrets));

        result.Kept.ShouldBe(["the headings of the list on Pieces", "Shop (2 settings)", "Alloys (2 rows)", "the table Jobs", "the name Weights", "column widths, formats, frozen headings, drop-down lists and the set-up of pages"]);
        result.Removed.ShouldContain("6 rows of pieces");
        result.Removed.ShouldContain("1 macro");
        result.Removed.ShouldContain("1 list of people");
        result.Removed.ShouldContain("1 hidden name");
        result.Removed.ShouldContain("1 hidden row, now shown");
        result.Removed.ShouldContain("1 hidden column, now shown");
        result.Removed.ShouldContain("1 drop-down list quoting text");
        result.Removed.ShouldContain("1 mark quoting text");
        result.Removed.ShouldContain("1 line of words in the margin of pages");
        result.Removed.ShouldContain("3 document property sheets");
        result.LeftSheets.Select(s => s[(s.IndexOf('(', StringComparison.Ordinal))..]).ShouldBe(["(hidden)", "(neither a list of pieces nor a sheet of settings)"]);
        result.UnknownHeadings.ShouldBe(["Sum (g)", "Supplier"]);
    }

    // What "gold" means is a choice of the shop; whose ring somebody called an alloy after is nobody's business.
    [Fact]
    public void Share_AnswersAboutAlloys_KeepsThoseOfTheTrade()
    {
        var book = new BookBuilder()
            .Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Alloy").Row("Otter ring", 1, 2, "gold").Row("Total", null, new Cell(2, Formula: "SUM(C2:C2)")))
            .Sheet("Shop", s => s.Row("Setting", "Value", "Unit")
                .Row("Alloy \"gold\" is", "14k yellow").Row("Alloy \"Aunt Orla's\" is", "14k yellow").Row("Alloy \"silver\" is", "Orla's silver").Row("Melt loss", 2, "%")).Build();

        var (template, result) = Share(book.ToArray());

        using var package = BookPackage.Open(new MemoryStream(template));
        Row(package, "Shop", 2).ShouldBe(["Alloy \"gold\" is", "14k yellow"]);
        Row(package, "Shop", 5).ShouldBe(["Melt loss", "2", "%"]);
        Secrets.Found(template, ["Orla", "Otter"]).ShouldBeEmpty();
        result.Kept.ShouldContain("Shop (2 settings)");

        // A sum keeps the word that tells it from a piece.
        Row(package, "Pieces", 3)[0].ShouldBe("Total");
    }

    [Theory]
    [MemberData(nameof(Books))]
    public void Share_BookOfAnyProgram_LeavesNoTextOfARow(string name)
    {
        var book = File.ReadAllBytes(TestBooks.PathOf(name));
        var before = book.ToArray();

        var (template, _) = Share(book);

        var kept = Texts(template).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var gone = Texts(book).Where(t => t.Length > 3 && t.Any(char.IsLetter) && !kept.Contains(t) && !InDropDownLists.Contains(t)).ToList();
        gone.Count.ShouldBeGreaterThan(2);
        Secrets.Found(template, gone.Where(t => !kept.Any(k => k.Contains(t, StringComparison.OrdinalIgnoreCase)))).ShouldBeEmpty();
        kept.Count.ShouldBeLessThan(20);
        Validator.NewMessages(book, template).ShouldBeEmpty();
        book.ShouldBe(before);
    }

    [Fact]
    public void Share_FilledBook_IsTheTemplateOfTheBookBefore()
    {
        var before = Nights.Whole().ToArray();

        var (template, _) = Share(Filled.From(before).Bytes);

        // Formats that nothing bears any more are left in a book that is undone.
        Parts(template).Where(p => p.Key != "xl/styles.xml").ShouldBe(Parts(Share(before).Template).Where(p => p.Key != "xl/styles.xml"));
        Texts(template).ShouldNotContain(t => t.Contains("castbook", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Share_Template_CanBeFilledOnceRowsAreTyped()
    {
        var (template, _) = Share(Nights.Whole().ToArray());

        var typed = Typed.Into(template, ("Harbour list", "A5", "Fern ring"), ("Harbour list", "B5", 3), ("Harbour list", "C5", 1.5));
        var reading = TestBooks.Read(new MemoryStream(typed));

        reading.Night.Pieces.Count.ShouldBe(1);
        Filled.From(typed).Bytes.Length.ShouldBeGreaterThan(typed.Length);
    }

    [Fact]
    public void Share_NameOfASheetSaysWhatARowSays_IsRefused()
    {
        var book = new BookBuilder().Sheet("Harbour fair list", s => s
            .Row("Piece", "Qty", "Pattern weight (g)", "Customer").Row("Otter ring", 6, 4.35, "Harbour fair")).Build().ToArray();

        Should.Throw<BookRefusedException>(() => Share(book)).Message.ShouldBe(
            "The sheet \"Harbour fair list\" bears a name that also stands in what is left out: \"Harbour fair\". "
            + "Nobody but you can tell whether that name may be passed on, so nothing was written. "
            + "Give the sheet another name, or type --keep \"Harbour fair list\" if it may.");
        Share(book, "Harbour fair list").Result.UnknownHeadings.ShouldBeEmpty();
    }

    [Fact]
    public void Share_GroupsAboveTheHeadings_GoOrAreToBeReadThrough()
    {
        var book = new BookBuilder().Sheet("Pieces", s => s
            .Row("Ours", null, "For Maria").Row("Piece", "Qty", "Pattern weight (g)", "Marks").Row("Otter ring", 6, 4.35)).Build().ToArray();

        var (template, result) = Share(book);

        result.UnknownHeadings.ShouldContain("Marks");
        result.UnknownHeadings.Contains("For Maria").ShouldBe(Secrets.Found(template, ["For Maria"]).Count > 0);
    }

    [Fact]
    public void Share_TableNamedAfterWhatARowSays_IsPlainCells()
    {
        var book = new BookBuilder().Sheet("Pieces", s => s
            .Row("Piece", "Qty", "Pattern weight (g)", "Customer").Row("Otter ring", 6, 4.35, "Harbour fair").Table("A1:D2", ["Piece", "Qty", "Pattern weight (g)", "Customer"]))
            .Name("OurHarbourFairRows", "Pieces!$A$2", hidden: false).Build().ToArray();
        book = Planted.In(book, "xl/tables/table1.xml", t => Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(t).Replace("Table1", "HarbourFairJobs", StringComparison.Ordinal)));

        var (template, result) = Share(book);

        Secrets.Found(template, ["Harbour"]).ShouldBeEmpty();
        result.Removed.ShouldContain("1 table, now plain cells");
        result.Removed.ShouldContain("1 name of cells that go");
    }

    [Fact]
    public void Share_DropDownListOfPrices_Goes_AndOneOfSizesStays()
    {
        static string List(string items, string cells) => $"<dataValidation type=\"list\" sqref=\"{cells}\"><formula1>\"{items}\"</formula1></dataValidation>";
        var book = new BookBuilder().Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (g)", "Size", "Price").Row("Otter ring", 6, 4.35)
            .After($"<dataValidations count=\"2\">{List("52,53.5,54", "D2:D9")}{List("149.5,12.25", "E2:E9")}</dataValidations>")).Build().ToArray();

        var (template, result) = Share(book);

        Secrets.Found(template, ["52,53.5,54"]).Count.ShouldBe(1);
        Secrets.Found(template, ["149.5", "12.25"]).ShouldBeEmpty();
        result.Removed.ShouldContain("1 drop-down list quoting text");
    }

    [Fact]
    public void Share_SheetVouchedFor_IsKeptWithItsCells()
    {
        var book = new BookBuilder()
            .Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (g)").Row("Otter ring", 6, 4.35))
            .Sheet("Words", s => s.Row("polished", Cell.Computed("LEN(A1)", 8), Cell.Computed("\"Otter\"&A1", "Otterpolished")).Hidden())
            .Build().ToArray();

        var (template, result) = Share(book, "Words");

        using var package = BookPackage.Open(new MemoryStream(template));
        package.Sheets.Select(s => (s.Name, s.IsHidden)).ShouldBe([("Pieces", false), ("Words", false)]);
        Row(package, "Words", 1).ShouldBe(["polished"]);
        Encoding.UTF8.GetString(package.Read(package.Sheets[1].PartName)).ShouldContain("<f>LEN(A1)</f></c>");
        result.Kept.ShouldContain("Words, as you wished");
        Secrets.Found(template, ["Otter"]).ShouldBeEmpty();
    }

    [Fact]
    public void Share_WishForASheetThatIsMissing_IsRefused()
    {
        var book = BookBuilder.Pieces(["Piece", "Qty", "Pattern weight (g)"], ["Otter ring", 6, 4.35]).ToArray();

        Should.Throw<BookRefusedException>(() => Share(book, "Lists")).Message.ShouldBe(
            "There is no sheet \"Lists\" to keep; the book has Pieces. Nothing was written. Type the name after --keep as it stands on the tab.");
    }

    [Fact]
    public void Share_BookWithoutListAndSettings_IsRefused()
    {
        var book = new BookBuilder().Sheet("Diary", s => s.Row("Monday", "rain")).Build().ToArray();

        Should.Throw<BookRefusedException>(() => Share(book)).Finding.Id.ShouldBe("list-headings-unknown");
    }

    [Fact]
    public void Share_ShopFileWithoutList_KeepsItsSheets()
    {
        var book = new BookBuilder().Sheet("Flasks", s => s.Row("Size", "Inside diameter (mm)", "Height (mm)", "Owned").Row("75 × 100", 75, 100, 4)).Build().ToArray();

        Share(book).Result.Kept.ShouldContain("Flasks (1 row)");
    }

    [LibreOfficeFact]
    public void Share_Templates_OpenInLibreOffice()
    {
        var templates = Names.Select((name, i) => ($"t{i}.xlsx", Share(File.ReadAllBytes(TestBooks.PathOf(name))).Template)).Append(("secret.xlsx", Share(SecretBook.Make(new Secrets())).Template)).ToList();

        var cells = LibreOffice.Cells(templates);

        cells.Count.ShouldBe(templates.Count);
        cells["secret.xlsx"]["Pieces"]["E4"].ShouldBe("Customer");
        cells["secret.xlsx"]["Alloys"]["B2"].ShouldBe("10.36");
        cells["t0.xlsx"].Values.SelectMany(s => s.Values).ShouldContain("Weight each (g)");
    }

    private static (byte[] Template, ShareResult Result) Share(byte[] book, params string[] keep)
    {
        using var output = new MemoryStream();
        var result = BookShare.Share(new MemoryStream(book), output, ShareWishes.None with { Keep = keep }, BookSettings.None);
        return (output.ToArray(), result);
    }

    private static IEnumerable<string> Texts(byte[] book)
    {
        using var package = BookPackage.Open(new MemoryStream(book));
        var strings = SharedStrings.Read(package);
        return [.. package.Sheets.Select(s => SheetReader.Read(package, s, strings))
            .SelectMany(g => g.Rows.SelectMany(r => Enumerable.Range(1, g.LastColumnOf(r)).Select(c => g.Cell(r, c).Text)))
            .OfType<string>().Select(t => t.Trim())];
    }

    private static IReadOnlyList<string> Row(BookPackage package, string sheet, int row)
    {
        var grid = SheetReader.Read(package, package.Sheets.Single(s => s.Name == sheet), SharedStrings.Read(package));
        return [.. Enumerable.Range(1, grid.LastColumnOf(row)).Select(c => grid.Cell(row, c)).Where(c => c.Kind != CellKind.Empty)
            .Select(c => c.Text ?? c.Number.ToString(System.Globalization.CultureInfo.InvariantCulture))];
    }

    private static Dictionary<string, string> Parts(byte[] book)
    {
        using var archive = new ZipArchive(new MemoryStream(book));
        return archive.Entries.ToDictionary(e => e.FullName, e => new StreamReader(e.Open()).ReadToEnd());
    }
}
