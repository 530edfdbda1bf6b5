using CastBook.Planning.Packing.Fitting;

namespace CastBook.Planning.Packing;

/// <content>How few flasks do, whatever their sizes; where a flask costs more than any size, that is the first part of the rest.</content>
internal sealed partial class PackSolver
{
    // A short look settles most of them.
    private const int ShareOfShortCount = 8;

    // What squeezing finds, it nearly always finds at once.
    private const long WorkOfSqueezing = 10_000_000;

    private ChoiceFits? fewer;
    private int? mostFlasks;

    /// <summary>Goes on with how few flasks do: fewer are found, or no fewer are proved to do.</summary>
    /// <param name="isShort">Whether it is only a look that settles most of them.</param>
    public void Count(bool isShort)
    {
        if (!isOfFew)
        {
            mostFlasks = isShort || !IsOpen ? mostFlasks : ProveCount();
            return;
        }

        while (IsOpen && FindsFewer(isShort ? work.Choices / ShareOfShortCount : work.Choices))
        {
            fewer = null;
        }
    }

    // Of choices that are cheaper than any of as many flasks as there are now.
    private bool FindsFewer(long steps)
    {
        if (Choices(Math.Min(plan.Cost, PackSizes.Least(problem, plan.Flasks.Count))) is not var (choices, beyond))
        {
            return false;
        }

        List<(long Cost, int[] Counts)> open = [.. choices.Where(c => !Bound.IsRefuted(c.Counts))];
        var found = fewer is null && open.Count > 0 ? Squeezed(open[^1].Counts, Math.Min(steps, WorkOfSqueezing)) : null;
        if (found is null)
        {
            fewer = new ChoiceFits(problem, open, fewer, isHard: false, stop);
            fewer.FindAny(steps);
            found = fewer.Plan;
            least = Math.Max(least, Math.Min(fewer.Least, Math.Min(beyond, plan.Cost)));
            fewest = Math.Max(fewest, PackSizes.Fewest(problem, least));
        }

        if (found is not null)
        {
            plan = found;
            search.Shrink(plan);
        }

        return found is not null;
    }
}
