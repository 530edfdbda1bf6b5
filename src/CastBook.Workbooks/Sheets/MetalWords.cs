using CastBook.Planning;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Words;
using UnitsNet;

namespace CastBook.Workbooks.Sheets;

/// <summary>What is known of an alloy's metal, in words and sums that sheets and summary share.</summary>
internal static class MetalWords
{
    /// <summary>Fresh and re-melt together; null where the shop has said neither.</summary>
    /// <param name="metal">The alloy's metal.</param>
    public static Mass? Stock(MetalPlan metal) => (metal.Fresh, metal.Remelt) switch
    {
        (null, null) => null,
        var (fresh, remelt) => (fresh ?? Mass.Zero) + (remelt ?? Mass.Zero),
    };

    /// <summary>Metal of the pieces, or the span it lies in: <c>pieces 450 g</c>, <c>pieces 400 to 560 g</c>.</summary>
    /// <param name="metal">The alloy's metal.</param>
    /// <param name="unit">The unit to say it in.</param>
    public static string Pieces(MetalPlan metal, WrittenMass unit)
    {
        return metal switch
        {
            { Pieces: { } pieces } => MetalSheetWords.Pieces(unit.Say(pieces)),
            { PiecesIfFinished: { } finished, PiecesLeast: { } least, PiecesMost: { } most } =>
                MetalSheetWords.PiecesOrFinished(Between(least, most), unit.Say(finished)),
            { PiecesLeast: { } least, PiecesMost: { } most } => MetalSheetWords.Pieces(Between(least, most)),
            { PiecesLeast: { } least } => MetalSheetWords.PiecesAtLeast(unit.Say(least)),
            _ => MetalSheetWords.PiecesNotKnown,
        };

        // Two alloys of one name may come to the same on the shop's scale.
        string Between(Mass least, Mass most) => unit.Say(least) == unit.Say(most) ? unit.Say(most) : MetalSheetWords.Between(unit.Number(least), unit.Say(most));
    }
}
