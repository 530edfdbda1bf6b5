using CastBook.Planning.Packing;
using CastBook.Planning.Packing.Staying;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>Chooses between leaving every piece in the flask it stands in and the plan that looks at no standing flask.</summary>
/// <param name="Answers">The answer of each group.</param>
/// <param name="Flasks">Their flasks with letters.</param>
/// <param name="Change">What the other answer would be; nothing where nothing stands or both are as good.</param>
internal sealed record Replanning(GroupAnswer[] Answers, IReadOnlyList<(string Letter, FilledFlask Flask)> Flasks, PlanChange? Change)
{
    // What saves less than this part of all investment moves nothing.
    private const double LeastPart = 0.005;

    // What a piece that moves must save to be worthwhile; a flask counts as much as a litre. It is our judgement: about a size for ten pieces.
    private const long MlForMove = 35;
    private const long MlOfFlask = 1000;

    /// <summary>Chooses.</summary>
    /// <param name="groups">The groups.</param>
    /// <param name="afresh">Their answers that look at no standing flask.</param>
    /// <param name="standing">The flasks of each group that stand in the book.</param>
    /// <param name="free">How many of each size are free.</param>
    /// <param name="worth">What flasks are worth together.</param>
    /// <param name="takenLetters">Letters that are not free.</param>
    /// <param name="choice">What the shop wants.</param>
    /// <param name="stop">Ends the search early.</param>
    public static Replanning Choose(
        IReadOnlyList<GroupPacking> groups, GroupAnswer[] afresh, IReadOnlyList<IReadOnlyList<StandingFlask>> standing, int[] free,
        NightWorth worth, IReadOnlySet<string> takenLetters, Stability choice, CancellationToken stop)
    {
        StandingFlask[] all = [.. standing.SelectMany(s => s)];
        if (all.Length == 0)
        {
            return new(afresh, Lettered(afresh), null);
        }

        var kept = Keep(groups, afresh, standing, free, stop);
        if (Lost(kept) < Lost(afresh))
        {
            return new(kept, Lettered(kept), null);
        }

        var isForced = Lost(kept) > Lost(afresh);
        if (!isForced && (worth.Compare(afresh, kept) >= 0 || !Changed(true, 0, kept, afresh, worth).IsWorthAWord(LeastPart * Inside(afresh))))
        {
            return new(kept, Lettered(kept), null);
        }

        // From the plan that may be kept, not from the one that stood before: filling again says the same.
        var wanted = isForced ? Stability.Best : choice;
        var homes = kept.Select((k, i) => wanted == Stability.Best ? groups[i].Homes(afresh[i], standing[i]) : k.Packed.Plan.Flasks).ToList();

        // A kiln load saved takes all that is saved.
        var savesLoad = worth.KilnSaved(kept, afresh).Loads > 0;
        var inBrief = wanted == Stability.Keep || (wanted == Stability.Worthwhile && !savesLoad);
        var better = Calm(groups, homes, afresh, kept, free, inBrief, isExact: false, stop);

        // Other flasks at the same cost may ask more of the kiln.
        if (!isForced && worth.KilnSaved(better, afresh).CompareTo(default) > 0 && worth.Compare(better, afresh) > 0)
        {
            better = Calm(groups, homes, afresh, kept, free, inBrief, isExact: true, stop);
        }

        var chosen = wanted switch
        {
            Stability.Keep => kept,
            Stability.Worthwhile when !savesLoad => Worthwhile(groups, homes, afresh, kept, better, free, stop),
            _ => better,
        };
        var isKept = wanted != Stability.Best && chosen.SequenceEqual(kept);
        var calmed = better;
        better = isKept ? better : chosen;
        StandingFlask[] stays = isKept ? [.. Lettered(kept).Select(f => StandingFlask.Of(f.Item1, f.Item2))] : all;
        var lettered = FlaskLettering.Of([.. better.SelectMany(a => a.Flasks)], stays, takenLetters);
        var moved = FlaskLettering.Moved(lettered, stays);
        return isForced ? new(better, lettered, moved == 0 ? null : new PlanChange(false, moved, 0, Volume.Zero))
            : isKept ? new(kept, Lettered(kept), Changed(true, moved, kept, better, worth))
            : new(better, lettered, Changed(false, moved, kept, better, worth) with { Left = Left() });

        // What is worthwhile leaves some alloys as they stand.
        PlanChange? Left()
        {
            if (wanted != Stability.Worthwhile || all.Length == 0 || calmed.SequenceEqual(chosen))
            {
                return null;
            }

            StandingFlask[] now = [.. lettered.Select(f => StandingFlask.Of(f.Item1, f.Item2))];
            var more = FlaskLettering.Moved(FlaskLettering.Of([.. calmed.SelectMany(a => a.Flasks)], now, takenLetters), now);
            var left = Changed(true, more, chosen, calmed, worth);
            return left.IsWorthAWord(Volume.Zero) ? left : null;
        }

        IReadOnlyList<(string, FilledFlask)> Lettered(GroupAnswer[] answers) => FlaskLettering.Of([.. answers.SelectMany(a => a.Flasks)], all, takenLetters);
    }

    private static PlanChange Changed(bool isKept, int moved, GroupAnswer[] kept, GroupAnswer[] other, NightWorth worth)
    {
        var (loads, halfHours) = worth.KilnSaved(kept, other);
        return new PlanChange(isKept, moved, Count(kept) - Count(other), Inside(kept) - Inside(other))
        {
            LoadsSaved = loads,
            BurnoutSaved = Duration.FromMinutes(30 * halfHours),
        };
    }

    // Each group as cheap as searched afresh, by as few moves as do, with exactly its flasks where they are what matters; those that
    // save little together stay as they are.
    private static GroupAnswer[] Calm(
        IReadOnlyList<GroupPacking> groups, List<IReadOnlyList<PackedFlask>> homes, GroupAnswer[] afresh, GroupAnswer[] kept, int[] free,
        bool inBrief, bool isExact, CancellationToken stop)
    {
        GroupAnswer[] better = [.. afresh];
        var little = LeastPart * Inside(afresh).Milliliters;
        for (var i = 0; i < better.Length; i++)
        {
            int[] mine = [.. free.Select((count, size) => isExact ? afresh[i].Used(size) : count - better.Sum(b => b.Used(size)) + better[i].Used(size))];
            var saved = (Inside([kept[i]]) - Inside([afresh[i]])).Milliliters;
            if (!isExact && saved <= little && kept[i].Flasks.Count <= afresh[i].Flasks.Count && kept[i].Lost <= afresh[i].Lost
                && mine.Select((count, size) => kept[i].Used(size) <= count).All(isFree => isFree))
            {
                better[i] = kept[i];
                little -= Math.Max(0, saved);
                continue;
            }

            better[i] = groups[i].Calm(homes[i], afresh[i], kept[i], mine, inBrief, stop);
            better[i] = isExact ? groups[i].Freed(better[i], free) : better[i];
        }

        return better;
    }

    // Each group with the flasks and the moves that count least together.
    private static GroupAnswer[] Worthwhile(
        IReadOnlyList<GroupPacking> groups, List<IReadOnlyList<PackedFlask>> homes, GroupAnswer[] afresh, GroupAnswer[] kept, GroupAnswer[] better, int[] free,
        CancellationToken stop)
    {
        GroupAnswer[] weighed = [.. better];
        for (var i = 0; i < weighed.Length; i++)
        {
            if (kept[i] == better[i])
            {
                continue;
            }

            int[] mine = [.. free.Select((count, size) => count - weighed.Sum(a => a.Used(size)) + weighed[i].Used(size))];
            var (stands, cheap, from) = (kept[i], better[i], homes[i]);
            weighed[i] = Weighed(groups[i], from, stands, cheap, mine, stop);

            // Until nothing more is worthwhile: filling again begins with what was chosen, and says the same.
            while (weighed[i] != stands && weighed[i].Packed.Plan.Cost > afresh[i].Packed.Plan.Cost)
            {
                (stands, from) = (weighed[i], weighed[i].Packed.Plan.Flasks);
                cheap = groups[i].Calm(from, afresh[i], stands, mine, inBrief: true, stop);
                weighed[i] = Weighed(groups[i], from, stands, cheap, mine, stop);
            }
        }

        return weighed;
    }

    private static GroupAnswer Weighed(
        GroupPacking group, IReadOnlyList<PackedFlask> homes, GroupAnswer stands, GroupAnswer cheap, int[] free, CancellationToken stop)
    {
        var mayStay = stands.Lost <= cheap.Lost && free.Select((count, size) => stands.Used(size) <= count).All(isFree => isFree);
        var (one, other) = mayStay && Counted(stands, homes) <= Counted(cheap, homes) ? (stands, cheap) : (cheap, stands);
        return group.Weigh(homes, one, other, free, ([.. group.Sizes.Select(Counted)], MlForMove), stop);
    }

    private static long Counted(GroupAnswer answer, IReadOnlyList<PackedFlask> homes) =>
        answer.Flasks.Sum(f => Counted(f.Size)) + (MlForMove * new PackHomes(answer.Packed.Plan.Problem, homes).Moved(answer.Packed.Plan));

    private static long Counted(UsableSize size) => MlOfFlask + (long)Math.Round(size.Inside.Milliliters);

    // What stands of the groups to come is not taken from them.
    private static GroupAnswer[] Keep(
        IReadOnlyList<GroupPacking> groups, GroupAnswer[] afresh, IReadOnlyList<IReadOnlyList<StandingFlask>> standing, int[] free, CancellationToken stop)
    {
        int[] left = [.. free.Select((count, size) => count - standing.Sum(s => Standing(s, size)))];
        var kept = new GroupAnswer[groups.Count];
        for (var i = 0; i < kept.Length; i++)
        {
            int[] mine = [.. left.Select((count, size) => Math.Max(0, count + Standing(standing[i], size)))];
            kept[i] = groups[i].Keep(afresh[i], standing[i], mine, stop);
            left = [.. left.Select((count, size) => count + Standing(standing[i], size) - kept[i].Used(size))];
        }

        return kept;
    }

    private static int Standing(IReadOnlyList<StandingFlask> standing, int size) => standing.Count(f => f.Size.Index == size);

    private static int Count(GroupAnswer[] answers) => answers.Sum(a => a.Flasks.Count);

    private static decimal Lost(GroupAnswer[] answers) => answers.Sum(a => a.Lost);

    private static Volume Inside(GroupAnswer[] answers) =>
        Volume.FromMilliliters(answers.Sum(a => a.Flasks.Sum(f => f.Size.Inside.Milliliters)));
}
