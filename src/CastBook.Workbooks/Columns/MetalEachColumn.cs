using CastBook.Planning.Shops;
using CastBook.Workbooks.Words;
using UnitsNet;

namespace CastBook.Workbooks.Columns;

/// <summary>Metal of one piece, its gates and the button apart.</summary>
/// <param name="unit">The unit it is written in.</param>
internal sealed class MetalEachColumn(WrittenMass unit) : MassColumn(unit)
{
    /// <inheritdoc/>
    public override string OwnName => Reading.OwnName.MetalEach;

    /// <inheritdoc/>
    public override string Words => ColumnWords.MetalEach;

    /// <inheritdoc/>
    public override double Width => 15;

    /// <inheritdoc/>
    public override MassColumn In(WrittenMass other) => new MetalEachColumn(other);

    /// <inheritdoc/>
    protected override Mass? Of(PieceLine line) => line.Plan.MetalEach;
}
