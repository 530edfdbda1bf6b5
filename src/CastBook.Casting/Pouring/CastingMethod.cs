namespace CastBook.Casting.Pouring;

/// <summary>How metal is driven into the mould. It decides clearances and superheat.</summary>
public enum CastingMethod
{
    /// <summary>Vacuum under a flask with perforated walls.</summary>
    VacuumPerforated,

    /// <summary>Vacuum under a flask with solid walls.</summary>
    VacuumSolid,

    /// <summary>Spun in a centrifuge.</summary>
    Spin,

    /// <summary>Poured, and driven by its own weight alone.</summary>
    Gravity,
}
