namespace CastBook.Casting.Heat;

/// <summary>The roots and weights by which a step of temperature fades in a wall heated or cooled on both faces.</summary>
/// <remarks>
/// <para><b>Formula.</b> θ = Σ C exp(−ζ² Fo) cos(ζ x), with ζ tan ζ = Bi and C = 4 sin ζ / (2ζ + sin 2ζ).</para>
/// <para><b>Symbols.</b> θ: share of the step that is left; Bi = h L / k; Fo = α t / L²; L: half the thickness; x: place from
/// the middle (0) to the face (1); ζ: the roots; C: their weights.</para>
/// <para><b>Valid for</b> Bi and Fo above nought, constant properties, one step of the surroundings.</para>
/// <para><b>Source.</b> Textbooks of heat transfer; its one-term values are compared with a printed table.</para>
/// </remarks>
internal static class WallCooling
{
    /// <summary>The root of the given number, counted from nought.</summary>
    public static double Eigenvalue(int number, double biot) =>
        Root.Between(z => (z * Math.Sin(z)) - (biot * Math.Cos(z)), number * Math.PI, (number + 0.5) * Math.PI);

    /// <summary>The weight of a root.</summary>
    public static double Weight(double root) => 4 * Math.Sin(root) / ((2 * root) + Math.Sin(2 * root));
}
