namespace CastBook.Casting.Metals;

/// <summary>What an element does to the people at the melt.</summary>
public enum ElementHazard
{
    /// <summary>Nothing that good air does not carry off.</summary>
    None,

    /// <summary>It boils off as a fume that makes people ill: cautioned.</summary>
    Fume,

    /// <summary>Its fume poisons: an alloy with it is refused.</summary>
    Poison,
}
