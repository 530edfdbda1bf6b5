using CastBook.Planning.Floors;
using CastBook.Planning.Packing.Searching;

namespace CastBook.Planning.Packing.Staying;

/// <summary>Looks for the plan that moves fewest pieces: frees some, and asks whether everything fits where all others stay.</summary>
internal sealed class PackStaying
{
    // More flasks than these are too many to ask of each way whether everything fits.
    private const int MostFlasks = 8;

    // Choices of flasks to look at, those first in which most can stay.
    private const int MostChoices = 20;

    // How many pieces are freed beside those that cannot stay. Of many that are free most stay all the same.
    private static readonly int[] Freed = [2, 4, 8, 12, 16, 24];

    // Each round looks at every choice twice with as many freed, and longer than the round before.
    private const int Draws = 2;
    private const long LeastWorkOfLook = 10_000_000;
    private const long MostWorkOfLook = 80_000_000;

    // Rounds without anything gained.
    private const int Patience = 5;

    private readonly PackProblem problem;
    private readonly PackHomes homes;
    private readonly StayingFit fit;
    private readonly ContentHanging hanging;
    private readonly CancellationToken stop;
    private readonly Chance chance;
    private readonly long end;
    private readonly List<(int Home, int Item)> pieces = [];
    private PackPlan best;
    private int moved;
    private int fewest;

    private PackStaying(PackProblem problem, PackHomes homes, ContentHanging hanging, PackPlan start, long work, ulong seed, CancellationToken stop)
    {
        (this.problem, this.homes, this.hanging, this.stop) = (problem, homes, hanging, stop);
        fit = new StayingFit(problem, stop);
        chance = new Chance(seed);
        (best, moved, end) = (start, Moved(start), work);
        for (var home = 0; home < homes.Count; home++)
        {
            for (var item = 0; item < problem.Items.Length; item++)
            {
                pieces.AddRange(Enumerable.Repeat((home, item), homes.In(home, item)));
            }
        }
    }

    /// <summary>Whether it can be asked at all: of few flasks, where every piece that fits a size has a sector and there are no wishes.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="homes">Where pieces stood.</param>
    public static bool Suits(PackProblem problem, PackHomes homes) => homes.Count <= MostFlasks && PackSqueeze.Suits(problem);

    /// <summary>The cheapest plan that moves nothing.</summary>
    /// <param name="problem">The problem; it <see cref="Suits"/>.</param>
    /// <param name="homes">Where pieces stood.</param>
    /// <param name="hanging">Hangs what was found.</param>
    /// <param name="start">A plan with everything in it and nothing moved.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="stop">Ends the search early.</param>
    public static PackPlan Cheapest(PackProblem problem, PackHomes homes, ContentHanging hanging, PackPlan start, long work, CancellationToken stop)
    {
        var staying = new PackStaying(problem, homes, hanging, start, work, 0, stop) { moved = 1, fewest = 0 };
        foreach (var choice in new StayingChoices(problem, homes).Between(homes.Count + 1, start.Cost - 1, MostChoices).TakeWhile(c => c.Least == 0))
        {
            if (!staying.IsOver && staying.Ask(choice, 0, MostWorkOfLook))
            {
                break;
            }
        }

        return staying.best;
    }

    /// <summary>Plans.</summary>
    /// <param name="problem">The problem; it <see cref="Suits"/>.</param>
    /// <param name="homes">Where pieces stood.</param>
    /// <param name="hanging">Hangs what was found.</param>
    /// <param name="start">A plan with everything in it.</param>
    /// <param name="most">What a plan may cost; it has no more flasks than the start.</param>
    /// <param name="work">How many steps to spend.</param>
    /// <param name="seed">What chance starts from.</param>
    /// <param name="stop">Ends the search early.</param>
    public static PackPlan Plan(PackProblem problem, PackHomes homes, ContentHanging hanging, PackPlan start, long most, long work, ulong seed, CancellationToken stop)
    {
        var staying = new PackStaying(problem, homes, hanging, start, work, seed, stop);
        staying.GiveBack();
        staying.Free(new StayingChoices(problem, homes).Between(start.Flasks.Count, most, MostChoices));
        return staying.best;
    }

    private bool IsOver => moved <= fewest || fit.Work >= end || stop.IsCancellationRequested;

    // Half of what moved stays after all, then a quarter and so on.
    private void GiveBack()
    {
        for (var part = Math.Max(1, moved / 2); part >= 1 && !IsOver; part /= 2)
        {
            var (sizes, away) = Now();
            for (var from = 0; from < away.Count && !IsOver;)
            {
                var fewer = away.ToList();
                fewer.RemoveRange(from, Math.Min(part, away.Count - from));
                if (Ask(sizes, fewer, LeastWorkOfLook))
                {
                    (sizes, away) = Now();
                }
                else
                {
                    from += part;
                }
            }
        }
    }

    // Whether nothing must move is asked first.
    private void Free(IReadOnlyList<StayingChoice> choices)
    {
        foreach (var choice in choices.TakeWhile(c => c.Least == 0))
        {
            Ask(choice, 0, MostWorkOfLook);
        }

        fewest = 1;

        var workOfLook = LeastWorkOfLook;
        for (var patience = Patience; patience > 0 && !IsOver; patience--)
        {
            var before = moved;
            foreach (var freed in Freed)
            {
                for (var draw = 0; draw < Draws; draw++)
                {
                    foreach (var choice in choices)
                    {
                        if (!IsOver && choice.Least < moved && Ask(choice, freed, workOfLook))
                        {
                            GiveBack();
                        }
                    }
                }
            }

            patience = moved < before ? Patience : patience;
            workOfLook = Math.Min(MostWorkOfLook, 2 * workOfLook);
        }
    }

    private bool Ask(StayingChoice choice, int freed, long work)
    {
        var free = pieces.FindAll(p => choice.IsGone(p.Home, p.Item));
        var others = pieces.FindAll(p => !choice.IsGone(p.Home, p.Item));
        for (var i = 0; i < freed && others.Count > 0; i++)
        {
            var at = (int)(chance.Next() * others.Count);
            free.Add(others[at]);
            others.RemoveAt(at);
        }

        return Ask(choice.Sizes, free, work);
    }

    // Takes what moves fewer.
    private bool Ask(int[] sizes, List<(int Home, int Item)> free, long work)
    {
        var flasks = sizes.Select((size, i) => (Size: size, Staying: Staying(i, free))).Where(f => f.Size >= 0).ToList();
        if (fit.Look(flasks, Math.Min(work, end - fit.Work)) is not { } found || Moved(found) >= moved || hanging.HangAll(found) is not { } hung)
        {
            return false;
        }

        (best, moved) = (hung, Moved(hung));
        return true;
    }

    private int[] Staying(int flask, List<(int Home, int Item)> free)
    {
        var staying = new int[problem.Items.Length];
        for (var item = 0; item < staying.Length && flask < homes.Count; item++)
        {
            staying[item] = homes.In(flask, item);
        }

        free.FindAll(p => p.Home == flask).ForEach(p => staying[p.Item]--);
        return staying;
    }

    // The sizes of the flasks that stood, less than 0 for one that is gone, then those of new ones; and the pieces that moved.
    private (int[] Sizes, List<(int Home, int Item)> Away) Now()
    {
        var named = homes.Of(best);
        int[] sizes = [.. Enumerable.Repeat(-1, homes.Count), .. best.Flasks.Where((_, i) => named[i] < 0).Select(f => f.Size)];
        var away = pieces.ToList();
        foreach (var (flask, home) in best.Flasks.Zip(named).Where(f => f.Second >= 0))
        {
            sizes[home] = flask.Size;
            foreach (var (item, count) in flask.Content)
            {
                for (var stays = Math.Min(count, homes.In(home, item)); stays > 0; stays--)
                {
                    away.Remove((home, item));
                }
            }
        }

        return (sizes, away);
    }

    private int Moved(PackPlan plan) => homes.Pieces - homes.Stayed(plan, homes.Of(plan));
}
