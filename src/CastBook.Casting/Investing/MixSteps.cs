using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Investing;

/// <summary>The steps of a mix, from the first powder in the water until the flasks rest.</summary>
/// <remarks>
/// <para><b>Formula.</b> t = mixing + bowl vacuum + n × filling + flask vacuum; it must be no more than the
/// working time less the margin.</para>
/// <para><b>Symbols.</b> n: flasks filled from the mix; working time: from the first powder in the water to
/// gloss-off, as the maker gives it.</para>
/// <para><b>Valid for</b> flasks that stand under one bell together; where each has its own turn, its vacuum
/// belongs to the filling.</para>
/// <para><b>Source.</b> Steps one after the other add up. Usual times: published notes of a class and of
/// practitioners; the makers' sheets win.</para>
/// </remarks>
/// <param name="Mixing">Powder into water until it is smooth; zero or more.</param>
/// <param name="BowlVacuum">The bowl under vacuum; zero or more.</param>
/// <param name="Filling">Pouring into one flask; zero or more.</param>
/// <param name="FlaskVacuum">The filled flasks under vacuum; zero or more.</param>
/// <param name="Margin">How long before gloss-off the flasks must rest; zero or more.</param>
public readonly record struct MixSteps(Duration Mixing, Duration BowlVacuum, Duration Filling, Duration FlaskVacuum, Duration Margin)
{
    // Sums of halves and tenths of minutes must not lose a flask to float dust.
    private const double DustMinutes = 1e-6;

    /// <summary>Usual times: 4, 1.5, 0.5 and 1.5 minutes, to be over 1.5 minutes before gloss-off.</summary>
    public static MixSteps Usual { get; } = new(Minutes(4), Minutes(1.5), Minutes(0.5), Minutes(1.5), Minutes(1.5));

    /// <summary>A usual working time of gypsum-bonded powder: 9.5 minutes.</summary>
    public static Duration UsualWorkingTime { get; } = Minutes(9.5);

    /// <summary>How long a mix takes.</summary>
    /// <param name="flasks">How many flasks it fills; zero or more.</param>
    /// <returns>From the first powder in the water until the last vacuum ends.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="flasks"/> is negative.</exception>
    public Duration Takes(int flasks)
    {
        Require.NotNegative(flasks);
        return Mixing + BowlVacuum + (flasks * Filling) + FlaskVacuum;
    }

    /// <summary>When the last flask must be full.</summary>
    /// <param name="workingTime">From the first powder in the water to gloss-off.</param>
    /// <returns>Minutes from the first powder in the water; negative where the working time is too short for anything.</returns>
    public Duration PourDoneBy(Duration workingTime) => workingTime - Margin - FlaskVacuum;

    /// <summary>How many flasks a mix can fill in its working time.</summary>
    /// <param name="workingTime">From the first powder in the water to gloss-off.</param>
    /// <returns>Zero where it is too short for one; <see cref="int.MaxValue"/> where filling takes no time.</returns>
    public int MostFlasks(Duration workingTime)
    {
        var left = (PourDoneBy(workingTime) - Mixing - BowlVacuum).Minutes;
        return left < Filling.Minutes - DustMinutes ? 0
            : Filling.Minutes <= 0 ? int.MaxValue
            : (int)Math.Min(int.MaxValue, Math.Floor((left / Filling.Minutes) + DustMinutes));
    }

    private static Duration Minutes(double minutes) => Duration.FromMinutes(minutes);
}
