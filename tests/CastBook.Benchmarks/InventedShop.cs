using CastBook.Casting.Investing;
using CastBook.Casting.Metals;
using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Benchmarks;

/// <summary>A shop that has answered everything a plan asks.</summary>
internal static class InventedShop
{
    private static readonly (double Diameter, double Height)[] Sizes = [(100, 150), (75, 100), (90, 125), (100, 200), (64, 75)];

    /// <summary>The name of an alloy.</summary>
    /// <param name="index">Which.</param>
    public static string AlloyName(int index) => $"Alloy {index + 1}";

    /// <summary>The shop.</summary>
    /// <param name="alloys">How many alloys.</param>
    /// <param name="sizes">How many flask sizes.</param>
    /// <param name="owned">How many it owns of each.</param>
    public static Shop Of(int alloys, int sizes, int owned) => new()
    {
        FlaskSizes = [.. Sizes.Take(sizes).Select(s => Size(s.Diameter, s.Height, owned))],
        Crucibles = [new Crucible { Name = "Graphite", Holds = Volume.FromMilliliters(120) }],
        Kilns = [new Kiln { Name = "Front kiln" }],
        Alloys = [.. Enumerable.Range(0, alloys).Select(Alloy)],
        Materials = [new Material { Name = "Injection wax", Kind = PatternKind.Wax, Density = Density.FromGramsPerCubicCentimeter(0.95) }],
        Investments =
        [
            new Investment
            {
                Name = "White powder",
                Kind = InvestmentKind.Gypsum,
                WaterPer100 = 40,
                PowderDensity = Density.FromGramsPerCubicCentimeter(2.6),
                WorkingTime = Duration.FromMinutes(9.5),
                SetAtLeast = Duration.FromHours(2),
            },
        ],
        Settings = new Settings { PatternMaterial = "Injection wax", CastingMethod = CastingMethod.VacuumPerforated },
    };

    private static FlaskSize Size(double diameter, double height, int owned) => new()
    {
        Name = FormattableString.Invariant($"{diameter} × {height}"),
        InsideDiameter = Length.FromMillimeters(diameter),
        Height = Length.FromMillimeters(height),
        Owned = owned,
        SprueDiameter = Length.FromMillimeters(8),
        BaseHeight = Length.FromMillimeters(18),
    };

    private static ShopAlloy Alloy(int index) => new()
    {
        Alloy = new Alloy
        {
            Name = AlloyName(index),
            Density = Density.FromGramsPerCubicCentimeter(10.4 + index),
            MetalTemperature = Temperature.FromDegreesCelsius(960),
            FlaskTemperatureFine = Temperature.FromDegreesCelsius(590),
            FlaskTemperatureOrdinary = Temperature.FromDegreesCelsius(540),
            FlaskTemperatureHeavy = Temperature.FromDegreesCelsius(450),
        },
    };
}
