using CastBook.Planning.Shops;
using CastBook.Workbooks.Words;
using UnitsNet;

namespace CastBook.Workbooks.Columns;

/// <summary>Metal of all pieces of the row, gates and button apart.</summary>
/// <param name="unit">The unit it is written in.</param>
internal sealed class MetalColumn(WrittenMass unit) : MassColumn(unit)
{
    /// <inheritdoc/>
    public override string OwnName => Reading.OwnName.Metal;

    /// <inheritdoc/>
    public override string Words => ColumnWords.Metal;

    /// <inheritdoc/>
    public override double Width => 12;

    /// <inheritdoc/>
    public override MassColumn In(WrittenMass other) => new MetalColumn(other);

    /// <inheritdoc/>
    protected override Mass? Of(PieceLine line) =>
        line is { Plan.MetalEach: { } each, Piece.Quantity: { } quantity } ? each * quantity : null;
}
