using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace CastBook.Planning.Packing;

/// <summary>The most valuable sector: which pieces hang one above the other on a length of trunk.</summary>
/// <remarks>
/// Pieces are offered longest tail first, the order in which they hang; then only the height reached so far matters, and a table over
/// that height finds the best. Copies are taken in powers of two. Values that are too large for the table are made smaller and
/// rounded up, so that what it says is never less than what a sector is worth.
/// </remarks>
internal sealed class ColumnKnapsack
{
    // What all pieces together are worth must stay below two to this power.
    private const int MostBits = 30;

    private (int Piece, int Count, int Length, int Limit)[] rows = new (int, int, int, int)[64];
    private int rowCount;
    private int[] table = [];
    private int stride;

    /// <summary>Steps of the table so far; what search is bounded by.</summary>
    public long Work { get; private set; }

    /// <summary>Finds the value of the best sector.</summary>
    /// <param name="pieces">The pieces, longest tail first.</param>
    /// <param name="rod">Length of trunk.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public long Solve(ReadOnlySpan<ColumnPiece> pieces, int rod)
    {
        rowCount = 0;
        stride = rod + 1;
        Reserve(1);
        table.AsSpan(0, stride).Clear();
        var shift = Shift(pieces, rod);
        var limit = -1;
        for (var i = 0; i < pieces.Length; i++)
        {
            ref readonly var piece = ref pieces[i];
            var end = rod - piece.Tail;
            if (piece.Pitch > end || piece.Copies <= 0)
            {
                continue;
            }

            if (limit >= 0)
            {
                var row = table.AsSpan(rowCount * stride, stride);
                row[(limit + 1)..(end + 1)].Fill(row[limit]);
            }

            limit = end;
            var value = (int)((piece.Value + (1L << shift) - 1) >> shift);
            var copies = Math.Min(piece.Copies, end / piece.Pitch);
            for (var count = 1; copies > 0; copies -= count, count = Math.Min(count * 2, copies))
            {
                Reserve(rowCount + 2);
                rows[rowCount++] = (i, count, piece.Pitch * count, end);
                Work += end;
                Offer(table.AsSpan((rowCount - 1) * stride, end + 1), table.AsSpan(rowCount * stride, end + 1), piece.Pitch * count, value * count);
            }
        }

        return limit < 0 ? 0 : (long)table[(rowCount * stride) + limit] << shift;
    }

    /// <summary>How many of each piece the best sector takes.</summary>
    /// <param name="counts">Takes the counts, one for each piece that was offered.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Take(Span<int> counts)
    {
        counts.Clear();
        var h = int.MaxValue;
        for (var r = rowCount - 1; r >= 0; r--)
        {
            var (piece, count, length, limit) = rows[r];
            h = Math.Min(h, limit);
            if (table[((r + 1) * stride) + h] != table[(r * stride) + h])
            {
                counts[piece] += count;
                h -= length;
            }
        }
    }

    // A sector takes no more than there is trunk for, and what is rounded up adds one for each copy.
    private static int Shift(ReadOnlySpan<ColumnPiece> pieces, int rod)
    {
        var (most, copies) = (0.0, 0L);
        for (var i = 0; i < pieces.Length; i++)
        {
            var count = Math.Min(pieces[i].Copies, rod / pieces[i].Pitch);
            most += (double)pieces[i].Value * count;
            copies += count;
        }

        var shift = 0;
        for (; most + copies >= 1L << MostBits; most /= 2)
        {
            shift++;
        }

        return shift;
    }

    private void Reserve(int count)
    {
        if (table.Length < count * stride)
        {
            Array.Resize(ref table, count * stride * 2);
        }

        if (rows.Length < count)
        {
            Array.Resize(ref rows, count * 2);
        }
    }

    /// <summary>Takes so much of a length, or leaves it, at every length.</summary>
    /// <param name="without">The best without it, by length.</param>
    /// <param name="with">Takes the best with it; as long.</param>
    /// <param name="length">The length it takes.</param>
    /// <param name="value">What it is worth.</param>
    /// <remarks>The table is where the time goes; it must not run slowly first.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Offer(ReadOnlySpan<int> without, Span<int> with, int length, int value)
    {
        without[..length].CopyTo(with);
        ref var from = ref MemoryMarshal.GetReference(without);
        ref var to = ref MemoryMarshal.GetReference(with);
        var (h, end) = (length, with.Length);
        var more = new Vector<int>(value);
        for (; h <= end - Vector<int>.Count; h += Vector<int>.Count)
        {
            var taken = Vector.LoadUnsafe(ref from, (nuint)(h - length)) + more;
            Vector.Max(Vector.LoadUnsafe(ref from, (nuint)h), taken).StoreUnsafe(ref to, (nuint)h);
        }

        for (; h < end; h++)
        {
            with[h] = Math.Max(without[h], without[h - length] + value);
        }
    }
}
