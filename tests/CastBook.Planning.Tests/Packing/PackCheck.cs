using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Tests.Packing;

/// <summary>Counts a plan after: whatever it says of itself, does everything in it fit?</summary>
internal static class PackCheck
{
    /// <summary>Fails where something does not fit or is lost.</summary>
    /// <param name="plan">The plan.</param>
    public static void Sound(PackPlan plan)
    {
        var problem = plan.Problem;
        foreach (var flask in plan.Flasks)
        {
            Fits(problem, flask);
        }

        for (var i = 0; i < problem.Items.Length; i++)
        {
            var placed = plan.Flasks.SelectMany(f => f.Content).Where(c => c.Item == i).Sum(c => c.Count);
            (placed + plan.Left[i]).ShouldBe(problem.Items[i].Quantity);
            plan.Left[i].ShouldBeGreaterThanOrEqualTo(0);
        }

        for (var size = 0; size < problem.Sizes.Length; size++)
        {
            plan.Flasks.Count(f => f.Size == size).ShouldBeLessThanOrEqualTo(problem.Sizes[size].Free);
        }

        plan.Cost.ShouldBe(plan.Flasks.Sum(f => problem.Sizes[f.Size].Cost));
        plan.Flasks.Where(f => f.Pin >= 0).Select(f => f.Pin).ShouldBeUnique();
    }

    /// <summary>Fails where what is known to fit is said not to, or a plan of it is not sound.</summary>
    /// <param name="look">Looks whether everything fits, with so many steps.</param>
    /// <param name="works">How many steps to spend, look by look.</param>
    public static void NeverRefuted(Func<long, FitAnswer> look, params long[] works)
    {
        foreach (var work in works)
        {
            var answer = look(work);

            answer.Fits.ShouldNotBe(false);
            Whole(answer);
        }
    }

    /// <summary>Fails where the plan of an answer is not sound or leaves anything out.</summary>
    /// <param name="answer">The answer; one without a plan says nothing.</param>
    public static void Whole(FitAnswer answer)
    {
        if (answer.Plan is { } plan)
        {
            Sound(plan);
            plan.Lost.ShouldBe(0m);
        }
    }

    private static void Fits(PackProblem problem, PackedFlask flask)
    {
        var size = problem.Sizes[flask.Size];
        flask.Content.ShouldNotBeEmpty();
        flask.Content.ShouldAllBe(c => c.Count > 0 && problem.Items[c.Item].Shapes[flask.Size].Fits);
        flask.Content.Sum(c => c.Count * problem.Items[c.Item].Metal).ShouldBeLessThanOrEqualTo(size.Metal);
        flask.Content.Max(c => problem.Items[c.Item].Lowest).ShouldBeLessThanOrEqualTo(flask.Content.Min(c => problem.Items[c.Item].Highest));
        flask.Content.ShouldAllBe(c => problem.Items[c.Item].Pin < 0 || problem.Items[c.Item].Pin == flask.Pin);

        var hung = flask.Columns.SelectMany(c => c).GroupBy(c => c.Item).ToDictionary(g => g.Key, g => g.Sum(c => c.Count));
        var sized = flask.Content.Where(c => problem.Items[c.Item].Shapes[flask.Size].HasSector).ToDictionary(c => c.Item, c => c.Count);
        hung.ShouldBe(sized, ignoreOrder: true);
        var share = flask.Content.Sum(c => c.Count * problem.Items[c.Item].Shapes[flask.Size].Share);
        var angle = flask.Columns.Sum(c => c.Max(p => problem.Items[p.Item].Shapes[flask.Size].Theta));
        (angle + (int)Math.Ceiling(share * 144 / 1e9)).ShouldBeLessThanOrEqualTo(144);
        foreach (var column in flask.Columns)
        {
            Stands(problem, flask.Size, column);
        }
    }

    private static void Stands(PackProblem problem, int size, PackCount[] column)
    {
        var height = 0;
        foreach (var (item, count) in column)
        {
            var shape = problem.Items[item].Shapes[size];
            height += count * shape.Pitch;
            (height + shape.Tail).ShouldBeLessThanOrEqualTo(problem.Sizes[size].Rod);
        }
    }
}
