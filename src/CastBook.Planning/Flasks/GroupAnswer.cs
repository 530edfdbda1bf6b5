using CastBook.Planning.Packing;

namespace CastBook.Planning.Flasks;

/// <summary>The flasks of a group of rows.</summary>
/// <param name="Flasks">The flasks.</param>
/// <param name="Left">How many of each row found no flask, by row.</param>
/// <param name="WishesUnmet">How many of each row did not get the flask the shop wants them in, by row.</param>
internal sealed record GroupAnswer(
    IReadOnlyList<FilledFlask> Flasks, IReadOnlyDictionary<int, int> Left, IReadOnlyDictionary<int, int> WishesUnmet)
{
    /// <summary>The pieces as they were packed, and the flasks in whole numbers.</summary>
    public required PackedGroup Packed { get; init; }

    /// <summary>How many flasks any plan of the same pieces takes at least.</summary>
    public required int LeastFlasks { get; init; }

    /// <summary>What any such plan costs at least.</summary>
    public required long LeastCost { get; init; }

    /// <summary>What the flasks cost.</summary>
    public required long Cost { get; init; }

    /// <summary>What the pieces without a flask are worth.</summary>
    public required decimal Lost { get; init; }

    /// <summary>How many of a size are used.</summary>
    /// <param name="size">The size's place.</param>
    public int Used(int size) => Flasks.Count(f => f.Size.Index == size);
}

/// <summary>A group as it was packed.</summary>
/// <param name="Pieces">The pieces, with the flask each must be in, or less than 0.</param>
/// <param name="Plan">The flasks in whole numbers.</param>
internal sealed record PackedGroup(IReadOnlyList<(TreePiece Piece, int Count, int Pin)> Pieces, PackPlan Plan);
