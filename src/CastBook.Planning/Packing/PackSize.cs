namespace CastBook.Planning.Packing;

/// <summary>A flask size.</summary>
/// <param name="Rod">Length of trunk, in the unit of <see cref="PackShape.Pitch"/>.</param>
/// <param name="Metal">The most metal that its pieces may take together.</param>
/// <param name="Cost">What one of them costs by the order of wishes.</param>
/// <param name="Free">How many there are.</param>
internal sealed record PackSize(int Rod, long Metal, long Cost, int Free);
