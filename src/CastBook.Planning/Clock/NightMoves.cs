namespace CastBook.Planning.Clock;

/// <summary>A night that was moved to leave less outside the shop's hours.</summary>
/// <param name="Night">The night as it is then.</param>
/// <param name="Later">By how many minutes its hour was moved.</param>
/// <param name="Groups">The flasks of its kiln loads, where these are not those that were planned.</param>
internal sealed record NightMove(TimedNight Night, double Later, IReadOnlyList<IReadOnlyList<string>>? Groups);

/// <summary>How far a night may be moved.</summary>
/// <param name="Days">Within how many days an hour is looked for: half a day, or more where days differ.</param>
/// <param name="NotBefore">The earliest that its first step may be, in minutes from the hour that was asked for: nobody begins before the day it is.</param>
internal readonly record struct MoveLimits(double Days, double NotBefore);

/// <summary>Tries what could be moved so that fewer steps fall outside the shop's hours: the hour, the order of the kiln loads, a load in two.</summary>
/// <param name="timing">Puts the night on the clock.</param>
/// <param name="groups">The flasks of its loads, where these are other ones; missing for those that were planned.</param>
/// <param name="limits">How far it may be moved.</param>
internal sealed class NightMoves(NightTiming timing, MoveLimits limits, IReadOnlyList<IReadOnlyList<string>>? groups = null)
{
    private const double Quarter = 15;
    private const double HalfADay = 12 * 60;
    private const double Day = 24 * 60;

    // Other loads are too many to be looked at for longer than a weekend and the day beside it.
    private const double MostDaysOfOtherLoads = 3.5;

    // Other loads and other days are tried every two hours.
    private const double Coarse = 120;

    // A load of many flasks is cut in so many places.
    private const int MostCuts = 6;

    /// <summary>The nearest hour that leaves least outside; the night itself where none is better.</summary>
    /// <param name="night">What it must be better than.</param>
    public NightMove Best(TimedNight night)
    {
        var best = new NightMove(night, 0, null);
        var step = groups is null ? Quarter : Coarse;
        if (groups is not null)
        {
            Try(0);
        }

        for (var by = step; by <= HalfADay && best.Night.Outside > 0; by += step)
        {
            Try(-by);
            Try(by);
        }

        var days = groups is null ? limits.Days : Math.Min(limits.Days, MostDaysOfOtherLoads);
        for (var by = HalfADay + Coarse; by <= days * Day && best.Night.Outside > 0; by += Coarse)
        {
            Try(-by);
            Try(by);
        }

        return best;

        void Try(double later)
        {
            if (!timing.CanBeTyped(later))
            {
                return;
            }

            var moved = timing.Plan(later);
            if (moved.Outside < best.Night.Outside && moved.Steps[0].Begins.Minutes >= limits.NotBefore)
            {
                best = new NightMove(moved, later, groups);
            }
        }
    }

    /// <summary>Other loads of the same flasks: in another order, or one of them in two, where its pours are cut.</summary>
    /// <param name="loads">The loads as planned.</param>
    public static IEnumerable<IReadOnlyList<IReadOnlyList<string>>> OfLoads(IReadOnlyList<KilnLoad> loads)
    {
        for (var i = 1; i < loads.Count; i++)
        {
            yield return [loads[i].Flasks, .. loads.Where(l => l != loads[i]).Select(l => l.Flasks)];
        }

        for (var i = 0; i < loads.Count; i++)
        {
            var pours = loads[i].Pours.SelectMany(p => p.Flasks).ToList();
            var step = Math.Max(1, (pours.Count - 1 + MostCuts - 1) / MostCuts);
            for (var cut = step; cut < pours.Count; cut += step)
            {
                IReadOnlyList<string>[] both = [pours[..cut], pours[cut..]];
                yield return [.. loads.Take(i).Select(l => l.Flasks), .. both, .. loads.Skip(i + 1).Select(l => l.Flasks)];
            }
        }
    }
}
