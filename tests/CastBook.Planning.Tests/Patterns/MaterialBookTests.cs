using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Planning.Patterns;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Patterns;

public sealed class MaterialBookTests
{
    // Source of the words: common practice of the trade in each language.
    [Theory]
    [InlineData("wax", PatternKind.Wax)]
    [InlineData("Wachs", PatternKind.Wax)]
    [InlineData("cire à injecter", PatternKind.Wax)]
    [InlineData("cera para tallar", PatternKind.Wax)]
    [InlineData("Cera da intaglio", PatternKind.Wax)]
    [InlineData("Schnitzwachs", PatternKind.Wax)]
    [InlineData("wax (carved)", PatternKind.Wax)]
    [InlineData("Castable Resin", PatternKind.Resin)]
    [InlineData("Gießharz", PatternKind.Resin)]
    [InlineData("Giessharz", PatternKind.Resin)]
    [InlineData("résine calcinable", PatternKind.Resin)]
    [InlineData("resina", PatternKind.Resin)]
    [InlineData("wax resin", PatternKind.Resin)]
    [InlineData("castable wax", null)]
    [InlineData("cire calcinable", null)]
    [InlineData("Blue 3", null)]
    public void KindIn_WordsOfTheTrade_TellWaxFromResin(string name, PatternKind? expected) => MaterialWords.KindIn(name).ShouldBe(expected);

    [Theory]
    [InlineData("Spritzwachs", "Injection wax")]
    [InlineData("cera de inyección", "Injection wax")]
    [InlineData("wax, injected", "Injection wax")]
    [InlineData("Gießharz", "Castable resin")]
    [InlineData("résine calcinable", "Castable resin")]
    public void Of_RowInOtherWords_IsFoundWithoutANote(string written, string row)
    {
        var material = Of(Wrenmoor.Shop, written);

        material.Row!.Name.ShouldBe(row);
        material.TakenFrom.ShouldBeNull();
    }

    [Fact]
    public void Of_OnlySuchMaterialOfTheShop_IsTakenAndNoted()
    {
        var piece = Wrenmoor.Ring() with { Material = "Harz" };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Materials = [Wrenmoor.Resin, Wrenmoor.Wax] }, piece, piece));

        plan.The("material-taken-as").Text().ShouldBe(
            "\"Harz\" is taken as \"Castable resin\", the only such material on the Materials sheet. To change it, type another name in the list.");
        plan.Stops().ShouldBeEmpty();
    }

    // A slip of one key: resin burnt out as wax.
    [Fact]
    public void Of_ResinCalledWaxOnTheSheet_IsChecked()
    {
        var (resin, wax) = (Wrenmoor.Resin with { Kind = PatternKind.Wax }, Wrenmoor.Wax with { Kind = PatternKind.Resin });
        var pieces = new[] { Wrenmoor.Ring() with { Material = resin.Name }, Wrenmoor.Ring() with { Material = wax.Name } };

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop with { Materials = [resin, wax] }, pieces));

        var finding = plan.The("resin-called-wax");
        finding.Severity.ShouldBe(Severity.Check);
        finding.Subjects.ShouldBe([new Subject(SubjectKind.Material, "Castable resin", ShopField.Kind)]);
        finding.Text().ShouldBe(
            "\"Castable resin\" is a resin by its name, and a wax by Kind on the Materials sheet. As wax it gets the shorter burnout, "
            + "and resin that is not burnt out spoils the casting. Type resin as its Kind, or another name if it is wax.");
    }

    [Fact]
    public void Of_UsualMaterialWithItsDensity_IsNotTakenAsALongerName()
    {
        var other = Wrenmoor.Resin with { Name = "Gießharz neu", Density = Density.FromGramsPerCubicCentimeter(1.14) };
        var settings = Wrenmoor.Shop.Settings with { PatternMaterial = "Gießharz", PatternDensity = Density.FromGramsPerCubicCentimeter(1.12) };

        var material = new MaterialBook(Wrenmoor.Shop with { Materials = [other], Settings = settings }).Of(Wrenmoor.Ring() with { Material = "Gießharz" });

        (material.Name, material.Row, material.Density!.Value.GramsPerCubicCentimeter).ShouldBe(("Gießharz", null, 1.12));
    }

    [Fact]
    public void Of_SeveralSuchMaterials_AsksOnceWithTheChoices()
    {
        var carving = Wrenmoor.Wax with { Name = "Carving wax" };
        var piece = Wrenmoor.Ring() with { Material = "wax" };

        var plan = NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Shop with { Materials = [Wrenmoor.Wax, carving] }, piece, piece with { Material = "Wachs" }));

        plan.The("material-ambiguous").Text().ShouldBe(
            "\"wax\" and \"Wachs\" can mean \"Injection wax\" or \"Carving wax\". They differ in density, and the metal follows from it. "
            + "Type one of these names in the list.");
        plan.The("material-ambiguous").Subjects.Count.ShouldBe(2);
        plan.Ids().ShouldNotContain("pattern-density-missing");
    }

    [Fact]
    public void Of_UnknownMaterial_IsAskedWithTheNearest()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Shop with { Materials = [Wrenmoor.Wax, Wrenmoor.Resin] }, Wrenmoor.Ring() with { Material = "Castabel" }));

        plan.The("material-unknown").Text().ShouldBe(
            "No pattern material is called \"Castabel\". The metal follows from its density. Type the name you mean "
            + "(the nearest is \"Castable resin\"), or add the material with its density to the Materials sheet.");
        plan.Ids().ShouldNotContain("pattern-density-missing");
    }

    private static KnownMaterial Of(Shop shop, string written) =>
        new MaterialBook(shop with { Materials = [Wrenmoor.Wax, Wrenmoor.Resin] }).Of(Wrenmoor.Ring() with { Material = written });
}
