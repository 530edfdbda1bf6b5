using System.Globalization;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>Numbers of a formula, with enough digits to reckon it again.</summary>
internal static class Figures
{
    private const string Digits = "#,0.###";

    /// <summary>A factor near one.</summary>
    /// <param name="factor">Any ratio.</param>
    public static string Factor(Ratio factor) => factor.DecimalFractions.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A mass in grams.</summary>
    /// <param name="mass">Any mass.</param>
    public static string Grams(Mass mass) => Plain(mass.Grams) + " g";

    /// <summary>A volume in millilitres.</summary>
    /// <param name="volume">Any volume.</param>
    public static string Millilitres(Volume volume) => Plain(volume.Milliliters) + " ml";

    /// <summary>A density in g/cm³.</summary>
    /// <param name="density">Any density.</param>
    public static string Dense(Density density) => Plain(density.GramsPerCubicCentimeter) + " g/cm³";

    /// <summary>A time in hours.</summary>
    /// <param name="hours">Any number.</param>
    public static string Hours(double hours) => Plain(hours) + " h";

    /// <summary>A number, three decimals at most.</summary>
    /// <param name="value">Any number.</param>
    public static string Plain(double value) => value.ToString(Digits, CultureInfo.InvariantCulture);
}
