using CastBook.Workbooks.Explaining;
using CastBook.Workbooks.Tests.Filling;

namespace CastBook.Workbooks.Tests.Explaining;

/// <summary>Cells that are worked out, of the night of 20 pieces of house sterling.</summary>
public sealed class BookExplanationTests
{
    private const string List = "Harbour list";

    // By hand: 2.3 g ÷ 1.15 g/cm³ = 2 cm³; × 10.36 g/cm³ = 20.72 g.
    [Fact]
    public void Of_MetalEach_TellsFormulaInputsAndRange()
    {
        var lines = Explained.From(Nights.Whole()).Lines("K5");

        lines.ShouldBe(
        [
            "'Harbour list'!K5  Otter signet",
            "Metal each = 2.3 g ÷ 1.15 g/cm³ × 10.36 g/cm³ = 20.72 g",
            "in words: pattern weight ÷ pattern density × alloy density",
            "  weight: 2.3 g · 'Harbour list'!D5",
            "  weights are of: pattern · the heading of the weights",
            "  harbour resin density: 1.15 g/cm³ · Materials!C2",
            "  house sterling density: 10.36 g/cm³ · Alloys!B2",
            "holds for: solid patterns without stones; about 3 % above the finished casting, because metal shrinks as it cools. Tree, button and melt loss are apart",
        ]);
    }

    // By hand: 30 grains are 1.25 pennyweights of 1.55517384 g, 1.944 g.
    [Fact]
    public void Of_ListInPennyweights_SaysWeightsInBoth()
    {
        var explained = Explained.From(new BookBuilder()
            .Sheet("Pieces", s => s.Row("Piece", "Qty", "Pattern weight (dwt)", "Material", "Alloy").Row("Otter signet", 1, "1 dwt 6 gr", "quarry wax", "fine silver"))
            .Sheet("Materials", s => s.Row("Material", "Kind", "Density (g/cm³)").Row("quarry wax", "wax", 0.96)).Build());

        explained.Lines("F2")[3].ShouldBe("  weight: 1.944 g (1.25 dwt) · Pieces!C2");
    }

    [Fact]
    public void Line_MetalEach_IsTheSameInOneLine() => ExplanationText.Line(Explained.From(Nights.Whole())["K5"]).ShouldBe(
        "'Harbour list'!K5  Metal each = 2.3 g ÷ 1.15 g/cm³ × 10.36 g/cm³ = 20.72 g · weight: 'Harbour list'!D5 · "
        + "weights are of: the heading of the weights · harbour resin density: Materials!C2 · house sterling density: Alloys!B2");

    [Fact]
    public void Of_SupportsAreWeighedToo_TheyAreTakenOff()
    {
        var explained = Explained.From(Typed.Into(Nights.Whole().ToArray(), ("Shop", "A21", "Supports share"), ("Shop", "B21", 10)));

        explained.Lines("K5")[1].ShouldBe("Metal each = 2.3 g × (1 − 0.1) ÷ 1.15 g/cm³ × 10.36 g/cm³ = 18.65 g");
        explained.From("K5", "supports share").ShouldBe("Shop!B21");
    }

    [Fact]
    public void Of_TextCells_TellWhatIsWritten()
    {
        var filled = Filled.From(Nights.Whole());
        var explained = Explained.From(Nights.Whole());

        explained.Lines("M5")[1].ShouldStartWith($"Flask = {filled[List, "M5"]}: one alloy and one range of flask temperature to a flask");
        explained.Lines("N5")[1].ShouldEndWith($", up to a whole step of 5 g, written \"{filled[List, "N5"]}\"");
        explained.Lines("Night plan!J5")[1].ShouldEndWith($", written \"{filled["Night plan", "J5"]}\"");
    }

    [Fact]
    public void Of_Charge_IsTheSameOnEverySheet()
    {
        var explained = Explained.From(Nights.Whole());
        var sums = ((string[])["Night plan!E5", "Trees!I5", "Metal!C8"]).Select(c => explained.Lines(c)[1]).Distinct();

        sums.ShouldHaveSingleItem().ShouldEndWith(" g, up to a whole step of 1 g");
        explained.From("Metal!C8", "Melt loss").ShouldBe("Shop!B5");
    }

    [Fact]
    public void Of_ToBuyInTroyOunces_IsTheNumberOfTheSheet()
    {
        var book = Typed.Into(Nights.Whole().ToArray(), ("Alloys", "H2", 10), ("Alloys", "I2", 0), ("Shop", "A21", "Metal bought in"), ("Shop", "B21", "troy oz"));
        var shown = (double)Filled.From(book)["Metal", "I5"]!;

        var explained = Explained.From(book);

        explained["Metal!I5"].Account!.Result.ShouldBe(shown);
        explained.Lines("Metal!I5")[1].ShouldEndWith(FormattableString.Invariant($" g − 0 g − 10 g) ÷ 31.1034768 g/troy oz = {shown} troy oz, up to a whole 0.01 troy oz"));
        explained["Night plan!H8"].Account!.Unit.ShouldBe("g");
    }

    [Fact]
    public void Of_ListWithoutRoom_TellsItOfTheComputedSheet()
    {
        var explained = Explained.From(Typed.Into(Nights.Whole().ToArray(), (List, "M4", "price list")));

        explained.Lines("Computed!C4").Take(2).ShouldBe(["Computed!C4  Otter signet", "Metal each = 2.3 g ÷ 1.15 g/cm³ × 10.36 g/cm³ = 20.72 g"]);
        explained.Book.All().Count(e => e.Cell.Sheet == "Computed").ShouldBe(15);
        explained["Computed!A4"].Account.ShouldBeNull();
    }

    [Fact]
    public void Of_SecondList_TellsOfItsOwnRow()
    {
        var explained = Explained.From(Nights.TwoListsBuilder().Build(), Nights.BothLists);

        // By hand: 3.45 g ÷ 1.15 g/cm³ = 3 cm³; × 10.36 g/cm³ = 31.08 g.
        explained.Lines("Quarry list!I2")[1].ShouldBe("Metal each = 3.45 g ÷ 1.15 g/cm³ × 10.36 g/cm³ = 31.08 g");
        explained.From("Quarry list!I2", "weight").ShouldBe("'Quarry list'!D2");
    }

    [Fact]
    public void Of_TypedMetal_SaysWhoseItIsAndWhatItWouldBe()
    {
        var book = Filled.From(Nights.Whole()).AfterTyping((List, "K5", 25.5)).Bytes;

        Explained.From(book).Lines("K5").ShouldBe(
        [
            "'Harbour list'!K5  Otter signet",
            "Metal each = 25.5 g: as a person typed it into the cell",
            "  weight or volume comes to: 20.72 g · worked out",
        ]);
    }

    [Fact]
    public void Of_TypedBurnout_SaysThatItIsKept()
    {
        var filled = Filled.From(Nights.Whole());
        var ours = filled[List, "O5"];

        var cell = Explained.From(filled.AfterTyping((List, "O5", 9)).Bytes)["O5"];

        cell.Number.ShouldBe(ours);
        cell.Note.ShouldBe(FormattableString.Invariant($"The cell holds \"9\", which a person typed, and keeps it; CastBook would write {ours}."));
    }

    // Weighing out takes 5 min unless the shop says otherwise.
    [Fact]
    public void Of_HourOfTheClock_TellsTheStepBeforeIt()
    {
        var explained = Explained.From(Typed.Into(Nights.Whole().ToArray(), ("Shop", "A21", "Start at"), ("Shop", "B21", "2026-11-25 20:00")));

        explained.Lines("Clock!B5").Take(3).ShouldBe(
            ["Clock!B5", "Weigh out mix 1, from = 20:00: the first step, counted from the hour that was asked for", "  Start at: 2026-11-25 20:00 · Shop!B21"]);
        explained.Lines("Clock!C5")[1].ShouldBe("Weigh out mix 1, until = 20:05: 20:00 and 5 min of it");
        explained.Lines("Mixes!C5").Skip(1).Take(2).ShouldBe(
            ["Powder into the water, mix 1, from = Wed 20:05: when what comes before it is done", "  Weigh out mix 1: until 20:05 · the clock"]);
        explained.Lines("Night plan!O5").Skip(1).First().ShouldEndWith(": after its pour, by the wait of the alloy in this size: 20 min");
        Explained.From(Nights.Whole())["Night plan!M5"].Note.ShouldStartWith("It is empty");
    }

    // By hand: 6 g ÷ 0.95 g/cm³ + 34.5 g ÷ 1.15 g/cm³ = 6.316 ml + 30 ml; × 10.36 g/cm³ = 376.23 g; × 1.2 × 1.01 = 455.99 g.
    [Fact]
    public void Of_ChargeOfAWeighedTree_TellsTheWeighing()
    {
        var book = Filled.From(Nights.Whole()).AfterTyping(("Trees", "E5", 120), ("Trees", "F5", 160.5), ("Trees", "G5", 6), ("Trees", "H5", "waxed")).Bytes;

        Explained.From(book).Lines("Night plan!E5").Skip(1).Take(7).ShouldBe(
        [
            "Charge = (376.232 g + 75.246 g) × 1.01 = 456 g, up to a whole step of 1 g",
            "in words: (weighed tree in metal + button) × (1 + melt loss)",
            "  tree on base: 160.5 g · Trees!F5",
            "  base: 120 g · Trees!E5",
            "  of it wax: 6 g · Trees!G5",
            "  tree: 36.316 ml · its wax by the density of sprue wax, the rest by that of its patterns",
            "  Sprue wax density: 0.95 g/cm³ · Shop!B20",
        ]);
    }

    [Fact]
    public void Of_OtherMetals_TellsWhereTheyLie()
    {
        var book = Typed.Into(
            Nights.Whole().ToArray(), ("Alloys", "H2", 10), ("Alloys", "I2", 0), ("Alloys", "J1", "Composition"), ("Alloys", "J2", "Ag 925 Cu 75"),
            ("Alloys", "A3", "fine silver"), ("Alloys", "H3", 900), ("Alloys", "A4", "copper"), ("Alloys", "H4", 900), ("Alloys", "J4", "Cu 1000"));

        var explained = Explained.From(book);

        explained["Metal!F8"].Text.ShouldBe(Filled.From(book)["Metal", "F8"]);
        explained.From("Metal!F8", "copper in stock").ShouldBe("Alloys!H4");
        Explained.From(Nights.Whole())["Metal!F8"].Account.ShouldBeNull();
    }

    [Fact]
    public void IsFilled_BeforeAndAfterFilling_IsSaid()
    {
        Explained.From(Nights.Whole()).Book.IsFilled.ShouldBeFalse();
        Explained.From(Filled.From(Nights.Whole()).Bytes).Book.IsFilled.ShouldBeTrue();
    }

    [Fact]
    public void All_WholeNight_SaysTheSameAfterFilling()
    {
        var before = Explained.From(Nights.Whole()).Book.All().Select(ExplanationText.Line).ToList();

        before.Count.ShouldBeGreaterThan(40);
        Explained.From(Filled.From(Nights.Whole()).Bytes).Book.All().Select(ExplanationText.Line).ShouldBe(before);
    }
}
