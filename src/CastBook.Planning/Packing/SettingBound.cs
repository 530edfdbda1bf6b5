namespace CastBook.Planning.Packing;

/// <summary>Whether so few flasks take everything: asked of each way of giving flask settings to them.</summary>
/// <remarks>
/// Where it is said how many flasks are cast at each setting, all that may be cast at one setting only must be in those. Much less is
/// possible than where parts of trees of any setting may be chosen, and few trees are left to look at. Sizes are not told apart: every
/// flask is as roomy as the roomiest by each measure.
/// </remarks>
internal sealed class SettingBound
{
    private const long CostOfAny = 1_000_000;

    // Ways of giving settings that are looked at, at most.
    private const int MostWays = 60;

    // Where parts of trees leave a way open, every way to hang the pieces is looked at, as far as such a share of the work goes.
    private const int ShareOfLook = 4;

    private readonly PackProblem problem;
    private readonly int[] settings;
    private readonly PackProblem apart;
    private readonly PackBound bound;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The problem; every piece that fits a size has a sector. Wishes for a flask are not looked at.</param>
    /// <param name="trees">Trees that can be hung.</param>
    public SettingBound(PackProblem problem, IEnumerable<PackedFlask> trees)
    {
        this.problem = problem;
        settings = problem.NeededSettings;

        // The sizes of this problem are the settings of that one.
        int[] sizes = [.. Enumerable.Range(0, problem.Sizes.Length).Where(s => problem.Sizes[s].Free > 0)];
        var roomiest = new PackSize(sizes.Max(s => problem.Sizes[s].Rod), sizes.Max(s => problem.Sizes[s].Metal), CostOfAny, int.MaxValue);
        apart = new PackProblem(
            [.. problem.Items.Select((item, i) => new PackItem(item.Quantity, item.Metal, [.. settings.Select(s => item.MayBeCastAt(s) ? Smallest(i, sizes) : PackShape.None)]))],
            [.. settings.Select(_ => roomiest)]);
        bound = new PackBound(apart);
        foreach (var tree in trees)
        {
            for (var at = 0; at < settings.Length; at++)
            {
                if (Array.TrueForAll(tree.Content, c => problem.Items[c.Item].MayBeCastAt(settings[at])))
                {
                    bound.Know(tree with { Size = at });
                }
            }
        }
    }

    /// <summary>Whether it is proved that so many flasks do not take everything.</summary>
    /// <param name="flasks">How many.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="stop">Ends the proof early.</param>
    public bool Refutes(int flasks, long work, CancellationToken stop)
    {
        var (ways, end) = (Ways(flasks), bound.Work + work);
        return ways.Count <= MostWays && ways.TrueForAll(way => Refutes(way, flasks, work, end, stop));
    }

    private bool Refutes(int[] way, int flasks, long work, long end, CancellationToken stop)
    {
        if (!bound.IsRefuted(way) && bound.Work < end)
        {
            bound.Find([.. way.Select(_ => CostOfAny)], way, flasks, CostOfAny * flasks, end - bound.Work, stop);
        }

        return bound.IsRefuted(way) || DoesNotFit(way, work / ShareOfLook, stop);
    }

    private bool DoesNotFit(int[] way, long work, CancellationToken stop) =>
        new FlaskFit(apart, [.. Enumerable.Range(0, way.Length).SelectMany(at => Enumerable.Repeat((at, 0), way[at]))], stop).Look(work).Fits == false;

    // How many flasks are cast at each setting, as far as every piece finds a setting at all.
    private List<int[]> Ways(int flasks)
    {
        var (ways, way) = (new List<int[]>(), new int[settings.Length]);
        Give(0, flasks);
        return ways;

        void Give(int at, int left)
        {
            if (at < settings.Length - 1)
            {
                for (var count = 0; count <= left && ways.Count <= MostWays; count++)
                {
                    way[at] = count;
                    Give(at + 1, left - count);
                }

                return;
            }

            way[at] = left;
            if (Array.TrueForAll(problem.Items, i => settings.Where((s, k) => way[k] > 0 && i.MayBeCastAt(s)).Any()))
            {
                ways.Add([.. way]);
            }
        }
    }

    // What one piece takes at least, whatever the size.
    private PackShape Smallest(int item, int[] sizes)
    {
        PackShape[] shapes = [.. sizes.Where(s => problem.Fits(item, s)).Select(s => problem.Shapes[s][item])];
        return shapes.Length == 0 ? PackShape.None : new PackShape(shapes.Min(s => s.Theta), shapes.Min(s => s.Pitch), shapes.Min(s => s.Tail), 0);
    }
}
