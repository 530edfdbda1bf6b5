using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Tests.Reading.Headings;

public sealed class HeadingTests
{
    [Theory]
    [InlineData("Pattern weight (g)", "Pattern weight", "g")]
    [InlineData("Weight, g", "Weight", "g")]
    [InlineData("Höhe [mm]", "Höhe", "mm")]
    [InlineData("wax_weight_g", "wax weight", "g")]
    [InlineData("Wt g", "Wt", "g")]
    [InlineData("Wt. dwt", "Wt", "dwt")]
    [InlineData("Weight (ozt)", "Weight", "ozt")]
    [InlineData("Weight oz t", "Weight", "ozt")]
    [InlineData("Width \"", "Width", "in")]
    [InlineData("Length (mm, from the gate outwards)", "Length", "mm")]
    [InlineData("Volume (cm³)", "Volume", "ml")]
    [InlineData("Volume (in³)", "Volume", "in³")]
    [InlineData("Printed at (°F)", "Printed at", "°F")]
    [InlineData("Washed\n(min)", "Washed", "min")]
    [InlineData("Density g/cm3", "Density", "g/cm³")]
    [InlineData("Price (per g)", "Price", "per g")]
    [InlineData("pieceWeight_mg", "piece Weight", "mg")]
    public void Parse_HeadingWithUnit_PartsWordsAndUnit(string text, string words, string unit)
    {
        var heading = Heading.Parse(text);

        heading.Says(words, out var found).ShouldBeTrue();
        found!.Name.ShouldBe(unit);
    }

    [Theory]
    [InlineData("Stones in")]
    [InlineData("H")]
    [InlineData("Keep in flask")]
    [InlineData("orderId")]
    public void Parse_HeadingWithoutUnit_NamesNone(string text)
    {
        var heading = Heading.Parse(text);

        heading.Says(text, out var unit).ShouldBeTrue();
        unit.ShouldBeNull();
    }

    [Theory]
    [InlineData("Metal", PieceField.Alloy)]
    [InlineData("Wax (g)", PieceField.PatternMass)]
    [InlineData("Resin ml", PieceField.PatternVolume)]
    [InlineData("Stones in", PieceField.StonesIn)]
    [InlineData("Leave out", PieceField.LeaveOut)]
    [InlineData("Keep in flask", PieceField.KeepInFlask)]
    [InlineData("Heaviest section (mm)", PieceField.HeaviestSection)]
    [InlineData("Due", PieceField.Due)]
    [InlineData("# pcs", PieceField.Quantity)]
    [InlineData("No. of pcs.", PieceField.Quantity)]
    [InlineData("Qty req.", PieceField.Quantity)]
    [InlineData("Alloy code", PieceField.Alloy)]
    [InlineData("Job status", PieceField.Done)]
    [InlineData("Casting date", PieceField.Night)]
    [InlineData("Wax wt. (dwt)", PieceField.PatternMass)]
    [InlineData("Stk.", PieceField.Quantity)]
    [InlineData("Anz. Stk.", PieceField.Quantity)]
    [InlineData("Bestellmenge", PieceField.Quantity)]
    [InlineData("Wachsgew. g", PieceField.PatternMass)]
    [InlineData("Gew. Wachs (g)", PieceField.PatternMass)]
    [InlineData("Teil", PieceField.Piece)]
    [InlineData("Höhe", PieceField.Length)]
    [InlineData("Werkstoff", PieceField.Alloy)]
    [InlineData("Gießtag", PieceField.Night)]
    [InlineData("Gießdatum", PieceField.Night)]
    [InlineData("Gussabend", PieceField.Night)]
    [InlineData("Gusstag", PieceField.Night)]
    [InlineData("Liefertermin", PieceField.Due)]
    [InlineData("Désignation", PieceField.Piece)]
    [InlineData("Nb. pièces", PieceField.Quantity)]
    [InlineData("Pds cire (g)", PieceField.PatternMass)]
    [InlineData("Titre", PieceField.Alloy)]
    [InlineData("Coulée le", PieceField.Night)]
    [InlineData("Haut. (mm)", PieceField.Length)]
    [InlineData("Échéance", PieceField.Due)]
    [InlineData("Avancement", PieceField.Done)]
    [InlineData("Denominación", PieceField.Piece)]
    [InlineData("N.º de piezas", PieceField.Quantity)]
    [InlineData("Peso en cera (g)", PieceField.PatternMass)]
    [InlineData("Tipo de aleación", PieceField.Alloy)]
    [InlineData("Fecha de colada", PieceField.Night)]
    [InlineData("Alto (mm)", PieceField.Length)]
    [InlineData("Plazo", PieceField.Due)]
    [InlineData("N. pezzi", PieceField.Quantity)]
    [InlineData("Peso della cera (g)", PieceField.PatternMass)]
    [InlineData("Tipo lega", PieceField.Alloy)]
    [InlineData("Data di fusione", PieceField.Night)]
    [InlineData("Alt. (mm)", PieceField.Length)]
    [InlineData("Consegna", PieceField.Due)]
    [InlineData("Qtd.", PieceField.Quantity)]
    [InlineData("N.º de peças", PieceField.Quantity)]
    [InlineData("Peso da cera (g)", PieceField.PatternMass)]
    [InlineData("Liga", PieceField.Alloy)]
    [InlineData("Data de fundição", PieceField.Night)]
    [InlineData("Prazo", PieceField.Due)]
    public void Of_OneHeading_KnowsItsField(string text, string field) =>
        Match(text).Fields.Keys.ShouldBe([field]);

    // "Metal (g)" is a mass; to take it for the alloy would put numbers where names belong.
    [Theory]
    [InlineData("Metal (g)")]
    [InlineData("Metal needed (g)")]
    [InlineData("Metal total (g)")]
    [InlineData("Wax")]
    [InlineData("Shelf")]
    public void Of_HeadingOfNoField_IsLeftAlone(string text) => Match(text).Fields.ShouldBeEmpty();

    [Theory]
    [InlineData("Pattern weight (g)", WeightMeaning.Pattern)]
    [InlineData("Wax weight", WeightMeaning.Pattern)]
    [InlineData("Model weight", WeightMeaning.Pattern)]
    [InlineData("Cast weight (g)", WeightMeaning.FinishedMetal)]
    [InlineData("Finished weight", WeightMeaning.FinishedMetal)]
    [InlineData("Weight each (g)", WeightMeaning.Unknown)]
    [InlineData("Wt", WeightMeaning.Unknown)]
    public void Of_WeightHeading_SaysWhatTheWeightIsOf(string text, WeightMeaning meaning) =>
        Match(text).Fields[PieceField.PatternMass].Word.Meaning.ShouldBe(meaning);

    [Fact]
    public void Of_PieceAndCode_PrefersThePiece() => Match("Code", "Piece").Fields[PieceField.Piece].Column.ShouldBe(2);

    [Fact]
    public void Of_PatternAndMetalWeight_TakesThePattern() =>
        Match("metal_weight_g", "wax_weight_g").Fields[PieceField.PatternMass].Column.ShouldBe(2);

    // The day on which to cast, beside a number to cast.
    [Fact]
    public void Of_FrenchDayToCastBesideAQuantity_IsTheNight() => Match("Pièce", "Qté", "À couler le").Fields[PieceField.Night].Column.ShouldBe(3);

    [Fact]
    public void Of_GermanMaterialsOfPatternAndCasting_AreToldApart()
    {
        var match = Match("Teil", "Stk.", "Modellwerkstoff", "Werkstoff");

        match.Fields[PieceField.Material].Column.ShouldBe(3);
        match.Fields[PieceField.Alloy].Column.ShouldBe(4);
        match.Ties.ShouldBeEmpty();
    }

    [Fact]
    public void Of_LengthWidthHeight_MakesTheHeightTheThickness()
    {
        var match = Match("L", "W", "H");

        match.Fields[PieceField.Length].Column.ShouldBe(1);
        match.Fields[PieceField.Thickness].Column.ShouldBe(3);
    }

    [Fact]
    public void Of_TwoColumnsOfTheSameWords_SettlesNeither()
    {
        var match = Match("Piece", "Weight (g)", "Weight (oz)");

        match.Fields.ShouldNotContainKey(PieceField.PatternMass);
        match.Ties.ShouldBe([new FieldTie(PieceField.PatternMass, 2, 3)]);
    }

    [Fact]
    public void Of_WordsOfTheShop_WinOverOurs()
    {
        var own = new Dictionary<string, IReadOnlyList<string>> { [PieceField.PatternMass] = ["Peso modelo"] };
        List<(int, Heading)> headings = [(1, Heading.Parse("Weight (g)")), (2, Heading.Parse("Peso modelo (g)"))];

        var match = HeadingMatch.Of(headings, HeadingWords.PieceIndex, own);

        match.Fields[PieceField.PatternMass].Column.ShouldBe(2);
        match.Fields[PieceField.PatternMass].Word.Meaning.ShouldBe(WeightMeaning.Pattern);
    }

    // By hand from the definitions in NIST Handbook 44, Appendix C: 480 and 24 grains, 437.5 grains, of 64.798 91 mg each.
    [Theory]
    [InlineData("ozt", 31.1034768)]
    [InlineData("dwt", 1.55517384)]
    [InlineData("oz", 28.349523125)]
    [InlineData("grain", 0.06479891)]
    [InlineData("ct", 0.2)]
    [InlineData("mg", 0.001)]
    public void ToBase_OneOfAMass_GivesGrams(string unit, double grams)
    {
        CellUnit.TryParse(unit, out var found).ShouldBeTrue();

        found.ToBase(1).ShouldBe(grams, 1e-12);
    }

    [Theory]
    [InlineData("°F", 212, 100)]
    [InlineData("in³", 1, 16.387064)]
    [InlineData("h", 1.5, 90)]
    [InlineData("°F/h", 180, 100)]
    public void ToBase_OtherUnits_GiveTheirBase(string unit, double value, double expected)
    {
        CellUnit.TryParse(unit, out var found).ShouldBeTrue();

        found.ToBase(value).ShouldBe(expected, 1e-9);
    }

    // By hand from the definitions: NIST Handbook 44, Appendix C has the United States gallon at 231 cubic inches of 16.387 064 ml each, four
    // quarts, eight pints and 128 fluid ounces; NIST SP 811, Appendix B.8, the gallon of Britain at 4.546 09 l, with 160 fluid ounces.
    [Theory]
    [InlineData("gal", 3785.411784)]
    [InlineData("quarts", 946.352946)]
    [InlineData("US qt", 946.352946)]
    [InlineData("pt", 473.176473)]
    [InlineData("fl oz", 29.5735295625)]
    [InlineData("fl. oz.", 29.5735295625)]
    [InlineData("fl oz US", 29.5735295625)]
    [InlineData("imp pt", 568.26125)]
    [InlineData("UK fl oz", 28.4130625)]
    public void ToBase_OneOfALiquidMeasure_GivesMillilitres(string unit, double millilitres)
    {
        CellUnit.TryParse(unit, out var found).ShouldBeTrue();

        found.ToBase(1).ShouldBe(millilitres, 1e-9);
    }

    private static HeadingMatch Match(params string[] texts) => HeadingMatch.Of(
        [.. texts.Select((t, i) => (i + 1, Heading.Parse(t)))], HeadingWords.PieceIndex, new Dictionary<string, IReadOnlyList<string>>());

    // 76.2 mm ÷ 25.4 leaves 2.9999999999999996, and 1000 °F comes out of °C as 999.9999999999999.
    [Theory]
    [InlineData("in", 76.2, 3)]
    [InlineData("°F", 537.77777777777771, 1000)]
    [InlineData("mm", 74.123456, 74.123456)]
    public void Written_OfABaseValue_IsWhatAPersonWouldType(string unit, double value, double written)
    {
        CellUnit.TryParse(unit, out var known).ShouldBeTrue();

        known.Written(value).ShouldBe(written);
    }
}
