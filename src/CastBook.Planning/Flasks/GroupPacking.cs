using CastBook.Planning.Packing;

namespace CastBook.Planning.Flasks;

/// <summary>Turns a group of rows into a problem of whole numbers, and the answer into trees.</summary>
internal sealed class GroupPacking
{
    // Metal is counted in hundredths of a microlitre, far finer than any scale.
    private const double UnitsPerMl = 100_000;

    // A flask counts more than any amount of investment, and investment more than the metal of trunks.
    private const long CostOfFlask = 10_000_000;
    private const long CostOfMl = 1000;

    private readonly PieceGroup group;
    private readonly IReadOnlyList<UsableSize> sizes;
    private readonly List<DateOnly> dates;
    private readonly List<string> letters;
    private readonly long[] roomUnits;

    /// <summary>Prepares a group.</summary>
    /// <param name="group">The rows; each fits some size alone.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="room">What a tree may take.</param>
    /// <param name="dates">The days on which anything of the night is due, soonest first.</param>
    public GroupPacking(PieceGroup group, IReadOnlyList<UsableSize> sizes, FlaskRoom room, List<DateOnly> dates)
    {
        (this.group, this.sizes, this.dates) = (group, sizes, dates);
        letters = [.. group.Wishes.Values.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

        // Looked up once, so that groups can be packed side by side.
        roomUnits = [.. sizes.Select(s => Units(room.Ml(s, group.Alloy)))];
    }

    /// <summary>How many pieces it has.</summary>
    public long Pieces => group.Pieces.Sum(p => (long)p.Quantity);

    /// <summary>Packs the rows.</summary>
    /// <param name="free">How many of each size are free.</param>
    /// <param name="stop">Ends the search early.</param>
    public GroupAnswer Pack(IReadOnlyList<int> free, CancellationToken stop)
    {
        var pieces = group.Pieces
            .Select(p => (Piece: p, Count: p.Quantity, Pin: group.Wishes.TryGetValue(p.Id, out var letter) ? letters.IndexOf(letter) : -1))
            .ToList();
        var unmet = new Dictionary<int, int>();
        var answer = Solve(pieces, free, stop);

        // What finds no room in the flask it is wanted in goes wherever there is room.
        for (var i = pieces.Count - 1; i >= 0; i--)
        {
            if (pieces[i].Pin >= 0 && answer.Plan.Left[i] > 0)
            {
                unmet[pieces[i].Piece.Id] = answer.Plan.Left[i];
                pieces.Add((pieces[i].Piece, answer.Plan.Left[i], -1));
                pieces[i] = pieces[i] with { Count = pieces[i].Count - answer.Plan.Left[i] };
            }
        }

        if (unmet.Count > 0)
        {
            answer = Solve(pieces, free, stop);
        }

        return Answer(pieces, answer, unmet);
    }

    private PackAnswer Solve(List<(TreePiece Piece, int Count, int Pin)> pieces, IReadOnlyList<int> free, CancellationToken stop)
    {
        var items = pieces.Select(p => new PackItem(p.Count, MetalOf(p.Piece), [.. sizes.Select(s => Shape(p.Piece, s))])
        {
            Lowest = (int)p.Piece.Coldest,
            Highest = (int)p.Piece.Hottest,
            Pin = p.Pin,
            Urgency = p.Piece.Metal.Piece.Due is { } due ? Math.Max(1, PackItem.MostUrgent - dates.IndexOf(due)) : 0,
        });
        var flasks = sizes.Select(s => new PackSize(s.Rod, roomUnits[s.Index], Cost(s), free[s.Index]));
        return PackSolver.Solve(new PackProblem([.. items], [.. flasks]), Seed, stop);
    }

    // By the alloy alone, so that other alloys of the night change nothing.
    private ulong Seed => group.Alloy.Name.Aggregate(group.StonesIn ? 1UL : 0UL, (seed, c) => unchecked((seed * 31) + c));

    private static PackShape Shape(TreePiece piece, UsableSize size)
    {
        if (!piece.FitsIn(size))
        {
            return PackShape.None;
        }

        if (piece.Shapes is null)
        {
            return new PackShape(0, 0, 0, PackShape.Whole / piece.PerTree[size.Index]);
        }

        var shape = piece.Shapes[size.Index];
        return new PackShape(shape.Theta, shape.Pitch, shape.Tail, 0);
    }

    private static long MetalOf(TreePiece piece) =>
        (long)Math.Min(PackProblem.AnyMetal, Math.Ceiling((piece.MetalMl * UnitsPerMl) - PieceShape.Dust));

    private static long Units(double ml) => ml <= 0 ? 0 : (long)Math.Min(PackProblem.AnyMetal, Math.Floor((ml * UnitsPerMl * (1 + PieceShape.Dust)) + PieceShape.Dust));

    private static long Cost(UsableSize size) =>
        ((CostOfFlask + (long)Math.Ceiling(size.Inside.Milliliters)) * CostOfMl) + (long)Math.Min(CostOfMl - 1, size.Trunk.Milliliters * 10);

    private GroupAnswer Answer(List<(TreePiece Piece, int Count, int Pin)> pieces, PackAnswer answer, Dictionary<int, int> unmet)
    {
        var plan = answer.Plan;
        var left = new Dictionary<int, int>();
        for (var i = 0; i < pieces.Count; i++)
        {
            left[pieces[i].Piece.Id] = left.GetValueOrDefault(pieces[i].Piece.Id) + plan.Left[i];
        }

        var flasks = plan.Flasks
            .OrderByDescending(f => plan.Problem.Sizes[f.Size].Cost).ThenByDescending(f => f.Fill).ThenBy(f => f.Content[0].Item)
            .Select(f => new FilledFlask(group.Alloy, sizes[f.Size], [.. Merged(pieces, f.Content).OrderBy(c => c.Piece.Id)])
            {
                Sectors = [.. f.Columns.Select(c => Merged(pieces, c))],
                Letter = f.Pin >= 0 ? letters[f.Pin] : null,
            });
        return new GroupAnswer([.. flasks], left, unmet)
        {
            LeastFlasks = answer.LeastFlasks,
            LeastCost = answer.LeastCost,
            Cost = plan.Cost,
            Lost = plan.Lost,
        };
    }

    private static List<(TreePiece Piece, int Count)> Merged(List<(TreePiece Piece, int Count, int Pin)> pieces, PackCount[] counts)
    {
        var merged = new List<(TreePiece Piece, int Count)>();
        foreach (var (item, count) in counts)
        {
            var piece = pieces[item].Piece;
            var at = merged.FindIndex(m => m.Piece == piece);
            if (at < 0)
            {
                merged.Add((piece, count));
            }
            else
            {
                merged[at] = (piece, merged[at].Count + count);
            }
        }

        return merged;
    }
}
