using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>A shop's own layout, filled from end to end.</summary>
public sealed class WholeNightTests
{
    private const string List = "Harbour list";

    [Fact]
    public void Fill_WholeNight_HasNoStopAndPlansAll()
    {
        var filled = Filled.From(Nights.Whole());

        filled.Result.Findings.Where(f => f.Severity == Severity.Stop).Select(f => f.Seen).ShouldBeEmpty();
        filled.Plan.Flasks.Sum(f => f.Pieces.Sum(p => p.Quantity)).ShouldBe(20);
    }

    // By hand: 2.3 g / 1.15 g/cm³ = 2 cm³; × 10.36 g/cm³ = 20.72 g; six of them 124.32 g.
    [Fact]
    public void Fill_WholeNight_WritesMetalBesideTheList()
    {
        var filled = Filled.From(Nights.Whole());

        filled.Row(List, 4).Skip(10).ShouldBe(["Metal each (g)", "Metal (g)", "Flask", "Mix", "Burnout (h)", "Checks"]);
        filled[List, "K5"].ShouldBe(20.72);
        filled[List, "L5"].ShouldBe(124.32);
        filled[List, "K6"].ShouldBe(4.14);
        filled[List, "M5"].ShouldBeOfType<string>().ShouldStartWith("A");

        // The hours that the Kiln sheet gives for its load: ten of its schedule, and the fall to 538 °C.
        filled[List, "O5"].ShouldBe(11.94);
        filled["Kiln", "A4"].ShouldBeOfType<string>().ShouldContain(", 11 h 56 to the first pour");
    }

    [Fact]
    public void Fill_WholeNight_LeavesTheShopsCellsByteForByte()
    {
        var before = XmlOf(Nights.Whole().ToArray());
        var after = XmlOf(Filled.From(Nights.Whole()).Bytes);

        foreach (var cell in System.Text.RegularExpressions.Regex.Matches(before, "<c [^>]*>.*?</c>").Select(m => m.Value))
        {
            after.ShouldContain(cell);
        }
    }

    [Fact]
    public void Fill_NameLikeAFormula_StaysTextEverywhere()
    {
        var filled = Filled.From(Nights.Whole());

        foreach (var sheet in filled.Sheets)
        {
            filled.SheetXml(sheet).ShouldNotContain("<f>");
        }

        filled.SheetXml("Trees").ShouldContain("=Bell clapper");
    }

    [Fact]
    public void Fill_Twice_ChangesNoPart()
    {
        var once = Filled.From(Nights.Whole());
        var twice = once.Again();

        twice.Result.Changed.ShouldBeFalse();
        Parts.Of(twice.Bytes).ShouldBe(Parts.Of(once.Bytes));
    }

    [Fact]
    public void Fill_WeightChanged_ChangesJustItsConsequences()
    {
        var once = Filled.From(Nights.Whole());
        var again = once.AfterTyping((List, "D6", 0.92));

        again[List, "K6"].ShouldBe(8.29);
        again[List, "K5"].ShouldBe(once[List, "K5"]);
        again[List, "K7"].ShouldBe(once[List, "K7"]);
        again[List, "J5"].ShouldBe("sprue on the back");
        var changed = Parts.Of(again.Bytes).Except(Parts.Of(Typed.Into(once.Bytes, (List, "D6", 0.92)))).Select(p => p.Name);
        changed.ShouldBe(["xl/worksheets/sheet1.xml", "xl/worksheets/sheet10.xml", "xl/worksheets/sheet11.xml", "xl/worksheets/sheet12.xml", "xl/worksheets/sheet16.xml", "xl/worksheets/sheet17.xml"], ignoreOrder: true);
    }

    [Fact]
    public void Fill_NightPlan_HasALinePerFlaskThatAgreesWithTheAnswer()
    {
        var filled = Filled.From(Nights.Whole());

        filled[("Night plan"), "A1"].ShouldBe("Night plan: night");
        var flask = filled.Plan.Flasks[0];
        filled["Night plan", "A5"].ShouldBe(flask.Letter);
        filled["Night plan", "E5"].ShouldBe(flask.Charge.Grams);
        filled["Night plan", "G5"].ShouldBe(flask.Powder!.Value.Grams);
        filled["Night plan", "I5"].ShouldBe("1");
        filled["Night plan", "K5"].ShouldBe(970.0);
        filled["Night plan", "L5"].ShouldBe(538.0);
    }

    // Whoever waxes up from the page must know whose piece it is.
    [Fact]
    public void Fill_Trees_SayWhosePieceItIs() =>
        Filled.From(Nights.Whole()).SheetXml("Trees").ShouldContain("Otter signet for Fernleaf ×6");

    private static string XmlOf(byte[] book)
    {
        using var package = CastBook.Workbooks.Reading.Package.BookPackage.Open(new MemoryStream(book));
        return System.Text.Encoding.UTF8.GetString(package.Read(package.Sheets[0].PartName));
    }
}
