namespace CastBook.Casting.Burnout;

/// <summary>The size of a flask as burnout schedules and quench waits see it.</summary>
public enum FlaskClass
{
    /// <summary>Up to 65 mm inside diameter and 65 mm height; 2½ × 2½ in belongs here.</summary>
    Small,

    /// <summary>Up to 90 × 105 mm; 3½ × 4 in belongs here.</summary>
    Medium,

    /// <summary>Up to 105 × 205 mm; 4 × 8 in belongs here.</summary>
    Large,
}
