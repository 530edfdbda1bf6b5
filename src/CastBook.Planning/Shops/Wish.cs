namespace CastBook.Planning.Shops;

/// <summary>What a plan is to save. Pieces that are due are placed before any of it.</summary>
public enum Wish
{
    /// <summary>Flasks.</summary>
    Flasks,

    /// <summary>Investment.</summary>
    Investment,

    /// <summary>Metal in trunks, and so in the buttons above them.</summary>
    Metal,
}
