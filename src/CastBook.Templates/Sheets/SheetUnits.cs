using CastBook.Planning.Shops;

namespace CastBook.Templates.Sheets;

/// <summary>Sheets that ask in the units in which a shop was found to work.</summary>
internal static class SheetUnits
{
    private const string Powder = "Powder (g)";
    private const string InStock = "In stock (g)";

    /// <summary>The sheet in these units.</summary>
    /// <param name="spec">The sheet in grams, millilitres, millimetres and degrees Celsius.</param>
    /// <param name="units">The shop's units.</param>
    /// <remarks>Test cubes stay in grams and millimetres, and vessels in millilitres: by them densities and volumes are found.</remarks>
    public static SheetSpec Of(SheetSpec spec, ShopUnits units) => spec with { Columns = [.. spec.Columns.Select(c => Column(c, spec.Name == MaterialsSheet.Name, units))] };

    private static ShopColumn Column(ShopColumn column, bool isOfMaterials, ShopUnits units)
    {
        var heading = column.Heading.EndsWith("(ml)", StringComparison.Ordinal) || (isOfMaterials && !column.Heading.EndsWith("(°C)", StringComparison.Ordinal))
            ? column.Heading
            : units.Heading(column.Heading, column.Heading is Powder or InStock);
        return column with { Heading = heading, Meaning = UsUnits.Told(column.Meaning, units), Format = heading == column.Heading ? column.Format : Formats.AsTyped };
    }
}
