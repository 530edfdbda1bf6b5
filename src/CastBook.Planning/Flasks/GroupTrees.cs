using CastBook.Planning.Packing;

namespace CastBook.Planning.Flasks;

/// <summary>Turns the answer for a group of rows, in whole numbers, back into trees.</summary>
internal sealed class GroupTrees
{
    private readonly PieceGroup group;
    private readonly IReadOnlyList<UsableSize> sizes;
    private readonly GroupNumbers numbers;
    private readonly bool[] isByCup;

    /// <summary>Prepares a group.</summary>
    /// <param name="group">The rows.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="room">What a tree may take.</param>
    /// <param name="numbers">The rows in whole numbers.</param>
    public GroupTrees(PieceGroup group, IReadOnlyList<UsableSize> sizes, FlaskRoom room, GroupNumbers numbers)
    {
        (this.group, this.sizes, this.numbers) = (group, sizes, numbers);
        isByCup = [.. sizes.Select(s => room.ByCupMl(s) < room.ByCrucibleMl(s, group.Alloy))];
    }

    /// <summary>The flasks of an answer.</summary>
    /// <param name="pieces">The pieces as they were packed.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="unmet">How many of each row did not get the flask the shop wants them in, by row.</param>
    public GroupAnswer Of(IReadOnlyList<(TreePiece Piece, int Count, int Pin)> pieces, PackAnswer answer, IReadOnlyDictionary<int, int> unmet)
    {
        var plan = answer.Plan;
        var left = new Dictionary<int, int>();
        for (var i = 0; i < pieces.Count; i++)
        {
            left[pieces[i].Piece.Id] = left.GetValueOrDefault(pieces[i].Piece.Id) + plan.Left[i];
        }

        var limits = new PackLimits(plan, [.. sizes.Select(s => s.Owned)]);
        var flasks = plan.Flasks
            .OrderByDescending(f => plan.Problem.Sizes[f.Size].Cost).ThenByDescending(f => f.Fill).ThenBy(f => f.Content[0].Item)
            .Select(f => new FilledFlask(group.Alloy, sizes[f.Size], [.. Merged(pieces, f.Content).OrderBy(c => c.Piece.Id)])
            {
                Sectors = [.. f.Columns.Select(c => Merged(pieces, c))],
                Letter = numbers.LetterOf(f),
                Limit = new Lazy<FlaskLimit>(() => LimitOf(limits.Of(f), f.Size)),
            });
        return new GroupAnswer([.. flasks], left, unmet)
        {
            Packed = new PackedGroup(pieces, plan),
            LeastFlasks = answer.LeastFlasks,
            LeastCost = answer.LeastCost,
            Cost = plan.Cost,
            Lost = plan.Lost,
        };
    }

    private FlaskLimit LimitOf(PackLimit limit, int size) => limit switch
    {
        PackLimit.Free => FlaskLimit.Owned,
        PackLimit.Setting => FlaskLimit.Temperature,
        PackLimit.Metal => isByCup[size] ? FlaskLimit.Cup : FlaskLimit.Crucible,
        PackLimit.Turn => FlaskLimit.Turn,
        PackLimit.Height => FlaskLimit.Height,
        PackLimit.HasRoom => FlaskLimit.HasRoom,
        _ => FlaskLimit.Nothing,
    };

    private static List<(TreePiece Piece, int Count)> Merged(IReadOnlyList<(TreePiece Piece, int Count, int Pin)> pieces, PackCount[] counts)
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
