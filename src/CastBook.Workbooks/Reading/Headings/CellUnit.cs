using System.Globalization;
using CastBook.Casting.Units;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>A unit as a heading or a cell writes it.</summary>
/// <param name="Name">Its usual sign.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">Times the value, plus <paramref name="Offset"/>, gives the base unit of the dimension.</param>
/// <param name="Offset">Added after the factor; only temperatures have one.</param>
internal sealed record CellUnit(string Name, Dimension Dimension, double Factor, double Offset = 0)
{
    // Exact by definition: NIST Handbook 44, Appendix C (ounces and pounds in grains, the inch; the gallon of the United States is 231 cubic inches) and
    // NIST SP 811, Appendix B.8 (the gallon of Britain is 4.546 09 l).
    private const double MillimetresPerInch = 25.4;
    private const double MillilitresPerCubicInch = MillimetresPerInch * MillimetresPerInch * MillimetresPerInch / 1000;
    private const double MillilitresPerUsGallon = 231 * MillilitresPerCubicInch;
    private const double MillilitresPerImperialGallon = 4546.09;
    private const double CelsiusPerFahrenheit = 5.0 / 9.0;

    private static readonly double GramsPerGrain = TroyMass.FromGrains(1).Grams;

    /// <summary>Grams.</summary>
    public static CellUnit Gram { get; } = new("g", Dimension.Mass, 1);

    private static readonly Dictionary<string, CellUnit>.AlternateLookup<ReadOnlySpan<char>> ByText = Table().GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Grams or grains: nobody can tell from the sign alone, and the two are 15-fold apart.</summary>
    public bool IsGramOrGrain => Name == "gr";

    /// <summary>Ounces that may be meant as troy ounces.</summary>
    public bool IsPlainOunce => Name == "oz";

    /// <summary>Liquid measure that names no country; it is read as that of the United States.</summary>
    public bool IsPlainLiquid => Name is "fl oz" or "pt" or "qt" or "gal";

    /// <summary>The value in the base unit of the dimension.</summary>
    public double ToBase(double value) => (value * Factor) + Offset;

    /// <summary>A value in the base unit as this unit counts it.</summary>
    public double FromBase(double value) => (value - Offset) / Factor;

    /// <summary>The same as it is written into a cell: 3 inches and not 2.9999999999999996, which a division may leave.</summary>
    public double Written(double value) => double.Parse(FromBase(value).ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>Reads a unit; false where the text is none.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, out CellUnit unit) => ByText.TryGetValue(text.Trim().TrimEnd('.'), out unit!);

    private static Dictionary<string, CellUnit> Table()
    {
        var table = new Dictionary<string, CellUnit>(StringComparer.OrdinalIgnoreCase);
        void Add(CellUnit unit, params string[] spellings)
        {
            table[unit.Name] = unit;
            foreach (var spelling in spellings)
            {
                table[spelling] = unit;
            }
        }

        AddMasses(Add);
        Add(new CellUnit("mm", Dimension.Length, 1));
        Add(new CellUnit("cm", Dimension.Length, 10));
        Add(new CellUnit("in", Dimension.Length, MillimetresPerInch), "\"", "″", "”", "''");
        Add(new CellUnit("ml", Dimension.Volume, 1), "cm3", "cm³", "cc", "ccm", "cm^3");
        Add(new CellUnit("l", Dimension.Volume, 1000), "litre", "litres", "liter", "liters");
        Add(new CellUnit("in³", Dimension.Volume, MillilitresPerCubicInch), "in3", "in^3", "cu in", "cubic inch", "cubic inches");
        AddLiquids(Add);
        Add(new CellUnit("°C", Dimension.Temperature, 1), "C", "deg C", "degC", "Celsius", "º C", "ºC", "° C");
        Add(new CellUnit("°F", Dimension.Temperature, CelsiusPerFahrenheit, -32 * CelsiusPerFahrenheit), "F", "deg F", "degF", "Fahrenheit", "ºF", "° F");
        Add(new CellUnit("min", Dimension.Time, 1));
        Add(new CellUnit("h", Dimension.Time, 60));
        Add(new CellUnit("s", Dimension.Time, 1.0 / 60), "sec", "secs", "second", "seconds");
        Add(new CellUnit("g/cm³", Dimension.Density, 1), "g/cm3", "g/cm^3", "g/cc", "g/ml", "kg/l");
        Add(new CellUnit("kg/m³", Dimension.Density, 0.001), "kg/m3", "kg/m^3");
        Add(new CellUnit("%", Dimension.Percent, 1), "percent", "per cent", "pct");
        Add(new CellUnit("°C/h", Dimension.Rate, 1), "C/h", "°C/hr", "C/hr", "deg C/h", "°C per hour");
        Add(new CellUnit("°F/h", Dimension.Rate, CelsiusPerFahrenheit), "F/h", "°F/hr", "F/hr", "°F per hour");
        Add(new CellUnit("kW", Dimension.Power, 1));
        Add(new CellUnit("W", Dimension.Power, 0.001), "watt", "watts");
        Add(new CellUnit("per g", Dimension.Price, 1), "/g", "per gram");
        Add(new CellUnit("per kg", Dimension.Price, 0.001), "/kg");
        Add(new CellUnit("per ozt", Dimension.Price, 1 / TroyMass.FromTroyOunces(1).Grams), "/ozt", "per troy ounce", "per troy oz");
        Add(new CellUnit("°", Dimension.Angle, 1), "deg", "degree", "degrees");
        foreach (var (sign, word) in SmallWords.Units())
        {
            table[word] = table[sign];
            table[WordKey.Plain(word)] = table[sign];
        }

        return table;
    }

    private static void AddMasses(Action<CellUnit, string[]> add)
    {
        add(Gram, []);
        add(new CellUnit("mg", Dimension.Mass, 0.001), []);
        add(new CellUnit("kg", Dimension.Mass, 1000), []);
        add(new CellUnit("oz", Dimension.Mass, 437.5 * GramsPerGrain), []);
        add(new CellUnit("ozt", Dimension.Mass, TroyMass.FromTroyOunces(1).Grams), ["oz t", "troy oz", "oz troy", "troy ounce", "troy ounces", "t oz"]);
        add(new CellUnit("dwt", Dimension.Mass, TroyMass.FromPennyweights(1).Grams), ["pennyweight", "pennyweights", "pwt"]);
        add(new CellUnit("grain", Dimension.Mass, GramsPerGrain), ["grains"]);
        add(new CellUnit("gr", Dimension.Mass, double.NaN), ["grs"]);
        add(new CellUnit("ct", Dimension.Mass, TroyMass.FromCarats(1).Grams), ["carat", "carats", "cts"]);
        add(new CellUnit("lb", Dimension.Mass, 7000 * GramsPerGrain), ["lbs", "pound", "pounds"]);
    }

    private static void AddLiquids(Action<CellUnit, string[]> add)
    {
        (string Sign, int OfGallon, string[] Words)[] measures =
        [
            ("fl oz", 128, ["fl. oz", "floz", "fluid ounce", "fluid ounces"]),
            ("pt", 8, ["pts", "pint", "pints"]),
            ("qt", 4, ["qts", "quart", "quarts"]),
            ("gal", 1, ["gals", "gallon", "gallons"]),
        ];
        foreach (var (sign, ofGallon, words) in measures)
        {
            string[] all = [sign, .. words];
            add(new CellUnit(sign, Dimension.Volume, MillilitresPerUsGallon / ofGallon), words);
            add(new CellUnit($"US {sign}", Dimension.Volume, MillilitresPerUsGallon / ofGallon), [.. all.SelectMany(w => new[] { $"US {w}", $"U.S. {w}", $"{w} US", $"{w} (US)" })]);

            // A British gallon has 160 fluid ounces.
            var imperial = new CellUnit($"imp {sign}", Dimension.Volume, MillilitresPerImperialGallon / (ofGallon == 128 ? 160 : ofGallon));
            add(imperial, [.. all.SelectMany(w => new[] { $"imp. {w}", $"imperial {w}", $"UK {w}", $"{w} UK", $"{w} imp" })]);
        }
    }
}
