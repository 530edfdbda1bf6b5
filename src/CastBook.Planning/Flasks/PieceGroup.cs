using CastBook.Planning.Metals;

namespace CastBook.Planning.Flasks;

/// <summary>Rows that may share flasks as far as metal and stones go.</summary>
/// <param name="Alloy">Their metal.</param>
/// <param name="StonesIn">Whether they have stones set in.</param>
/// <param name="Pieces">The rows, in the order of the list.</param>
/// <param name="Wishes">The letters that the shop wants, by row.</param>
internal sealed record PieceGroup(
    KnownAlloy Alloy, bool StonesIn, IReadOnlyList<TreePiece> Pieces, IReadOnlyDictionary<int, string> Wishes)
{
    /// <summary>The orders in which to try the rows: what takes most comes first, by different measures of most.</summary>
    public IEnumerable<IReadOnlyList<TreePiece>> Orders(IReadOnlyList<UsableSize> sizes)
    {
        var bySpace = Pieces.ToDictionary(p => p, p => Space(p, sizes));
        yield return Sorted(p => bySpace[p]);
        if (Pieces.Count is > 1 and <= MostRowsForSeveralOrders)
        {
            yield return Sorted(p => p.Weight);
            yield return Sorted(p => p.MetalMl);
            yield return Sorted(p => Widest(p, sizes));
        }
    }

    // Beyond this a second look costs more than it saves.
    private const int MostRowsForSeveralOrders = 2000;

    private List<TreePiece> Sorted(Func<TreePiece, double> measure) =>
    [
        .. Pieces.OrderByDescending(p => Math.Round(measure(p), 9)).ThenByDescending(p => p.MetalMl).ThenBy(p => p.Id),
    ];

    private static double Space(TreePiece piece, IReadOnlyList<UsableSize> sizes) =>
        sizes.Where(piece.FitsIn).Select(s => (s.Inside, Share: piece.Share(s))).OrderByDescending(s => s.Inside).First().Share;

    private static double Widest(TreePiece piece, IReadOnlyList<UsableSize> sizes) =>
        piece.Shapes is null ? 0 : sizes.Where(piece.FitsIn).Min(s => piece.Shapes[s.Index].Theta);
}
