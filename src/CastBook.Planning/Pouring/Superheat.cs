using CastBook.Casting.Pouring;
using CastBook.Planning.Findings;
using CastBook.Planning.Metals;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Pouring;

/// <summary>Compares how far above its liquidus an alloy is poured with what its way of casting wants.</summary>
internal static class Superheat
{
    // Tables are rounded to 5 or 10 degrees Fahrenheit, which is up to 3 degrees Celsius either way.
    private const double RoundingDegrees = 3;

    /// <summary>Adds a check where the metal is poured colder or hotter than the band; only silver and gold alloys have one, and none that is poured by gravity.</summary>
    /// <param name="alloy">The alloy.</param>
    /// <param name="metal">What it is poured at.</param>
    /// <param name="method">How the flask is cast.</param>
    /// <param name="assumed">Says each alloy and method once.</param>
    public static void Compare(KnownAlloy alloy, Temperature metal, CastingMethod method, Assumptions assumed)
    {
        if (method == CastingMethod.Gravity || alloy.Alloy.Liquidus is not { } liquidus || alloy.Alloy.Composition is not { } parts || parts.PerMille("Ag") + parts.PerMille("Au") < 500)
        {
            return;
        }

        var (least, most) = SuperheatBand.For(method);
        var over = metal - liquidus;
        if (over.DegreesCelsius >= least.DegreesCelsius - RoundingDegrees && over.DegreesCelsius <= most.DegreesCelsius + RoundingDegrees)
        {
            return;
        }

        var unit = assumed.Units.Temperature;
        assumed.Once($"superheat-{method} {alloy.Name}", () => Catalogue.SuperheatOutOfBand.At(
            new Subject(SubjectKind.Alloy, alloy.Name, ShopField.MetalTemperature), alloy.Name, unit.Say(metal), unit.Degrees(over.DegreesCelsius),
            unit.Say(liquidus), method == CastingMethod.Spin ? PourFindingWords.Spinning : PourFindingWords.Vacuum, unit.Degrees(least.DegreesCelsius), unit.Degrees(most.DegreesCelsius)));
    }
}
