using CastBook.Casting.Burnout;
using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Heat;

/// <summary>Follows the temperature in the middle of a mould while its kiln goes through a programme.</summary>
/// <remarks>
/// <para><b>Formula.</b> kiln − core = Σ w y with y′ = −r y + T′: the step response of a short cylinder, wall × long cylinder,
/// superposed over the programme; each straight piece is integrated exactly.</para>
/// <para><b>Symbols.</b> w, r: weight and rate of a pair of terms, r = α (ζ²/L² + ζ²/R²); T: kiln temperature; L: half the
/// height; R: the inside radius; α: diffusivity.</para>
/// <para><b>Valid for</b> dry moulds with both ends open to the air, constant properties. Drying is not in it: a wet mould
/// stands near 100 °C until its water has gone, which is what the first hold is for.</para>
/// <para><b>Source.</b> Superposition (Duhamel); properties from <see cref="MouldProperties"/>.</para>
/// </remarks>
public sealed class CoreTrace
{
    private const int Terms = 6;
    private const double StepMinutes = 5;
    private const double MostHours = 24;

    private readonly double[] weights;
    private readonly double[] perHour;
    private readonly double[] behind = new double[Terms * Terms];
    private double kilnCelsius;

    /// <summary>Starts with mould and kiln at one temperature.</summary>
    /// <param name="insideDiameter">Inside diameter of the flask; more than zero.</param>
    /// <param name="height">Its height; more than zero.</param>
    /// <param name="mould">Which end of the range.</param>
    /// <param name="film">The temperature at which radiation is taken: the coolest stage for the slow case, the hottest for the fast one.</param>
    /// <param name="start">The temperature of the mould.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is zero or negative.</exception>
    public CoreTrace(Length insideDiameter, Length height, MouldCase mould, Temperature film, Temperature start)
    {
        Require.Positive(insideDiameter);
        Require.Positive(height);
        (weights, perHour) = (new double[Terms * Terms], new double[Terms * Terms]);
        var (conductivityWmK, diffusivityMm2S, convectionWm2K) = MouldProperties.Of(mould);
        Modes(insideDiameter.Millimeters / 2, height.Millimeters / 2, conductivityWmK, diffusivityMm2S, convectionWm2K + FilmCoefficient.Radiation(film.DegreesCelsius));
        kilnCelsius = start.DegreesCelsius;
    }

    /// <summary>For tests: a film coefficient given as such.</summary>
    internal CoreTrace(double radiusMm, double halfHeightMm, double conductivityWmK, double diffusivityMm2S, double filmWm2K, double startCelsius)
    {
        (weights, perHour) = (new double[Terms * Terms], new double[Terms * Terms]);
        Modes(radiusMm, halfHeightMm, conductivityWmK, diffusivityMm2S, filmWm2K);
        kilnCelsius = startCelsius;
    }

    private CoreTrace(CoreTrace like)
    {
        (weights, perHour, kilnCelsius) = (like.weights, like.perHour, like.kilnCelsius);
        like.behind.CopyTo(behind, 0);
    }

    /// <summary>Kiln temperature now.</summary>
    public Temperature Kiln => Temperature.FromDegreesCelsius(kilnCelsius);

    /// <summary>Temperature in the middle of the mould now.</summary>
    public Temperature Core => Temperature.FromDegreesCelsius(kilnCelsius - Behind(0));

    /// <summary>How long the last of a difference between kiln and core takes to fade to a part of e, 37 %: the longer, the slower the mould.</summary>
    public Duration TimeConstant => Duration.FromHours(1 / perHour[0]);

    /// <summary>The same mould as it is now, to go another way; its terms are not solved again.</summary>
    public CoreTrace Copy() => new(this);

    /// <summary>Goes to a kiln temperature in a straight line; at once where it takes no time.</summary>
    /// <param name="target">Kiln temperature.</param>
    /// <param name="way">How long it takes; zero or more.</param>
    public void Go(Temperature target, Duration way)
    {
        var (rise, hours) = (target.DegreesCelsius - kilnCelsius, way.Hours);
        for (var i = 0; i < behind.Length; i++)
        {
            behind[i] = hours <= 0
                ? behind[i] + rise
                : (behind[i] * Math.Exp(-perHour[i] * hours)) + (rise / hours * (1 - Math.Exp(-perHour[i] * hours)) / perHour[i]);
        }

        kilnCelsius = target.DegreesCelsius;
    }

    /// <summary>Holds the kiln where it is.</summary>
    /// <param name="hold">How long; zero or more.</param>
    public void Hold(Duration hold)
    {
        var hours = hold.Hours;
        for (var i = 0; i < behind.Length; i++)
        {
            behind[i] *= Math.Exp(-perHour[i] * hours);
        }
    }

    /// <summary>Runs a stage as a kiln does; a way inside its hold is taken at the usual rise.</summary>
    /// <param name="stage">The stage.</param>
    public void Run(ProgramStage stage)
    {
        ArgumentNullException.ThrowIfNull(stage);
        var way = stage.WayUp;
        Go(stage.Target, way);
        Hold(stage.Takes - way);
    }

    /// <summary>How long the kiln must hold until the core is within a tolerance of it, to five minutes, and stays there.</summary>
    /// <param name="toleranceDegrees">The tolerance in degrees Celsius; more than zero.</param>
    /// <returns>The hold; a whole day where that does not do.</returns>
    public Duration HoldUntilWithin(double toleranceDegrees)
    {
        Require.Positive(toleranceDegrees);
        var last = -StepMinutes;
        for (var minutes = 0.0; minutes <= MostHours * 60; minutes += StepMinutes)
        {
            if (Math.Abs(Behind(minutes / 60)) > toleranceDegrees)
            {
                last = minutes;
            }
        }

        return Duration.FromMinutes(Math.Min(last + StepMinutes, MostHours * 60));
    }

    private double Behind(double hours)
    {
        var sum = 0.0;
        for (var i = 0; i < behind.Length; i++)
        {
            sum += weights[i] * behind[i] * Math.Exp(-perHour[i] * hours);
        }

        return sum;
    }

    private void Modes(double radiusMm, double halfHeightMm, double conductivityWmK, double diffusivityMm2S, double filmWm2K)
    {
        var perHourOf = diffusivityMm2S * 3600;
        var wallBiot = filmWm2K * halfHeightMm / 1000 / conductivityWmK;
        var sideBiot = filmWm2K * radiusMm / 1000 / conductivityWmK;
        var walls = new double[Terms];
        for (var j = 0; j < Terms; j++)
        {
            walls[j] = WallCooling.Eigenvalue(j, wallBiot);
        }

        for (var i = 0; i < Terms; i++)
        {
            var side = CylinderCooling.Eigenvalue(i, sideBiot);
            for (var j = 0; j < Terms; j++)
            {
                var wall = walls[j];
                var at = (i * Terms) + j;
                weights[at] = CylinderCooling.Weight(side) * WallCooling.Weight(wall);
                perHour[at] = perHourOf * ((side * side / (radiusMm * radiusMm)) + (wall * wall / (halfHeightMm * halfHeightMm)));
            }
        }
    }
}
