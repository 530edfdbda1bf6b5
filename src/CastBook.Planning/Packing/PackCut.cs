namespace CastBook.Planning.Packing;

/// <summary>What a choice of flasks must be able to take, by one way of valuing the pieces.</summary>
/// <param name="Total">What all pieces are worth together.</param>
/// <param name="Most">The most that one tree of each size can be worth; less than 0 where that was not looked at.</param>
internal sealed record PackCut(Int128 Total, long[] Most)
{
    /// <summary>Whether so many flasks of each size cannot take all pieces.</summary>
    /// <param name="counts">How many of each size.</param>
    public bool Refutes(int[] counts)
    {
        Int128 worth = 0;
        for (var size = 0; size < counts.Length; size++)
        {
            if (counts[size] > 0 && Most[size] < 0)
            {
                return false;
            }

            worth += (Int128)counts[size] * Most[size];
        }

        return worth < Total;
    }
}
