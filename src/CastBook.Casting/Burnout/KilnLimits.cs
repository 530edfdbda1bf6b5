using UnitsNet;

namespace CastBook.Casting.Burnout;

/// <summary>How hot gypsum-bonded investment may be.</summary>
/// <remarks>
/// <para>Above these temperatures the binder breaks down, gives off sulphur gases, spoils the surface and makes
/// the metal brittle. Carbon from wax or resin brings the breakdown forward.</para>
/// <para><b>Source.</b> 732 °C (1350 °F): the top of published makers' schedules. 760 °C (1400 °F): practitioners'
/// published value for breakdown with carbon. 788 °C (1450 °F): a published supplier table's "do not exceed".
/// 750 and 1150 °C: common practice.</para>
/// </remarks>
public static class KilnLimits
{
    /// <summary>The top that a powder gets when its row says nothing: 732 °C.</summary>
    public static Temperature GypsumUsualTop { get; } = Temperature.FromDegreesCelsius(732);

    /// <summary>Above this kiln temperature somebody must look: 750 °C.</summary>
    public static Temperature GypsumCheckAbove { get; } = Temperature.FromDegreesCelsius(750);

    /// <summary>Above this the kiln is a stop while wax or resin is in the mould: 760 °C.</summary>
    public static Temperature GypsumStopAboveWithPattern { get; } = Temperature.FromDegreesCelsius(760);

    /// <summary>Above this the kiln is a stop in any case: 788 °C.</summary>
    public static Temperature GypsumStopAbove { get; } = Temperature.FromDegreesCelsius(788);

    /// <summary>Metal poured hotter than this into gypsum needs a look: 1150 °C.</summary>
    public static Temperature GypsumMetalCheckAbove { get; } = Temperature.FromDegreesCelsius(1150);
}
