using UnitsNet;

namespace CastBook.Casting.Alloying;

/// <summary>What to put into the crucible so that it holds the alloy wanted.</summary>
/// <param name="FromStock">How much of each metal in stock, in the order given; zero where none of it can be used.</param>
/// <param name="StillToAdd">The fine metals that the stock lacks; none when the stock makes all of it.</param>
public sealed record CrucibleRecipe(IReadOnlyList<Mass> FromStock, IReadOnlyList<FinePart> StillToAdd);
