using CastBook.Casting.Metals;
using UnitsNet;

namespace CastBook.Casting.Tests.Metals;

public class AlloyFamiliesTests
{
    public static TheoryData<string> Composed =>
        [.. BuiltInAlloys.All.Where(alloy => alloy.Composition is not null && alloy.Composition.With(ElementHazard.Poison).Count == 0).Select(alloy => alloy.Name)];

    // A shop that says no more than the metal must see the alloy among the choices.
    [Theory]
    [MemberData(nameof(Composed))]
    public void Named_TheMetalAlone_HasEachOfItsAlloysAmongTheChoices(string name)
    {
        var alloy = BuiltInAlloys.Named(name).Single();
        var families = Precious(alloy.Composition!) switch
        {
            "Ag" => ["silver"],
            "Au" => ["gold"],
            "Pt" => ["platinum"],
            "Pd" => ["palladium"],
            _ => (string[])["bronze", "brass"],
        };

        families.SelectMany(BuiltInAlloys.Named).ShouldContain(alloy);
    }

    // And one that says no more than the carats, the mark, or the fineness with the metal before it.
    [Theory]
    [MemberData(nameof(Composed))]
    public void Named_TheFinenessAlone_HasEachOfItsAlloysAmongTheChoices(string name)
    {
        var alloy = BuiltInAlloys.Named(name).Single();
        if (Precious(alloy.Composition!) is { } symbol)
        {
            var perMille = alloy.Composition!.PerMille(symbol);
            var said = symbol switch
            {
                "Au" when perMille == 1000 => "24k",
                "Au" => $"{Math.Round(perMille / 1000 * 24)}k",
                _ when perMille == 1000 => $"{symbol} 999",
                "Ag" when perMille is 925 => "sterling",
                _ => $"{symbol} {perMille:0}",
            };

            BuiltInAlloys.Named(said).ShouldContain(alloy, said);
        }
    }

    // A name that promises a fineness is kept by the composition behind it.
    [Theory]
    [MemberData(nameof(Composed))]
    public void Composition_OfANameWithAPromise_KeepsIt(string name)
    {
        if (FinenessClaim.Of(name) is { } claim)
        {
            // 14/24 is under the mark of 585: the textbook's 14 k is the American one.
            var mark = MarkScheme.UnitedStates.MarkFor(claim.Symbol, Ratio.FromPartsPerThousand(BuiltInAlloys.Named(name).Single().Composition!.PerMille(claim.Symbol)));
            var kept = BuiltInAlloys.Named(name).Single().Composition!.PerMille(claim.Symbol) >= claim.PerMille;

            (kept || mark == "14K").ShouldBeTrue();
        }
    }

    [Fact]
    public void Elements_Names_AreWords() => Elements.All.ShouldAllBe(element => element.Name.Length >= 3 && element.Name.All(char.IsAsciiLetterLower));

    [Theory]
    [InlineData("Be", ElementHazard.Poison)]
    [InlineData("Cd", ElementHazard.Poison)]
    [InlineData("Pb", ElementHazard.Poison)]
    [InlineData("Zn", ElementHazard.Fume)]
    [InlineData("Cu", ElementHazard.None)]
    public void Hazard_OfAnElement_IsKnown(string symbol, ElementHazard hazard)
    {
        Elements.TryGet(symbol, out var element).ShouldBeTrue();
        element!.Hazard.ShouldBe(hazard);
        Composition.Of($"{symbol} 100 Ag 900").With(hazard).Select(e => e.Symbol).ShouldContain(symbol);
        Composition.Of($"{symbol} 100 Ag 900").With(ElementHazard.Fume).Count.ShouldBe(hazard == ElementHazard.Fume ? 1 : 0);
    }

    private static string? Precious(Composition composition) =>
        ((string[])["Au", "Pt", "Pd", "Ag"]).FirstOrDefault(symbol => composition.PerMille(symbol) >= 333 && (symbol != "Ag" || composition.PerMille("Au") == 0));
}
