using System.Text;
using System.Text.RegularExpressions;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;

namespace CastBook.Templates.Tests.Writing;

public sealed partial class SavedBookTests
{
    public static TheoryData<string> Books => ["starter", "empty starter", "us starter", "list", "shop", "results", "us results", "demo"];

    [Theory]
    [MemberData(nameof(Books))]
    public void Book_Validator_FindsNothing(string book)
    {
        using var package = SpreadsheetDocument.Open(new MemoryStream(Make(book).Bytes), isEditable: false);

        var errors = new OpenXmlValidator(FileFormatVersions.Office2019).Validate(package).Select(e => $"{e.Part?.Uri} {e.Path?.XPath}: {e.Description}");

        errors.ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Books))]
    public void Book_DropDowns_OfferSomething(string book)
    {
        var saved = Make(book);
        var lists = saved.Sheets.Values.SelectMany(s => s.Descendants(SavedBook.Main + "dataValidation")).Where(v => (string?)v.Attribute("type") == "list").ToList();

        lists.Count.ShouldBeGreaterThan(book == "list" ? 1 : book.EndsWith("results", StringComparison.Ordinal) ? 2 : 10);
        foreach (var formula in lists.Select(l => l.Element(SavedBook.Main + "formula1")!.Value))
        {
            Offered(saved, formula).ShouldNotBeEmpty(formula);
        }
    }

    [Theory]
    [MemberData(nameof(Books))]
    public void Book_Rules_OverlapNowhereOnASheet(string book)
    {
        foreach (var (name, sheet) in Make(book).Sheets)
        {
            var ranges = sheet.Descendants(SavedBook.Main + "dataValidation").Select(v => (string)v.Attribute("sqref")!).ToList();
            ranges.Distinct().Count().ShouldBe(ranges.Count, name);
        }
    }

    [Theory]
    [MemberData(nameof(Books))]
    public void Book_Properties_NameNoPersonAndNoHour(string book)
    {
        var saved = Make(book);
        var core = Encoding.UTF8.GetString(saved.Parts["docProps/core.xml"]);

        Times().Matches(core).Select(m => m.Value).Distinct().ShouldBe(["2000-01-01T00:00:00"]);
        core.ShouldContain("<dc:creator>CastBook</dc:creator>");
        core.ShouldContain("<cp:lastModifiedBy>CastBook</cp:lastModifiedBy>");
        Encoding.UTF8.GetString(saved.Parts["docProps/app.xml"]).ShouldEndWith("<Application>CastBook</Application></Properties>");
        saved.Parts.Keys.ShouldNotContain(name => name.EndsWith(".psmdcp", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Books))]
    public void Book_Relationships_LeadToParts(string book)
    {
        var saved = Make(book);

        foreach (var rels in saved.Parts.Keys.Where(p => p.EndsWith(".rels", StringComparison.Ordinal)))
        {
            var targets = saved.Xml(rels).Root!.Elements().Select(r => (string)r.Attribute("Target")!).ToList();
            var folder = new Uri("http://book/" + rels[..rels.IndexOf("_rels/", StringComparison.Ordinal)]);
            targets.ShouldAllBe(t => saved.Parts.ContainsKey(new Uri(folder, t).AbsolutePath.TrimStart('/')), rels);
        }
    }

    // Some widely used readers compare names and not namespaces, and take a target as a path beside the part.
    [Theory]
    [MemberData(nameof(Books))]
    public void Book_Parts_AreWrittenTheWayThePlainestReadersKnow(string book)
    {
        var saved = Make(book);

        foreach (var (name, bytes) in saved.Parts)
        {
            var text = System.Text.Encoding.UTF8.GetString(bytes);
            text.ShouldNotContain("<x:", Case.Sensitive, name);
            (name.StartsWith("xl/", StringComparison.Ordinal) && text.Contains("Target=\"/", StringComparison.Ordinal)).ShouldBeFalse(name);
        }
    }

    [Theory]
    [MemberData(nameof(Books))]
    public void Book_Pages_AreOnePageWideOrReadableAndRepeatTheHeadings(string book)
    {
        var saved = Make(book);
        var titles = saved.Xml("xl/workbook.xml").Descendants(SavedBook.Main + "definedName").Where(n => (string?)n.Attribute("name") == "_xlnm.Print_Titles").ToList();

        titles.Count.ShouldBe(saved.Sheets.Keys.Count(k => k != "Read me"));
        foreach (var (name, sheet) in saved.Sheets)
        {
            var page = sheet.Descendants(SavedBook.Main + "pageSetup").Single();
            ((string?)page.Attribute("paperSize")).ShouldBe(book.StartsWith("us ", StringComparison.Ordinal) ? "1" : "9", name);
            ((string?)page.Attribute("orientation")).ShouldBe(name == "Read me" ? "portrait" : "landscape", name);
            if (name is "Pieces" or "Results")
            {
                // A list grows when it is filled: it goes on on another page, with the names on it again, and is never made too small to read.
                ((string?)page.Attribute("scale")).ShouldBe("80", name);
                titles.ShouldContain(n => n.Value.StartsWith($"{name}!$A:$A,{name}!$", StringComparison.Ordinal));
                sheet.Descendants(SavedBook.Main + "pageSetUpPr").Where(p => (string?)p.Attribute("fitToPage") == "1").ShouldBeEmpty();
                continue;
            }

            ((string?)page.Attribute("fitToHeight")).ShouldBe("0", name);
            ((string?)sheet.Descendants(SavedBook.Main + "pageSetUpPr").Single().Attribute("fitToPage")).ShouldBe("1", name);
        }
    }

    [Theory]
    [MemberData(nameof(Books))]
    public void Book_Columns_StandInOrder(string book)
    {
        foreach (var (name, sheet) in Make(book).Sheets)
        {
            var columns = sheet.Descendants(SavedBook.Main + "col").SelectMany(c => new[] { (int)c.Attribute("min")!, (int)c.Attribute("max")! }).ToList();
            columns.ShouldBeInOrder(SortDirection.Ascending, name);
        }
    }

    [Theory]
    [InlineData("starter", "A1:X7")]
    [InlineData("list", "A1:M7")]
    [InlineData("empty starter", "A1:X2")]
    [InlineData("demo", "A4:U36")]
    public void Book_Pieces_AreATableOverTheWholeList(string book, string range)
    {
        var saved = Make(book);
        var table = saved.Xml("xl/tables/table1.xml").Root!;

        ((string?)table.Attribute("ref")).ShouldBe(range);
        ((string?)table.Attribute("displayName")).ShouldBe("Pieces");
        table.Descendants(SavedBook.Main + "tableColumn").Select(c => (string)c.Attribute("name")!)
            .ShouldBe(saved.Row("Pieces", book == "demo" ? 4 : 1));
    }

    internal static SavedBook Make(string book) => book switch
    {
        "starter" => SavedBook.Starter(),
        "empty starter" => SavedBook.Starter(withExamples: false),
        "us starter" => SavedBook.Starter(units: UnitHabit.Us),
        "list" => SavedBook.Starter(StarterKind.List),
        "shop" => SavedBook.Starter(StarterKind.Shop),
        "results" => SavedBook.Starter(StarterKind.Results),
        "us results" => SavedBook.Starter(StarterKind.Results, UnitHabit.Us),
        _ => SavedBook.Demo(),
    };

    private static List<string> Offered(SavedBook book, string formula)
    {
        if (formula.StartsWith('"'))
        {
            return [.. formula.Trim('"').Split(',')];
        }

        var match = Names().Match(formula);
        match.Success.ShouldBeTrue(formula);
        var column = match.Groups["column"].Value;
        book.Cell(match.Groups["sheet"].Value, $"{column}1").ShouldNotBeEmpty(formula);
        return [column];
    }

    [GeneratedRegex(@"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d")]
    private static partial Regex Times();

    [GeneratedRegex(@"^OFFSET\((?<sheet>\w+)!\$(?<column>[A-C])\$2,0,0,MAX\(1,COUNTA\(\k<sheet>!\$\k<column>\$2:\$\k<column>\$200\)\),1\)$")]
    private static partial Regex Names();
}
