using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Investing;

/// <summary>The volume of slurry to mix for one flask.</summary>
/// <remarks>
/// <para><b>Formula.</b> V = V(net) + the larger of 5 % of V(net) and 30 ml, with
/// V(net) = V(flask) − V(displaced).</para>
/// <para><b>Symbols.</b> V(flask): inside volume; V(displaced): patterns, gates, trunk and sprue base.</para>
/// <para><b>Valid for</b> one flask mixed by itself. The waste is what stays in the bowl and on the paddle;
/// flasks that share a mix share it too, so that the sum over flasks errs towards too much.</para>
/// <para><b>Source.</b> Volumes add up; the waste is memory of practice.</para>
/// </remarks>
public static class FillVolume
{
    /// <summary>Share of the slurry that is lost in the bowl: 5 %. Memory.</summary>
    public static Ratio WasteShare { get; } = Ratio.FromPercent(5);

    /// <summary>The least that is lost in the bowl: 30 ml. Memory.</summary>
    public static Volume LeastWaste { get; } = Volume.FromMilliliters(30);

    /// <summary>Computes the volume with the waste.</summary>
    /// <param name="flask">Inside volume of the flask; zero or more.</param>
    /// <param name="displaced">Everything that takes its place; zero or more, and no more than the flask.</param>
    /// <returns>The volume of slurry; zero when there is nothing to fill.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A volume is negative, or more is displaced than the flask holds.
    /// </exception>
    public static Volume Compute(Volume flask, Volume displaced)
    {
        Require.NotNegative(flask);
        Require.NotNegative(displaced);
        if (displaced > flask)
        {
            throw new ArgumentOutOfRangeException(nameof(displaced), displaced, "More is displaced than the flask holds.");
        }

        var net = flask - displaced;
        return net.Value == 0 ? net : net + UnitMath.Max(net * WasteShare.DecimalFractions, LeastWaste);
    }
}
