using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;

namespace CastBook.Workbooks.Writing;

/// <summary>A column of metal that stands in a list already, in the unit in which it is written this time.</summary>
/// <param name="Column">The column.</param>
/// <param name="Was">The unit in which CastBook wrote it last.</param>
/// <param name="IsOurs">Whether its heading is CastBook's, and may be changed with the unit.</param>
/// <param name="Findings">What to say about it.</param>
internal sealed record StandingUnit(MassColumn Column, WrittenMass Was, bool IsOurs, IReadOnlyList<Finding> Findings)
{
    /// <summary>Whether it is written in another unit than before.</summary>
    public bool Changes => Was != Column.Unit;
}
