using System.Globalization;
using CastBook.Planning.Packing;

namespace CastBook.Planning.Flasks;

/// <summary>Shares the flasks there are between groups that may want the same ones.</summary>
/// <remarks>
/// Each group is packed as if it were alone. Where together they want too many of a size, at least one of them must do with fewer
/// than it took: each of these ways is followed, the most promising first, until one asks for no more than there is.
/// </remarks>
internal sealed class FlaskSharing
{
    // Packings to spend for every so many pieces, and at least for each group: a night of few pieces is looked at closely.
    private const int PiecesToPack = 6000;
    private const int LeastPackings = 2;

    private readonly IReadOnlyList<GroupPacking> groups;
    private readonly int[] free;
    private readonly CancellationToken stop;
    private readonly Dictionary<string, GroupAnswer> known = new(StringComparer.Ordinal);
    private readonly HashSet<string> seen = new(StringComparer.Ordinal);
    private readonly List<Way> open = [];
    private int packings;

    /// <summary>Prepares to share.</summary>
    /// <param name="groups">The groups.</param>
    /// <param name="free">How many of each size are free.</param>
    /// <param name="stop">Ends the search early.</param>
    public FlaskSharing(IReadOnlyList<GroupPacking> groups, int[] free, CancellationToken stop)
    {
        (this.groups, this.free, this.stop) = (groups, free, stop);
        packings = (LeastPackings * groups.Count) + (int)(PiecesToPack / Math.Max(1, groups.Sum(g => g.Pieces)));
    }

    /// <summary>Shares them.</summary>
    public SharedFlasks Share()
    {
        var answers = new GroupAnswer[groups.Count];
        if (groups.Count == 1)
        {
            answers[0] = groups[0].Pack(free, inBrief: false, stop);
        }
        else
        {
            // Each is begun before any is gone on with, so that none is left out where somebody stops the search early; and how few flasks do
            // is looked at of each before how little they cost is of any.
            var begun = new BegunGroup[groups.Count];
            Parallel.For(0, groups.Count, i => begun[i] = groups[i].Begin(free, inBrief: false, stop));
            Parallel.For(0, groups.Count, i => begun[i].Count(isShort: true));
            Parallel.For(0, groups.Count, i => begun[i].Count(isShort: false));
            Parallel.For(0, groups.Count, i => answers[i] = begun[i].Finish());
        }

        var first = new Way([.. groups.Select(_ => free)], answers);
        packings = first.IsFarTooMuch(free) ? 0 : packings;
        open.Add(first);
        while (true)
        {
            var best = open.Min()!;
            if (Short(best) is not { } size)
            {
                return Shared(best);
            }

            if (packings <= 0 || stop.IsCancellationRequested)
            {
                return Shared(best.IsFarTooMuch(this.free) ? Awarded(best) : new[] { Awarded(best), InTurn(best) }.Min()!);
            }

            open.Remove(best);
            Follow(best, size);
        }
    }

    private SharedFlasks Shared(Way way) => new(way.Answers, open.Min(w => w.LeastCost), open.Min(w => w.LeastFlasks));

    private int? Short(Way way)
    {
        for (var size = 0; size < free.Length; size++)
        {
            if (way.Answers.Sum(a => a.Used(size)) > free[size])
            {
                return size;
            }
        }

        return null;
    }

    private void Follow(Way way, int size)
    {
        for (var i = 0; i < groups.Count; i++)
        {
            var used = way.Answers[i].Used(size);
            if (used == 0)
            {
                continue;
            }

            var (free, answers) = (way.Free.ToArray(), way.Answers.ToArray());
            free[i] = [.. free[i]];
            free[i][size] = used - 1;
            if (seen.Add(string.Join('|', free.Select(Key))))
            {
                answers[i] = Packed(i, free[i]);
                open.Add(new Way(free, answers));
            }
        }
    }

    // The flasks that most is lost without, whosever they are; each group packs anew what it is given.
    private Way Awarded(Way way)
    {
        var left = (int[])free.Clone();
        int[][] given = [.. groups.Select(_ => new int[free.Length])];
        var flasks = way.Answers.SelectMany((answer, group) => answer.Packed.Plan.Flasks.Select(f => (Group: group, Flask: f, Worth: Worth(answer, f))));
        foreach (var (group, flask, _) in flasks.OrderByDescending(f => f.Worth))
        {
            if (left[flask.Size] > 0)
            {
                left[flask.Size]--;
                given[group][flask.Size]++;
            }
        }

        return new Way(given, [.. given.Select((mine, group) => Packed(group, mine))]);
    }

    private static decimal Worth(GroupAnswer answer, PackedFlask flask)
    {
        var worth = 0m;
        foreach (var (item, count) in flask.Content)
        {
            worth += count * answer.Packed.Plan.Problem.Loss(item);
        }

        return worth;
    }

    // Each group in turn takes of what the ones before it left, in the order of the list and backwards.
    private Way InTurn(Way way)
    {
        var order = Enumerable.Range(0, groups.Count).ToArray();
        return new[] { Taken(order), Taken([.. order.Reverse()]) }.Min()!;

        Way Taken(int[] order)
        {
            var (left, answers) = ((int[])free.Clone(), way.Answers.ToArray());
            foreach (var i in order)
            {
                int[] mine = [.. left.Select((count, size) => Math.Min(count, way.Free[i][size]))];
                answers[i] = Packed(i, mine);
                left = [.. left.Select((count, size) => count - answers[i].Used(size))];
            }

            return new Way(way.Free, answers);
        }
    }

    private GroupAnswer Packed(int group, int[] free)
    {
        var key = string.Create(CultureInfo.InvariantCulture, $"{group}:{Key(free)}");
        if (!known.TryGetValue(key, out var answer))
        {
            known[key] = answer = groups[group].Pack(free, inBrief: true, stop);
            packings--;
        }

        return answer;
    }

    private static string Key(int[] free) => string.Join(',', free);

    // What each group may use, and its best plan with that.
    private sealed class Way(int[][] free, GroupAnswer[] answers) : IComparable<Way>
    {
        public int[][] Free => free;

        public GroupAnswer[] Answers => answers;

        // Half of them or more will stay out, whoever gives way.
        public bool IsFarTooMuch(int[] there) => Array.TrueForAll(answers, a => a.Lost > 0) && answers.Sum(a => a.Flasks.Count) >= 2 * there.Sum();

        public long LeastCost { get; } = answers.Sum(a => a.LeastCost);

        public int LeastFlasks { get; } = answers.Sum(a => a.LeastFlasks);

        private readonly decimal lost = answers.Sum(a => a.Lost);

        private readonly long cost = answers.Sum(a => a.Cost);

        public int CompareTo(Way? other) => other is null ? 1
            : lost != other.lost ? lost.CompareTo(other.lost)
            : cost.CompareTo(other.cost);
    }
}

/// <summary>The flasks of all groups.</summary>
/// <param name="Answers">The answer of each group.</param>
/// <param name="LeastCost">What any plan that places everything costs at least.</param>
/// <param name="LeastFlasks">How many flasks any such plan takes at least.</param>
internal sealed record SharedFlasks(GroupAnswer[] Answers, long LeastCost, int LeastFlasks)
{
    /// <summary>Whether it is proved that no plan is cheaper.</summary>
    public bool IsCheapest => Array.TrueForAll(Answers, a => a.Lost == 0) && Over <= 0;

    /// <summary>How much more it costs than is proved that any plan must.</summary>
    public long Over => Answers.Sum(a => a.Cost) - LeastCost;
}
