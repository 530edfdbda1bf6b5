using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing;

/// <summary>The widths that the next sector of a tree may have, the most promising first.</summary>
/// <remarks>A width promises what its pieces would be worth if the last one could be cut to fill the trunk: no sector is worth more.</remarks>
internal sealed class SectorWidths
{
    // A tree of many kinds of pieces needs no look at every width.
    private const int MostWidths = 10;

    // What a look at one piece takes, in steps of the table that it saves.
    private const long StepsOfOne = 8;

    private readonly bool[] isWidth = new bool[PackShape.Turn + 1];
    private readonly int[] widths = new int[PackShape.Turn + 1];
    private readonly double[] promises = new double[PackShape.Turn + 1];
    private int[] thetas = new int[16];
    private ColumnPiece[] pieces = new ColumnPiece[16];
    private int pieceCount;
    private int widthCount;
    private int free;

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>Forgets all pieces.</summary>
    /// <param name="freeAngle">The angle that is free on the tree.</param>
    public void Clear(int freeAngle)
    {
        (pieceCount, widthCount, free) = (0, 0, freeAngle);
        Array.Clear(isWidth);
    }

    /// <summary>Adds a piece; those worth most for their length of trunk come first.</summary>
    /// <param name="theta">The angle it takes.</param>
    /// <param name="piece">The piece.</param>
    public void Add(int theta, ColumnPiece piece)
    {
        if (pieceCount == pieces.Length)
        {
            Array.Resize(ref pieces, pieceCount * 2);
            Array.Resize(ref thetas, pieceCount * 2);
        }

        (thetas[pieceCount], pieces[pieceCount]) = (theta, piece);
        pieceCount++;
        isWidth[theta] = true;
    }

    /// <summary>Chooses the widths to look at and what each of them promises.</summary>
    /// <param name="rod">Length of trunk.</param>
    /// <param name="known">Sectors that were found; none of their width is worth more.</param>
    public void Promise(int rod, KnownSectors known)
    {
        for (var theta = 1; theta <= free; theta++)
        {
            if (isWidth[theta])
            {
                widths[widthCount++] = theta;
            }
        }

        if (widthCount > MostWidths)
        {
            for (var i = 0; i < MostWidths; i++)
            {
                widths[i] = widths[i * (widthCount - 1) / (MostWidths - 1)];
            }

            widthCount = MostWidths;
        }

        for (var i = 0; i < widthCount; i++)
        {
            promises[i] = known.ValueOf(widths[i]) is >= 0 and var value ? value : Of(widths[i], rod);
        }
    }

    /// <summary>The most promising width that was not given yet, and the angle it costs; nothing where none promises more than was found.</summary>
    /// <param name="value">What the best sector so far is worth.</param>
    /// <param name="angle">The angle it costs.</param>
    public (int Width, int Angle)? Next(long value, int angle)
    {
        var (best, most) = (-1, value / (double)angle);
        for (var i = 0; i < widthCount; i++)
        {
            var promise = promises[i] / AngleOf(widths[i]);
            (best, most) = promise > most ? (i, promise) : (best, most);
        }

        if (best < 0)
        {
            return null;
        }

        promises[best] = 0;
        return (widths[best], AngleOf(widths[best]));
    }

    // Angle that nothing can use is lost with the sector that leaves it.
    private int AngleOf(int width) => free - width < widths[0] ? free : width;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Of(int width, int rod)
    {
        Work += pieceCount * StepsOfOne;
        var shortest = int.MaxValue;
        for (var i = 0; i < pieceCount; i++)
        {
            shortest = thetas[i] <= width ? Math.Min(shortest, pieces[i].Tail) : shortest;
        }

        var (space, worth) = (rod - shortest, 0.0);
        for (var i = 0; i < pieceCount && space > 0; i++)
        {
            ref readonly var piece = ref pieces[i];
            if (thetas[i] <= width)
            {
                var room = piece.Pitch * (long)piece.Copies;
                worth += room <= space ? piece.Copies * (double)piece.Value : (double)space / piece.Pitch * piece.Value;
                space -= (int)Math.Min(space, room);
            }
        }

        return worth;
    }
}
