namespace CastBook.Planning.Floors;

/// <summary>Numbers that look like chance and are the same on every machine and in every version.</summary>
/// <remarks>Formula: SplitMix64. Source: Steele, Lea and Flood, Fast Splittable Pseudorandom Number Generators, 2014.</remarks>
internal sealed class Chance(ulong seed)
{
    private ulong state = seed;

    /// <summary>The next number, at least 0 and less than 1.</summary>
    public double Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
        }
    }
}
