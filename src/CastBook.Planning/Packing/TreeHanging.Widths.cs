using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing;

/// <content>The best sector of a width, and which widths are worth a look.</content>
internal sealed partial class TreeHanging
{
    private void SortByDensity(ReadOnlySpan<int> candidates, long[] values)
    {
        candidates.CopyTo(densest);
        for (var i = 0; i < candidates.Length; i++)
        {
            thinness[i] = shapes[densest[i]].Pitch / (double)Math.Max(1, values[densest[i]]);
        }

        Array.Sort(thinness, densest, 0, candidates.Length);
    }

    private void OfferWidths(int count, int[] left, long[] values)
    {
        var free = FreeAngle;
        widths.Clear(free);
        foreach (var item in densest.AsSpan(0, count))
        {
            if (IsMember(item, left, free))
            {
                widths.Add(shapes[item].Theta, PieceOf(item, left, values));
            }
        }

        widths.Promise(problem.Sizes[size].Rod, known);
    }

    private ColumnPiece PieceOf(int item, int[] left, long[] values) =>
        new(shapes[item].Pitch, shapes[item].Tail, values[item], (int)Math.Min(left[item], ByMetal(item)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool IsMember(int item, int[] left, int width) =>
        left[item] > 0 && shapes[item].Theta > 0 && shapes[item].Theta <= width && problem.Metals[item] <= freeMetal;

    // Whether there are pieces and metal for a sector; never where nothing is in it.
    private bool Hangs(ReadOnlySpan<PackCount> sector, int[] left)
    {
        foreach (var (item, count) in sector)
        {
            if (left[item] < count || ByMetal(item) < count)
            {
                return false;
            }
        }

        return !sector.IsEmpty;
    }

    // The best sector of a width.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Find(ReadOnlySpan<int> candidates, int[] left, long[] values, int width)
    {
        memberCount = 0;
        foreach (var item in candidates)
        {
            if (IsMember(item, left, width))
            {
                pieces[memberCount] = PieceOf(item, left, values);
                members[memberCount++] = item;
            }
        }

        var value = knapsack.Solve(pieces.AsSpan(0, memberCount), problem.Sizes[size].Rod);
        knapsack.Take(counts.AsSpan(0, memberCount));
        var length = 0;
        for (var i = 0; i < memberCount; i++)
        {
            if (counts[i] > 0)
            {
                taken[length++] = new PackCount(members[i], counts[i]);
            }
        }

        known.Keep(width, value, taken.AsSpan(0, length));
    }
}
