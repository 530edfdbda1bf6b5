namespace CastBook.Planning.Shops;

/// <summary>What a plan is to save, in the usual order. Pieces that are due are placed before any of it.</summary>
public enum Wish
{
    /// <summary>Flasks.</summary>
    Flasks,

    /// <summary>Investment.</summary>
    Investment,

    /// <summary>Kiln loads, and of as many loads their hours.</summary>
    KilnLoads,

    /// <summary>Metal in trunks, and so in the buttons above them.</summary>
    Metal,

    /// <summary>Differences of thickness within a flask; pieces change places, and no flask is added for it.</summary>
    LikeThicknesses,
}
