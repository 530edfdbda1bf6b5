using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>A way of valuing pieces and the room for sectors of each width, in whole numbers.</summary>
/// <remarks>
/// No sector is worth more than the room for its width, and no tree than what room for sectors it can have. So pieces that are worth
/// more than all trees do not fit, whatever the values, and a sector that leaves less than the rest is worth is in no way to hang everything.
/// </remarks>
internal sealed class ListPrices
{
    private readonly long[] values;
    private readonly long[][] rooms;
    private readonly long[][] turns;

    /// <summary>Works out what trees are worth.</summary>
    /// <param name="values">What each piece is worth, not negative.</param>
    /// <param name="rooms">For each size and setting what room for a sector is worth, by its width; raised to what sectors are worth.</param>
    /// <param name="sectors">The sectors there are.</param>
    /// <param name="among">Those that may be hung, by their places.</param>
    /// <param name="left">How many of each piece are left at most.</param>
    public ListPrices(long[] values, long[][] rooms, ListedSector[] sectors, int[] among, int[] left)
    {
        (this.values, this.rooms) = (values, rooms);
        foreach (var place in among)
        {
            var sector = sectors[place];
            ref var room = ref rooms[sector.Type][sector.Width];
            room = Math.Max(room, sector.Worth(left, values));
        }

        turns = [.. rooms.Select(Turns)];
    }

    /// <summary>What each piece is worth.</summary>
    public long[] Values => values;

    /// <summary>What room for a sector of its width is worth.</summary>
    /// <param name="sector">The sector.</param>
    public long Room(ListedSector sector) => rooms[sector.Type][sector.Width];

    /// <summary>What trees are worth more than the pieces that are left.</summary>
    /// <param name="left">How many of each piece are left.</param>
    /// <param name="trees">The trees.</param>
    public long Spare(int[] left, FitTree[] trees)
    {
        var spare = 0L;
        foreach (var tree in trees)
        {
            spare += turns[tree.Type][tree.Angle];
        }

        for (var i = 0; i < left.Length; i++)
        {
            spare -= left[i] * values[i];
        }

        return spare;
    }

    /// <summary>What a tree loses with a sector of a width.</summary>
    /// <param name="tree">The tree.</param>
    /// <param name="width">The width, no more than it has free.</param>
    public long Loss(FitTree tree, int width) => turns[tree.Type][tree.Angle] - turns[tree.Type][tree.Angle - width];

    /// <summary>For each width the least that a tree of a size and setting loses with a sector; more than can be spared where none has the room.</summary>
    /// <param name="trees">The trees.</param>
    /// <param name="type">The place of the size and setting.</param>
    public long[] Losses(FitTree[] trees, int type)
    {
        var losses = new long[PackShape.Turn + 1];
        Array.Fill(losses, long.MaxValue / 2);
        foreach (var tree in trees)
        {
            for (var width = 1; tree.Type == type && width <= tree.Angle; width++)
            {
                losses[width] = Math.Min(losses[width], Loss(tree, width));
            }
        }

        return losses;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static long[] Turns(long[] rooms)
    {
        var turn = new long[PackShape.Turn + 1];
        int[] widths = [.. Enumerable.Range(1, PackShape.Turn).Where(w => rooms[w] > 0)];
        for (var angle = 1; angle <= PackShape.Turn; angle++)
        {
            var most = turn[angle - 1];
            for (var w = 0; w < widths.Length && widths[w] <= angle; w++)
            {
                most = Math.Max(most, turn[angle - widths[w]] + rooms[widths[w]]);
            }

            turn[angle] = most;
        }

        return turn;
    }
}
