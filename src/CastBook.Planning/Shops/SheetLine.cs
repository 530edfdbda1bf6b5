using System.Collections.Frozen;
using CastBook.Planning.Findings;

namespace CastBook.Planning.Shops;

/// <summary>A line of one of the shop's sheets.</summary>
public abstract record SheetLine
{
    /// <summary>
    /// The fields, constants of <see cref="ShopField"/>, in which something stands that nobody can read. Each has its finding; it is missing here
    /// like a blank one, but nothing usual stands in for it where a wrong number could hurt.
    /// </summary>
    public IReadOnlySet<string> Unreadable { get; init; } = FrozenSet<string>.Empty;

    /// <summary>Whether something stands in a field that nobody can read.</summary>
    /// <param name="field">A constant of <see cref="ShopField"/>.</param>
    public bool CannotRead(string field) => Unreadable.Contains(field);
}
