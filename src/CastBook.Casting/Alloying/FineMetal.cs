using UnitsNet;

namespace CastBook.Casting.Alloying;

/// <summary>Metal that is nothing but itself.</summary>
internal static class FineMetal
{
    /// <summary>All of it is the metal.</summary>
    public static Ratio Fineness { get; } = Ratio.FromDecimalFractions(1);
}
