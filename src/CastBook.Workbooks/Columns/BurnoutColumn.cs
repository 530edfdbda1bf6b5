using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Columns;

/// <summary>Hours of burnout of the row's flask; of the longest, where it is split.</summary>
internal sealed class BurnoutColumn : ComputedColumn
{
    /// <inheritdoc/>
    public override string OwnName => Reading.OwnName.Burnout;

    /// <inheritdoc/>
    public override string Heading => ColumnWords.Burnout;

    /// <inheritdoc/>
    public override double Width => 13;

    /// <inheritdoc/>
    public override string NumberFormat => "0.0#";

    /// <inheritdoc/>
    public override CellValue Show(PieceLine line) => CellValue.Of(CellNumbers.Hours(line.Plan.Burnout));
}
