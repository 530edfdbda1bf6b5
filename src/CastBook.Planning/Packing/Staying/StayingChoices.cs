namespace CastBook.Planning.Packing.Staying;

/// <summary>Choices of sizes and settings for flasks that stood, by how many pieces must leave them.</summary>
/// <param name="problem">The problem.</param>
/// <param name="homes">The flasks that stood.</param>
internal sealed class StayingChoices(PackProblem problem, PackHomes homes)
{
    // Flasks of another size than before, at most, how many choices are looked at, and ways of giving settings to one.
    private const int MostChanged = 4;
    private const int MostLooks = 20_000;
    private const int MostLists = 256;

    private readonly int[][] least = [.. Enumerable.Range(0, homes.Count).Select(h => Enumerable.Range(0, problem.Sizes.Length).Select(s => Leaving(problem, homes, h, s)).ToArray())];

    /// <summary>The choices that could take everything.</summary>
    /// <param name="flasks">How many flasks there may be.</param>
    /// <param name="cost">What they may cost.</param>
    public IReadOnlyList<StayingChoice> Between(int flasks, long cost)
    {
        var (found, looks) = (new List<StayingChoice>(), 0);
        int[] sizes = [.. Enumerable.Range(0, homes.Count).Select(homes.SizeOf), -1];
        for (var changes = 0; changes <= MostChanged; changes++)
        {
            Change(0, changes);
        }

        return found;

        void Change(int from, int changes)
        {
            if (changes == 0 || ++looks > MostLooks)
            {
                if (Choice([.. sizes], flasks, cost) is { } choice)
                {
                    found.Add(choice);
                }

                return;
            }

            for (var i = from; i < sizes.Length; i++)
            {
                var before = sizes[i];
                for (var size = -1; size < problem.Sizes.Length; size++)
                {
                    if (size != before)
                    {
                        sizes[i] = size;
                        Change(i + 1, changes - 1);
                    }
                }

                sizes[i] = before;
            }
        }
    }

    /// <summary>The ways to give settings to the flasks of a choice, so that every piece may hang in one of them.</summary>
    /// <param name="choice">The choice.</param>
    public IEnumerable<SetChoice> Set(StayingChoice choice)
    {
        IEnumerable<(int Home, int Size, int Setting)[]> lists = [[]];
        for (var i = 0; i < choice.Sizes.Length; i++)
        {
            var (home, size) = (i < homes.Count ? i : -1, choice.Sizes[i]);
            lists = size < 0 ? lists : lists.SelectMany(list => problem.NeededSettings.Select(s => ((int, int, int)[])[.. list, (home, size, s)]));
        }

        return lists.Take(MostLists).Where(TakesAll).Select(list => new SetChoice(choice, list, Math.Max(choice.Least, LeavingAt(list))));
    }

    private bool TakesAll((int Home, int Size, int Setting)[] flasks) =>
        Enumerable.Range(0, problem.Items.Length).All(i => Array.Exists(flasks, f => problem.Fits(i, f.Size) && problem.Items[i].MayBeCastAt(f.Setting)));

    // Those of flasks that are gone, and those that may not be cast at the flask's setting.
    private int LeavingAt((int Home, int Size, int Setting)[] flasks) => homes.Pieces - flasks.Sum(f => Enumerable.Range(0, problem.Items.Length)
        .Sum(i => problem.Fits(i, f.Size) && problem.Items[i].MayBeCastAt(f.Setting) ? homes.In(f.Home, i) : 0));

    private StayingChoice? Choice(int[] sizes, int flasks, long most)
    {
        int[] there = [.. sizes.Where(s => s >= 0)];
        var cost = there.Sum(s => problem.Sizes[s].Cost);
        return there.Length == 0 || there.Length > flasks || cost > most || there.GroupBy(s => s).Any(g => g.Count() > problem.Sizes[g.Key].Free)
            || there.Sum(s => problem.Sizes[s].Metal) < problem.Items.Sum(i => i.Quantity * i.Metal)
            ? null
            : new StayingChoice(sizes, cost, Enumerable.Range(0, homes.Count).Sum(h => sizes[h] < 0 ? homes.PiecesOf(h) : least[h][sizes[h]]), problem, homes);
    }

    // The largest leave first, by metal or by room.
    private static int Leaving(PackProblem problem, PackHomes homes, int home, int size)
    {
        var there = Enumerable.Range(0, problem.Items.Length).Where(i => homes.In(home, i) > 0).ToList();
        var fit = there.Where(i => problem.Fits(i, size)).SelectMany(i => Enumerable.Repeat(i, homes.In(home, i))).ToList();
        var (metals, areas) = (fit.Select(i => problem.Metals[i]), fit.Select(i => (long)problem.Shapes[size][i].Theta * problem.Shapes[size][i].Pitch));
        return homes.PiecesOf(home) - fit.Count + Math.Max(TooMany(metals, problem.Sizes[size].Metal), TooMany(areas, (long)PackShape.Turn * problem.Sizes[size].Rod));
    }

    private static int TooMany(IEnumerable<long> amounts, long room)
    {
        var over = amounts.Sum() - room;
        return amounts.OrderDescending().TakeWhile(amount => over > 0 && (over -= amount) > long.MinValue).Count();
    }
}

/// <summary>A choice of sizes for flasks that stood.</summary>
/// <param name="Sizes">Their sizes, less than 0 for one that is gone; then the size of a new one.</param>
/// <param name="Cost">What they cost.</param>
/// <param name="Least">How many pieces must move at least.</param>
/// <param name="Problem">The problem.</param>
/// <param name="Homes">The flasks that stood.</param>
internal sealed record StayingChoice(int[] Sizes, long Cost, int Least, PackProblem Problem, PackHomes Homes)
{
    /// <summary>The sizes of the flasks that there are.</summary>
    public IEnumerable<int> There => Sizes.Where(s => s >= 0);

    /// <summary>The size of each flask, and how many of each piece stood in it.</summary>
    public IReadOnlyList<(int Size, int[] Staying)> Staying => [.. Sizes.Select((size, i) => (size, StoodIn(i))).Where(f => f.size >= 0)];

    private int[] StoodIn(int flask) => [.. Problem.Items.Select((_, item) => flask < Homes.Count ? Homes.In(flask, item) : 0)];
}

/// <summary>A choice of sizes, with settings.</summary>
/// <param name="Sizes">The sizes.</param>
/// <param name="Flasks">Which flask each was, less than 0 for a new one; its size and its setting.</param>
/// <param name="Least">How many pieces must move at least.</param>
internal sealed record SetChoice(StayingChoice Sizes, (int Home, int Size, int Setting)[] Flasks, int Least);
