using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>A density from the mixing rule, and whether the rule is known to hold for it.</summary>
/// <param name="Density">Density of the solid alloy at room temperature.</param>
/// <param name="Reliable">
/// True when measured alloys of these elements agree with the rule within 1 %; false when an element takes
/// part for which the rule is 1 to 6 % low, or has not been compared.
/// </param>
public readonly record struct DensityEstimate(Density Density, bool Reliable);
