using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Clock;

/// <summary>The water in a load against the power of its kiln.</summary>
public sealed class LoadWaterTests
{
    private static NightPlan Plan(double? kilowatts, int flasks) => NightPlanner.Plan(Wrenmoor.Night(
        Wrenmoor.Shop with
        {
            Kilns = [new Kiln { Name = "Front kiln", Shape = KilnShape.Square, InsideWidth = Wrenmoor.Mm(500), CoolsDegreesPerHour = 100, Power = kilowatts is { } kw ? Power.FromKilowatts(kw) : null }],
            FlaskSizes = [Wrenmoor.Small with { Owned = 12 }],
            Settings = Wrenmoor.Answered,
        },
        Wrenmoor.Ring(flasks) with { Box = null, PerTree = new Dictionary<string, int> { [""] = 1 } }) with
    {
        Clock = new ClockQuestion(new DateTimeOffset(2026, 11, 25, 20, 0, 0, TimeSpan.Zero), IsPour: false, TimeZoneInfo.Utc),
    });

    // By hand: a kilogram of water takes (4.18 × 80 + 2,257) / 3,600 = 0.7198 kWh; the first stage lasts two hours.
    [Fact]
    public void Look_KilnGivesLessThanTheWaterTakes_SaysHowLongToHold()
    {
        var plan = Plan(0.3, 10);
        var kilograms = plan.Flasks.Sum(f => f.Water!.Value.Liters);
        kilograms.ShouldBeGreaterThan(1);
        var needed = kilograms * 0.71983;
        var hours = Math.Ceiling(needed / 0.3 * 4) / 4;

        plan.The("kiln-too-weak-to-dry").Seen.ShouldBe(
            FormattableString.Invariant($"The moulds of load 1 hold {Math.Round(kilograms, 1):0.##} kg of water, which takes {Math.Round(needed, 1):0.##} kWh to boil off; \"Front kiln\" gives 0.6 kWh until the end of the first stage, before any loss."));
        plan.The("kiln-too-weak-to-dry").Remedy.ShouldStartWith(FormattableString.Invariant($"Hold the first stage {Math.Floor(hours):0} h"));
        Plan(3.6, 10).Ids().ShouldNotContain("kiln-too-weak-to-dry");
    }

    [Fact]
    public void Look_PowerIsNotKnown_IsAskedForWhereThereIsMuchWater()
    {
        var plan = Plan(null, 10);

        plan.The("kiln-power-not-known").Text().ShouldBe(FormattableString.Invariant(
            $"Nothing says how strong the kiln is, and the moulds of load 1 hold {Math.Round(plan.Flasks.Sum(f => f.Water!.Value.Liters), 1):0.##} kg of water: whether it can dry them in time is not known. Type \"Power\" on the Kilns sheet, in kW, as its plate says."));
        Plan(null, 1).Ids().ShouldNotContain("kiln-power-not-known");
    }
}
