namespace CastBook.Planning.Packing.Fitting;

/// <summary>Decides which choice of flasks is the cheapest that everything fits into: goes through them, cheapest first, again and again with more work.</summary>
internal sealed class ChoiceFits
{
    // Ways of giving settings to the flasks of a choice, at most.
    private const int MostLists = 60;

    // In each turn those that are still open are looked at so much longer.
    private const int Turns = 4;
    private const int Longer = 8;
    private const int LongerIfHard = 4;

    private readonly PackProblem problem;
    private readonly List<Choice> choices;
    private readonly int longer;
    private readonly CancellationToken stop;

    /// <summary>Prepares.</summary>
    /// <param name="problem">The problem; every piece that fits a size has a sector, and there are no wishes.</param>
    /// <param name="choices">The choices that are not refuted, cheapest first.</param>
    /// <param name="before">What was asked of some of them before, or nothing.</param>
    /// <param name="isHard">Whether short looks did not decide.</param>
    /// <param name="stop">Ends it early.</param>
    public ChoiceFits(PackProblem problem, IEnumerable<(long Cost, int[] Counts)> choices, ChoiceFits? before, bool isHard, CancellationToken stop)
    {
        (this.problem, this.stop, longer) = (problem, stop, isHard ? LongerIfHard : Longer);
        this.choices = [.. choices.Select(c => before?.choices.Find(b => b.Counts.SequenceEqual(c.Counts)) ?? Afresh(c.Cost, c.Counts))];
    }

    /// <summary>The trees of the cheapest choice that everything was found to fit into.</summary>
    public PackPlan? Plan { get; private set; }

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>What is not refuted costs at least so much; the largest number where everything is.</summary>
    public long Least => choices.Find(c => !c.IsRefuted)?.Cost ?? long.MaxValue;

    /// <summary>The choices that are not refuted, cheapest first.</summary>
    public IEnumerable<(long Cost, int[] Counts)> Open => choices.Where(c => !c.IsRefuted).Select(c => (c.Cost, c.Counts));

    /// <summary>Whether all ways of giving settings to flasks are looked at.</summary>
    public bool IsWhole => choices.TrueForAll(c => c.IsWhole);

    /// <summary>Decides, or gives up.</summary>
    /// <param name="work">How many steps to spend.</param>
    public void Decide(long work)
    {
        var most = FirstLook(work);
        for (var turn = 0; turn < Turns && Least < (Plan?.Cost ?? long.MaxValue); turn++, most *= longer)
        {
            foreach (var choice in choices.TakeWhile(c => Plan is null || c.Cost < Plan.Cost))
            {
                LookAtAll(choice, most, work);
            }
        }
    }

    /// <summary>Decides whether everything fits into any of them, or gives up. What costs most, where that is likeliest, is looked at first.</summary>
    /// <param name="work">How many steps to spend.</param>
    public void FindAny(long work)
    {
        var most = FirstLook(work);
        for (var turn = 0; turn < Turns; turn++, most *= longer)
        {
            for (var i = choices.Count - 1; i >= 0 && Plan is null; i--)
            {
                LookAtAll(choices[i], most, work);
            }
        }
    }

    private long FirstLook(long work)
    {
        for (var turn = 1; turn < Turns; turn++)
        {
            work /= longer;
        }

        return work;
    }

    private void LookAtAll(Choice choice, long most, long work)
    {
        for (var i = choice.Lists.Count - 1; i >= 0 && Work < work && !stop.IsCancellationRequested; i--)
        {
            Look(choice, i, Math.Min(most, work - Work));
        }
    }

    private void Look(Choice choice, int list, long most)
    {
        var answer = choice.Lists[list].Look(most);
        Work += answer.Work;
        if (answer.Fits == false)
        {
            choice.Lists.RemoveAt(list);
        }
        else if (answer.Plan is { } plan && (Plan is null || plan.IsBetterThan(Plan)))
        {
            Plan = plan;
        }
    }

    private Choice Afresh(long cost, int[] counts) => new(cost, counts, [.. Lists(counts).Select(l => new GivenFlasks(problem, l, stop))]);

    private List<List<(int Size, int Setting)>> Lists(int[] counts)
    {
        int[] sizes = [.. Enumerable.Range(0, counts.Length).SelectMany(s => Enumerable.Repeat(s, counts[s]))];
        var (lists, list) = (new List<List<(int Size, int Setting)>>(), new List<(int Size, int Setting)>());
        Give(0);
        return lists;

        // Flasks of one size are the same whichever comes first.
        void Give(int from)
        {
            if (lists.Count > MostLists)
            {
                return;
            }

            if (from == sizes.Length)
            {
                lists.Add([.. list]);
                return;
            }

            foreach (var setting in problem.NeededSettings.Where(s => from == 0 || sizes[from] != sizes[from - 1] || s >= list[^1].Setting))
            {
                list.Add((sizes[from], setting));
                Give(from + 1);
                list.RemoveAt(from);
            }
        }
    }

    private sealed record Choice(long Cost, int[] Counts, List<GivenFlasks> Lists)
    {
        public bool IsWhole { get; } = Lists.Count <= MostLists;

        public bool IsRefuted => IsWhole && Lists.Count == 0;
    }
}
