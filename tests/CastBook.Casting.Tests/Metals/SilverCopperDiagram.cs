using CastBook.Casting.Tests.Published;

namespace CastBook.Casting.Tests.Metals;

/// <summary>
/// The phase diagram of silver and copper, worked out from the printed parameters of its assessment: at each temperature the melt
/// and the solid whose chemical potentials are equal. Compositions are mole fractions of copper inside, mass per cent outside.
/// </summary>
internal sealed class SilverCopperDiagram
{
    private const double GasConstant = 8.314462618;     // J/(mol K), exact since 2019
    private const double SilverGramsPerMole = 107.8682;
    private const double CopperGramsPerMole = 63.546;
    private const double ZeroCelsiusKelvin = 273.15;

    private static readonly (double Liquid, double Solid) SilverSide = (0.35, 0.12);
    private static readonly (double Liquid, double Solid) DiluteSide = (0.1, 0.03);
    private static readonly (double Liquid, double Solid) CopperSide = (0.42, 0.95);

    private readonly Dictionary<string, double[]> terms = PublishedTable.Rows("silver-copper-parameters.csv", 4)
        .ToDictionary(row => row[0], row => row[1..4].Select(text => PublishedNumber.Parse(text).Value).ToArray());

    /// <summary>Where both solids and the melt stand together, in °C; the melt's silver, and what each solid holds of the other metal.</summary>
    public (double Celsius, double SilverPercent, double CopperInSilver, double SilverInCopper) Eutectic()
    {
        var kelvin = Bisect(1050, 1055, t => Tie(t, CopperSide).Liquid - Tie(t, SilverSide).Liquid);
        var (liquid, silverRich) = Tie(kelvin, SilverSide);
        return (kelvin - ZeroCelsiusKelvin, SilverPercent(liquid), 100 - SilverPercent(silverRich), SilverPercent(Tie(kelvin, CopperSide).Solid));
    }

    /// <summary>Liquidus of a silver alloy that is richer than the eutectic, in °C.</summary>
    public double Liquidus(double silverPerMille) => Where(silverPerMille, tie => tie.Liquid);

    /// <summary>Solidus of a silver alloy, in °C; that of the eutectic where the solid cannot hold its copper.</summary>
    public double Solidus(double silverPerMille)
    {
        var eutectic = Eutectic();
        return silverPerMille <= 1000 - (10 * eutectic.CopperInSilver) ? eutectic.Celsius : Where(silverPerMille, tie => tie.Solid);
    }

    private double Where(double silverPerMille, Func<(double Liquid, double Solid), double> side)
    {
        var kelvin = Bisect(Eutectic().Celsius + ZeroCelsiusKelvin, 1234, t => SilverPercent(side(Tie(t, t < 1150 ? SilverSide : DiluteSide))) - (silverPerMille / 10));
        return kelvin - ZeroCelsiusKelvin;
    }

    // The melt and the solid that stand together, by Newton's method from a guess on the side that is meant.
    private (double Liquid, double Solid) Tie(double kelvin, (double Liquid, double Solid) guess)
    {
        const double Step = 1e-7;
        var (l, s) = guess;
        for (var i = 0; i < 25; i++)
        {
            var (ag, cu) = Difference(kelvin, l, s);
            var (agL, cuL) = Difference(kelvin, l + Step, s);
            var (agS, cuS) = Difference(kelvin, l, s + Step);
            double a = (agL - ag) / Step, b = (agS - ag) / Step, c = (cuL - cu) / Step, d = (cuS - cu) / Step;
            var (stepL, stepS) = (((b * cu) - (d * ag)) / ((a * d) - (b * c)), ((c * ag) - (a * cu)) / ((a * d) - (b * c)));
            var part = 1.0;
            while (l + (part * stepL) is <= 1e-9 or >= 1 || s + (part * stepS) is <= 1e-9 or >= 1)
            {
                part /= 2;
            }

            (l, s) = (l + (part * stepL), s + (part * stepS));
        }

        return (l, s);
    }

    private (double Silver, double Copper) Difference(double kelvin, double liquid, double solid)
    {
        var (meltAg, meltCu) = Potentials(kelvin, liquid, "liquid");
        var (solidAg, solidCu) = Potentials(kelvin, solid, "solid");
        return (meltAg + Term("melting Ag", kelvin) - solidAg, meltCu + Term("melting Cu", kelvin) - solidCu);
    }

    private (double Silver, double Copper) Potentials(double kelvin, double copper, string phase)
    {
        double l0 = Term(phase + " L0", kelvin), l1 = Term(phase + " L1", kelvin), silver = 1 - copper;
        return (
            (GasConstant * kelvin * Math.Log(silver)) + (copper * copper * (l0 + (l1 * (3 - (4 * copper))))),
            (GasConstant * kelvin * Math.Log(copper)) + (silver * silver * (l0 + (l1 * (1 - (4 * copper))))));
    }

    private double Term(string what, double kelvin) => terms[what] is var t ? t[0] + (t[1] * kelvin) + (t[2] * Math.Pow(kelvin, 7)) : 0;

    private static double SilverPercent(double copper) =>
        100 * (1 - copper) * SilverGramsPerMole / (((1 - copper) * SilverGramsPerMole) + (copper * CopperGramsPerMole));

    // The place between two others where a rising function is zero.
    private static double Bisect(double low, double high, Func<double, double> rising)
    {
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = rising(middle) < 0 ? (middle, high) : (low, middle);
        }

        return low;
    }
}
