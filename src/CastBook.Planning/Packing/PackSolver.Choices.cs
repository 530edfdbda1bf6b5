using CastBook.Planning.Packing.Fitting;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing;

/// <content>The choices of flasks between what is proved and what was found, one by one.</content>
internal sealed partial class PackSolver
{
    private const int MostChoices = 300;
    private const int MostFailed = 4;
    private const int ShareOfMetal = 2;

    // Where nothing but metal can be short: into the cheapest choice that everything fits into.
    private void ShareMetal()
    {
        if (Choices(plan.Cost) is not var (choices, beyond))
        {
            return;
        }

        var (sharing, left) = (new MetalSharing(problem, stop), work.Fewest / ShareOfMetal);
        long? open = null;
        foreach (var (cost, counts) in choices.TakeWhile(c => c.Cost < plan.Cost))
        {
            if (left <= 0)
            {
                open ??= cost;
                break;
            }

            var answer = sharing.Look(counts, left - (left / 4));
            (plan, left) = (answer.Plan ?? plan, left - answer.Work);
            open = answer.Fits is null ? open ?? cost : open;
        }

        least = Math.Max(least, open ?? Math.Min(beyond, plan.Cost));
    }

    // The few choices of flasks between bound and plan: everything fits into one or it does not. Says whether all were looked at.
    private bool Decide()
    {
        var isDone = Decide(work.Choices, isHard: false, plan.Cost);
        return IsOpen && work.HardChoices > 0 ? Decide(work.HardChoices, isHard: true, plan.Cost) : isDone;
    }

    private bool Decide(long steps, bool isHard, long below)
    {
        if (Choices(below) is not var (choices, beyond))
        {
            return false;
        }

        var fits = new ChoiceFits(problem, choices.Where(c => !Bound.IsRefuted(c.Counts)), fewer, isHard, stop);
        fits.Decide(steps);
        plan = fits.Plan is { } better && better.IsBetterThan(plan) ? better : plan;
        least = Math.Max(least, Math.Min(fits.Least, Math.Min(beyond, plan.Cost)));
        if (!isHard)
        {
            TryInTurn(fits.Open.Where(c => c.Cost < plan.Cost));
        }

        return fits.IsWhole && beyond >= plan.Cost;
    }

    // The few choices of flasks between bound and plan: from below each is refuted in turn while there is work left for proofs. Of
    // what is left open the fewest flasks are tried first, and of as many the largest, where everything is likeliest to find room.
    private void Settle()
    {
        if (Choices(plan.Cost) is not var (choices, beyond))
        {
            return;
        }

        var (refuted, end) = (0, Bound.Work + Settling);
        while (refuted < choices.Count && Refutes(choices[refuted].Counts, end))
        {
            refuted++;
        }

        least = refuted < choices.Count ? choices[refuted].Cost : Math.Max(least, beyond);
        TryInTurn(choices.Skip(refuted).Where(c => !Bound.IsRefuted(c.Counts)));
    }

    private void TryInTurn(IEnumerable<(long Cost, int[] Counts)> choices)
    {
        var until = search.Work + Settling;
        foreach (var group in choices.GroupBy(c => c.Counts.Sum()).OrderBy(g => g.Key))
        {
            if (Try([.. group.Reverse()], until))
            {
                break;
            }
        }
    }

    private bool Try(IReadOnlyList<(long Cost, int[] Counts)> choices, long end)
    {
        var (failed, found) = (0, false);
        for (var i = 0; i < choices.Count && failed < MostFailed && search.Work < end && !stop.IsCancellationRequested; i++)
        {
            var better = Squeezed(choices[i].Counts, work.Search / 16) ?? search.PackInto(choices[i].Counts, end);
            failed = better is null ? failed + 1 : 0;
            found |= better is not null;
            plan = better ?? plan;
        }

        return found;
    }

    private PackPlan? Squeezed(int[] counts, long most)
    {
        if (!PackSqueeze.Suits(problem))
        {
            return null;
        }

        int[] sizes = [.. Enumerable.Range(0, counts.Length).SelectMany(s => Enumerable.Repeat(s, counts[s]))];
        return new PackSqueeze(problem, greedy, 1).Into(sizes, [], most, stop);
    }

    // The cheapest choices, as many as are worth a look, and the cost up to which there are no others.
    private (IReadOnlyList<(long Cost, int[] Counts)> Choices, long Beyond)? Choices(long below)
    {
        for (; below > least; below = least + ((below - least) / 2))
        {
            if (PackSizes.Between(problem, least, below, MostChoices) is { } choices)
            {
                return (choices, below);
            }
        }

        return null;
    }

    private bool Refutes(int[] counts, long end)
    {
        if (Bound.IsRefuted(counts) || Bound.Work >= end)
        {
            return Bound.IsRefuted(counts);
        }

        long[] costs = [.. problem.Sizes.Select(s => s.Cost - shared)];
        var cost = counts.Select((count, size) => count * costs[size]).Sum();
        return Bound.Find(costs, counts, counts.Sum(), cost, end - Bound.Work, stop) > cost || Bound.IsRefuted(counts);
    }
}
