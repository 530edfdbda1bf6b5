namespace CastBook.Planning.Shops;

/// <summary>What a plan does with one that stands in the book already.</summary>
public enum Stability
{
    /// <summary>Pieces stay in the flask they were planned for as long as all fit.</summary>
    Keep,

    /// <summary>Flasks are searched afresh, and pieces move where that saves enough for each that moves.</summary>
    Worthwhile,

    /// <summary>Flasks are searched afresh, and pieces move where that saves anything.</summary>
    Best,
}
