using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing;

/// <summary>The most valuable sector: which pieces hang one above the other on a length of trunk.</summary>
/// <remarks>
/// Pieces are offered longest tail first, the order in which they hang; then only the height reached so far matters, and a table over
/// that height finds the best. Copies are taken in powers of two.
/// </remarks>
internal sealed class ColumnKnapsack
{
    private readonly List<(int Piece, int Count, int Length, int Limit)> rows = [];
    private long[] best = [];
    private bool[] taken = [];
    private int stride;

    /// <summary>Steps of the table so far; what search is bounded by.</summary>
    public long Work { get; private set; }

    /// <summary>Finds the value of the best sector.</summary>
    /// <param name="pieces">The pieces, longest tail first.</param>
    /// <param name="rod">Length of trunk.</param>
    public long Solve(ReadOnlySpan<ColumnPiece> pieces, int rod)
    {
        rows.Clear();
        stride = rod + 1;
        if (best.Length < stride)
        {
            best = new long[stride];
        }

        Array.Clear(best);
        var limit = -1;
        for (var i = 0; i < pieces.Length; i++)
        {
            ref readonly var piece = ref pieces[i];
            var end = rod - piece.Tail;
            if (piece.Pitch > end || piece.Copies <= 0)
            {
                continue;
            }

            for (var h = Math.Max(0, limit + 1); h <= end && limit >= 0; h++)
            {
                best[h] = best[limit];
            }

            limit = end;
            var copies = Math.Min(piece.Copies, end / piece.Pitch);
            for (var count = 1; copies > 0; copies -= count, count = Math.Min(count * 2, copies))
            {
                Offer(i, piece, count, end);
            }
        }

        return limit < 0 ? 0 : best[limit];
    }

    /// <summary>How many of each piece the best sector takes.</summary>
    /// <param name="counts">Takes the counts, one for each piece that was offered.</param>
    public void Take(Span<int> counts)
    {
        counts.Clear();
        var h = int.MaxValue;
        for (var r = rows.Count - 1; r >= 0; r--)
        {
            var (piece, count, length, limit) = rows[r];
            h = Math.Min(h, limit);
            if (taken[(r * stride) + h])
            {
                counts[piece] += count;
                h -= length;
            }
        }
    }

    // The table is where the time goes; it must not run slowly first.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Offer(int index, in ColumnPiece piece, int count, int end)
    {
        var row = rows.Count;
        var (length, value) = (piece.Pitch * count, piece.Value * count);
        rows.Add((index, count, length, end));
        var needed = (row + 1) * stride;
        if (taken.Length < needed)
        {
            Array.Resize(ref taken, needed * 2);
        }

        var marks = taken.AsSpan(row * stride, stride);
        marks.Clear();
        Work += end;
        var at = best.AsSpan(0, end + 1);
        for (var h = end; h >= length; h--)
        {
            var with = at[h - length] + value;
            if (with > at[h])
            {
                at[h] = with;
                marks[h] = true;
            }
        }
    }
}
