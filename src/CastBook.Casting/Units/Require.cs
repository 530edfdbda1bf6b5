using System.Numerics;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace CastBook.Casting.Units;

/// <summary>Guards at the entrance of a calculation.</summary>
internal static class Require
{
    /// <summary>Refuses a quantity below zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static void NotNegative(Mass value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        NotNegative(value.Value, name);

    /// <inheritdoc cref="NotNegative(Mass, string)"/>
    public static void NotNegative(Volume value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        NotNegative(value.Value, name);

    /// <inheritdoc cref="NotNegative(Mass, string)"/>
    public static void NotNegative(Length value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        NotNegative(value.Value, name);

    /// <inheritdoc cref="NotNegative(Mass, string)"/>
    public static void NotNegative(Ratio value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        NotNegative(value.Value, name);

    /// <summary>Refuses a number below zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static void NotNegative<T>(T value, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : INumber<T>
    {
        if (!T.IsFinite(value) || value < T.Zero)
        {
            throw new ArgumentOutOfRangeException(name, value, "The value must be zero or more.");
        }
    }

    /// <summary>Refuses a quantity of zero or below.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is zero, negative or not finite.</exception>
    public static void Positive(Mass value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Positive(value.Value, name);

    /// <inheritdoc cref="Positive(Mass, string)"/>
    public static void Positive(Density value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Positive(value.Value, name);

    /// <inheritdoc cref="Positive(Mass, string)"/>
    public static void Positive(Length value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        Positive(value.Value, name);

    /// <summary>Refuses a number of zero or below.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is zero, negative or not finite.</exception>
    public static void Positive(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!double.IsFinite(value) || value <= 0)
        {
            throw new ArgumentOutOfRangeException(name, value, "The value must be more than zero.");
        }
    }

    /// <summary>Refuses a share below or above its limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is below <paramref name="least"/> or above <paramref name="most"/>.</exception>
    public static void Between(Ratio value, Ratio least, Ratio most, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (value < least || value > most)
        {
            throw new ArgumentOutOfRangeException(name, value.DecimalFractions, "The value is outside its limits.");
        }
    }
}
