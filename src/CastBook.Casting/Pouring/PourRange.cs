using CastBook.Casting.Burnout;
using UnitsNet;

namespace CastBook.Casting.Pouring;

/// <summary>Temperatures at which metal and mould can meet at all; outside, a number stands in another unit or belongs elsewhere.</summary>
/// <remarks>
/// <para><b>Source.</b> Metal flows above its liquidus and a mould fills only with metal that freezes in it, which is physics. At most
/// 300 °C above the liquidus: common practice is a third of that. 500 to 2100 °C where no liquidus is known: from memory, a zinc-rich
/// solder to platinum. Gypsum-bonded investment: <see cref="KilnLimits.GypsumStopAbove"/>. Other investments 1100 °C: from memory.</para>
/// </remarks>
public static class PourRange
{
    private static readonly TemperatureDelta MostSuperheat = TemperatureDelta.FromDegreesCelsius(300);

    /// <summary>Between what an alloy may be poured.</summary>
    /// <param name="liquidus">Where it is all liquid; missing where that is not known.</param>
    public static (Temperature Least, Temperature Most) Metal(Temperature? liquidus) => liquidus is { } liquid
        ? (liquid, liquid + MostSuperheat)
        : (Temperature.FromDegreesCelsius(500), Temperature.FromDegreesCelsius(2100));

    /// <summary>The hottest that a mould may be when it is poured.</summary>
    /// <param name="solidus">Where the alloy is all solid; missing where that is not known.</param>
    /// <param name="isGypsum">Whether the investment is bonded with gypsum.</param>
    public static Temperature HottestMould(Temperature? solidus, bool isGypsum)
    {
        var investment = isGypsum ? KilnLimits.GypsumStopAbove : Temperature.FromDegreesCelsius(1100);
        return solidus is { } solid && solid < investment ? solid : investment;
    }
}
