namespace CastBook.Planning.Packing;

/// <summary>The best sector of each width, as it was found while one tree is hung.</summary>
/// <remarks>
/// Pieces and metal only become fewer. So a sector that can still be hung is the best still, and no other of its width is ever worth more.
/// </remarks>
internal sealed class KnownSectors
{
    private readonly long[] values = new long[PackShape.Turn + 1];
    private readonly int[] lengths = new int[PackShape.Turn + 1];
    private readonly PackCount[]?[] sectors = new PackCount[PackShape.Turn + 1][];

    /// <summary>Forgets all.</summary>
    public void Clear()
    {
        Array.Fill(values, -1);
        Array.Clear(lengths);
    }

    /// <summary>What a sector of a width is worth at most; less than 0 where none was found yet.</summary>
    /// <param name="width">The width.</param>
    public long ValueOf(int width) => values[width];

    /// <summary>The sector of a width.</summary>
    /// <param name="width">The width; one was found.</param>
    public ReadOnlySpan<PackCount> Of(int width) => sectors[width].AsSpan(0, lengths[width]);

    /// <summary>Keeps the sector of a width.</summary>
    /// <param name="width">The width.</param>
    /// <param name="value">What it is worth.</param>
    /// <param name="sector">What hangs in it.</param>
    public void Keep(int width, long value, ReadOnlySpan<PackCount> sector)
    {
        var known = sectors[width];
        if (known is null || known.Length < sector.Length)
        {
            sectors[width] = known = new PackCount[sector.Length * 2];
        }

        sector.CopyTo(known);
        (values[width], lengths[width]) = (value, sector.Length);
    }
}
