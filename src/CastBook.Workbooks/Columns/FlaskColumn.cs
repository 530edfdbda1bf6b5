using System.Globalization;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Columns;

/// <summary>Where the row's pieces hang: <c>A</c>, or <c>A ×6, B ×2</c>.</summary>
internal sealed class FlaskColumn : ComputedColumn
{
    /// <inheritdoc/>
    public override string OwnName => Reading.OwnName.Flask;

    /// <inheritdoc/>
    public override string Heading => ColumnWords.Flask;

    /// <inheritdoc/>
    public override double Width => 19;

    /// <inheritdoc/>
    public override CellValue Show(PieceLine line)
    {
        var shares = line.Plan.Flasks;
        return shares switch
        {
            [] => CellValue.Empty,
            [var all] when all.Quantity == line.Piece.Quantity => CellValue.Of(all.Flask),
            _ => CellValue.Of(string.Join(", ", shares.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Flask} ×{s.Quantity}")))),
        };
    }
}
