using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Writing;

/// <summary>
/// Decides in which unit a column of metal is written that stands already: a heading of the shop's wins; one of CastBook's
/// follows the setting, but never over numbers that a person typed or that formulas look at.
/// </summary>
/// <param name="record">What CastBook wrote last.</param>
/// <param name="typed">Cells in which a person typed.</param>
/// <param name="hasFormulas">Whether the book has formulas; asked only where a unit changes.</param>
internal sealed class UnitChoice(FillRecord record, TypedCells typed, Lazy<bool> hasFormulas)
{
    /// <summary>The column as it is written this time.</summary>
    /// <param name="list">The list.</param>
    /// <param name="column">The column, in the unit of the shop's setting.</param>
    public StandingUnit Of(PieceSheet list, MassColumn column)
    {
        var units = new MetalUnits(list, record, column.Unit);
        var standing = units.Standing(column.OwnName);
        var was = units.Last(column.OwnName) ?? standing;
        if (!units.IsOurs(column.OwnName, column.HeadingIn(WrittenMass.Gram)))
        {
            return new StandingUnit(column.In(standing), was, false, []);
        }

        return standing == column.Unit || MayChange(list, column.OwnName)
            ? new StandingUnit(column, was, true, [])
            : new StandingUnit(column.In(standing), was, true, [Catalogue.ColumnUnitStays.At(
                list.Column(column.OwnName), column.HeadingIn(standing), standing.Name, column.Unit.Name, column.Heading)]);
    }

    private bool MayChange(PieceSheet list, string ownName) =>
        !list.Ids.Any(id => typed.Contains(id, ownName)) && !hasFormulas.Value;
}
