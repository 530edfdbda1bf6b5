using CastBook.Casting.Investing;
using CastBook.Casting.Metals;
using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests;

/// <summary>The shop and the rows that tests start from.</summary>
internal static class Wrenmoor
{
    public static FlaskSize Size(string name, double diameter, double height, int owned) => new()
    {
        Name = name,
        InsideDiameter = Mm(diameter),
        Height = Mm(height),
        Owned = owned,
        SprueDiameter = Mm(8),
        BaseHeight = Mm(18),
        Cup = Ml(25),
    };

    public static FlaskSize Small => Size("75 × 100", 75, 100, 3);

    public static FlaskSize Middle => Size("90 × 125", 90, 125, 2);

    public static FlaskSize Large => Size("100 × 150", 100, 150, 2);

    public static ShopAlloy Silver => new()
    {
        Alloy = new Alloy
        {
            Name = "Bench silver",
            Density = Density.FromGramsPerCubicCentimeter(10.4),
            MetalTemperature = Celsius(960),
            FlaskTemperatureFine = Celsius(590),
            FlaskTemperatureOrdinary = Celsius(540),
            FlaskTemperatureHeavy = Celsius(450),
            QuenchAfter = new QuenchWaits(Duration.FromMinutes(8), Duration.FromMinutes(15), Duration.FromMinutes(20)),
        },
    };

    public static ShopAlloy Bronze => Silver with
    {
        Alloy = Silver.Alloy with { Name = "Bell bronze", Density = Density.FromGramsPerCubicCentimeter(8.8) },
    };

    public static Material Wax => new()
    {
        Name = "Injection wax",
        Kind = PatternKind.Wax,
        Density = Density.FromGramsPerCubicCentimeter(0.95),
    };

    public static Material Resin => new()
    {
        Name = "Castable resin",
        Kind = PatternKind.Resin,
        Density = Density.FromGramsPerCubicCentimeter(1.15),
    };

    /// <summary>A shop that has answered everything a plan asks.</summary>
    public static Shop Shop => new()
    {
        FlaskSizes = [Small, Middle, Large],
        Crucibles = [new Crucible { Name = "Graphite 3", Holds = Ml(200) }],
        Kilns = [new Kiln { Name = "Front kiln" }],
        Alloys = [Silver, Bronze],
        Materials = [Wax, Resin],
        Investments = [new Investment
        {
            Name = "White powder",
            Kind = InvestmentKind.Gypsum,
            WaterPer100 = 40,
            PowderDensity = Density.FromGramsPerCubicCentimeter(2.6),
            WorkingTime = Duration.FromMinutes(9.5),
            SetAtLeast = Duration.FromHours(2),
        }],
        Settings = Answered,
    };

    public static Settings Answered => new()
    {
        PatternMaterial = "Injection wax",
        CastingMethod = CastingMethod.VacuumPerforated,
        SprueWaxDensity = Density.FromGramsPerCubicCentimeter(0.95),
        ButtonShare = Ratio.FromPercent(20),
        ButtonAtLeast = Ml(1.5),
        MeltLoss = Ratio.FromPercent(1),
        FreshAtLeast = Ratio.FromPercent(50),
        ChargeStep = Mass.FromGrams(1),
        PowderStep = Mass.FromGrams(5),
        MixingBowl = Ml(4000),
        BowlFill = Ratio.FromPercent(50),
        MixingTakes = Duration.FromMinutes(4),
        BowlVacuum = Duration.FromMinutes(1.5),
        FlaskFilling = Duration.FromMinutes(0.5),
        FlaskVacuum = Duration.FromMinutes(1.5),
        GlossOffMargin = Duration.FromMinutes(1.5),
        GapBetweenPieces = Mm(3),
        GateLength = Mm(7),
        GateDiameter = Mm(3),
        GateAngle = Angle.FromDegrees(50),
    };

    /// <summary>A signet: 22 mm ring, 5 mm wide, 1.9 g of wax (2 ml, 20.8 g of bench silver).</summary>
    public static Piece Ring(int quantity = 1) => new()
    {
        Id = 0,
        Name = "Signet",
        Quantity = quantity,
        Weight = Mass.FromGrams(1.9),
        Alloy = "Bench silver",
        Box = new PieceBox(true, Mm(22), Mm(5), null),
    };

    /// <summary>A stud: 10 × 8 × 3 mm, 0.19 g of wax (0.2 ml, 2.08 g of bench silver).</summary>
    public static Piece Stud(int quantity = 1) => Ring(quantity) with
    {
        Name = "Stud",
        Weight = Mass.FromGrams(0.19),
        Box = new PieceBox(false, Mm(10), Mm(8), Mm(3)),
    };

    public static Night Night(params Piece[] pieces) => Night(Shop, pieces);

    public static Night Night(Shop shop, params Piece[] pieces) => new()
    {
        Pieces = [.. pieces.Select((p, i) => p with { Id = i })],
        Shop = shop,
        WeightsAreOf = WeightMeaning.Pattern,
    };

    public static Length Mm(double mm) => Length.FromMillimeters(mm);

    public static Volume Ml(double ml) => Volume.FromMilliliters(ml);

    public static Temperature Celsius(double degrees) => Temperature.FromDegreesCelsius(degrees);
}
