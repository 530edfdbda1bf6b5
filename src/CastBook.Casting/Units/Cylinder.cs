using UnitsNet;

namespace CastBook.Casting.Units;

/// <summary>The volume of a straight round body.</summary>
internal static class Cylinder
{
    /// <summary>V = π/4 × d² × l.</summary>
    /// <param name="diameter">Zero or more.</param>
    /// <param name="length">Zero or more.</param>
    /// <returns>The volume.</returns>
    public static Volume Of(Length diameter, Length length) => Math.PI / 4 * (diameter * diameter * length);
}
