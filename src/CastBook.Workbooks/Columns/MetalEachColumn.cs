using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Columns;

/// <summary>Metal of one piece, its gates and the button apart.</summary>
internal sealed class MetalEachColumn : ComputedColumn
{
    /// <inheritdoc/>
    public override string OwnName => Reading.OwnName.MetalEach;

    /// <inheritdoc/>
    public override string Heading => "Metal each (g)";

    /// <inheritdoc/>
    public override double Width => 15;

    /// <inheritdoc/>
    public override string NumberFormat => Look.Grams;

    /// <inheritdoc/>
    public override CellValue Show(PieceLine line) => CellValue.Of(CellNumbers.Grams(line.Plan.MetalEach));
}
