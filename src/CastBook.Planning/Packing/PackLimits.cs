using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing;

/// <summary>Says of each flask of a plan what limits it.</summary>
/// <param name="plan">The plan.</param>
/// <param name="owned">How many of each size there are, whoever has them.</param>
internal sealed class PackLimits(PackPlan plan, IReadOnlyList<int> owned)
{
    // Of the pieces of other flasks the smallest are likeliest to fit.
    private const int MostTries = 8;

    private readonly PackProblem problem = plan.Problem;
    private readonly TreeFilling filling = new(plan.Problem);

    /// <summary>What limits a flask.</summary>
    /// <param name="flask">The flask.</param>
    public PackLimit Of(PackedFlask flask)
    {
        if (WantsCheaper(flask))
        {
            return PackLimit.Free;
        }

        var others = plan.Flasks.Where(f => f != flask).SelectMany(f => f.Content).Select(c => c.Item).Distinct()
            .Where(i => problem.Fits(i, flask.Size) && problem.Items[i].Pin < 0).OrderBy(i => problem.Weights[i]).ThenBy(i => i).ToList();
        if (others.Count == 0)
        {
            return PackLimit.Nothing;
        }

        var (lowest, highest) = (flask.Content.Max(c => problem.Items[c.Item].Lowest), flask.Content.Min(c => problem.Items[c.Item].Highest));
        others.RemoveAll(i => problem.Items[i].Lowest > highest || problem.Items[i].Highest < lowest);
        if (others.Count == 0)
        {
            return PackLimit.Setting;
        }

        var metal = problem.Sizes[flask.Size].Metal - flask.Content.Sum(c => c.Count * problem.Items[c.Item].Metal);
        others.RemoveAll(i => problem.Items[i].Metal > metal);
        return others.Count == 0 ? PackLimit.Metal
            : others.Take(MostTries).Any(i => Takes(flask, i)) ? PackLimit.HasRoom
            : FreeAngle(flask) < others.Min(i => Angle(i, flask.Size)) ? PackLimit.Turn : PackLimit.Height;
    }

    private bool WantsCheaper(PackedFlask flask)
    {
        for (var size = 0; size < problem.Sizes.Length; size++)
        {
            if (problem.Sizes[size].Cost < problem.Sizes[flask.Size].Cost && owned[size] > 0 && plan.Free[size] <= 0
                && Hangs(size, flask.Pin, flask.Content, more: -1))
            {
                return true;
            }
        }

        return false;
    }

    private bool Takes(PackedFlask flask, int more) => Hangs(flask.Size, flask.Pin, flask.Content, more);

    private bool Hangs(int size, int pin, PackCount[] content, int more)
    {
        var left = new int[problem.Items.Length];
        var (setting, fill) = (content.Min(c => problem.Items[c.Item].Highest), 0L);
        foreach (var (item, count) in content)
        {
            left[item] = count;
            fill += count * problem.Weights[item];
        }

        if (more >= 0)
        {
            left[more]++;
            fill += problem.Weights[more];
            setting = Math.Min(setting, problem.Items[more].Highest);
        }

        return filling.Fill(size, setting, pin, left, problem.Weights) is { } filled && filled.Flask.Fill == fill;
    }

    private int FreeAngle(PackedFlask flask)
    {
        var share = flask.Content.Sum(c => c.Count * problem.Items[c.Item].Shapes[flask.Size].Share);
        return PackShape.Turn - PackShape.Angle(share) - flask.Columns.Sum(c => c.Max(p => problem.Items[p.Item].Shapes[flask.Size].Theta));
    }

    private int Angle(int item, int size)
    {
        var shape = problem.Items[item].Shapes[size];
        return shape.HasSector ? shape.Theta : PackShape.Angle(shape.Share);
    }
}
