using CastBook.Planning.Shops;
using CastBook.Workbooks.Writing;
using UnitsNet;

namespace CastBook.Workbooks.Columns;

/// <summary>A column of masses in a unit that its heading says.</summary>
/// <param name="unit">The unit.</param>
internal abstract class MassColumn(WrittenMass unit) : ComputedColumn
{
    /// <summary>The unit.</summary>
    public WrittenMass Unit => unit;

    /// <summary>The heading without the unit.</summary>
    public abstract string Words { get; }

    /// <inheritdoc/>
    public override string Heading => HeadingIn(unit);

    /// <inheritdoc/>
    public override string NumberFormat => unit.Format;

    /// <summary>The same column in another unit.</summary>
    /// <param name="other">The unit.</param>
    public abstract MassColumn In(WrittenMass other);

    /// <summary>The heading in a unit.</summary>
    /// <param name="some">The unit.</param>
    public string HeadingIn(WrittenMass some) => $"{Words} ({some.Name})";

    /// <inheritdoc/>
    public override CellValue Show(PieceLine line) => CellValue.Of(unit.In(Of(line)));

    /// <summary>The mass it shows of a row; null where it is not known.</summary>
    /// <param name="line">The row.</param>
    protected abstract Mass? Of(PieceLine line);
}
