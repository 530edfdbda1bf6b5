namespace CastBook.Casting.Heat;

/// <summary>The roots and weights by which a step of temperature fades in a long cylinder heated or cooled all round.</summary>
/// <remarks>
/// <para><b>Formula.</b> θ = Σ C exp(−ζ² Fo) J₀(ζ x), with ζ J₁(ζ) / J₀(ζ) = Bi and C = 2 J₁ / (ζ (J₀² + J₁²)).</para>
/// <para><b>Symbols.</b> θ: share of the step that is left; Bi = h r / k; Fo = α t / r²; r: the radius; x: place from the axis (0)
/// to the side (1); ζ: the roots; C: their weights. A short cylinder is the product with <see cref="WallCooling"/>.</para>
/// <para><b>Valid for</b> Bi and Fo above nought, constant properties, one step of the surroundings. Drying is not in it.</para>
/// <para><b>Source.</b> Textbooks of heat transfer; its one-term values are compared with a printed table.</para>
/// </remarks>
internal static class CylinderCooling
{
    /// <summary>The root of the given number, counted from nought.</summary>
    /// <remarks>It lies between a zero of J₁ and the next zero of J₀.</remarks>
    public static double Eigenvalue(int number, double biot)
    {
        var from = number == 0 ? 0 : Root.Between(Bessel.J1, number * Math.PI, (number + 0.5) * Math.PI);
        var to = Root.Between(Bessel.J0, (number + 0.5) * Math.PI, (number + 1) * Math.PI);
        return Root.Between(z => (z * Bessel.J1(z)) - (biot * Bessel.J0(z)), from, to);
    }

    /// <summary>The weight of a root.</summary>
    public static double Weight(double root)
    {
        var j0 = Bessel.J0(root);
        var j1 = Bessel.J1(root);
        return 2 * j1 / (root * ((j0 * j0) + (j1 * j1)));
    }
}
