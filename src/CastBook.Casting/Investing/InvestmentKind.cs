namespace CastBook.Casting.Investing;

/// <summary>The binder of an investment powder. It decides how hot kiln and metal may be.</summary>
public enum InvestmentKind
{
    /// <summary>Gypsum-bonded: silver, gold and copper alloys.</summary>
    Gypsum,

    /// <summary>Phosphate-bonded or another high-temperature binder: platinum and palladium alloys.</summary>
    HighTemperature,
}
