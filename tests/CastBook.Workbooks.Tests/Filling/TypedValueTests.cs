namespace CastBook.Workbooks.Tests.Filling;

/// <summary>What a person types into a column of ours.</summary>
public sealed class TypedValueTests
{
    private const string List = "Harbour list";

    [Fact]
    public void Fill_TypedMetal_IsKeptAndSaid()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping((List, "K5", 25.5));

        filled[List, "K5"].ShouldBe(25.5);
        filled.Ids.ShouldContain("typed-value-kept");
        filled[List, "P5"].ShouldBeOfType<string>().ShouldContain("check: metal each.");
        filled.Again()[List, "K5"].ShouldBe(25.5);
    }

    // Where no value of a column is CastBook's own any more, it must still know that it was the one who wrote there.
    [Fact]
    public void Fill_EveryCellOfAColumnTyped_AllAreKeptForGood()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping((List, "K5", 25.5), (List, "K6", 4.4), (List, "K7", 51));

        var later = filled.Again().Again();

        new[] { later[List, "K5"], later[List, "K6"], later[List, "K7"] }.ShouldBe([25.5, 4.4, 51.0]);
        later.Ids.ShouldContain("typed-value-kept");
        later.Ids.ShouldNotContain("values-replaced");
    }

    [Fact]
    public void Fill_TypedFlaskLetter_IsAWish()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping((List, "M7", "B"));

        filled[List, "M7"].ShouldBe("B");
        filled.Plan.Flasks.Single(f => f.Letter == "B").Pieces.Select(p => p.PieceId).ShouldContain(2);
        filled.Ids.ShouldNotContain("typed-value-kept");
    }

    [Fact]
    public void Fill_FormulaInOurColumn_IsLeftAlone()
    {
        var book = Nights.WholeBuilder().Build();
        var filled = Filled.From(book);
        var xml = filled.SheetXml(List);
        var cell = System.Text.RegularExpressions.Regex.Match(xml, "<c r=\"L5\".*?</c>").Value;
        var withFormula = Replace(filled.Bytes, "xl/worksheets/sheet1.xml", xml.Replace(cell, "<c r=\"L5\"><f>K5*C5</f><v>1</v></c>", StringComparison.Ordinal));

        var again = Filled.From(withFormula);

        again.SheetXml(List).ShouldContain("<c r=\"L5\"><f>K5*C5</f><v>1</v></c>");
        again.Ids.ShouldContain("formula-kept");
    }

    [Fact]
    public void Fill_WithoutARecord_ListsEachValueItReplaces()
    {
        var once = Filled.From(Nights.Whole());
        var record = Enumerable.Range(1, 40).Select(row => ("Checks", $"H{row}", (object?)null));

        var again = once.AfterTyping([(List, "K5", 99), .. record]);

        again[List, "K5"].ShouldBe(20.72);
        again.Result.Findings.Single(f => f.Id == "values-replaced").Seen.ShouldBe(
            "The column Metal each (g) held other values, and nothing in the book tells whether CastBook or a person wrote them: row 5 \"99\".");
    }

    private static byte[] Replace(byte[] book, string part, string content)
    {
        using var package = CastBook.Workbooks.Reading.Package.BookPackage.Open(new MemoryStream(book));
        var edits = new CastBook.Workbooks.Writing.BookEdits(package);
        edits.Replace(part, System.Text.Encoding.UTF8.GetBytes(content));
        using var output = new MemoryStream();
        CastBook.Workbooks.Writing.PackageWriter.Write(package, edits, output);
        return output.ToArray();
    }
}
