using CastBook.Casting.Pouring;
using CastBook.Casting.Trees;
using CastBook.Planning.Metals;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>So many of a row's pieces in a flask, with all that the flask's sums need of them.</summary>
/// <param name="Metal">The row's metal; its volume is known.</param>
/// <param name="Count">How many.</param>
/// <param name="Gates">Volume of all of their gates.</param>
/// <param name="Coldest">The coldest band they can be cast in.</param>
/// <param name="Hottest">The hottest band they can be cast in.</param>
internal sealed record HungRow(PieceMetal Metal, int Count, Volume Gates, SectionBand Coldest, SectionBand Hottest)
{
    /// <summary>Volume of the pieces without gates.</summary>
    public Volume Volume => Metal.VolumeEach!.Value * Count;

    /// <summary>Takes the gates and bands of a row.</summary>
    /// <param name="metal">The row's metal; its volume is known.</param>
    /// <param name="count">How many.</param>
    /// <param name="rules">How pieces hang.</param>
    public static HungRow Of(PieceMetal metal, int count, HangingRules rules)
    {
        var (coldest, hottest) = BandsOf(metal.Piece);
        return new(metal, count, GatesOf(metal.Piece, rules) * count, coldest, hottest);
    }

    /// <summary>Volume of the gates of one piece that its own volume does not hold already.</summary>
    /// <param name="piece">The row.</param>
    /// <param name="rules">How pieces hang.</param>
    public static Volume GatesOf(Piece piece, HangingRules rules)
    {
        if (rules.AreGatesIn(piece))
        {
            return UnitsNet.Volume.Zero;
        }

        var length = Length.FromMillimeters(PieceShape.LongestGateMm(piece.Box, rules.StubsMm(piece), rules));
        return GateVolume.Compute(HangingRules.GatesOf(piece), rules.GateDiameter(piece), length);
    }

    /// <summary>The bands of a row; the ordinary one where its sections allow none.</summary>
    /// <param name="piece">The row.</param>
    public static (SectionBand Coldest, SectionBand Hottest) BandsOf(Piece piece) =>
        SectionBands.Of(piece.FinestSection, piece.HeaviestSection) ?? (SectionBand.Ordinary, SectionBand.Ordinary);
}
