using UnitsNet;

namespace CastBook.Casting.Units;

/// <summary>Rounds a mass up to what the shop's scale can show, so that the pour stays full.</summary>
internal static class ScaleStep
{
    // Sums of a few hundred doubles carry about 1e-13 of dust; a part in a thousand million is far above
    // it and far below anything that a scale shows.
    private const double Dust = 1e-9;

    /// <summary>The least whole number of steps that is not less than the mass, float dust apart.</summary>
    /// <param name="mass">Zero or more.</param>
    /// <param name="step">More than zero.</param>
    /// <returns>The rounded mass, in the unit of <paramref name="step"/>.</returns>
    public static Mass Up(Mass mass, Mass step)
    {
        var steps = mass / step;
        var nearest = Math.Round(steps);
        var whole = Math.Abs(steps - nearest) <= Dust * Math.Max(1, nearest) ? nearest : Math.Ceiling(steps);

        return whole * step;
    }
}
