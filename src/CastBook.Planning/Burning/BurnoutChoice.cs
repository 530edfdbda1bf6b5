using CastBook.Casting.Burnout;
using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Investing;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Burning;

/// <summary>Finds the burnout of a flask: the shop's own schedule that fits closest, else a shipped one.</summary>
internal sealed class BurnoutChoice(Shop shop, PowderChoice powder, Assumptions assumed, FindingList findings)
{
    // Thermometers and printed tables round 1350 °F to 732; half a degree is no excess.
    private const double RoundingDegrees = 0.5;

    // Published limit for stones cast in place: never above 850 °F.
    private static readonly Temperature StonesTop = Temperature.FromDegreesFahrenheit(850);

    // Stands for a blank limit; sorts last.
    private static readonly Length NoLimit = Length.FromKilometers(1);

    /// <summary>The schedule of a flask; nothing where none is known, which has a finding.</summary>
    /// <param name="letter">The flask's letter.</param>
    /// <param name="size">Its size.</param>
    /// <param name="kind">What is in it; resin where there is any.</param>
    /// <param name="stonesIn">Whether stones are in it.</param>
    public BurnoutSchedule? For(string letter, UsableSize size, PatternKind kind, bool stonesIn)
    {
        var use = stonesIn ? ScheduleUse.Stones : kind == PatternKind.Resin ? ScheduleUse.Resin : ScheduleUse.Wax;
        if (Own(size, use) is { } own)
        {
            var schedule = new BurnoutSchedule(own.Name, own.LoadAt, own.Stages);
            Limits(schedule, stonesIn);
            return schedule;
        }

        var flaskClass = FlaskClasses.Of(size.Size.InsideDiameter!.Value, size.Size.Height!.Value);
        if (stonesIn || !powder.IsGypsum || flaskClass is null)
        {
            findings.Add(Catalogue.ScheduleMissing.At(
                [Subject.Flask(letter), new(SubjectKind.Schedule, "")],
                letter,
                stonesIn ? BurnoutFindingWords.NothingForStones
                : powder.IsUnreadable ? BurnoutFindingWords.KindUnreadable(powder.Said)
                : !powder.IsGypsum ? BurnoutFindingWords.NotGypsum(powder.Said)
                : BurnoutFindingWords.LargerThanServed(size.Size.Name)));
            return null;
        }

        var shipped = ShippedSchedules.For(kind, flaskClass.Value);
        if (kind == PatternKind.Resin)
        {
            assumed.Once("shipped-resin", () => Catalogue.ScheduleOfMakerMissing.At(new Subject(SubjectKind.Schedule, shipped.Name)));
        }

        Limits(shipped, stonesIn);
        return shipped;
    }

    private ShopSchedule? Own(UsableSize size, ScheduleUse use) =>
        shop.Schedules
            .Where(s => s.Stages.Count > 0 && Serves(s, use)
                && (s.UpToDiameter is null || s.UpToDiameter >= size.Size.InsideDiameter)
                && (s.UpToHeight is null || s.UpToHeight >= size.Size.Height))
            .OrderBy(s => s.For == ScheduleUse.WaxAndResin ? 1 : 0)
            .ThenBy(s => s.UpToDiameter ?? NoLimit)
            .ThenBy(s => s.UpToHeight ?? NoLimit)
            .ThenByDescending(s => new BurnoutSchedule(s.Name, s.LoadAt, s.Stages).Total)
            .ThenBy(s => s.Name, StringComparer.Ordinal)
            .FirstOrDefault();

    // A schedule for anything is no schedule for stones: they need a low top.
    private static bool Serves(ShopSchedule schedule, ScheduleUse use) =>
        schedule.For == use || (schedule.For == ScheduleUse.WaxAndResin && use != ScheduleUse.Stones);

    private void Limits(BurnoutSchedule schedule, bool stonesIn)
    {
        var subject = new Subject(SubjectKind.Schedule, schedule.Name, ShopField.Target);
        var top = schedule.Top;
        if (stonesIn && Over(top, StonesTop))
        {
            assumed.Once("stones-in " + schedule.Name, () => Catalogue.StonesScheduleTooHot.At(subject, schedule.Name, assumed.Units.Temperature.Say(top)));
        }
        else if (powder.MayBeGypsum && Over(top, KilnLimits.GypsumStopAboveWithPattern))
        {
            assumed.Once("hot-schedule " + schedule.Name, () => Catalogue.ScheduleTooHot.At(
                subject, schedule.Name, assumed.Units.Temperature.Say(top), assumed.Units.Temperature.Say(KilnLimits.GypsumStopAboveWithPattern)));
        }
        else if ((powder.Row?.NeverAbove ?? (powder.MayBeGypsum ? KilnLimits.GypsumUsualTop : null)) is { } limit && Over(top, limit))
        {
            assumed.Once("hot-schedule " + schedule.Name, () => Catalogue.ScheduleAboveLimit.At(
                subject, schedule.Name, assumed.Units.Temperature.Say(top), powder.Said, assumed.Units.Temperature.Say(limit)));
        }
        else if (powder.MayBeGypsum && Over(top, KilnLimits.GypsumCheckAbove))
        {
            assumed.Once("hot-schedule " + schedule.Name, () => Catalogue.ScheduleNearBreakdown.At(
                subject, schedule.Name, assumed.Units.Temperature.Say(top), powder.Said, assumed.Units.Temperature.Say(KilnLimits.GypsumStopAboveWithPattern)));
        }
    }

    private static bool Over(Temperature top, Temperature limit) => top.DegreesCelsius > limit.DegreesCelsius + RoundingDegrees;
}
