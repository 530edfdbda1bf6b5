using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>What the best sectors are worth: by how many of the pieces offered so far may hang in them, then by the height they may reach.</summary>
/// <param name="pieces">How many pieces will be offered, at most.</param>
/// <param name="rod">Length of trunk.</param>
internal sealed class SectorTable(int pieces, int rod)
{
    // Pieces that change nothing share the row of the one before.
    private readonly int stride = rod + 1;
    private int[] cells = new int[(pieces + 1) * (rod + 1)];
    private int[] rows = new int[pieces + 1];
    private int count;

    /// <summary>Forgets all pieces.</summary>
    /// <param name="most">How many pieces will be offered, at most.</param>
    public void Clear(int most)
    {
        if (rows.Length <= most)
        {
            (cells, rows) = (new int[(most + 1) * stride], new int[most + 1]);
        }

        count = 0;
        rows[0] = 0;
        Array.Clear(cells, 0, stride);
    }

    /// <summary>What the best sector of all pieces is worth.</summary>
    public int Best => cells[rows[count] + rod];

    /// <summary>What the best sector is worth.</summary>
    /// <param name="place">How many of the pieces may hang in it.</param>
    /// <param name="height">The height it may reach.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int At(int place, int height) => cells[rows[place] + height];

    /// <summary>Offers a piece; those with longer tails come first.</summary>
    /// <param name="worth">What it is worth; nothing where less than 0.</param>
    /// <param name="copies">How many there are.</param>
    /// <param name="pitch">The length it takes.</param>
    /// <param name="last">The height under its tail.</param>
    /// <returns>How often a row was gone through.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Add(int worth, int copies, int pitch, int last)
    {
        var before = rows[count++];
        if (worth <= 0 || copies <= 0 || pitch > last)
        {
            rows[count] = before;
            return 0;
        }

        rows[count] = before + stride;
        var without = cells.AsSpan(before, stride);
        var with = cells.AsSpan(before + stride, stride);
        ColumnKnapsack.Offer(without[..(last + 1)], with[..(last + 1)], pitch, worth);
        var passes = 1;
        for (; passes < copies && (passes + 1) * pitch <= last; passes++)
        {
            Offer(without[..(last + 1)], with[..(last + 1)], (passes + 1) * pitch, (passes + 1) * worth);
        }

        with[(last + 1)..].Fill(Math.Max(with[last], without[^1]));
        return passes;
    }

    /// <summary>Takes so much of a length, or leaves it: what it is worth together with the best of the rest, at every length.</summary>
    /// <param name="without">The best without it, by length.</param>
    /// <param name="with">The best so far with it; as long.</param>
    /// <param name="length">The length it takes.</param>
    /// <param name="worth">What it is worth.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Offer(ReadOnlySpan<int> without, Span<int> with, int length, int worth)
    {
        ref var from = ref MemoryMarshal.GetReference(without);
        ref var to = ref MemoryMarshal.GetReference(with);
        var (h, end) = (length, with.Length);
        var more = new Vector<int>(worth);
        for (; h <= end - Vector<int>.Count; h += Vector<int>.Count)
        {
            var taken = Vector.LoadUnsafe(ref from, (nuint)(h - length)) + more;
            Vector.Max(Vector.LoadUnsafe(ref to, (nuint)h), taken).StoreUnsafe(ref to, (nuint)h);
        }

        for (; h < end; h++)
        {
            with[h] = Math.Max(with[h], without[h - length] + worth);
        }
    }
}
