using static CastBook.Casting.Metals.AlloyNumbers;
using static CastBook.Casting.Metals.NumberSource;

namespace CastBook.Casting.Metals;

/// <summary>
/// Silver and its alloys. Melting ranges of silver with copper are worked out from the published assessment of that system, to
/// within 5 °C; the tests work them out again from its printed parameters.
/// </summary>
internal static class SilverAlloys
{
    // Sterling with and without deoxidant is poured 50 °C apart, and the mark is the same.
    private static readonly string[] SterlingMarks = ["sterling silver", "silver", "SS"];

    private static readonly NumberSource Assessment = Published("assessment of silver and copper, ± 5 °C");

    public static IReadOnlyList<Alloy> All { get; } =
    [
        new()
        {
            Name = "fine silver",
            OtherNames = ["999", "silver"],
            Composition = Composition.Of("Ag 1000"),
            Density = Gcc(10.49),
            Solidus = Celsius(961.78),
            Liquidus = Celsius(961.78),     // a fixed point of ITS-90
            Sources = new() { Composition = Exact, Density = Published("element table"), Melting = Exact },
        },
        new()
        {
            Name = "sterling without deoxidant",
            OtherNames = SterlingMarks,
            Composition = Composition.Of("Ag 925 Cu 75"),
            Density = Gcc(10.36),
            Solidus = Celsius(803),
            Liquidus = Celsius(896),
            MetalTemperature = Celsius(960),
            FlaskTemperatureOrdinary = Celsius(538),
            QuenchAfter = new(Minutes(8), Minutes(15), Minutes(20)),
            Sources = new()
            {
                Composition = Published("legal standard: 925 at least, the rest copper"),
                Density = Published("metal data sheet").But("a supplier's list prints 10.40, a shop's 10.3; the data sheet and the composition agree on 10.36"),
                Melting = Assessment.But("data sheets print 779 to 805 and 890 to 900 °C"),
                MetalTemperature = CommonPractice.But("a published supplier table has 970 °C; casters pour at 950 to 982 °C (1740 to 1800 °F), and 960 °C is 1760 °F"),
                FlaskTemperature = CommonPractice.But("published tables go from 427 to 538 °C (800 to 1000 °F) by the finest section; the hotter end fills"),
                QuenchSmall = CommonPractice,
                QuenchMedium = Memory.But("12 to 15 min; the longer is the safe side"),
                QuenchLarge = Published("supplier table").But("15 to 20 min; the longer is the safe side"),
            },
        },
        new()
        {
            Name = "deoxidised sterling",
            OtherNames = SterlingMarks,
            // No composition: makers do not say which deoxidant and how much.
            Density = Gcc(10.36),
            MetalTemperature = Celsius(1010),
            QuenchAfter = new(null, null, Minutes(25)),
            Sources = new()
            {
                // Deoxidants are lighter, by less than 1 % of the alloy in all, so that the charge errs towards a full pour.
                Density = Published("metal data sheet").But("that of sterling without deoxidant; with it less than 1 % lighter"),
                MetalTemperature = Published("supplier table"),
                QuenchLarge = Published("supplier table").But("20 to 25 min; the longer is the safe side"),
            },
        },
        new()
        {
            Name = "germanium silver 935",
            OtherNames = ["germanium silver", "silver 935", "935", "silver"],
            Composition = Composition.Of("Ag 935 Cu 53 Ge 12"),
            // No density: the mixing rule has not been compared with germanium alloys.
            Sources = new() { Composition = Published("patent").But("it allows 925 to 960 silver and 1 to 15 germanium") },
        },
        WithCopper("silver 958", "Ag 958 Cu 42", 879, 924, "958", "Britannia silver"),
        WithCopper("silver 950", "Ag 950 Cu 50", 862, 917, "950"),
        WithCopper("silver 935 with copper", "Ag 935 Cu 65", 828, 904, "silver 935", "935"),
        WithCopper("silver 917", "Ag 917 Cu 83", 779, 890),
        WithCopper("silver 900", "Ag 900 Cu 100", 779, 877, "900", "coin silver"),
        WithCopper("silver 875", "Ag 875 Cu 125", 779, 860),
        WithCopper("silver 835", "Ag 835 Cu 165", 779, 835, "835"),
        WithCopper("silver 830", "Ag 830 Cu 170", 779, 832, "830"),
        WithCopper("silver 800", "Ag 800 Cu 200", 779, 815, "800"),
        WithCopper("silver 720", "Ag 720 Cu 280", 779, 781, "720"),
    ];

    private static Alloy WithCopper(string name, string parts, double solidusCelsius, double liquidusCelsius, params string[] otherNames)
    {
        var composition = Composition.Of(parts);
        return new()
        {
            Name = name,
            OtherNames = [.. otherNames, "silver"],
            Composition = composition,
            Density = ByRule(composition),
            Solidus = Celsius(solidusCelsius),
            Liquidus = Celsius(liquidusCelsius),
            Sources = new()
            {
                Composition = Published("list of silver standards: the mark is the least, the rest copper"),
                Density = MixingRule,
                Melting = Assessment,
            },
        };
    }
}
