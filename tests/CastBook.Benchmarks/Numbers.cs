namespace CastBook.Benchmarks;

/// <summary>
/// Numbers that look like chance and are the same everywhere and for ever, which the library's own generator does not promise:
/// G. Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8 (14), 2003, with the shifts 13, 17, 5.
/// </summary>
/// <param name="seed">Where to begin; not zero.</param>
internal sealed class Numbers(uint seed)
{
    private uint state = seed;

    /// <summary>A whole number from <paramref name="least"/> to less than <paramref name="below"/>.</summary>
    public int Next(int least, int below) => least + Next(below - least);

    /// <summary>A whole number from zero to less than <paramref name="below"/>.</summary>
    public int Next(int below)
    {
        state ^= state << 13;
        state ^= state >> 17;
        state ^= state << 5;
        return (int)(((ulong)state * (uint)below) >> 32); // the high bits: the low ones repeat in small ranges
    }
}
