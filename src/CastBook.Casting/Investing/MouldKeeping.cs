using UnitsNet;

namespace CastBook.Casting.Investing;

/// <summary>How long a mould that has set keeps before it goes into the kiln.</summary>
/// <remarks>
/// <para><b>Valid for</b> gypsum-bonded investment at the temperature of a workshop.</para>
/// <para><b>Source.</b> Common practice: in open air a mould is half dry after a day, and half-dry moulds crack in the kiln;
/// bagged damp it keeps a week.</para>
/// </remarks>
public static class MouldKeeping
{
    /// <summary>In open air: a day.</summary>
    public static Duration InOpenAir { get; } = Duration.FromHours(24);

    /// <summary>Bagged damp: a week.</summary>
    public static Duration KeptDamp { get; } = Duration.FromHours(7 * 24);

    /// <summary>The longest that moulds keep.</summary>
    /// <param name="isKeptDamp">Whether they are bagged damp as soon as they have set.</param>
    /// <returns>The time from the pour of the slurry to the kiln.</returns>
    public static Duration AtMost(bool isKeptDamp) => isKeptDamp ? KeptDamp : InOpenAir;
}
