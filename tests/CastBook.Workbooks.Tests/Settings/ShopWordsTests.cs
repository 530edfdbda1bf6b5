using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Adopting;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Tests.Settings;

public sealed class ShopWordsTests
{
    // Source of the words: common practice of the trade in each language.
    [Theory]
    [InlineData("vacuum perforated", CastingMethod.VacuumPerforated)]
    [InlineData("Vakuum gelocht", CastingMethod.VacuumPerforated)]
    [InlineData("perforated flasks, vacuum", CastingMethod.VacuumPerforated)]
    [InlineData("cylindre perforé sous vide", CastingMethod.VacuumPerforated)]
    [InlineData("al vacío, cilindro perforado", CastingMethod.VacuumPerforated)]
    [InlineData("sottovuoto perforato", CastingMethod.VacuumPerforated)]
    [InlineData("a vácuo, cilindro perfurado", CastingMethod.VacuumPerforated)]
    [InlineData("Vakuum geschlossen", CastingMethod.VacuumSolid)]
    [InlineData("Schleuderguss", CastingMethod.Spin)]
    [InlineData("centrifuge", CastingMethod.Spin)]
    [InlineData("gravity", CastingMethod.Gravity)]
    [InlineData("by gravity", CastingMethod.Gravity)]
    [InlineData("Schwerkraft", CastingMethod.Gravity)]
    [InlineData("coulée par gravité", CastingMethod.Gravity)]
    [InlineData("por gravedad", CastingMethod.Gravity)]
    [InlineData("a gravità", CastingMethod.Gravity)]
    [InlineData("por gravidade", CastingMethod.Gravity)]
    [InlineData("vacuum", null)]
    [InlineData("by hand", null)]
    public void Method_WordsOfTheTrade_AreKnown(string typed, CastingMethod? expected) => ShopWords.Method(typed).ShouldBe(expected);

    [Theory]
    [InlineData("piece alone", false)]
    [InlineData("allein", false)]
    [InlineData("nur das Stück", false)]
    [InlineData("ohne Anguss", false)]
    [InlineData("pièce seule", false)]
    [InlineData("pieza sola", false)]
    [InlineData("senza canali", false)]
    [InlineData("mit Anguss", true)]
    [InlineData("with sprue", true)]
    [InlineData("con bebederos", true)]
    [InlineData("alone with gates", null)]
    public void IncludesGates_WordsOfTheTrade_AreKnown(string typed, bool? expected) => ShopWords.IncludesGates(typed).ShouldBe(expected);

    [Theory]
    [InlineData("Wachs", PatternKind.Wax)]
    [InlineData("cire", PatternKind.Wax)]
    [InlineData("Gießharz", PatternKind.Resin)]
    [InlineData("wax resin", null)]
    public void Kind_WordsOfTheTrade_AreKnown(string typed, PatternKind? expected) => ShopWords.Kind(typed).ShouldBe(expected);

    [Theory]
    [InlineData("eckig", KilnShape.Square)]
    [InlineData("rund", KilnShape.Round)]
    [InlineData("Rectangular", KilnShape.Square)]
    [InlineData("oval", null)]
    public void Shape_WordsOfTheTrade_AreKnown(string typed, KilnShape? expected) => ShopWords.Shape(typed).ShouldBe(expected);

    [Theory]
    [InlineData("pattern", "pattern")]
    [InlineData("Wachsmodell", "pattern")]
    [InlineData("fertiges Metall", "finished metal")]
    [InlineData("métal fini", "finished metal")]
    [InlineData("something", null)]
    public void Word_OfWhatIsWeighed_IsTheChoice(string typed, string? expected) => TypedAnswer.Word(SettingName.WeightsAreOf, typed).ShouldBe(expected);

    [Theory]
    [InlineData("100 mm", "mm", 100.0)]
    [InlineData("10 cm", "mm", 100.0)]
    [InlineData("4 in", "mm", 101.6)]
    [InlineData("0,5 l", "ml", 500.0)]
    [InlineData("9,2", "g", 9.2)]
    [InlineData("3", "", 3.0)]
    [InlineData("1,150", "mm", null)]
    [InlineData("100 g", "mm", null)]
    [InlineData("5 gr", "g", null)]
    public void Number_WithOrWithoutUnit_IsInTheUnitAsked(string typed, string unit, double? expected)
    {
        var number = TypedAnswer.Number(typed, unit);

        (number is null).ShouldBe(expected is null);
        (number ?? 0).ShouldBe(expected ?? 0, 1e-9);
    }
}
