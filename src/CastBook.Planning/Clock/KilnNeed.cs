namespace CastBook.Planning.Clock;

/// <summary>What flasks ask of the kiln.</summary>
/// <param name="Loads">How many loads.</param>
/// <param name="HalfHours">The burnouts of all loads, in half hours; less is not worth a move.</param>
internal readonly record struct KilnNeed(int Loads, int HalfHours) : IComparable<KilnNeed>
{
    /// <inheritdoc/>
    public int CompareTo(KilnNeed other) => (Loads, HalfHours).CompareTo((other.Loads, other.HalfHours));
}
