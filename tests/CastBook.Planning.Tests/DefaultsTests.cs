using System.Reflection;
using CastBook.Casting.Investing;
using CastBook.Casting.Metals;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Tests;

/// <summary>Every number that stands in where a shop has said nothing, with the reason why it cannot hurt; and what is never stood in for.</summary>
public sealed class DefaultsTests
{
    private static readonly Dictionary<string, string> Reasons = new(StringComparer.Ordinal)
    {
        ["Button.UsualShare"] = "A larger button means a fuller pour; the cup's limit stops it from running over.",
        ["Button.UsualLeast"] = "As the share: it only adds metal, and the cup limits it.",
        ["Charge.UsualLoss"] = "It only adds metal; too little loss costs a percent of the button.",
        ["WallClearance.Usual"] = "The middle of what casters keep; a shop's own value under the least is checked.",
        ["PowderAndWater.UsualPowderDensity"] = "It decides how much powder, within some percent, and a larger waste is added; never how hot or how long.",
        ["PowderAndWater.UsualWaterPer100"] = "Inside what every maker prints; noted, and the maker's value wins.",
        ["MixSteps.Usual"] = "Steps of a mix that end well before gloss-off; longer ones of the shop's own only make mixes smaller.",
        ["MixSteps.UsualWorkingTime"] = "At the short end of what is published; a mix planned shorter than its powder allows loses nothing.",
        ["MixRules.UsualFill"] = "Half a bowl: slurry that rises under vacuum stays in it.",
        ["WrittenMass.UsualStep"] = "Rounds a charge up, by a pennyweight at most, and powder by 6 g at most, its water with it.",
        ["FlaskCost.Usual"] = "Fewest flasks, then least investment, fewest kiln loads, least metal in trees, like thicknesses: it chooses among plans of which each can be poured.",
        ["HangingRules.UsualGapMm"] = "Room between pieces; hangs fewer of them.",
        ["HangingRules.UsualAngleDegrees"] = "How pieces lean; it decides how many hang, not how they are poured.",
        ["HangingRules.UsualGateDiameterMm"] = "It counts metal of the gates, and errs towards a full pour; the weighed tree replaces it.",
        ["WeighedTrees.UsualWax"] = "Within the span of waxes; it moves the charge by less than the button.",
        ["ProgramStage.UsualRiseDegreesPerHour"] = "Only the estimate of the core goes by it, which lengthens holds and shortens none; the Kiln sheet says that it is from memory.",
        ["RemeltLimit.UsualFreshAtLeast"] = "Half fresh is what every casting text asks for at least; it only buys more metal.",
        ["ClockRules.UsualBaseOff"] = "Minutes of work only move the clock; set, burnout and holds do not depend on them.",
        ["ClockRules.UsualCleanUp"] = "Minutes of work only move the clock; set, burnout and holds do not depend on them.",
        ["ClockRules.UsualCooling"] = "Holds count from arrival, so a kiln that cools slower only pours later than the plan says, and a note asks for the shop's own.",
        ["ClockRules.UsualLoading"] = "Minutes of work only move the clock; set, burnout and holds do not depend on them.",
        ["ClockRules.UsualPouring"] = "Minutes of work only move the clock; the wait before the quench counts from the pour.",
        ["ClockRules.UsualQuenching"] = "Minutes of work only move the clock; set, burnout and holds do not depend on them.",
        ["ClockRules.UsualWeighing"] = "Minutes of work only move the clock; set, burnout and holds do not depend on them.",
        ["CoreLag.UsualDegrees"] = "It only lengthens the last hold; a shop's own is asked for on the Shop sheet.",
        ["CoreLag.UsualDegreesAtTop"] = "It only makes a check, at what the published holds reach; no hold is shortened by it.",
        ["KilnRoom.UsualGap"] = "Wide enough for hot air round every flask; too wide only makes one more load.",
        ["KilnLoading.UsualLastHold"] = "The shortest last hold that is published; used only where a schedule ends at its top.",
        ["SetTime.Usual"] = "At the long end of what is published: a mould that sets longer is only harder.",
    };

    // Every setting that may stay empty, and why the plan may go on without it.
    private static readonly Dictionary<string, string> EmptySettings = new(StringComparer.Ordinal)
    {
        [SettingName.WeightsInclude] = "Gates are added, which errs towards a full pour.",
        [SettingName.SupportsShare] = "Weighed whole, a pattern only asks for more metal.",
        [SettingName.LearnFromCastings] = "Nothing is corrected; metal as reckoned is about 3 % above the casting.",
        [SettingName.QuantityWhereNone] = "It is asked.",
        [SettingName.AlloyWhereNone] = "It is asked.",
        [SettingName.SprueWaxDensity] = "See WeighedTrees.UsualWax.",
        [SettingName.Night] = "The next day is said, and nothing of another is planned.",
        [SettingName.SheetsToFill] = "Which list was taken is said.",
        [SettingName.OrderOfWishes] = "See FlaskCost.Usual.",
        [SettingName.WhenLittleChanged] = "What stands stays; nothing that was built is moved either way.",
        [SettingName.ButtonShare] = "See Button.UsualShare.",
        [SettingName.ButtonAtLeast] = "See Button.UsualLeast.",
        [SettingName.MeltLoss] = "See Charge.UsualLoss.",
        [SettingName.FreshAtLeast] = "See RemeltLimit.UsualFreshAtLeast.",
        [SettingName.MetalBoughtIn] = "The unit stands beside every number.",
        [SettingName.MetalIn] = "The unit stands beside every number.",
        [SettingName.PowderIn] = "The unit stands beside every number.",
        [SettingName.WaterIn] = "The unit stands beside every number.",
        [SettingName.TemperaturesIn] = "The unit stands beside every number, and the Kiln sheet has both.",
        [SettingName.LengthsIn] = "The unit stands beside every number.",
        [SettingName.ChargeStep] = "See WrittenMass.UsualStep.",
        [SettingName.PowderStep] = "See WrittenMass.UsualStep.",
        [SettingName.MixingBowl] = "No mixes are planned.",
        [SettingName.BowlFill] = "See MixRules.UsualFill.",
        [SettingName.MixingTakes] = "See MixSteps.Usual.",
        [SettingName.BowlVacuum] = "See MixSteps.Usual.",
        [SettingName.FlaskFilling] = "See MixSteps.Usual.",
        [SettingName.FlaskVacuum] = "See MixSteps.Usual.",
        [SettingName.GlossOffMargin] = "See MixSteps.Usual.",
        [SettingName.SteamDewax] = "No steam is planned.",
        [SettingName.KeptDamp] = "An open mould keeps a day: the shorter time is the safe one.",
        [SettingName.StartAt] = "The clock counts without times of day.",
        [SettingName.PourAt] = "As early as set and burnout allow, and these are never shortened.",
        [SettingName.WeighingTakes] = "See ClockRules.UsualWeighing.",
        [SettingName.CleanUpTakes] = "See ClockRules.UsualCleanUp.",
        [SettingName.BaseOffTakes] = "See ClockRules.UsualBaseOff.",
        [SettingName.LoadingTakes] = "See ClockRules.UsualLoading.",
        [SettingName.PouringTakes] = "See ClockRules.UsualPouring.",
        [SettingName.QuenchingTakes] = "See ClockRules.UsualQuenching.",
        [SettingName.AtWorkFrom] = "Only hours of people, which move no hold.",
        [SettingName.AtWorkUntil] = "Only hours of people, which move no hold.",
        [SettingName.HoursOfWork] = "Only hours of people, which move no hold.",
        [SettingName.ClosedOn] = "Somebody may be there every day; steps of hands outside hours are marked all the same.",
        [SettingName.TwoPeopleFor] = "Only hours of people, which move no hold.",
        [SettingName.SecondFrom] = "Only hours of people, which move no hold.",
        [SettingName.SecondUntil] = "Only hours of people, which move no hold.",
        [SettingName.StayWith] = "Only the plan's hours of people; every plan says never to leave a kiln alone.",
        [SettingName.KilnLoads] = "A load runs the most demanding schedule among its flasks.",
        [SettingName.CoreTolerance] = "See CoreLag.UsualDegrees and CoreLag.UsualDegreesAtTop.",
        [SettingName.GapInKiln] = "See KilnRoom.UsualGap.",
        [SettingName.GapBetweenPieces] = "See HangingRules.UsualGapMm.",
        [SettingName.GateLength] = "A gate of at most 7 mm feeds while it is liquid.",
        [SettingName.GateDiameter] = "See HangingRules.UsualGateDiameterMm.",
        [SettingName.GateAngle] = "See HangingRules.UsualAngleDegrees.",
    };

    // Without these nothing is worked out that needs them.
    private static readonly string[] AskedSettings =
        [SettingName.WeightsAreOf, SettingName.PatternMaterial, SettingName.PatternDensity, SettingName.CastingMethod, SettingName.CrucibleHolds, SettingName.Investment];

    [Fact]
    public void Settings_EveryOne_IsAskedOrHasAReasonToStayEmpty()
    {
        SettingGuide.All.Where(g => g.WhatFor.Contains("Empty: ", StringComparison.Ordinal)).Select(g => g.Name).ShouldBe(EmptySettings.Keys, ignoreOrder: true);
        SettingGuide.All.Select(g => g.Name).Except(EmptySettings.Keys).ShouldBe(AskedSettings, ignoreOrder: true);
        EmptySettings.Values.ShouldAllBe(reason => reason.EndsWith('.'));
        EmptySettings.Values.Where(reason => reason.StartsWith("See ", StringComparison.Ordinal))
            .SelectMany(reason => reason[4..^1].Split(" and ")).ShouldAllBe(usual => Reasons.ContainsKey(usual));
    }

    [Fact]
    public void Usual_EveryOneInTheHouse_HasAReason()
    {
        var found = new[] { typeof(MixSteps).Assembly, typeof(NightPlanner).Assembly }
            .SelectMany(a => a.GetTypes())
            .SelectMany(t => t.GetMembers(BindingFlags.Static | BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
                .Where(m => m is FieldInfo or PropertyInfo or MethodInfo { IsSpecialName: false } && m.Name.StartsWith("Usual", StringComparison.Ordinal))
                .Select(m => $"{t.Name}.{m.Name}"));

        found.Order(StringComparer.Ordinal).ShouldBe(Reasons.Keys.Order(StringComparer.Ordinal));
        Reasons.Values.ShouldAllBe(reason => reason.EndsWith('.'));
    }

    // Each makes one thing unknown that could hurt somebody or ruin the night.
    public static TheoryData<string, string> NeverStoodInFor => new()
    {
        { "pour temperature", "metal-temperature-missing" },
        { "flask temperature", "flask-temperature-missing" },
        { "quench", "quench-missing" },
        { "casting method", "casting-method-unknown" },
        { "crucible", "crucible-unknown" },
        { "schedule", "schedule-missing" },
        { "weights", "weight-meaning-unknown" },
        { "pattern density", "pattern-density-missing" },
        { "alloy density", "alloy-density-missing" },
        { "mixing bowl", "mixing-bowl-not-known" },
        { "flasks", "flasks-not-known" },
    };

    [Theory]
    [MemberData(nameof(NeverStoodInFor))]
    public void Unknown_ThatCouldHurt_IsAskedForAndLeftOpen(string what, string finding)
    {
        var night = Wrenmoor.Night(Without(what), Wrenmoor.Ring());

        var plan = NightPlanner.Plan(what == "weights" ? night with { WeightsAreOf = WeightMeaning.Unknown } : night);

        plan.Ids().ShouldContain(finding);
        var flask = plan.Flasks.SingleOrDefault();
        var isOpen = what switch
        {
            "pour temperature" => flask is { MetalTemperature: null },
            "flask temperature" => flask is { FlaskTemperature: null },
            "quench" => flask is { QuenchAfter: null },
            "schedule" => flask is { Burnout: null },
            "mixing bowl" => plan.Mixes.Count == 0 && flask is { Mix: null },
            "weights" or "pattern density" or "alloy density" => plan.Pieces[0].MetalEach is null && flask is null,
            _ => flask is null,
        };
        isOpen.ShouldBeTrue();
    }

    private static Shop Without(string what)
    {
        var (shop, alloy, settings) = (Wrenmoor.Shop, Wrenmoor.Silver.Alloy, Wrenmoor.Answered);
        return what switch
        {
            "pour temperature" => Of(alloy with { MetalTemperature = null }),
            "flask temperature" => Of(alloy with { FlaskTemperatureOrdinary = null }),
            "quench" => Of(alloy with { QuenchAfter = QuenchWaits.None }),
            "alloy density" => Of(alloy with { Density = null }),
            "casting method" => shop with { Settings = settings with { CastingMethod = null } },
            "mixing bowl" => shop with { Settings = settings with { MixingBowl = null } },
            "crucible" => shop with { Crucibles = [] },
            "flasks" => shop with { FlaskSizes = [] },
            "schedule" => shop with { FlaskSizes = [Wrenmoor.Size("150 × 250", 150, 250, 1)] },
            "pattern density" => shop with { Materials = [Wrenmoor.Wax with { Density = null }] },
            _ => shop,
        };

        Shop Of(Alloy changed) => shop with { Alloys = [Wrenmoor.Silver with { Alloy = changed }] };
    }
}
