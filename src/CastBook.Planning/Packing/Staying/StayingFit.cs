using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Packing.Staying;

/// <summary>Whether all pieces fit given flasks while most stay in the flask they stood in.</summary>
/// <remarks>
/// To <see cref="FlaskFit"/> every flask has a setting of its own, its place by the true settings: a piece that stays may be hung at its
/// flask's only, every other at those of all flasks that are not too cold or too hot for it, which stand side by side.
/// </remarks>
/// <param name="problem">The problem; every piece that fits a size has a sector, and there are no wishes.</param>
/// <param name="stop">Ends every look early.</param>
internal sealed class StayingFit(PackProblem problem, CancellationToken stop)
{
    // Ways of giving settings to the flasks, at most.
    private const int MostLists = 8;

    // What it takes to prepare a look, in steps of the tables.
    private const long WorkOfLook = 20_000;

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>A plan in which all pieces are; nothing where none was found.</summary>
    /// <param name="flasks">The size of each flask, and how many of each piece stay in it.</param>
    /// <param name="work">How many steps to spend on each way of giving settings.</param>
    public PackPlan? Look(IReadOnlyList<(int Size, int[] Staying)> flasks, long work)
    {
        var options = flasks.Select(f => Settings(f.Size, f.Staying)).ToList();
        if (options.Exists(o => o.Length == 0))
        {
            return null;
        }

        foreach (var list in Lists(options).Take(MostLists))
        {
            (int Size, int[] Staying, int Setting)[] inOrder = [.. flasks.Select((f, i) => (f.Size, f.Staying, list[i])).OrderBy(f => f.Item3)];
            if (Look(inOrder, work) is { } plan)
            {
                return plan;
            }
        }

        return null;
    }

    private PackPlan? Look((int Size, int[] Staying, int Setting)[] flasks, long work)
    {
        Work += WorkOfLook;
        var (pieces, items) = (new List<PackItem>(), new List<int>());
        for (var i = 0; i < problem.Items.Length; i++)
        {
            var piece = problem.Items[i];
            var first = Array.FindIndex(flasks, f => f.Setting >= piece.Lowest);
            var last = Array.FindLastIndex(flasks, f => f.Setting <= piece.Highest);
            Add(i, piece.Quantity - flasks.Sum(f => f.Staying[i]), first, last);
            for (var at = 0; at < flasks.Length; at++)
            {
                Add(i, flasks[at].Staying[i], at, at);
            }
        }

        if (pieces.Exists(p => p.Lowest < 0 || p.Lowest > p.Highest))
        {
            return null;
        }

        var answer = new FlaskFit(new PackProblem(pieces, problem.Sizes), [.. flasks.Select((f, at) => (f.Size, at))], stop).Look(work);
        Work += answer.Work;
        return answer.Plan is { } found ? Whole(found, items) : null;

        void Add(int item, int count, int lowest, int highest)
        {
            if (count > 0)
            {
                pieces.Add(problem.Items[item] with { Quantity = count, Lowest = lowest, Highest = highest });
                items.Add(item);
            }
        }
    }

    private PackPlan Whole(PackPlan found, List<int> items)
    {
        var plan = PackPlan.Empty(problem);
        foreach (var flask in found.Flasks)
        {
            plan.Add(PackedFlask.Of(problem, flask.Size, [.. flask.Columns.Select(c => c.Select(p => p with { Item = items[p.Item] }).ToArray())]));
        }

        return plan;
    }

    // The settings at which everything that stays may be cast; none where it takes more than the flask.
    private int[] Settings(int size, int[] staying)
    {
        var (lowest, highest, metal, area) = (int.MinValue, int.MaxValue, problem.Sizes[size].Metal, (long)PackShape.Turn * problem.Sizes[size].Rod);
        for (var i = 0; i < staying.Length; i++)
        {
            if (staying[i] > 0)
            {
                var (item, shape) = (problem.Items[i], problem.Shapes[size][i]);
                (lowest, highest) = (Math.Max(lowest, item.Lowest), Math.Min(highest, item.Highest));
                metal -= staying[i] * item.Metal;
                area -= shape.Fits ? (long)staying[i] * shape.Theta * shape.Pitch : area + 1;
            }
        }

        return metal < 0 || area < 0 ? [] : [.. problem.Settings.Where(s => lowest <= s && s <= highest).Reverse()];
    }

    private static IEnumerable<int[]> Lists(List<int[]> options)
    {
        IEnumerable<int[]> lists = [[]];
        foreach (var option in options)
        {
            lists = lists.SelectMany(list => option.Select(setting => (int[])[.. list, setting]));
        }

        return lists;
    }
}
