using UnitsNet;

namespace CastBook.Planning;

/// <summary>
/// A quantity that may be missing, held as a plain number: not a number where it is. A long list has a hundred thousand rows,
/// and such a quantity of its own would take three times the room.
/// </summary>
internal static class BareQuantity
{
    /// <summary>Millimetres.</summary>
    /// <param name="length">The length.</param>
    public static double Of(Length? length) => length?.Millimeters ?? double.NaN;

    /// <summary>Grams.</summary>
    /// <param name="mass">The mass.</param>
    public static double Of(Mass? mass) => mass?.Grams ?? double.NaN;

    /// <summary>Millilitres.</summary>
    /// <param name="volume">The volume.</param>
    public static double Of(Volume? volume) => volume?.Milliliters ?? double.NaN;

    /// <summary>Hours.</summary>
    /// <param name="duration">The time.</param>
    public static double Of(Duration? duration) => duration?.Hours ?? double.NaN;

    /// <summary>A length.</summary>
    /// <param name="millimetres">Millimetres; not a number where missing.</param>
    public static Length? Length(double millimetres) => double.IsNaN(millimetres) ? null : UnitsNet.Length.FromMillimeters(millimetres);

    /// <summary>A mass.</summary>
    /// <param name="grams">Grams; not a number where missing.</param>
    public static Mass? Mass(double grams) => double.IsNaN(grams) ? null : UnitsNet.Mass.FromGrams(grams);

    /// <summary>A volume.</summary>
    /// <param name="millilitres">Millilitres; not a number where missing.</param>
    public static Volume? Volume(double millilitres) => double.IsNaN(millilitres) ? null : UnitsNet.Volume.FromMilliliters(millilitres);

    /// <summary>A time.</summary>
    /// <param name="hours">Hours; not a number where missing.</param>
    public static Duration? Duration(double hours) => double.IsNaN(hours) ? null : UnitsNet.Duration.FromHours(hours);
}
