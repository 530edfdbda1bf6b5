namespace CastBook.Casting.Patterns;

/// <summary>The family a pattern material belongs to. It decides density range, water ratio and burnout.</summary>
public enum PatternKind
{
    /// <summary>Wax: injected, carved or built; it melts out.</summary>
    Wax,

    /// <summary>Cured castable resin: it does not melt, it decomposes.</summary>
    Resin,
}
