using UnitsNet;

namespace CastBook.Casting.Investing;

/// <summary>The temperatures at which a silica turns over into another form of itself and changes its volume at a stroke.</summary>
/// <param name="Silica">The silica.</param>
/// <param name="From">Where it begins on the way up.</param>
/// <param name="To">Where it is over.</param>
/// <remarks>
/// <para><b>Source.</b> Quartz: 573 °C, 0.45 % in length, published. Cristobalite: near 220 °C, published; from 200 to 270 °C
/// by memory of dental texts. How fast a mould bears it nobody has published for casting investment: 50 °C an hour is
/// published for ceramic ware on its way down. Practitioners' published programmes for gypsum-bonded moulds go up by 250 to
/// 300 °F an hour, which is the fastest that is known to be done; the maker's own limit wins.</para>
/// </remarks>
public sealed record SilicaInversion(Silica Silica, Temperature From, Temperature To)
{
    /// <summary>The fastest of the published programmes: 300 °F an hour, in degrees Celsius per hour.</summary>
    public const double FastestPublishedDegreesPerHour = 300 / 1.8;

    private static readonly SilicaInversion[] All =
    [
        new(Silica.Cristobalite, Temperature.FromDegreesCelsius(200), Temperature.FromDegreesCelsius(270)),
        new(Silica.Quartz, Temperature.FromDegreesCelsius(573), Temperature.FromDegreesCelsius(573)),
    ];

    /// <summary>Whether it happens at one temperature.</summary>
    public bool IsPoint => To <= From;

    /// <summary>The inversions of a silica, the cooler first.</summary>
    /// <param name="silica">The silica.</param>
    public static IEnumerable<SilicaInversion> Of(Silica silica) => All.Where(i => silica is Silica.Both || silica == i.Silica);

    /// <summary>Whether a way leads through it, or into it.</summary>
    /// <param name="from">Where the way begins.</param>
    /// <param name="to">Where it ends.</param>
    public bool LiesBetween(Temperature from, Temperature to)
    {
        var (cool, hot) = from < to ? (from, to) : (to, from);
        return cool < To && hot > From;
    }
}
