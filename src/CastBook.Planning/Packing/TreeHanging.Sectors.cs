namespace CastBook.Planning.Packing;

/// <content>Trees that have some of their sectors already.</content>
internal sealed partial class TreeHanging
{
    /// <summary>Hangs the rest of a tree.</summary>
    /// <param name="flaskSize">The flask size.</param>
    /// <param name="sectors">The sectors it has.</param>
    /// <param name="candidates">Pieces that fit it, in the order in which they hang.</param>
    /// <param name="left">How many of each piece there are besides; what is hung is taken off.</param>
    /// <param name="values">What each piece is worth.</param>
    /// <returns>The sectors that were added.</returns>
    public IEnumerable<PackCount[]> HangOn(int flaskSize, List<PackCount[]> sectors, ReadOnlySpan<int> candidates, int[] left, long[] values)
    {
        Clear(flaskSize);
        foreach (var sector in sectors)
        {
            usedAngle += sector.Max(c => shapes[c.Item].Theta);
            freeMetal -= sector.Sum(c => c.Count * problem.Metals[c.Item]);
        }

        HangMore(candidates, left, values);
        return Sectors();
    }

    private PackCount[][] Sectors()
    {
        var sectors = new PackCount[columnEnds.Count][];
        for (var i = 0; i < sectors.Length; i++)
        {
            var start = i == 0 ? 0 : columnEnds[i - 1];
            sectors[i] = new PackCount[columnEnds[i] - start];
            columns.CopyTo(start, sectors[i], 0, sectors[i].Length);
        }

        return sectors;
    }
}
