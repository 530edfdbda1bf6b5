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
        ["HangingRules.UsualGapMm"] = "Room between pieces; hangs fewer of them.",
        ["HangingRules.UsualAngleDegrees"] = "How pieces lean; it decides how many hang, not how they are poured.",
        ["HangingRules.UsualGateDiameterMm"] = "It counts metal of the gates, and errs towards a full pour; the weighed tree replaces it.",
        ["WeighedTrees.UsualWax"] = "Within the span of waxes; it moves the charge by less than the button.",
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
        ["KilnLoading.UsualGap"] = "Wide enough for hot air round every flask; too wide only makes one more load.",
        ["KilnLoading.UsualLastHold"] = "The shortest last hold that is published; used only where a schedule ends at its top.",
        ["SetTime.Usual"] = "At the long end of what is published: a mould that sets longer is only harder.",
    };

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
