using System.Globalization;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Writing;
using UnitsNet;

namespace CastBook.Workbooks.Columns;

/// <summary>
/// In which unit a column of metal stands in a list. Its heading says so, and what a person typed under it is read by that;
/// the shop's setting says in which unit it is written, as long as the heading is still the one CastBook wrote.
/// </summary>
/// <param name="list">The list.</param>
/// <param name="record">What CastBook wrote last.</param>
/// <param name="wanted">The unit of the shop's setting.</param>
internal sealed class MetalUnits(PieceSheet list, FillRecord record, WrittenMass wanted)
{
    // A shop may type any unit of mass into a heading; to a thousandth, where the setting has no such choice.
    private static readonly IReadOnlyList<WrittenMass> Known =
    [
        .. WrittenMass.OfMetal,
        .. new[] { "kg", "lb", "oz", "grain", "ct", "mg" }.Select(sign => CellUnit.TryParse(sign, out var unit)
            ? new WrittenMass(sign, Mass.FromGrams(unit.Factor), 3, Mass.FromGrams(unit.Factor / 1000), "#,##0.000")
            : throw new InvalidOperationException($"Bug in CastBook: no unit {sign}.")),
    ];

    /// <summary>The unit in which the numbers under a heading stand.</summary>
    /// <param name="ownName">The column's hidden name.</param>
    public WrittenMass Standing(string ownName) => OfHeading(Text(ownName)) ?? Last(ownName) ?? wanted;

    /// <summary>The unit in which CastBook wrote the column last; null where it has not yet, or did before it took that down.</summary>
    /// <param name="ownName">The column's hidden name.</param>
    public WrittenMass? Last(string ownName) =>
        Known.FirstOrDefault(u => record.Wrote(list.NameOf(ownName), Unit(u))) ?? (record.Knows(ownName) ? WrittenMass.Gram : null);

    /// <summary>Whether the heading is the one CastBook wrote.</summary>
    /// <param name="ownName">The column's hidden name.</param>
    /// <param name="inGrams">The heading in grams, which is all that it wrote before it took its headings down.</param>
    public bool IsOurs(string ownName, string inGrams) => record.Wrote(list.NameOf(ownName), Ours(Text(ownName)))
        || (record.Knows(ownName) && Text(ownName) == inGrams && !Known.Any(u => record.Wrote(list.NameOf(ownName), Unit(u))));

    /// <summary>Takes down the unit of a column, and its heading where it is CastBook's.</summary>
    /// <param name="after">Takes it down.</param>
    /// <param name="ownName">The column's hidden name.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="heading">The heading; null where it is the shop's.</param>
    public void Remember(FillRecord after, string ownName, WrittenMass unit, string? heading)
    {
        after.Add(list.NameOf(ownName), Unit(unit));
        if (heading is not null)
        {
            after.Add(list.NameOf(ownName), Ours(heading));
        }
    }

    /// <summary>A mass that stands as a number under a heading.</summary>
    /// <param name="ownName">The column's hidden name.</param>
    /// <param name="number">The number.</param>
    public Mass Read(string ownName, double number) => Standing(ownName).One * number;

    private static WrittenMass? OfHeading(string text) => Heading.Parse(text).MarkedUnit is { Dimension: Dimension.Mass, Factor: > 0 } unit
        ? Known.FirstOrDefault(u => Math.Abs(u.One.Grams - unit.Factor) < unit.Factor * 1e-9)
        : null;

    private string Text(string ownName) =>
        list.OwnColumns.TryGetValue(ownName, out var column) ? list.Grid.Cell(list.HeadingRow, column).Text?.Trim() ?? "" : "";

    private string Unit(WrittenMass unit) => string.Create(CultureInfo.InvariantCulture, $"unit {list.Number} {unit.Name}");

    private string Ours(string heading) => string.Create(CultureInfo.InvariantCulture, $"heading {list.Number} {heading}");
}
