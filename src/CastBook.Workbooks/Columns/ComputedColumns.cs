using CastBook.Planning.Shops;

namespace CastBook.Workbooks.Columns;

/// <summary>The columns CastBook fills, in the order in which new ones are set beside the list.</summary>
internal static class ComputedColumns
{
    /// <summary>All of them; Checks is last.</summary>
    /// <param name="units">The units of the shop.</param>
    public static IReadOnlyList<ComputedColumn> All(ShopUnits units) =>
    [
        new MetalEachColumn(units.Metal),
        new MetalColumn(units.Metal),
        new FlaskColumn(),
        new MixColumn(units),
        new BurnoutColumn(),
        new ChecksColumn(),
    ];
}
