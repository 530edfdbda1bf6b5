namespace CastBook.Planning.Packing.Bounds;

/// <content>Better trees than filling finds: those that the master takes parts of, with some of their sectors hung anew.</content>
/// <remarks>Of many kinds of pieces no look at every tree ends, and what pieces are worth is no better known than by the best trees there are.</remarks>
internal sealed partial class PackBound
{
    private const int MovesOfTree = 4;

    // What comes after so many rounds is worth little.
    private const int MostPolished = 24;

    private readonly Dictionary<int, PackedFlask> hanging = [];
    private TreePolishing? polishing;
    private int polished;

    private long WorkOfPolishing => polishing?.Work ?? 0;

    // Told of a tree that comes next. Those that hold shares are left as they are.
    private void Hangs(PackedFlask flask)
    {
        if (problem.IsOfMany && Array.TrueForAll(flask.Content, c => problem.Items[c.Item].Shapes[flask.Size].HasSector))
        {
            hanging[trees.Count] = flask;
        }
    }

    private bool Polish()
    {
        if (!problem.IsOfMany || polished++ >= MostPolished)
        {
            return false;
        }

        polishing ??= new TreePolishing(problem);
        var added = false;
        foreach (var place in master.Chosen)
        {
            if (hanging.TryGetValue(place, out var tree) && polishing.Better(tree, values, MovesOfTree) is { } better && IsWorthMore(better.Value, tree.Size))
            {
                Add(better.Flask);
                added = true;
            }
        }

        return added;
    }
}
