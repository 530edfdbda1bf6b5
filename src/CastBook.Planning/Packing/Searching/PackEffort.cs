namespace CastBook.Planning.Packing.Searching;

/// <summary>How a plan is searched for.</summary>
/// <param name="Patience">Tries without anything gained, for each two flasks that might swap pieces.</param>
/// <param name="AtOnce">How many flasks may be taken apart at once.</param>
/// <param name="Calm">Whether nothing is moved but where that makes the plan better.</param>
internal readonly record struct PackEffort(int Patience, int AtOnce, bool Calm)
{
    /// <summary>The most flasks taken apart at once.</summary>
    public const int MostAtOnce = 4;

    /// <summary>Until nothing more is gained.</summary>
    public static PackEffort Full { get; } = new(60, MostAtOnce, false);

    /// <summary>Of few flasks.</summary>
    public static PackEffort Short { get; } = new(25, MostAtOnce, false);

    /// <summary>A first look, before it is known how good a plan can be.</summary>
    public static PackEffort FirstLook { get; } = new(8, MostAtOnce, false);

    /// <summary>For few moves.</summary>
    /// <param name="atOnce">How many flasks may be taken apart at once.</param>
    public static PackEffort Few(int atOnce) => new(60, atOnce, true);

    /// <summary>How many tries without anything gained a plan is worth.</summary>
    /// <param name="plan">The plan.</param>
    public long PatienceFor(PackPlan plan) => (long)Patience * (plan.Flasks.Count + 1) * (plan.Flasks.Count + 1);
}
