using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Pouring;

/// <summary>Finds the bands of flask temperature that a piece can be cast in.</summary>
/// <remarks>
/// <para><b>Formula.</b> Thinner than 0.8 mm: fine only. Thinner than 1.2 mm: ordinary or fine. Thicker than
/// 8 mm: heavy only. Thicker than 5 mm: heavy or ordinary. Otherwise any. What both ends allow is the
/// answer.</para>
/// <para><b>Valid for</b> jewellery sections. The limits sort pieces into flasks; they are not temperatures.</para>
/// <para><b>Source.</b> Memory of practice, no publication: published tables give temperatures for heavy to
/// paper-thin work, but not the millimetres.</para>
/// </remarks>
public static class SectionBands
{
    /// <summary>Below this only a fine band will fill: 0.8 mm. Memory.</summary>
    public static Length FineBelow { get; } = Length.FromMillimeters(0.8);

    /// <summary>Below this a heavy band will not fill: 1.2 mm. Memory.</summary>
    public static Length NotHeavyBelow { get; } = Length.FromMillimeters(1.2);

    /// <summary>Above this a fine band shrinks open: 5 mm. Memory.</summary>
    public static Length NotFineAbove { get; } = Length.FromMillimeters(5);

    /// <summary>Above this only a heavy band is sound: 8 mm. Memory.</summary>
    public static Length HeavyAbove { get; } = Length.FromMillimeters(8);

    /// <summary>The bands from the coldest to the hottest that suit a piece.</summary>
    /// <param name="finest">Its finest section, more than zero; missing when unknown.</param>
    /// <param name="heaviest">Its heaviest section, more than zero; missing when unknown.</param>
    /// <returns>
    /// The bands; all of them when nothing is known. Missing when the piece is too thin here and too thick
    /// there for any one band.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A section is zero or negative.</exception>
    public static (SectionBand Coldest, SectionBand Hottest)? Of(Length? finest, Length? heaviest)
    {
        // One known section bounds both: a piece that is nowhere thicker than 0.7 mm is thin.
        var thin = finest ?? heaviest;
        var thick = heaviest ?? finest;
        if (thin is null || thick is null)
        {
            return (SectionBand.Heavy, SectionBand.Fine);
        }

        Require.Positive(thin.Value, nameof(finest));
        Require.Positive(thick.Value, nameof(heaviest));

        var coldest = thin < FineBelow ? SectionBand.Fine : thin < NotHeavyBelow ? SectionBand.Ordinary : SectionBand.Heavy;
        var hottest = thick > HeavyAbove ? SectionBand.Heavy : thick > NotFineAbove ? SectionBand.Ordinary : SectionBand.Fine;

        return coldest <= hottest ? (coldest, hottest) : null;
    }
}
