namespace CastBook.Planning.Packing.Fitting;

/// <summary>A way of valuing pieces and the rooms for sectors, in whole numbers.</summary>
/// <remarks>
/// No sector is worth more than the room it takes. So pieces that are worth more than all rooms do not fit, whatever the values, and a
/// sector that leaves less than the rest is worth is in no way to hang everything.
/// </remarks>
internal sealed class ListPrices
{
    private readonly long[] rooms;

    /// <summary>Works out what rooms are worth.</summary>
    /// <param name="values">What each piece is worth, not negative.</param>
    /// <param name="rooms">What a room of each kind is worth; raised to what sectors are worth.</param>
    /// <param name="sectors">The sectors there are.</param>
    /// <param name="among">Those that may be hung, by their places.</param>
    /// <param name="left">How many of each piece are left at most.</param>
    public ListPrices(long[] values, long[] rooms, ListedSector[] sectors, int[] among, int[] left)
    {
        (Values, this.rooms) = (values, rooms);
        foreach (var place in among)
        {
            ref var room = ref rooms[sectors[place].Kind];
            room = Math.Max(room, sectors[place].Worth(left, values));
        }
    }

    /// <summary>What each piece is worth.</summary>
    public long[] Values { get; }

    /// <summary>What rooms are worth more than the pieces that are left.</summary>
    /// <param name="left">How many of each piece are left.</param>
    /// <param name="free">How many rooms of each kind are free.</param>
    public long Spare(int[] left, int[] free)
    {
        var spare = 0L;
        for (var k = 0; k < free.Length; k++)
        {
            spare += free[k] * rooms[k];
        }

        for (var i = 0; i < left.Length; i++)
        {
            spare -= left[i] * Values[i];
        }

        return spare;
    }

    /// <summary>What is lost with a sector: what its room is worth more than what it holds.</summary>
    /// <param name="sector">The sector.</param>
    /// <param name="left">How many of each piece are left.</param>
    public long Loss(ListedSector sector, int[] left) => rooms[sector.Kind] - sector.Worth(left, Values);
}
