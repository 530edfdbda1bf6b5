using CastBook.Casting.Pouring;

namespace CastBook.Planning.Flasks;

/// <summary>Fills flasks with one group of rows: first-fit decreasing, a flask at a time.</summary>
/// <remarks>
/// To fill one flask after the other with all rows in decreasing order is first-fit decreasing, and lets each
/// flask be tried in every size and band before it is chosen. Work is bounded by flasks × sizes × bands × rows.
/// </remarks>
internal sealed class GroupFilling
{
    private static readonly SectionBand[] BandsByUse = [SectionBand.Ordinary, SectionBand.Fine, SectionBand.Heavy];

    private readonly PieceGroup group;
    private readonly IReadOnlyList<UsableSize> sizes;
    private readonly FlaskRoom room;
    private readonly List<OpenFlask> flasks = [];
    private readonly int[] left;
    private readonly int[] free;
    private readonly IReadOnlyList<TreePiece> order;

    private GroupFilling(PieceGroup group, IReadOnlyList<TreePiece> order, IReadOnlyList<UsableSize> sizes, FlaskRoom room, int[] free)
    {
        this.group = group;
        this.order = order;
        this.sizes = sizes;
        this.room = room;
        this.free = [.. free];
        left = new int[group.Pieces.Max(p => p.Id) + 1];
        foreach (var piece in group.Pieces)
        {
            left[piece.Id] = piece.Quantity;
        }
    }

    /// <summary>The flasks, in the order they were opened.</summary>
    public IReadOnlyList<OpenFlask> Flasks => flasks;

    /// <summary>How many of each row found no flask, by the row's id.</summary>
    public IReadOnlyList<int> Left => left;

    /// <summary>How many of each row did not get the flask the shop wants them in.</summary>
    public Dictionary<int, int> WishesUnmet { get; } = [];

    /// <summary>How many flasks of each usable size are still free.</summary>
    public IReadOnlyList<int> Free => free;

    /// <summary>Fills flasks in several orders and keeps the best: most placed, fewest flasks, least investment.</summary>
    /// <param name="group">The rows; each fits some size alone.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="room">What a tree may take.</param>
    /// <param name="free">How many of each size are free.</param>
    public static GroupFilling Best(PieceGroup group, IReadOnlyList<UsableSize> sizes, FlaskRoom room, int[] free)
    {
        GroupFilling? best = null;
        foreach (var order in group.Orders(sizes))
        {
            var filling = new GroupFilling(group, order, sizes, room, free);
            filling.Run();
            if (best is null || filling.Score().CompareTo(best.Score()) < 0)
            {
                best = filling;
            }
        }

        return best!;
    }

    private (double, int, double) Score() =>
    (
        Math.Round(group.Pieces.Sum(p => left[p.Id] * p.Weight), 9),
        flasks.Count,
        Math.Round(flasks.Sum(f => f.Tree.Size.Inside.Milliliters), 6)
    );

    private void Run()
    {
        foreach (var letter in group.Wishes.Values.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            var wanting = order.Where(p => group.Wishes.TryGetValue(p.Id, out var wish) && wish == letter).ToList();
            Open(wanting, letter);
            foreach (var piece in wanting.Where(p => left[p.Id] > 0))
            {
                WishesUnmet[piece.Id] = left[piece.Id];
            }
        }

        foreach (var flask in flasks)
        {
            Take(flask, order);
        }

        var waiting = order.Where(p => left[p.Id] > 0).ToList();
        while (waiting.Count > 0)
        {
            if (Open(waiting, letter: null))
            {
                waiting.RemoveAll(p => left[p.Id] == 0);
            }
            else
            {
                // Nothing that is free takes the first; the others may still find something.
                waiting.RemoveAt(0);
            }
        }
    }

    private void Take(OpenFlask flask, IReadOnlyList<TreePiece> pieces)
    {
        foreach (var piece in pieces.Where(p => left[p.Id] > 0 && p.Allows(flask.Band)))
        {
            left[piece.Id] -= flask.Tree.Hang(piece, left[piece.Id]);
        }
    }

    // The flask must take the first row, and is of the size and band that take most of all rows.
    private bool Open(List<TreePiece> pieces, string? letter)
    {
        var candidates = sizes.Where(s => free[s.Index] > 0 && pieces[0].FitsIn(s)).OrderBy(s => s.Inside).ThenBy(s => s.Index).ToList();
        if (candidates.Count == 0)
        {
            return false;
        }

        OpenFlask? best = null;
        var most = 0.0;
        var leastMl = pieces.Min(p => p.MetalMl);
        foreach (var size in candidates)
        {
            foreach (var band in Bands(pieces))
            {
                var flask = new OpenFlask(group.Alloy, group.StonesIn, band)
                {
                    Tree = new TreeBuilder(size, room.Ml(size, group.Alloy)),
                    Letter = letter,
                };
                var taken = Try(flask.Tree, pieces, band, leastMl);
                if (taken > most + PieceShape.Dust)
                {
                    (best, most) = (flask, taken);
                }
            }
        }

        if (best is null)
        {
            return false;
        }

        foreach (var (piece, count) in best.Tree.Content)
        {
            left[piece.Id] -= count;
        }

        free[best.Tree.Size.Index]--;
        flasks.Add(best);
        return true;
    }

    private static List<SectionBand> Bands(List<TreePiece> pieces)
    {
        var allowed = BandsByUse.Where(pieces[0].Allows).ToList();

        // Where one band suits every row, the others cannot take more.
        var suits = allowed.Where(band => pieces.All(p => p.Allows(band))).ToList();
        return suits.Count > 0 ? [suits[0]] : allowed;
    }

    private double Try(TreeBuilder tree, List<TreePiece> pieces, SectionBand band, double leastMl)
    {
        var taken = 0.0;
        for (var i = 0; i < pieces.Count && tree.FreeMl >= leastMl; i++)
        {
            var piece = pieces[i];
            if (piece.Allows(band) && tree.MayTake(piece))
            {
                var hung = tree.Hang(piece, left[piece.Id]);
                taken += hung * piece.Weight;
            }

            if (i == 0 && taken == 0)
            {
                return 0;
            }
        }

        return taken;
    }
}
