namespace CastBook.Planning.Shops;

/// <summary>Days on which nobody is there: a holiday, or a time away.</summary>
/// <param name="First">The first of them.</param>
/// <param name="Last">The last of them; not before the first.</param>
public readonly record struct DaysAway(DateOnly First, DateOnly Last)
{
    /// <summary>Whether a day is one of them.</summary>
    /// <param name="day">The day.</param>
    public bool Include(DateOnly day) => day >= First && day <= Last;
}
