namespace CastBook.Planning.Shops;

/// <summary>The shape of a kiln's floor.</summary>
public enum KilnShape
{
    /// <summary>Square or oblong.</summary>
    Square,

    /// <summary>Round.</summary>
    Round,
}
