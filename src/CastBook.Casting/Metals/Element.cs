using UnitsNet;

namespace CastBook.Casting.Metals;

/// <summary>A chemical element as far as casting needs it.</summary>
/// <param name="Symbol">The chemical symbol, such as <c>Ag</c>.</param>
/// <param name="Name">The plain name, such as <c>silver</c>.</param>
/// <param name="Density">Density of the solid at 20 to 25 °C.</param>
/// <param name="MeltingPoint">Melting point at ordinary pressure.</param>
/// <param name="Hazard">What it does to the people at the melt.</param>
public sealed record Element(string Symbol, string Name, Density Density, Temperature MeltingPoint, ElementHazard Hazard);
