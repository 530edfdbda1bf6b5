using System.Globalization;
using CastBook.Casting.Patterns;
using CastBook.Planning.Burning;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Floors;
using CastBook.Planning.Investing;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>How many kiln loads a choice of flasks takes, and how long they burn out.</summary>
/// <remarks>
/// Loads are made as <see cref="KilnLoading"/> makes them, by itself and not by the letters under "Kiln loads", together with what is
/// under way. A load burns out as long as its longest schedule by itself; the fall to flask temperature and slow cores are left out.
/// </remarks>
internal sealed class KilnNeeds
{
    private readonly List<KilnFloor?> floors;
    private readonly Length gap;
    private readonly bool isPlain;
    private readonly BurnoutChoice burnouts;
    private readonly List<KilnMould> underWay;
    private readonly Dictionary<(int Size, PatternKind Kind, bool StonesIn), Duration> known = [];
    private readonly Dictionary<string, IReadOnlyList<FloorSpot>?> places = new(StringComparer.Ordinal);

    /// <summary>Prepares.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="powder">The investment.</param>
    /// <param name="underWay">Flasks that are under way and will stand in the kiln.</param>
    public KilnNeeds(Shop shop, PowderChoice powder, IEnumerable<FlaskWork> underWay)
    {
        floors = shop.Kilns.Count == 0 ? [null] : [.. shop.Kilns.Select(KilnFloor.Of)];
        gap = KilnRoom.GapOf(shop.Settings);
        isPlain = shop.Settings.KilnLoads.Count == 0;

        // What is missing or odd is said where the flasks are planned.
        var unsaid = new FindingList(shop.Settings.Units);
        burnouts = new BurnoutChoice(shop, powder, new Assumptions(unsaid), unsaid);
        this.underWay = [.. underWay.Select(w => Mould(w.Size, w.Kind, w.StonesIn))];
    }

    /// <summary>How often room was looked for on a floor in vain so far, which takes long.</summary>
    public int Looks { get; private set; }

    /// <summary>A flask as the kiln sees it.</summary>
    /// <param name="size">Its size.</param>
    /// <param name="kind">What is in it; resin where there is any.</param>
    /// <param name="stonesIn">Whether stones are in it.</param>
    public KilnMould Mould(UsableSize size, PatternKind kind, bool stonesIn)
    {
        if (!known.TryGetValue((size.Index, kind, stonesIn), out var total))
        {
            known[(size.Index, kind, stonesIn)] = total = burnouts.For("", size, kind, stonesIn)?.Total ?? Duration.Zero;
        }

        return new KilnMould(KilnRoom.Outside(size.Size), stonesIn, total);
    }

    /// <summary>What flasks ask of the kiln.</summary>
    /// <param name="moulds">The flasks, besides those under way.</param>
    public KilnNeed Of(IEnumerable<KilnMould> moulds)
    {
        KilnMould[] all = [.. moulds, .. underWay];
        var open = Enumerable.Range(0, all.Length)
            .OrderBy(i => all[i].StonesIn).ThenByDescending(i => all[i].Burnout).ThenByDescending(i => all[i].Outside).ThenBy(i => i).ToList();
        var (loads, total) = (0, Duration.Zero);
        foreach (var (_, together, _) in new KilnTurns<int>(floors, i => all[i].Outside, i => all[i].StonesIn, Place).Run(open))
        {
            loads++;
            total += together.Select(i => all[i].Burnout).Max();
        }

        return new KilnNeed(loads, HalfHours(total));
    }

    /// <summary>What flasks ask of the kiln at least, by the area of the floor alone.</summary>
    /// <param name="moulds">The flasks, besides those under way.</param>
    public KilnNeed Least(IEnumerable<KilnMould> moulds)
    {
        var (loads, total) = (0, Duration.Zero);
        foreach (var alike in moulds.Concat(underWay).GroupBy(m => m.StonesIn))
        {
            loads += Math.Max(1, (int)Math.Ceiling(alike.Sum(m => floors.Min(f => Share(f, m.Outside))) - 1e-6));
            total += alike.Select(m => m.Burnout).Max();
        }

        return new KilnNeed(loads, HalfHours(total));
    }

    /// <summary>Whether no flasks of the same pieces take fewer loads: what stands apart for its stones takes one each.</summary>
    /// <param name="need">What flasks ask of the kiln.</param>
    /// <param name="stonesIn">Of each alloy whether stones are in its pieces.</param>
    public bool IsFewest(KilnNeed need, IEnumerable<bool> stonesIn) =>
        isPlain && need.Loads <= stonesIn.Concat(underWay.Select(m => m.StonesIn)).Distinct().Count();

    private double Share(KilnFloor? floor, Length outside) => floor is null ? 0 : FloorPlan.Share(floor, outside, gap, gap);

    private IReadOnlyList<FloorSpot>? Place(int kiln, IReadOnlyList<Length> outsides)
    {
        var key = kiln.ToString(CultureInfo.InvariantCulture) + ":" + string.Join(',', outsides.Select(o => o.Millimeters.ToString(CultureInfo.InvariantCulture)));
        if (!places.TryGetValue(key, out var spots))
        {
            places[key] = spots = FloorPlan.Place(floors[kiln]!, outsides, gap, gap);
            Looks += spots is null && outsides.Sum(o => Share(floors[kiln], o)) <= 1 ? 1 : 0;
        }

        return spots;
    }

    private static int HalfHours(Duration total) => (int)Math.Round(total.Hours * 2);
}

/// <summary>A flask as the kiln sees it.</summary>
/// <param name="Outside">Its outside diameter.</param>
/// <param name="StonesIn">Whether stones are in it; it stands with others of that sort only.</param>
/// <param name="Burnout">How long its schedule takes; none where it has no schedule.</param>
internal readonly record struct KilnMould(Length Outside, bool StonesIn, Duration Burnout) : IComparable<KilnMould>
{
    /// <inheritdoc/>
    public int CompareTo(KilnMould other) => (StonesIn, Burnout, Outside).CompareTo((other.StonesIn, other.Burnout, other.Outside));
}
