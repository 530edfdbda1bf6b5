namespace CastBook.Workbooks.Tests.Filling;

/// <summary>Answers in the units in which the list itself stands, where nobody has named any.</summary>
public sealed class UnitsOfBookTests
{
    private const string List = "List";
    private static readonly object?[] UsHeadings = ["Piece", "Qty", "Wax weight (dwt)", "Metal", "Density of nothing", "Length (in)", "Width (in)"];

    // 1.2 dwt of wax at 0.95 is 1.2632 × 10.36 = 13.086 dwt of sterling.
    [Fact]
    public void Fill_WeightsInPennyweights_MetalIsWrittenInThem()
    {
        var filled = Filled.From(Book([UsHeadings, ["Cuff", 1, 1.2, "house sterling", null, 1, 0.5]]));

        (filled[List, "H1"], filled[List, "H2"]).ShouldBe(("Metal each (dwt)", 13.09));
        Said(filled).ShouldBe(
        [
            "Metal in is taken as dwt, in which the weights of the list stand. To change it, type \"Metal in\" on the Shop sheet.",
            "Lengths in is taken as in, in which the sizes of the list stand. To change it, type \"Lengths in\" on the Shop sheet.",
            "Temperatures in is taken as °F, as the sizes of the list stand in inches. To change it, type \"Temperatures in\" on the Shop sheet.",
        ]);
        filled.Row("Night plan", 4).ShouldContain("Charge (dwt)");
        filled.Row("Night plan", 4).ShouldContain("Metal (°F)");
        filled.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_WeightsInGrams_NothingIsSaid()
    {
        var filled = Filled.From(Book([["Piece", "Qty", "Wax weight (g)", "Metal", "Length (mm)", "Width (mm)"], ["Cuff", 1, 1.2, "house sterling", 25, 12]]));

        filled[List, "G1"].ShouldBe("Metal each (g)");
        Said(filled).ShouldBeEmpty();
    }

    // The unit may stand in the cells.
    [Fact]
    public void Fill_UnitInEveryCell_CountsAsTheList()
    {
        var filled = Filled.From(Book([["Piece", "Qty", "Wax weight", "Metal"], ["Cuff", 1, "1.2 dwt", "house sterling"], ["Stud", 2, "0.5 dwt", "house sterling"]]));

        filled[List, "E1"].ShouldBe("Metal each (dwt)");
    }

    [Fact]
    public void Fill_TwoUnitsInTheWeights_StaysInGrams()
    {
        var filled = Filled.From(Book([["Piece", "Qty", "Wax weight", "Metal"], ["Cuff", 1, "1.2 dwt", "house sterling"], ["Stud", 2, "0.5 g", "house sterling"]]));

        filled[List, "E1"].ShouldBe("Metal each (g)");
        Said(filled).ShouldBeEmpty();
    }

    [Fact]
    public void Fill_UnitsOnTheShopSheet_Win()
    {
        var filled = Filled.From(Book([UsHeadings, ["Cuff", 1, 1.2, "house sterling", null, 1, 0.5]], ("Metal in", "g"), ("Lengths in", "mm"), ("Temperatures in", "°C")));

        filled[List, "H1"].ShouldBe("Metal each (g)");
        Said(filled).ShouldBeEmpty();
    }

    // Sizes in inches and millimetres: neither is the list's.
    [Fact]
    public void Fill_SizesInTwoUnits_StayInMillimetres()
    {
        var filled = Filled.From(Book([["Piece", "Qty", "Wax weight (g)", "Metal", "Length (in)", "Width (mm)"], ["Cuff", 1, 1.2, "house sterling", 1, 12]]));

        Said(filled).ShouldBeEmpty();
    }

    [Fact]
    public void Fill_TemperaturesAndPowderOfTheShopInUsUnits_AreAnsweredInThem()
    {
        var book = new BookBuilder()
            .Sheet(List, s => s.Row("Piece", "Qty", "Wax weight (g)", "Metal").Row("Cuff", 1, 1.2, "house sterling"))
            .Sheet("Alloys", s => s.Row("Alloy", "Density (g/cm³)", "Metal temp (°F)").Row("house sterling", 10.36, 1778))
            .Sheet("Investments", s => s.Row("Investment", "Water per 100", "In stock (lb)").Row("white", 40, 50)).Build();

        Said(Filled.From(book)).ShouldBe(
        [
            "Powder in is taken as lb, in which the shop's powder stands. To change it, type \"Powder in\" on the Shop sheet.",
            "Temperatures in is taken as °F, in which the temperatures of the book stand. To change it, type \"Temperatures in\" on the Shop sheet.",
        ]);
    }

    // A shop in inches and °F is asked in them, and what it types is read in them: 1,778 °F is 970 °C, 3 in are 76.2 mm.
    [Fact]
    public void Fill_SheetsThatAsk_AskInTheSameUnits()
    {
        var filled = Filled.From(Book([UsHeadings, ["Cuff", 1, 1.2, "house sterling", null, 1, 0.5], ["Bell", 1, 1.2, "germanium silver 935", null, 1, 0.5]]));

        filled.Row("Flasks", 4).ShouldBe(["Size", "Inside diameter (in)", "Height (in)", "Owned", "Sprue diameter (in)", "Base height (in)", "Cup (ml)", "Per tree"]);
        filled.Row("Alloys", 4).ShouldBe(
        [
            "Alloy", "Density (g/cm³)", "Metal temp (°F)", "Flask temp fine (°F)", "Flask temp ordinary (°F)", "Flask temp heavy (°F)", "Quench after (min)",
            "Fresh (dwt)", "Re-melt (dwt)",
        ]);
        filled["Alloys", "A5"].ShouldBe("germanium silver 935");
        filled.SheetXml("Flasks").ShouldContain("paperSize=\"1\"");
        var answered = filled.AfterTyping(
            ("Flasks", "A5", "3 × 4"), ("Flasks", "B5", 3), ("Flasks", "C5", 4), ("Flasks", "D5", 2), ("Alloys", "B5", 10.3), ("Alloys", "C5", 1778), ("Alloys", "H5", 100));
        var shop = answered.Result.Night.Shop;
        shop.FlaskSizes.ShouldHaveSingleItem().InsideDiameter!.Value.Millimeters.ShouldBe(76.2, 1e-9);
        shop.Alloys.ShouldHaveSingleItem().Alloy.MetalTemperature!.Value.DegreesCelsius.ShouldBe(970, 1e-9);
        shop.Alloys[0].Fresh!.Value.Grams.ShouldBe(155.517384, 1e-9);
    }

    private static IEnumerable<string> Said(Filled filled) =>
        filled.Result.Findings.Where(f => f.Id == "assumed-default" && f.Subjects[0].Key.EndsWith(" in", StringComparison.Ordinal)).Select(f => $"{f.Seen} {f.Remedy}");

    private static MemoryStream Book(object?[][] rows, params (string Name, string Value)[] settings) =>
        new BookBuilder()
            .Sheet(List, s =>
            {
                foreach (var row in rows)
                {
                    s.Row(row);
                }
            })
            .Sheet("Crucibles", s => s.Row("Crucible", "Holds (ml)").Row("No. 2", 60))
            .Sheet("Shop", s =>
            {
                s.Row("Setting", "Value").Row("Casting method", "vacuum perforated").Row("Alloy \"house sterling\" is", "Sterling silver 925 (no deoxidant)").Row("Pattern material", "wax").Row("Pattern density", 0.95);
                foreach (var (name, value) in settings)
                {
                    s.Row(name, value);
                }
            }).Build();
}
