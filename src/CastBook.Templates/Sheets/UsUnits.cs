using CastBook.Planning.Shops;
using CastBook.Templates.Words;
using CastBook.Templates.Writing;

namespace CastBook.Templates.Sheets;

/// <summary>Sheets as a shop in the United States has them: what it measures in inches, troy weight and °F stands in these, the rest as everywhere.</summary>
internal static class UsUnits
{
    private static readonly double MillimetresPerInch = WrittenLength.Inch.One.Millimeters;
    private static readonly double GramsPerPennyweight = WrittenMass.Pennyweight.One.Grams;
    private static readonly double GramsPerTroyOunce = WrittenMass.TroyOunce.One.Grams;
    private static readonly double GramsPerPound = WrittenMass.Pound.One.Grams;

    private static readonly UnitChange[] Changes =
    [
        new("(°C/h)", "(°F/h)", Formats.Whole, c => Rounded(c * 9 / 5, 5)),
        new("(°C)", "(°F)", Formats.Whole, c => Rounded((c * 9 / 5) + 32, 5)),
        new("(mm)", "(in)", Formats.Hundredths, mm => Rounded(mm / MillimetresPerInch, 0.25)),
    ];

    private static readonly UnitChange OfCaliper = new("(mm)", "(in)", Formats.Thousandths, mm => Rounded(mm / MillimetresPerInch, 0.001));

    /// <summary>Headings that change otherwise than their unit does elsewhere.</summary>
    private static readonly Dictionary<string, UnitChange> Special = new(StringComparer.Ordinal)
    {
        ["Pattern weight (g)"] = new("(g)", "(dwt)", Formats.Hundredths, g => Rounded(g / GramsPerPennyweight, 0.01)),
        ["Fresh (g)"] = TroyOunces,
        ["Re-melt (g)"] = TroyOunces,
        ["Rated (g)"] = TroyOunces,
        ["Price (per g)"] = new("(per g)", "(per ozt)", Formats.Hundredths, perGram => Rounded(perGram * GramsPerTroyOunce, 0.01)),
        ["Powder (g)"] = Pounds,
        ["In stock (g)"] = Pounds,
        ["Reads high by (°C)"] = new("(°C)", "(°F)", Formats.AsTyped, c => Rounded(c * 9 / 5, 1)),
    };

    /// <summary>What such a shop has said on its Shop sheet: in which units it wants its answers.</summary>
    public static IReadOnlyDictionary<string, object> Answers { get; } = new Dictionary<string, object>(StringComparer.Ordinal)
    {
        [SettingName.MetalBoughtIn] = ShopUnits.UnitedStates.Buying.Name,
        [SettingName.MetalIn] = ShopUnits.UnitedStates.Metal.Name,
        [SettingName.PowderIn] = ShopUnits.UnitedStates.Powder.Name,
        [SettingName.TemperaturesIn] = ShopUnits.UnitedStates.Temperature.Name,
        [SettingName.LengthsIn] = ShopUnits.UnitedStates.Length.Name,
    };

    private static UnitChange TroyOunces => new("(g)", "(ozt)", Formats.Tenths, g => Rounded(g / GramsPerTroyOunce, 0.1));

    private static UnitChange Pounds => new("(g)", "(lb)", Formats.Tenths, g => Rounded(g / GramsPerPound, 0.5));

    /// <summary>The sheet in these units.</summary>
    /// <param name="spec">The sheet.</param>
    /// <param name="rows">Its lines.</param>
    public static SheetContent Of(SheetSpec spec, IReadOnlyList<IReadOnlyList<object?>> rows)
    {
        var changes = spec.Columns.Select(c => ChangeOf(spec, c)).ToList();
        return new SheetContent(
            spec with { Columns = [.. spec.Columns.Select((c, i) => Column(c, changes[i]))] },
            [.. rows.Select(row => (IReadOnlyList<object?>)[.. row.Select((value, i) => Value(value, changes[i]))])]);
    }

    // A test cube of 20 mm is read in millimetres here too: a tenth of one is a percent and a half of its density.
    private static UnitChange? ChangeOf(SheetSpec spec, ShopColumn column) =>
        Special.GetValueOrDefault(column.Heading)
        ?? (spec.Name == PiecesSheet.Name && column.Heading.EndsWith(OfCaliper.Metric, StringComparison.Ordinal) ? OfCaliper
            : Changes.FirstOrDefault(c => column.Heading.EndsWith(c.Metric, StringComparison.Ordinal) && (c.Metric != "(mm)" || spec.Name != MaterialsSheet.Name)));

    /// <summary>A sentence with the sizes and temperatures that it names in the shop's units.</summary>
    /// <param name="meaning">The sentence.</param>
    /// <param name="units">The shop's units.</param>
    public static string Told(string meaning, ShopUnits units) => UsUnitWords.Sentences
        .Where(s => s.IsHot ? units.Temperature == WrittenTemperature.Fahrenheit : units.Length == WrittenLength.Inch)
        .Aggregate(meaning, (text, s) => text.Replace(s.Metric, s.Us, StringComparison.Ordinal));

    private static ShopColumn Column(ShopColumn column, UnitChange? change)
    {
        var meaning = Told(column.Meaning, ShopUnits.UnitedStates);
        return change is null
            ? column with { Meaning = meaning, Format = column.Format == Formats.Day ? Formats.UsDay : column.Format }
            : column with { Heading = column.Heading.Replace(change.Metric, change.Us, StringComparison.Ordinal), Meaning = meaning, Format = change.Format };
    }

    private static object? Value(object? value, UnitChange? change) => value switch
    {
        string words => UsUnitWords.Names.Aggregate(words, (text, n) => text.Replace(n.Metric, n.Us, StringComparison.Ordinal)),
        int whole when change is not null => change.Convert(whole),
        double number when change is not null => change.Convert(number),
        _ => value,
    };

    /// <summary>As such a shop would have bought, set or written it: whole steps, without a tail of digits.</summary>
    private static double Rounded(double value, double step) => (double)(Math.Round((decimal)(value / step)) * (decimal)step);

    private sealed record UnitChange(string Metric, string Us, string Format, Func<double, double> Convert);
}
