namespace CastBook.Planning.Packing;

/// <summary>A flask and what hangs in it.</summary>
/// <param name="Size">Its size.</param>
/// <param name="Content">How many of which pieces, by piece.</param>
/// <param name="Columns">Its sectors, each from the button up; pieces of which only a share is known are in none.</param>
internal sealed record PackedFlask(int Size, PackCount[] Content, PackCount[][] Columns)
{
    /// <summary>The pin it answers, or less than 0.</summary>
    public int Pin { get; init; } = -1;

    /// <summary>How full it is, as the weight of what hangs in it.</summary>
    public long Fill { get; init; }

    /// <summary>Sizes, each a bit, that were found not to take all of it.</summary>
    public ulong Outgrown { get; set; }

    /// <summary>A flask by its sectors.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="size">Its size.</param>
    /// <param name="columns">Its sectors.</param>
    public static PackedFlask Of(PackProblem problem, int size, PackCount[][] columns)
    {
        PackCount[] content = [.. columns.SelectMany(c => c).GroupBy(c => c.Item).OrderBy(g => g.Key).Select(g => new PackCount(g.Key, g.Sum(c => c.Count)))];
        return new PackedFlask(size, content, columns) { Fill = content.Sum(c => c.Count * problem.Weights[c.Item]) };
    }

    /// <summary>The flask without what is not left; itself where everything is.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="left">How many of each piece there are.</param>
    public PackedFlask Of(PackProblem problem, int[] left)
    {
        if (!Array.Exists(Content, c => c.Count > left[c.Item]))
        {
            return this;
        }

        // A sector of which pieces are taken off is as wide and as high at most.
        var over = Content.ToDictionary(c => c.Item, c => Math.Max(0, c.Count - left[c.Item]));
        PackCount[] content = [.. Content.Select(c => c with { Count = c.Count - over[c.Item] }).Where(c => c.Count > 0)];
        PackCount[][] columns = [.. Columns.Select(c => c.Select(Less).Where(p => p.Count > 0).ToArray()).Where(c => c.Length > 0)];
        return this with { Content = content, Columns = columns, Fill = content.Sum(c => c.Count * problem.Weights[c.Item]), Outgrown = 0 };

        PackCount Less(PackCount piece)
        {
            var off = Math.Min(piece.Count, over[piece.Item]);
            over[piece.Item] -= off;
            return piece with { Count = piece.Count - off };
        }
    }
}

/// <summary>So many of a piece.</summary>
/// <param name="Item">The piece.</param>
/// <param name="Count">How many.</param>
internal readonly record struct PackCount(int Item, int Count);
