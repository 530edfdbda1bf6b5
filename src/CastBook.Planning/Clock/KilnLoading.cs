using CastBook.Casting.Burnout;
using CastBook.Planning.Burning;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Floors;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Puts the flasks of a night into kiln loads: by what the floor takes, the most demanding together, stones apart.</summary>
internal sealed class KilnLoading(Shop shop, FindingList findings, bool asksPower)
{
    // Where a schedule ends at its top: memory of practice.
    private static readonly Duration UsualLastHold = Duration.FromHours(1);

    // Memory: flask temperatures are given to some 10 °C, and no kiln holds its floor closer.
    private const double TogetherDegrees = 10;

    // Less than this is not worth another load.
    private static readonly Duration LeastSaving = Duration.FromMinutes(30);

    private readonly LoadWater water = new(findings);
    private readonly InversionRates inversions = new(shop, findings);

    private readonly Length gap = KilnRoom.GapOf(shop.Settings);

    private readonly List<(Kiln Kiln, KilnFloor? Floor)> kilns = shop.Kilns.Count == 0
        ? [(new Kiln { Name = "" }, null)]
        : [.. shop.Kilns.Select(k => (k, KilnFloor.Of(k)))];

    /// <summary>The loads, in the order in which to run them: as the shop wants them, the rest as they fit.</summary>
    /// <param name="flasks">The flasks of the night.</param>
    public IReadOnlyList<KilnLoad> Plan(IReadOnlyList<FlaskPlan> flasks)
    {
        var loads = Plan(flasks, shop.Settings.KilnLoads);
        foreach (var letter in shop.Settings.KilnLoads.SelectMany(g => g).Where(l => !loads.Any(load => load.Flasks.Contains(l))))
        {
            findings.Add(Catalogue.KilnLoadsNameNoFlask.At(Subject.Setting(SettingName.KilnLoads), letter));
        }

        foreach (var load in loads)
        {
            SaySaving(load, loads, flasks);
        }

        return loads;
    }

    /// <summary>The loads when some flasks are to stand together.</summary>
    /// <param name="flasks">The flasks of the night.</param>
    /// <param name="wanted">Which, load by load; flasks that it does not name follow as they fit.</param>
    public IReadOnlyList<KilnLoad> Plan(IReadOnlyList<FlaskPlan> flasks, IReadOnlyList<IReadOnlyList<string>> wanted)
    {
        var open = flasks.Where(f => f.State < FlaskState.InKiln && f.Program is not null)
            .OrderBy(f => f.NoQuench).ThenByDescending(f => f.Program!.Total).ThenByDescending(f => f.Size.InsideDiameter)
            .ThenBy(f => FlaskLetters.Place(f.Letter)).ThenBy(f => f.Letter, StringComparer.Ordinal).ToList();
        var loads = new List<KilnLoad>();
        var turns = new KilnTurns<FlaskPlan>(
            [.. kilns.Select(k => k.Floor)], f => KilnRoom.Outside(f.Size), f => f.NoQuench, (kiln, outsides) => FloorPlan.Place(kilns[kiln].Floor!, outsides, gap, gap));
        foreach (var group in wanted)
        {
            var together = open.FindAll(f => group.Contains(f.Letter));
            open.RemoveAll(together.Contains);
            Run(turns, together, loads);
        }

        Run(turns, open, loads);
        return loads;
    }

    private void Run(KilnTurns<FlaskPlan> turns, List<FlaskPlan> open, List<KilnLoad> loads)
    {
        foreach (var (at, together, spots) in turns.Run(open))
        {
            if (at < 0)
            {
                findings.Add(Catalogue.FlaskOverKiln.At(
                    Subject.Flask(together[0].Letter), together[0].Letter, findings.Units.Length.Say(KilnRoom.Outside(together[0].Size)), findings.Units.Length.Say(gap)));
                continue;
            }

            loads.Add(Load(loads.Count + 1, kilns[at].Kiln, together, spots));
            water.Look(loads[^1], kilns[at].Kiln, together, asksPower);
        }
    }

    // The most demanding flask makes all that stand with it wait.
    private void SaySaving(KilnLoad load, IReadOnlyList<KilnLoad> loads, IReadOnlyList<FlaskPlan> flasks)
    {
        var together = flasks.Where(f => load.Flasks.Contains(f.Letter)).ToLookup(f => f.Program!.Name == load.Schedule.Name, f => f.Letter);
        if (!together[false].Any())
        {
            return;
        }

        var (slow, others) = (together[true].ToList(), together[false].ToList());
        var alone = new KilnLoading(shop, new FindingList(), asksPower: false).Plan([.. flasks.Where(f => others.Contains(f.Letter))], []).Max(l => l.Takes);
        if (load.Takes - alone >= LeastSaving)
        {
            var groups = loads.SelectMany(l => l == load ? (IReadOnlyList<string>[])[others, slow] : [l.Flasks]);
            findings.Add(Catalogue.LoadWaitsForAFlask.At(
                Subject.Setting(SettingName.KilnLoads), Say.Count(load.Number), Say.Hours(load.Takes), load.Schedule.Name,
                Say.Together(slow), Say.Together(others), Say.Hours(alone), Typed(groups)));
        }
    }

    /// <summary>Loads as the shop types them.</summary>
    /// <param name="groups">The flasks, load by load.</param>
    public static string Typed(IEnumerable<IReadOnlyList<string>> groups) => string.Join("; ", groups.Select(g => string.Join(' ', g)));

    private KilnLoad Load(int number, Kiln kiln, List<FlaskPlan> flasks, IReadOnlyList<FloorSpot> spots)
    {
        var pours = Groups(flasks);
        var cools = kiln.CoolsDegreesPerHour is > 0 and { } own ? own : ClockRules.UsualCooling;
        var schedule = flasks[0].Program!;
        if (pours[0].Temperature is { } first)
        {
            schedule = KilnProgram.PouringAt(schedule, first, UsualLastHold);
        }

        var core = new CoreLag(flasks, schedule, cools, shop.Settings.CoreTolerance);
        schedule = core.WithCoreReady(schedule, pours[0].Flasks, findings);

        var stages = KilnProgram.Of(schedule, cools);
        inversions.Look(schedule, stages);
        return new KilnLoad
        {
            Number = number,
            Kiln = kiln.Name,
            ReadsHighBy = kiln.ReadsHighBy,
            IsReadingUnread = kiln.CannotRead(ShopField.ReadsHighBy),
            Flasks = flasks.ConvertAll(f => f.Letter),
            Spots = spots,
            Outsides = flasks.ConvertAll(f => KilnRoom.Outside(f.Size)),
            Floor = spots.Count > 0 ? KilnFloor.Of(kiln) : null,
            Schedule = schedule,
            Pours = pours,
            CoolsDegreesPerHour = cools,
            Heat = core.Follow(schedule),
            Core = core,
            Takes = Duration.FromMinutes(stages.Sum(s => s.Takes.Minutes)),
        };
    }

    // The hottest first; within a group alloy by alloy, so that a crucible is changed once.
    private static List<PourGroup> Groups(List<FlaskPlan> flasks)
    {
        var groups = new List<(Temperature? Temperature, List<FlaskPlan> Flasks)>();
        foreach (var flask in flasks.OrderByDescending(f => f.FlaskTemperature?.DegreesCelsius ?? double.NegativeInfinity))
        {
            var last = groups.Count == 0 ? null : groups[^1].Temperature;
            var together = groups.Count > 0
                && (flask.FlaskTemperature is { } own ? last is { } hot && hot.DegreesCelsius - own.DegreesCelsius <= TogetherDegrees : last is null);
            if (!together)
            {
                groups.Add((flask.FlaskTemperature, []));
            }

            groups[^1].Flasks.Add(flask);
        }

        return groups.ConvertAll(g => new PourGroup(
            g.Temperature,
            [.. g.Flasks.OrderBy(f => f.Alloy, StringComparer.Ordinal).ThenBy(f => FlaskLetters.Place(f.Letter)).ThenBy(f => f.Letter, StringComparer.Ordinal).Select(f => f.Letter)]));
    }
}
