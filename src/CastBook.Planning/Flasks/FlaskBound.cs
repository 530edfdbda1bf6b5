using CastBook.Casting.Pouring;

namespace CastBook.Planning.Flasks;

/// <summary>A number of flasks that no plan of the same pieces can go under.</summary>
/// <remarks>
/// Each piece takes at least a share of whatever flask it is in: of the metal, and of the unrolled trunk. Shares
/// of one flask add up to one at most, so that their sum, rounded up, is a lower bound. Pieces that no common
/// band suits cannot share either. Alloys, and pieces with stones in, never share.
/// </remarks>
internal static class FlaskBound
{
    /// <summary>The bound for one group of rows, each of which fits some size alone.</summary>
    /// <param name="group">The rows.</param>
    /// <param name="sizes">The sizes the shop owns.</param>
    /// <param name="room">What a tree may take.</param>
    public static int For(PieceGroup group, IReadOnlyList<UsableSize> sizes, FlaskRoom room)
    {
        var owned = sizes.Where(s => s.Owned > 0).ToList();
        var mostMl = owned.Max(s => room.Ml(s, group.Alloy));
        var shares = group.Pieces.ToDictionary(p => p, p => LeastShare(p, owned));
        var all = Least(group.Pieces, shares, mostMl);
        var apart = Enum.GetValues<SectionBand>().Sum(band => Least([.. group.Pieces.Where(p => p.Coldest == band && p.Hottest == band)], shares, mostMl));
        return Math.Max(all, apart);
    }

    private static double LeastShare(TreePiece piece, List<UsableSize> owned) =>
        owned.Where(piece.FitsIn).Select(piece.Share).DefaultIfEmpty(0).Min();

    private static int Least(IReadOnlyList<TreePiece> pieces, Dictionary<TreePiece, double> shares, double mostMl)
    {
        if (pieces.Count == 0)
        {
            return 0;
        }

        var metal = pieces.Sum(p => p.MetalMl * p.Quantity) / mostMl;
        var space = pieces.Sum(p => shares[p] * p.Quantity);

        // Rounded down before it is rounded up, so that dust never adds a flask.
        return Math.Max(1, (int)Math.Ceiling(Math.Max(metal, space) * (1 - 1e-6) - 1e-6));
    }
}
