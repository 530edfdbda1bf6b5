namespace CastBook.Casting.Heat;

/// <summary>How fast a mould takes up heat; nobody has published it for casting investment, so both ends of a range are computed.</summary>
public enum MouldCase
{
    /// <summary>The slow end: pure gypsum as measured, still air, and the radiation of the coolest stage.</summary>
    Slow,

    /// <summary>The fast end: a denser plaster, moving air, and the radiation of the hottest stage.</summary>
    Fast,
}
