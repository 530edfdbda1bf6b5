using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Answers in the units of the shop. Gram, pennyweight, troy ounce and pound: NIST Handbook 44, Appendix C, all exact.</summary>
public sealed class ShopUnitsTests
{
    private const string List = "Harbour list";
    private const double Dwt = 1.55517384;
    private const double Pound = 453.59237;

    private static readonly (string, string, object?)[] InDwt =
        [("Shop", "A21", SettingName.MetalIn), ("Shop", "B21", "dwt"), ("Shop", "B7", 1), ("Shop", "C7", "dwt")];

    private static readonly (string, string, object?)[] Us =
    [
        .. InDwt, ("Shop", "A22", SettingName.PowderIn), ("Shop", "B22", "lb"), ("Shop", "B8", 0.01), ("Shop", "C8", "lb"),
        ("Shop", "A23", SettingName.TemperaturesIn), ("Shop", "B23", "°F"), ("Shop", "A24", SettingName.LengthsIn), ("Shop", "B24", "in"),
    ];

    private static byte[] Whole => Nights.Whole().ToArray();

    // 2.3 g ÷ 1.15 × 10.36 = 20.72 g, 13.3233 dwt; six of them 124.32 g, 79.9396 dwt.
    [Fact]
    public void Fill_MetalInPennyweights_ColumnsOfTheListAreInThem()
    {
        var filled = Filled.From(Typed.Into(Whole, InDwt));

        (filled[List, "K4"], filled[List, "K5"]).ShouldBe(("Metal each (dwt)", 13.32));
        (filled[List, "L4"], filled[List, "L5"]).ShouldBe(("Metal (dwt)", 79.94));
        filled.Part("xl/styles.xml").ShouldContain("formatCode=\"#,##0.0#\"");
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    // 20.72 g ÷ 31.1034768 = 0.66616.
    [Fact]
    public void Fill_MetalInTroyOunces_ColumnsOfTheListAreInThem()
    {
        var filled = Filled.From(Typed.Into(Whole, ("Shop", "A21", SettingName.MetalIn), ("Shop", "B21", "ozt")));

        (filled[List, "K4"], filled[List, "K5"]).ShouldBe(("Metal each (troy oz)", 0.666));
    }

    [Fact]
    public void Fill_UsUnits_NightPlanIsToBeWeighedAndDialledInThem()
    {
        var filled = Filled.From(Typed.Into(Whole, Us));

        filled.Row("Night plan", 4).ShouldBe(
        [
            "Flask", "Size", "Alloy", "Pieces", "Charge (dwt)", "from", "Powder (lb)", "Water (ml)", "Mix", "Burnout",
            "Metal (°F)", "Flask (°F)", "Pour at", "Quench after (min)", "Quench at", "Waxed", "Invested", "Poured", "Remarks",
        ]);
        var flask = filled.Plan.Flasks.ShouldHaveSingleItem();
        var metal = (flask.PiecesMetal + flask.TreeMetal + flask.Button).Grams * 1.01 / Dwt;
        filled["Night plan", "E5"].ShouldBe(Math.Ceiling(metal));

        // Powder to a hundredth of a pound, its water 38 to 100 of what is weighed.
        var powder = (double)filled["Night plan", "G5"]!;
        (powder * 100).ShouldBe(Math.Round(powder * 100), 1e-9);
        (powder * Pound).ShouldBe(flask.Powder!.Value.Grams, 1e-6);
        filled["Night plan", "H5"].ShouldBe(Math.Round(powder * Pound * 0.38));

        // 970 × 9 ÷ 5 + 32; 538 × 9 ÷ 5 + 32 = 1000.4.
        (filled["Night plan", "K5"], filled["Night plan", "L5"]).ShouldBe((1778.0, 1000.0));
    }

    // 970 °C is 1,778 °F, and the wall of the page has what the bench needs.
    [Fact]
    public void Fill_UsUnits_EveryOtherSheetAgrees()
    {
        var filled = Filled.From(Typed.Into(Whole, Us));
        var (charge, powder) = (filled["Night plan", "E5"], filled["Night plan", "G5"]);

        (filled["Trees", "E4"], filled["Trees", "I4"], filled["Trees", "I5"]).ShouldBe(("Base (dwt)", "Charge (dwt)", charge));
        filled.Row("Trees", 7).ShouldBe(["Tree", "Alloy", "Size", "Pieces", "Charge (dwt)", "Powder (lb)", "Metal (°F)", "Flask (°F)", "Quench after (min)"]);
        (filled["Trees", "F8"], filled["Trees", "G8"], filled["Trees", "H8"]).ShouldBe((charge, powder, 1778.0));
        filled.SheetXml("Trees").ShouldContain(" in above the base");
        (filled["Mixes", "D4"], filled["Mixes", "D5"], filled["Mixes", "E4"], filled["Mixes", "F4"]).ShouldBe(("Powder (lb)", powder, "Water (ml)", "Slurry (ml)"));
        filled.SheetXml("Mixes").ShouldContain("the water at 68 to 75 °F unless");

        // 800 g and 400 g in stock.
        filled.Row("Metal", 4).ShouldBe(
        [
            "Alloy", "For", "Needed (dwt)", "Fresh in stock (dwt)", "Re-melt in stock (dwt)", "Least fresh (%)", "Fresh to use (dwt)", "Re-melt to use (dwt)", "To buy (dwt)",
        ]);
        (filled["Metal", "C5"], filled["Metal", "D5"], filled["Metal", "E5"]).ShouldBe((charge, 514.41, 257.21));
        (filled["Kiln", "I5"], filled["Kiln", "C6"], filled["Kiln", "B6"]).ShouldBe(("Core then, slow (°F)", 302.0, 150.0));
        filled.SheetXml("Clock").ShouldContain("to 1,350 °F");
        filled.SheetXml("Clock").ShouldNotContain("°C");
        filled[List, "N5"].ShouldBe(FormattableString.Invariant($"{powder:0.00} lb + {filled["Night plan", "H5"]:0} ml, mix 1"));
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    // 29.5735295625 ml to the fluid ounce of the United States: 231 cubic inches to 128 of them, NIST Handbook 44, Appendix C.
    [Fact]
    public void Fill_WaterInUsFluidOunces_WritesThem()
    {
        var filled = Filled.From(Typed.Into(Whole, ("Shop", "A21", SettingName.WaterIn), ("Shop", "B21", "US fl oz")));

        filled["Night plan", "H4"].ShouldBe("Water (US fl oz)");
        ((double)filled["Night plan", "H5"]!).ShouldBe(filled.Plan.Flasks[0].Water!.Value.Milliliters / 29.5735295625, 0.005);
    }

    [Fact]
    public void Fill_SettingChangedBetweenTwoFills_ColumnsChangeHeadingValueAndDigits()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping(InDwt);

        (filled[List, "K4"], filled[List, "K5"]).ShouldBe(("Metal each (dwt)", 13.32));
        filled.Ids.ShouldNotContain("column-unit-stays");
        var styles = filled.Part("xl/styles.xml");
        StyleOf(filled, "K5").ShouldBe(StyleOf(Filled.From(Typed.Into(Whole, InDwt)), "K5"));
        styles.ShouldContain("formatCode=\"#,##0.0#\"");
        filled.Again().Result.Changed.ShouldBeFalse();

        var back = filled.AfterTyping(("Shop", "B21", "g"), ("Shop", "C7", "g"));
        (back[List, "K4"], back[List, "K5"]).ShouldBe(("Metal each (g)", 20.72));
        back.Again().Result.Changed.ShouldBeFalse();
    }

    // The number format that the cell's format names.
    private static string StyleOf(Filled filled, string address)
    {
        var main = System.Xml.Linq.XNamespace.Get("http://schemas.openxmlformats.org/spreadsheetml/2006/main");
        var cell = System.Xml.Linq.XDocument.Parse(filled.SheetXml(List)).Descendants(main + "c").Single(c => (string?)c.Attribute("r") == address);
        var styles = System.Xml.Linq.XDocument.Parse(filled.Part("xl/styles.xml")).Root!;
        var format = styles.Element(main + "cellXfs")!.Elements().ElementAt((int)cell.Attribute("s")!);
        return (string)styles.Element(main + "numFmts")!.Elements().Single(n => (int)n.Attribute("numFmtId")! == (int)format.Attribute("numFmtId")!).Attribute("formatCode")!;
    }

    [Fact]
    public void Fill_MetalTypedInGramsAndTheSettingChanged_IsStillReadInGramsUnderItsHeading()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping((List, "K5", 25.5)).AfterTyping(InDwt);

        (filled[List, "K4"], filled[List, "K5"]).ShouldBe(("Metal each (g)", 25.5));
        filled.Plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(25.5);

        // Six at 25.5 g, 98.38 dwt: the column beside it has nothing of anybody's in it.
        (filled[List, "L4"], filled[List, "L5"]).ShouldBe(("Metal (dwt)", 98.38));
        var finding = filled.Result.Findings.Single(f => f.Id == "column-unit-stays");
        finding.Seen.ShouldBe("The column Metal each (g) stays in g although the Shop sheet says dwt: somebody typed into it, or formulas of yours may look at it.");
        finding.Remedy.ShouldBe("To change it, see to those numbers and formulas, and type Metal each (dwt) as its heading.");
        filled.Again().Result.Changed.ShouldBeFalse();

        filled.AfterTyping((List, "K5", null))[List, "K4"].ShouldBe("Metal each (dwt)");
    }

    [Fact]
    public void Fill_HeadingOfTheShopsOwn_WinsOverTheSetting()
    {
        var filled = Filled.From(Nights.Whole()).AfterTyping((List, "K4", "Silver each (dwt)"));

        (filled[List, "K4"], filled[List, "K5"], filled[List, "L5"]).ShouldBe(("Silver each (dwt)", 13.32, 124.32));
        var typed = filled.AfterTyping((List, "K5", 16));
        typed.Plan.Pieces[0].MetalEach!.Value.Grams.ShouldBe(16 * Dwt, 1e-9);
        typed.Result.Findings.Single(f => f.Id == "typed-metal-used").Seen.ShouldBe("Somebody typed 16 dwt under Metal each (dwt); CastBook works out 13.32 dwt.");
        typed.Again().Result.Changed.ShouldBeFalse();
    }

    // A formula of the shop's may turn grams into money.
    [Fact]
    public void Fill_FormulasInTheBook_TheColumnStaysAsTheyKnowIt()
    {
        var book = Nights.WholeBuilder().Sheet("Prices", s => s.Row("Silver", Cell.Computed("'Harbour list'!L5*0.95", 0))).Build().ToArray();

        var filled = Filled.From(book).AfterTyping(InDwt);

        (filled[List, "L4"], filled[List, "L5"]).ShouldBe(("Metal (g)", 124.32));
        filled.Ids.ShouldContain("column-unit-stays");
        filled["Night plan", "E4"].ShouldBe("Charge (dwt)");
    }

    // 20.72 g that was written on its night is 13.32 dwt under the heading that it stands under now.
    [Fact]
    public void Fill_RowDone_ItsNumbersAreInTheUnitOfTheHeading()
    {
        var book = Nights.WholeBuilder(s => s.Row("Tarn", "Ebb ring", 1, 2.3, "harbour resin", "house sterling", 24, 12, 6, null)).Build().ToArray();
        var filled = Filled.From(Typed.Into(book, (List, "J4", "Done"), (List, "J5", null)));
        filled[List, "K8"].ShouldBe(20.72);

        var later = filled.AfterTyping([(List, "J8", "yes"), .. InDwt]);

        (later[List, "K4"], later[List, "K8"], later[List, "K5"]).ShouldBe(("Metal each (dwt)", 13.32, 13.32));
        later.Again().Result.Changed.ShouldBeFalse();
        later.Again()[List, "K8"].ShouldBe(13.32);
    }

    [Fact]
    public void Fill_ListIsATable_ItsColumnIsRenamedWithTheHeading()
    {
        string[] columns = ["Alloy", "Qty", "Piece", "Pattern weight (g)", "Material", "Length (mm)", "Width (mm)", "Thickness (mm)"];
        var book = Nights.TwoListsBuilder(s => s.Table("A1:H3", columns)).Build().ToArray();
        var settings = Nights.BothLists;

        var filled = Filled.From(book, settings: settings).AfterTyping(InDwt);

        filled["Quarry list", "I1"].ShouldBe("Metal each (dwt)");
        filled.Part("xl/tables/table10.xml").ShouldContain("name=\"Metal each (dwt)\"");
        filled.Part("xl/tables/table10.xml").ShouldNotContain("Metal each (g)");
    }

    // By hand in WeighedTreeTests: 462.07 g, which is 297.12 dwt.
    [Theory]
    [InlineData(52.0, 92.32, false, "Base (g)")]
    [InlineData(33.43678, 59.36314, true, "Base (dwt)")]
    public void Fill_TreeWeighed_IsReadInTheUnitOfTheHeadingItWasTypedUnder(double alone, double onBase, bool settingFirst, string heading)
    {
        var planned = Filled.From(settingFirst ? Typed.Into(Whole, InDwt) : Whole);

        var weighed = planned.AfterTyping([("Trees", "E5", alone), ("Trees", "F5", onBase), .. InDwt]);

        (weighed["Trees", "E4"], weighed["Trees", "E5"], weighed["Trees", "F5"]).ShouldBe((heading, alone, onBase));
        (weighed["Trees", "I4"], weighed["Trees", "I5"]).ShouldBe(("Charge (dwt)", 298.0));
        weighed.Again().Result.Changed.ShouldBeFalse();
        weighed.AfterTyping(("Trees", "E5", null), ("Trees", "F5", null))["Trees", "E4"].ShouldBe("Base (dwt)");
    }

    [Fact]
    public void Fill_DoneAtTypedAndTheScaleChanged_TheHourStaysWithItsStep()
    {
        var book = Typed.Into(Whole, ("Shop", "A21", "Start at"), ("Shop", "B21", "2026-11-25 20:00"));
        var filled = Filled.From(book);
        var row = Enumerable.Range(5, 40).First(r => filled["Clock", $"D{r}"] is string words && words.StartsWith("Kiln of load 1 to 370 °C", StringComparison.Ordinal));
        var done = filled.AfterTyping(("Clock", $"E{row}", "22:40"));
        done["Clock", $"E{row}"].ShouldBe("22:40");

        var fahrenheit = done.AfterTyping(("Shop", "A22", SettingName.TemperaturesIn), ("Shop", "B22", "°F"));

        ((string)fahrenheit["Clock", $"D{row}"]!).ShouldStartWith("Kiln of load 1 to 698 °F");
        fahrenheit["Clock", $"E{row}"].ShouldBe("22:40");
        fahrenheit.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_UnitThatIsNone_NamesTheChoices()
    {
        var filled = Filled.From(Typed.Into(Whole, ("Shop", "A21", SettingName.MetalIn), ("Shop", "B21", "pennywait")));

        var finding = filled.Result.Findings.Single(f => f.Id == "setting-unreadable");
        finding.Seen.ShouldBe("Metal in says \"pennywait\", which is not g, dwt or troy oz.");
        finding.Remedy.ShouldBe("Type g, dwt or troy oz. Most likely dwt is meant.");
        filled[List, "K4"].ShouldBe("Metal each (g)");
    }

    // Sentences of findings go by them too: 800 g and 400 g in stock, less than eighty rings take.
    [Fact]
    public void Fill_UsUnits_FindingsSayThem()
    {
        var filled = Filled.From(Typed.Into(Whole, [.. Us, ("Alloys", "H2", 10), ("Alloys", "I2", 0), ("Alloys", "C2", 1200)]));

        filled.Result.Findings.Single(f => f.Id == "metal-short").Seen.ShouldContain(" dwt");
        var hot = filled.Result.Findings.Single(f => f.Id == "metal-hot-for-gypsum");
        (hot.Seen, hot.Why).ShouldBe(("house sterling is poured at 2,192 °F into gypsum-bonded investment.", "Above 1,150 °C (2,100 °F) the mould's skin breaks down and the casting is porous."));
    }
}
