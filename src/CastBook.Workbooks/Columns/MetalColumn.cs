using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Columns;

/// <summary>Metal of all pieces of the row, gates and button apart.</summary>
internal sealed class MetalColumn : ComputedColumn
{
    /// <inheritdoc/>
    public override string OwnName => Reading.OwnName.Metal;

    /// <inheritdoc/>
    public override string Heading => "Metal (g)";

    /// <inheritdoc/>
    public override double Width => 12;

    /// <inheritdoc/>
    public override string NumberFormat => Look.Grams;

    /// <inheritdoc/>
    public override CellValue Show(PieceLine line) =>
        line is { Plan.MetalEach: { } each, Piece.Quantity: { } quantity } ? CellValue.Of(CellNumbers.Grams(each * quantity)) : CellValue.Empty;
}
