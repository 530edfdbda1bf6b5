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

    // Of schedules for the same flasks the longest is run, and one that nobody can read may be longer than any.
    private static readonly Duration NoEnd = Duration.FromDays(1000);

    /// <summary>The schedule of a flask; nothing where none is known or may be run, which has a finding.</summary>
    /// <param name="letter">The flask's letter.</param>
    /// <param name="size">Its size.</param>
    /// <param name="kind">What is in it; resin where there is any.</param>
    /// <param name="stonesIn">Whether stones are in it.</param>
    public BurnoutSchedule? For(string letter, UsableSize size, PatternKind kind, bool stonesIn)
    {
        var use = stonesIn ? ScheduleUse.Stones : kind == PatternKind.Resin ? ScheduleUse.Resin : ScheduleUse.Wax;
        var own = Closest(shop.Schedules.Where(s => s.Stages.Count > 0), size, use);
        if (powder.Row?.CannotRead(ShopField.NeverAbove) == true || Closest([.. shop.UnreadSchedules, .. own is null ? [] : (ShopSchedule[])[own]], size, use) != own)
        {
            // Who read it has said so. No usual number stands in for one of the shop's own.
            return null;
        }

        if (own is not null)
        {
            return Runnable(letter, new BurnoutSchedule(own.Name, own.LoadAt, own.Stages), stonesIn);
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

        return Runnable(letter, shipped, stonesIn);
    }

    private ShopSchedule? Closest(IEnumerable<ShopSchedule> schedules, UsableSize size, ScheduleUse use) =>
        schedules
            .Where(s => Serves(s, use)
                && (s.UpToDiameter is null || s.UpToDiameter >= size.Size.InsideDiameter)
                && (s.UpToHeight is null || s.UpToHeight >= size.Size.Height))
            .OrderBy(s => s.CannotRead(ShopField.For) ? -1 : s.For == ScheduleUse.WaxAndResin ? 1 : 0)
            .ThenBy(s => LimitOf(s, ShopField.UpToDiameter, s.UpToDiameter))
            .ThenBy(s => LimitOf(s, ShopField.UpToHeight, s.UpToHeight))
            .ThenByDescending(s => shop.UnreadSchedules.Contains(s) ? NoEnd : new BurnoutSchedule(s.Name, s.LoadAt, s.Stages).Total)
            .ThenBy(s => s.Name, StringComparer.Ordinal)
            .FirstOrDefault();

    // One that cannot be read may be the closest of all.
    private static Length LimitOf(ShopSchedule schedule, string field, Length? limit) => schedule.CannotRead(field) ? Length.Zero : limit ?? NoLimit;

    // A schedule for anything is no schedule for stones: they need a low top. One for nobody knows what may be for these.
    private static bool Serves(ShopSchedule schedule, ScheduleUse use) =>
        schedule.CannotRead(ShopField.For) || schedule.For == use || (schedule.For == ScheduleUse.WaxAndResin && use != ScheduleUse.Stones);

    // A programme that must not be run is not handed on, or somebody would dial it in.
    private BurnoutSchedule? Runnable(string letter, BurnoutSchedule schedule, bool stonesIn)
    {
        var subject = new Subject(SubjectKind.Schedule, schedule.Name, ShopField.Target);
        var top = schedule.Top;
        if (stonesIn && Over(top, StonesTop))
        {
            findings.Add(Catalogue.StonesScheduleTooHot.At([subject, Subject.Flask(letter)], schedule.Name, assumed.Units.Temperature.Say(top)));
            return null;
        }

        if (powder.MayBeGypsum && Over(top, KilnLimits.GypsumStopAboveWithPattern))
        {
            findings.Add(Catalogue.ScheduleTooHot.At(
                [subject, Subject.Flask(letter)],
                schedule.Name, assumed.Units.Temperature.Say(top), assumed.Units.Temperature.Say(KilnLimits.GypsumStopAboveWithPattern)));
            return null;
        }

        if ((powder.Row?.NeverAbove ?? (powder.MayBeGypsum ? KilnLimits.GypsumUsualTop : null)) is { } limit && Over(top, limit))
        {
            assumed.Once("hot-schedule " + schedule.Name, () => Catalogue.ScheduleAboveLimit.At(
                subject, schedule.Name, assumed.Units.Temperature.Say(top), powder.Said, assumed.Units.Temperature.Say(limit)));
        }
        else if (powder.MayBeGypsum && Over(top, KilnLimits.GypsumCheckAbove))
        {
            assumed.Once("hot-schedule " + schedule.Name, () => Catalogue.ScheduleNearBreakdown.At(
                subject, schedule.Name, assumed.Units.Temperature.Say(top), powder.Said, assumed.Units.Temperature.Say(KilnLimits.GypsumStopAboveWithPattern)));
        }

        return schedule;
    }

    private static bool Over(Temperature top, Temperature limit) => top.DegreesCelsius > limit.DegreesCelsius + RoundingDegrees;
}
