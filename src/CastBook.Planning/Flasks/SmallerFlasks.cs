namespace CastBook.Planning.Flasks;

/// <summary>Moves each tree into the smallest free flask that takes all of it: less investment, shorter burnout.</summary>
internal static class SmallerFlasks
{
    // Each move frees a larger flask that another tree may like; sizes only shrink, so few passes settle it.
    private const int Passes = 8;

    /// <summary>The same flasks, each as small as what is free allows.</summary>
    /// <param name="flasks">The filled flasks.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="room">What a tree may take.</param>
    /// <param name="free">How many of each size are free; kept up to date.</param>
    public static List<OpenFlask> For(
        IReadOnlyList<OpenFlask> flasks, IReadOnlyList<UsableSize> sizes, FlaskRoom room, int[] free)
    {
        var result = flasks.ToList();
        var moved = true;
        for (var pass = 0; pass < Passes && moved; pass++)
        {
            moved = false;
            for (var i = 0; i < result.Count; i++)
            {
                if (Smaller(result[i], sizes, room, free) is { } tree)
                {
                    free[result[i].Tree.Size.Index]++;
                    free[tree.Size.Index]--;
                    result[i] = result[i] with { Tree = tree };
                    moved = true;
                }
            }
        }

        return result;
    }

    private static TreeBuilder? Smaller(OpenFlask flask, IReadOnlyList<UsableSize> sizes, FlaskRoom room, int[] free)
    {
        var candidates = sizes
            .Where(s => free[s.Index] > 0 && s.Inside < flask.Tree.Size.Inside)
            .OrderBy(s => s.Inside).ThenBy(s => s.Index);
        foreach (var size in candidates)
        {
            var tree = new TreeBuilder(size, room.Ml(size, flask.Alloy));
            if (flask.Tree.Content.All(c => tree.Hang(c.Piece, c.Count) == c.Count))
            {
                return tree;
            }
        }

        return null;
    }
}
