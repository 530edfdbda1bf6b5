using CastBook.Casting.Metals;
using UnitsNet;

namespace CastBook.Casting.Alloying;

/// <summary>A metal that may go into the crucible: an alloy or a fine metal.</summary>
/// <param name="Composition">What it is made of; <c>Ag 1000</c> is fine silver.</param>
/// <param name="InStock">How much of it there is; zero or more.</param>
public sealed record MetalInStock(Composition Composition, Mass InStock);
