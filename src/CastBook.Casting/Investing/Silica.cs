namespace CastBook.Casting.Investing;

/// <summary>The silica in an investment powder.</summary>
public enum Silica
{
    /// <summary>Quartz.</summary>
    Quartz,

    /// <summary>Cristobalite.</summary>
    Cristobalite,

    /// <summary>Quartz and cristobalite.</summary>
    Both,
}
