using CastBook.Planning.Flasks;
using CastBook.Planning.Metals;
using UnitsNet;

namespace CastBook.Planning.Rows;

/// <summary>Turns the plan round: what became of each row.</summary>
internal static class PieceAnswers
{
    /// <summary>A row's answer.</summary>
    /// <param name="piece">The row.</param>
    /// <param name="standing">How it stood before planning.</param>
    /// <param name="isToCome">Whether its night is still to come.</param>
    /// <param name="metal">Its metal; nothing where it is not asked for.</param>
    /// <param name="planned">The flasks.</param>
    public static PiecePlan Of(Piece piece, PieceStatus standing, bool isToCome, PieceMetal? metal, PlannedFlasks planned)
    {
        if (standing != PieceStatus.NotPlanned)
        {
            return new PiecePlan { Id = piece.Id, Status = standing, IsToCome = isToCome };
        }

        IReadOnlyList<FlaskShare> shares = planned.SharesOf(piece.Id);
        if (shares.Count == 0)
        {
            return new PiecePlan { Id = piece.Id, Status = PieceStatus.NotPlanned, MetalEach = metal?.Each };
        }

        var placed = shares.Sum(s => s.Quantity);
        var status = placed == 0 ? PieceStatus.NotPlanned
            : piece.Quantity is { } quantity && placed >= quantity ? PieceStatus.Planned
            : PieceStatus.PartlyPlanned;
        return new PiecePlan
        {
            Id = piece.Id,
            Status = status,
            MetalEach = metal?.Each,
            Flasks = shares,
            Burnout = LongestBurnout(shares, planned),
            MetalWorkedOut = metal?.WorkedOut,
        };
    }

    private static Duration? LongestBurnout(IReadOnlyList<FlaskShare> shares, PlannedFlasks planned)
    {
        var burnouts = shares.Select(s => planned.BurnoutOf(s.Flask)).OfType<Duration>().ToList();
        return burnouts.Count == 0 ? null : burnouts.Max();
    }
}
