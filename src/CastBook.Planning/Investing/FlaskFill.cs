using UnitsNet;

namespace CastBook.Planning.Investing;

/// <summary>What the mould of one flask needs of a mix.</summary>
/// <param name="Net">What it holds, without any waste; zero where the shop's chart says the powder.</param>
/// <param name="Chart">Powder by the shop's chart, its waste in it.</param>
/// <param name="WaterPer100">Parts of water to 100 parts of powder.</param>
internal sealed record FlaskFill(Volume Net, Mass Chart, double WaterPer100)
{
    /// <summary>What two moulds of one ratio need together.</summary>
    /// <param name="other">The other one.</param>
    public FlaskFill With(FlaskFill other) => this with { Net = Net + other.Net, Chart = Chart + other.Chart };

    /// <summary>The ratio to a tenth of a part, which is finer than anybody measures: flasks of one ratio may share a mix.</summary>
    public int Ratio => (int)Math.Round(WaterPer100 * 10);
}
