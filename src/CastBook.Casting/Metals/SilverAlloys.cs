using static CastBook.Casting.Metals.AlloyNumbers;

namespace CastBook.Casting.Metals;

/// <summary>Silver and its alloys, with the source and kind of every number.</summary>
internal static class SilverAlloys
{
    // Sterling with and without deoxidant is poured 50 °C apart, and the mark is the same.
    private static readonly string[] SterlingMarks = ["sterling silver", "silver"];

    public static IReadOnlyList<Alloy> All { get; } =
    [
        new()
        {
            Name = "fine silver",
            OtherNames = ["999", "silver"],
            Composition = Composition.Of("Ag 1000"),    // exact
            Density = Gcc(10.49),                       // published element table
            Solidus = Celsius(961.78),                  // exact, fixed point of ITS-90
            Liquidus = Celsius(961.78),                 // same
        },
        new()
        {
            Name = "sterling without deoxidant",
            OtherNames = SterlingMarks,
            Composition = Composition.Of("Ag 925 Cu 75"),   // published: 925 is the legal least, the rest copper
            Density = Gcc(10.36),                           // published metal data sheet; the mixing rule agrees
            Solidus = Celsius(803),                         // computed from the published assessment of Ag-Cu, ± 5
            Liquidus = Celsius(896),                        // same
            MetalTemperature = Celsius(960),                // common practice (1760 °F); a published table has 970
            FlaskTemperatureOrdinary = Celsius(538),        // common practice (1000 °F)
            // Small: common practice. Medium: memory, 12 to 15; the longer is the safe side. Large: published
            // supplier table, 15 to 20 for a flask of 4 × 8 in; the longer is the safe side.
            QuenchAfter = new(Minutes(8), Minutes(15), Minutes(20)),
        },
        new()
        {
            Name = "deoxidised sterling",
            OtherNames = SterlingMarks,
            // No composition: makers do not say which deoxidant and how much.
            // Density: published for 925 silver. Deoxidants are lighter, by less than 1 % of the alloy in all,
            // so that the charge errs towards a full pour.
            Density = Gcc(10.36),
            MetalTemperature = Celsius(1010),               // published supplier table (1850 °F)
            QuenchAfter = new(null, null, Minutes(25)),     // published supplier table, 20 to 25 for 4 × 8 in; the longer is the safe side
        },
        new()
        {
            Name = "germanium silver 935",
            OtherNames = ["germanium silver", "silver 935", "935", "silver"],
            Composition = Composition.Of("Ag 935 Cu 53 Ge 12"),     // published patent range: 92.5 to 96 Ag, 0.1 to 1.5 Ge, rest Cu
            // No density: the mixing rule has not been compared with germanium alloys.
        },
    ];
}
