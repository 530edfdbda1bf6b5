using System.Globalization;
using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A unit that masses are written in, with no more digits than a scale shows.</summary>
/// <param name="Name">As headings and sentences write it.</param>
/// <param name="One">One of it.</param>
/// <param name="Decimals">Decimals that are kept.</param>
/// <param name="UsualStep">The step of a scale in it that nobody has named.</param>
/// <param name="Large">Number format.</param>
/// <param name="Small">Number format below a hundred, where that is another.</param>
public sealed record WrittenMass(string Name, Mass One, int Decimals, Mass UsualStep, string Large, string? Small = null)
{
    // From here on the format of large numbers is shown, so that 99.96 is not shown as 100.0.
    private const double SmallBelow = 99.95;

    // Float dust: far below any digit that is written.
    private const double Dust = 1e-6;

    /// <summary>Metal in grams.</summary>
    public static WrittenMass Gram { get; } = new("g", Mass.FromGrams(1), 2, Mass.FromGrams(1), "#,##0", "0.0");

    /// <summary>Metal in pennyweights.</summary>
    public static WrittenMass Pennyweight { get; } = new("dwt", TroyMass.FromPennyweights(1), 2, TroyMass.FromPennyweights(1), "#,##0.0#");

    /// <summary>Metal in troy ounces; the usual step is a pennyweight.</summary>
    public static WrittenMass TroyOunce { get; } = new("troy oz", TroyMass.FromTroyOunces(1), 3, TroyMass.FromTroyOunces(0.05), "#,##0.00#");

    /// <summary>Powder in grams.</summary>
    public static WrittenMass PowderGram { get; } = new("g", Mass.FromGrams(1), 2, Mass.FromGrams(5), "#,##0");

    /// <summary>Powder in kilograms.</summary>
    public static WrittenMass Kilogram { get; } = new("kg", Mass.FromGrams(1000), 3, Mass.FromGrams(5), "#,##0.000");

    /// <summary>Powder in avoirdupois pounds.</summary>
    public static WrittenMass Pound { get; } = new("lb", Mass.FromGrams(453.59237), 2, Mass.FromGrams(4.5359237), "#,##0.00");

    /// <summary>Powder in avoirdupois ounces.</summary>
    public static WrittenMass Ounce { get; } = new("oz", Mass.FromGrams(28.349523125), 1, Mass.FromGrams(5.669904625), "#,##0.0");

    /// <summary>What metal may be written in.</summary>
    public static IReadOnlyList<WrittenMass> OfMetal { get; } = [Gram, Pennyweight, TroyOunce];

    /// <summary>What powder may be written in.</summary>
    public static IReadOnlyList<WrittenMass> OfPowder { get; } = [PowderGram, Kilogram, Pound, Ounce];

    /// <summary>What metal may be bought in, with the digits it is sold by.</summary>
    public static IReadOnlyList<WrittenMass> OfBuying { get; } =
    [
        new("g", Mass.FromGrams(1), 1, Mass.FromGrams(0.1), "#,##0.0"),
        new("kg", Mass.FromGrams(1000), 3, Mass.FromGrams(1), "#,##0.000"),
        new("troy oz", TroyMass.FromTroyOunces(1), 2, TroyMass.FromTroyOunces(0.01), "#,##0.00"),
        new("dwt", TroyMass.FromPennyweights(1), 1, TroyMass.FromPennyweights(0.1), "#,##0.0"),
    ];

    private string Fine => "#,##0." + new string('0', Decimals);

    /// <summary>The number format of a cell.</summary>
    public string Format => Small is null ? Large : string.Create(CultureInfo.InvariantCulture, $"[<{SmallBelow}]{Small};{Large}");

    /// <summary>The least that is told apart.</summary>
    public Mass Least => One / Math.Pow(10, Decimals);

    /// <summary>Whether it is the gram, which everything is reckoned in.</summary>
    public bool IsGrams => Name == Gram.Name;

    /// <summary>The step amounts are rounded up to: the shop's, or the next above it that is written in this unit.</summary>
    /// <remarks>A step of 5 g is none of a scale that shows hundredths of a pound: what is written must be what is weighed.</remarks>
    /// <param name="said">The shop's step; the usual one where it has named none.</param>
    public Mass Step(Mass? said) => said is not { } step ? UsualStep : IsGrams ? step : One * UpIn(step);

    /// <summary>A mass in this unit, to the nearest that is written.</summary>
    /// <param name="mass">The mass; nothing gives nothing.</param>
    public double? In(Mass? mass) => mass is { } some ? Math.Round(Times(some), Decimals, MidpointRounding.AwayFromZero) : null;

    /// <summary>A mass in this unit, upwards.</summary>
    /// <param name="mass">The mass.</param>
    public double UpIn(Mass mass)
    {
        var parts = Math.Pow(10, Decimals);
        return Math.Ceiling((Times(mass) * parts) - Dust) / parts;
    }

    /// <summary>A mass for a reader, with the unit.</summary>
    /// <param name="mass">The mass.</param>
    public string Say(Mass mass) => $"{Number(mass)} {Name}";

    /// <summary>A mass for a reader, the unit left out.</summary>
    /// <param name="mass">The mass.</param>
    public string Number(Mass mass)
    {
        var number = Times(mass);
        return number.ToString(Small is null || Math.Abs(number) >= SmallBelow ? Large : Small, CultureInfo.InvariantCulture);
    }

    /// <summary>A mass for a reader with as many digits as are kept, with the unit: for metals that are mixed.</summary>
    /// <param name="mass">The mass.</param>
    public string SayFinely(Mass mass) => $"{Times(mass).ToString(Fine, CultureInfo.InvariantCulture)} {Name}";

    /// <summary>A mass that somebody chose, such as a step: with the digits it has, and no more than five where another unit gives it more.</summary>
    /// <param name="mass">The mass.</param>
    public string SayExactly(Mass mass)
    {
        var number = Times(mass);
        var decimals = number == 0 ? 0 : Math.Clamp(4 - (int)Math.Floor(Math.Log10(Math.Abs(number))), 0, 6);
        return $"{Math.Round(number, decimals, MidpointRounding.AwayFromZero).ToString("#,0.######", CultureInfo.InvariantCulture)} {Name}";
    }

    // In grams, in which both stand: dividing the quantities would bring both to kilograms first.
    private double Times(Mass mass) => mass.Grams / One.Grams;
}
