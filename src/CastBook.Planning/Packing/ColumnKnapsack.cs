using System.Numerics;
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
    private long[] table = [];
    private int stride;

    /// <summary>Steps of the table so far; what search is bounded by.</summary>
    public long Work { get; private set; }

    /// <summary>Finds the value of the best sector.</summary>
    /// <param name="pieces">The pieces, longest tail first.</param>
    /// <param name="rod">Length of trunk.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public long Solve(ReadOnlySpan<ColumnPiece> pieces, int rod)
    {
        rows.Clear();
        stride = rod + 1;
        Room(1).Clear();
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
                var row = table.AsSpan(rows.Count * stride, stride);
                row[(limit + 1)..(end + 1)].Fill(row[limit]);
            }

            limit = end;
            var copies = Math.Min(piece.Copies, end / piece.Pitch);
            for (var count = 1; copies > 0; copies -= count, count = Math.Min(count * 2, copies))
            {
                Room(rows.Count + 2);
                rows.Add((i, count, piece.Pitch * count, end));
                Work += end;
                Offer(table.AsSpan((rows.Count - 1) * stride, end + 1), table.AsSpan(rows.Count * stride, end + 1), piece.Pitch * count, piece.Value * count);
            }
        }

        return limit < 0 ? 0 : table[(rows.Count * stride) + limit];
    }

    /// <summary>How many of each piece the best sector takes.</summary>
    /// <param name="counts">Takes the counts, one for each piece that was offered.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Take(Span<int> counts)
    {
        counts.Clear();
        var h = int.MaxValue;
        for (var r = rows.Count - 1; r >= 0; r--)
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

    private Span<long> Room(int rowCount)
    {
        if (table.Length < rowCount * stride)
        {
            Array.Resize(ref table, rowCount * stride * 2);
        }

        return table.AsSpan(0, stride);
    }

    // The table is where the time goes; it must not run slowly first.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Offer(ReadOnlySpan<long> without, Span<long> with, int length, long value)
    {
        without[..length].CopyTo(with);
        var h = length;
        var more = new Vector<long>(value);
        for (; h <= without.Length - Vector<long>.Count; h += Vector<long>.Count)
        {
            Vector.Max(new Vector<long>(without[h..]), new Vector<long>(without[(h - length)..]) + more).CopyTo(with[h..]);
        }

        for (; h < without.Length; h++)
        {
            with[h] = Math.Max(without[h], without[h - length] + value);
        }
    }
}
