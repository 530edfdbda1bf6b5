using CastBook.Planning.Shops;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Columns;

/// <summary>Powder and water of the row's flask and its mix, as text so that nobody sums it over rows that share a flask.</summary>
/// <param name="units">The units of the shop.</param>
internal sealed class MixColumn(ShopUnits units) : ComputedColumn
{
    /// <inheritdoc/>
    public override string OwnName => Reading.OwnName.Mix;

    /// <inheritdoc/>
    public override string Heading => ColumnWords.Mix;

    /// <inheritdoc/>
    public override double Width => 24;

    /// <inheritdoc/>
    public override CellValue Show(PieceLine line)
    {
        var shares = line.Plan.Flasks;
        if (shares.Count > 1)
        {
            return CellValue.Of(ColumnWords.SeveralFlasks);
        }

        // A tree that is under way without a known size has a letter and no numbers.
        return shares.Count == 1 && line.Flasks.TryGetValue(shares[0].Flask, out var flask) && flask is { Powder: { } powder, Water: { } water }
            ? CellValue.Of(CellNumbers.MixText(units, powder, water, flask.Mix))
            : CellValue.Empty;
    }
}
