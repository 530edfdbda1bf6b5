using CastBook.Planning.Floors;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing.Staying;

/// <summary>Moves pieces of a plan back to where they stood, in flasks that cost no more: takes a few apart and fills each with its own pieces first.</summary>
/// <param name="greedy">Measures of pieces.</param>
/// <param name="filling">Fills flasks.</param>
/// <param name="hanging">Hangs what was found.</param>
/// <param name="homes">Where pieces stood.</param>
/// <param name="seed">What chance starts from.</param>
internal sealed class PackReturning(PackGreedy greedy, TreeFilling filling, ContentHanging hanging, PackHomes homes, ulong seed)
{
    // Tries without anything gained, for each flask.
    private const int Patience = 40;

    // Flasks taken apart besides that of a piece that moved and that which it stood in.
    private const int MostOthers = 3;

    // How much more a flask's own pieces may be worth to it than new ones, and these than those of other flasks.
    private static readonly long[] Fondness = [1, 2, 4, 16];

    private readonly Chance chance = new(seed);
    private readonly long[][] measures = [.. greedy.Measured()];

    /// <summary>Moves pieces back.</summary>
    /// <param name="start">The plan; it is not changed.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="stop">Ends it early.</param>
    /// <returns>The plan with most pieces where they stood, and how many these are.</returns>
    public (PackPlan Plan, int Stayed) Return(PackPlan start, long work, CancellationToken stop)
    {
        var plan = start;
        List<int> named = [.. homes.Of(start)];
        var most = homes.Stayed(start, named);
        var (best, stayed, end) = (start, most, filling.Work + work);
        for (var patience = PatienceFor(plan); patience > 0 && stayed < homes.Pieces && filling.Work < end && !stop.IsCancellationRequested; patience--)
        {
            // What stays as many may be one step from what stays more.
            if (Change(plan, named) is not var (changed, names) || homes.Stayed(changed, names) < most)
            {
                continue;
            }

            (plan, named, most) = (changed, names, homes.Stayed(changed, names));
            if (most > stayed && hanging.HangAll(plan) is { } hung)
            {
                named = [.. homes.Of(plan)];
                most = homes.Stayed(plan, named);
                (best, stayed, patience) = (hung, most, PatienceFor(plan));
            }
        }

        return (best, stayed);
    }

    private static int PatienceFor(PackPlan plan) => Patience * (plan.Flasks.Count + 1);

    private (PackPlan Plan, List<int> Named)? Change(PackPlan plan, List<int> named)
    {
        var (changed, names) = (plan.Copy(), named.ToList());
        var (sizes, slots) = (new List<int>(), new List<(int Pin, int Home)>());
        foreach (var at in Chosen(plan, named))
        {
            sizes.Add(plan.Flasks[at].Size);
            slots.Add((plan.Flasks[at].Pin, Renamed(named, at, plan.Flasks[at].Pin)));
            changed.RemoveAt(at);
            names.RemoveAt(at);
        }

        // Which of them is filled first decides, and sometimes which size is whose.
        var (first, shift, fondness) = (Draw(slots.Count), Draw(2) * Draw(slots.Count), Fondness[Draw(Fondness.Length)]);
        for (var i = 0; i < slots.Count; i++)
        {
            var (pin, home) = slots[(first + i) % slots.Count];
            if (Filled(changed, sizes[(first + i + shift) % slots.Count], pin, Values(home, fondness)) is { } flask)
            {
                changed.Add(flask);
                names.Add(home);
            }
        }

        return changed.Lost <= plan.Lost && changed.Cost <= plan.Cost ? (changed, names) : null;
    }

    // The flask of a piece that moved, the one that it stood in and some others, the last first.
    private IEnumerable<int> Chosen(PackPlan plan, List<int> named)
    {
        var moved = new List<(int Flask, int Item)>();
        for (var i = 0; i < plan.Flasks.Count; i++)
        {
            moved.AddRange(plan.Flasks[i].Content
                .Where(c => homes.IsAnywhere[c.Item] && c.Count > homes.In(named[i], c.Item)).Select(c => (i, c.Item)));
        }

        var chosen = new SortedSet<int>();
        if (moved.Count > 0)
        {
            var (flask, item) = moved[Draw(moved.Count)];
            chosen.Add(flask);
            var back = named.FindIndex(home => homes.In(home, item) > 0 && home != named[flask]);
            chosen.Add(back < 0 ? flask : back);
        }

        for (var others = Draw(MostOthers + 1); others >= 0 && chosen.Count < plan.Flasks.Count; others--)
        {
            chosen.Add(Draw(plan.Flasks.Count));
        }

        return chosen.Reverse();
    }

    // Sometimes a flask is named after one that is gone.
    private int Renamed(List<int> named, int at, int pin)
    {
        if (pin >= 0 || named.Count(home => home >= 0) == homes.Count || Draw(4) > 0)
        {
            return named[at];
        }

        int[] gone = [.. Enumerable.Range(0, homes.Count).Where(home => !named.Contains(home))];
        return gone[Draw(gone.Length)];
    }

    private PackedFlask? Filled(PackPlan plan, int size, int pin, long[] values)
    {
        (PackedFlask Flask, long Value)? best = null;
        foreach (var setting in greedy.SettingsFor(plan.Left))
        {
            if (filling.Fill(size, setting, pin, plan.Left, values) is { } filled && (best is null || filled.Value > best.Value.Value))
            {
                best = filled;
            }
        }

        return best is { Flask.Content.Length: > 0 } found ? found.Flask : null;
    }

    private long[] Values(int home, long fondness)
    {
        var values = PackGreedy.Perturbed([.. measures[Draw(measures.Length)]], chance);
        for (var i = 0; i < values.Length; i++)
        {
            values[i] *= homes.In(home, i) > 0 ? fondness * fondness : homes.IsAnywhere[i] ? 1 : fondness;
        }

        return values;
    }

    private int Draw(int below) => (int)(chance.Next() * below);
}
