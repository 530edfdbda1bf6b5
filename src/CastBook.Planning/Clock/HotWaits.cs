using CastBook.Planning.Findings;
using CastBook.Planning.Investing;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Whether moulds are kept in the hot kiln for longer than their powder bears.</summary>
/// <param name="shop">The shop.</param>
/// <param name="findings">Takes what is found.</param>
internal sealed class HotWaits(Shop shop, FindingList findings)
{
    // The longest hold of the published schedules, at their top.
    private static readonly Duration LongestPublishedHold = Duration.FromHours(4);

    /// <summary>Looks at the flasks of a night, from when their kiln has fallen to its first flask temperature until each of them is poured.</summary>
    /// <param name="clock">The clock.</param>
    public void Look(NightClock clock)
    {
        var powder = PowderChoice.InUse(shop);
        var limit = powder?.KeptHotAtMost ?? LongestPublishedHold;
        foreach (var load in clock.Loads)
        {
            if (clock.Steps.FirstOrDefault(s => s.Load == load.Number && s.Kind == ClockStepKind.Fall) is not { } fall)
            {
                continue;
            }

            var hot = fall.Begins + (fall.Arrives ?? Duration.Zero);
            var late = clock.Steps.Where(s => s.Load == load.Number && s is { Kind: ClockStepKind.Pour, IsDone: false } && s.Begins - hot > limit).ToList();
            if (late.Count > 0)
            {
                Say(powder, late, late[^1].Begins - hot);
            }
        }
    }

    private void Say(Investment? powder, List<ClockStep> late, Duration longest)
    {
        var flasks = ClockFindingWords.FlasksInFront(late.Count, Findings.Say.Together([.. late.Select(s => s.Flasks[0])]));
        var waits = ClockFindingWords.Wait(late.Count);
        var named = powder is null ? ClockFindingWords.ThePowder : $"\"{powder.Name}\"";
        var subject = new Subject(SubjectKind.Investment, powder?.Name ?? "", ShopField.KeptHot);
        findings.Add(powder?.KeptHotAtMost is { } limit
            ? Catalogue.KeptHotTooLong.At(subject, flasks, waits, Findings.Say.Hours(longest), named, Findings.Say.Hours(limit))
            : Catalogue.KeptHotNotKnown.At(subject, flasks, waits, Findings.Say.Hours(longest), named));
    }
}
