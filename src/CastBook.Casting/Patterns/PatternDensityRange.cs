using UnitsNet;

namespace CastBook.Casting.Patterns;

/// <summary>
/// The span in which the density of a pattern material lies. It says how far apart the least and the most
/// metal are; it is never taken as the shop's own density.
/// </summary>
/// <remarks>
/// <para><b>Source.</b> Wax 0.92 to 1.00 g/cm³: practitioners' values from 0.95 to the convention of 1.00,
/// and the low end from memory of wax data sheets. Cured castable resin 1.10 to 1.20 g/cm³: memory of
/// data sheets for acrylate photopolymers.</para>
/// </remarks>
public static class PatternDensityRange
{
    private static readonly (Density Least, Density Most) Wax = Span(0.92, 1.00);
    private static readonly (Density Least, Density Most) Resin = Span(1.10, 1.20);

    /// <summary>The span of any pattern material, wax or resin.</summary>
    public static (Density Least, Density Most) Any { get; } = (Wax.Least, Resin.Most);

    /// <summary>The span of one family of materials.</summary>
    /// <param name="kind">Wax or resin.</param>
    /// <returns>The least and the most density.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a known kind.</exception>
    public static (Density Least, Density Most) For(PatternKind kind) => kind switch
    {
        PatternKind.Wax => Wax,
        PatternKind.Resin => Resin,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "The kind must be wax or resin."),
    };

    /// <summary>Whether anything that is burnt out of a mould can have a density: from 0.6 to 2 g/cm³.</summary>
    /// <remarks>Outside, the number stands in another unit or belongs to something else. Foamed wax and filled resins, the lightest
    /// and the heaviest there are, lie well inside (memory).</remarks>
    /// <param name="density">A density.</param>
    public static bool IsPossible(Density density) => density.GramsPerCubicCentimeter is >= 0.6 and <= 2;

    private static (Density Least, Density Most) Span(double least, double most) =>
        (Density.FromGramsPerCubicCentimeter(least), Density.FromGramsPerCubicCentimeter(most));
}
