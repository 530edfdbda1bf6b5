using CastBook.Planning.Clock;

namespace CastBook.Planning.Flasks;

/// <summary>Chooses the flask sizes of all groups together by what they ask of the kiln, where the order of wishes leaves a choice.</summary>
/// <remarks>
/// From the flasks that each group takes by itself, other choices of sizes are looked at, cheapest first, as far as the wishes before
/// kiln loads allow. What asks no less of the kiln, were all of it as demanding as the group's most demanding piece, is not packed. Bounded
/// by work; no proof that there is nothing better.
/// </remarks>
/// <param name="groups">The groups.</param>
/// <param name="free">How many of each size are free.</param>
/// <param name="cost">What a flask costs.</param>
/// <param name="kiln">What flasks ask of the kiln.</param>
/// <param name="stop">Ends the search early.</param>
internal sealed class KilnChoice(IReadOnlyList<GroupPacking> groups, int[] free, FlaskCost cost, KilnNeeds kiln, CancellationToken stop)
{
    private const int MostLooks = 5000;

    // Packings to spend for every so many pieces.
    private const int PiecesToPack = 3000;
    private const int LeastPackings = 2;
    private const int MostPackings = 40;

    // Searches in vain for room on a kiln's floor to spend; each takes as long as some packings.
    private const int MostFloors = 40;

    private readonly NightWorth worth = new(cost, kiln);
    private readonly List<(int Group, int[] Counts, GroupAnswer? Answer)> packed = [];
    private int packings = (int)Math.Min(MostPackings, LeastPackings + (PiecesToPack / Math.Max(1, groups.Sum(g => g.Pieces))));

    /// <summary>The best answer found.</summary>
    /// <param name="answers">The answer of each group, by what flasks cost; they take no more of a size than are free.</param>
    public GroupAnswer[] Better(GroupAnswer[] answers)
    {
        if (Array.Exists(answers, a => a.Lost > 0) || answers.Sum(a => a.Flasks.Count) == 0)
        {
            return answers;
        }

        var choices = answers.Select((a, i) => SizeChoices.Near(a, groups[i].Sizes, free, cost)).ToList();
        var (best, before) = (answers, choices.Sum(c => c[0].BeforeKiln));
        var most = new Lazy<KilnNeed>(() => worth.Kiln(answers));
        var floors = kiln.Looks + MostFloors;
        foreach (var chosen in InTurn(choices).Skip(1))
        {
            if (chosen.Sum(c => c.BeforeKiln) > before || packings <= 0 || kiln.Looks >= floors || stop.IsCancellationRequested)
            {
                break;
            }

            var moulds = Moulds(chosen);
            if (!IsOverOwned(chosen) && kiln.Least(moulds).CompareTo(most.Value) < 0 && kiln.Of(moulds).CompareTo(most.Value) < 0
                && Packed(answers, choices, chosen) is { } better && worth.Compare(better, best) < 0)
            {
                best = better;
                most = new Lazy<KilnNeed>(() => worth.Kiln(better));
            }
        }

        return best;
    }

    // One choice of each group, cheapest together first, each once.
    private static IEnumerable<SizeChoice[]> InTurn(List<List<SizeChoice>> choices)
    {
        var open = new PriorityQueue<(int[] At, int Last), (long BeforeKiln, long Cost, int Order)>();
        open.Enqueue((new int[choices.Count], 0), (0, 0, 0));
        for (var looks = 1; looks < MostLooks && open.TryDequeue(out var next, out _);)
        {
            yield return [.. choices.Select((c, group) => c[next.At[group]])];
            for (var group = next.Last; group < choices.Count; group++)
            {
                int[] at = [.. next.At];
                if (++at[group] < choices[group].Count)
                {
                    open.Enqueue((at, group), (choices.Select((c, i) => c[at[i]].BeforeKiln).Sum(), choices.Select((c, i) => c[at[i]].Cost).Sum(), looks++));
                }
            }
        }
    }

    private bool IsOverOwned(SizeChoice[] chosen) => free.Where((count, size) => chosen.Sum(c => c.Counts[size]) > count).Any();

    private List<KilnMould> Moulds(SizeChoice[] chosen)
    {
        var moulds = new List<KilnMould>();
        for (var i = 0; i < chosen.Length; i++)
        {
            foreach (var size in groups[i].Sizes)
            {
                moulds.AddRange(Enumerable.Repeat(kiln.Mould(size, groups[i].Kind, groups[i].StonesIn), chosen[i].Counts[size.Index]));
            }
        }

        return moulds;
    }

    private GroupAnswer[]? Packed(GroupAnswer[] answers, List<List<SizeChoice>> choices, SizeChoice[] chosen)
    {
        var better = new GroupAnswer[chosen.Length];
        for (var i = 0; i < chosen.Length; i++)
        {
            if ((chosen[i] == choices[i][0] ? answers[i] : Packed(answers[i], i, chosen[i].Counts)) is not { } answer)
            {
                return null;
            }

            better[i] = answer;
        }

        return better;
    }

    // Nothing where not everything finds room in them, nor did in more of them, or where fewer get the flask they are wanted in.
    private GroupAnswer? Packed(GroupAnswer afresh, int group, int[] counts)
    {
        foreach (var (other, there, known) in packed)
        {
            if (other == group && (there.AsSpan().SequenceEqual(counts) || (known is null && !counts.Where((count, size) => count > there[size]).Any())))
            {
                return known;
            }
        }

        packings--;
        var answer = groups[group].PackInto(afresh, counts, free, stop);
        packed.Add((group, counts, answer.Lost == 0 && answer.WishesUnmet.Values.Sum() <= afresh.WishesUnmet.Values.Sum() ? answer : null));
        return packed[^1].Answer;
    }
}
