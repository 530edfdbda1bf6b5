using CastBook.Casting.Burnout;
using CastBook.Casting.Investing;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Burning;

public sealed class InversionRatesTests
{
    // Practitioners' published programmes: 250 to 300 °F an hour, so 167 °C. Quartz turns over at 573 °C, cristobalite from 200 to 270 °C.
    [Theory]
    [InlineData(167, false)]
    [InlineData(168, true)]
    public void Plan_NoLimitIsKnown_NotesWhatIsFasterThanPublished(double rate, bool isSaid)
    {
        var plan = Plan(null, null, (280, 100, 2), (732, rate, 5), (540, null, 2));

        plan.Ids().Contains("inversion-faster-than-published").ShouldBe(isSaid);
        if (isSaid)
        {
            plan.The("inversion-faster-than-published").Text().ShouldBe(
                "The schedule \"own\" goes from 280 °C to 732 °C at 168 °C/h, and quartz turns over at 573 °C; published programmes go up by 167 °C/h at most. "
                + "Look into the data sheet of your powder for its limit and type it as \"Inversion at most\" on the Investments sheet.");
        }
    }

    [Fact]
    public void Plan_FasterThanTheMakersLimit_SaysWhereAndHowFast()
    {
        var plan = Plan(120, Silica.Cristobalite, (150, 100, 2), (370, 130, 2), (732, 300, 4), (540, null, 2));

        plan.The("inversion-too-fast").Text().ShouldBe(
            "The schedule \"own\" goes from 150 °C to 370 °C at 130 °C/h, and cristobalite turns over from 200 °C to 270 °C: \"White powder\" is to go through that at no more than 120 °C/h. "
            + "Silica changes its volume there at a stroke; a mould that is taken through it too fast cracks, and the metal runs into the cracks. "
            + "Type a lower rate for that stage on the Schedules sheet, or part it so that it is slow there.");
    }

    // The kiln cools by 100 °C an hour, through 573 °C too; with quartz alone the stages below do not matter.
    [Theory]
    [InlineData(Silica.Quartz, "from 370 °C to 732 °C at 200 °C/h;from 732 °C to 540 °C at 100 °C/h")]
    [InlineData(Silica.Cristobalite, "from 20 °C to 370 °C at 200 °C/h")]
    [InlineData(null, "from 20 °C to 370 °C at 200 °C/h;from 370 °C to 732 °C at 200 °C/h;from 732 °C to 540 °C at 100 °C/h")]
    public void Plan_Limit_IsSetAgainstTheInversionsOfThatSilica(Silica? silica, string said)
    {
        var plan = Plan(90, silica, (370, 200, 2), (732, 200, 4), (540, null, 2));

        var ways = plan.Findings.Where(f => f.Id == "inversion-too-fast").Select(f => f.Seen["The schedule \"own\" goes ".Length..f.Seen.IndexOf(", and", StringComparison.Ordinal)]);
        ways.ShouldBe(said.Split(';'), ignoreOrder: true);
    }

    [Fact]
    public void Plan_StageWithoutRateAndALimit_AsksForTheRate()
    {
        var plan = Plan(150, Silica.Quartz, (370, 200, 2), (732, null, 4), (540, 100, 2));

        plan.The("inversion-rate-not-set").Text().ShouldBe(
            "The schedule \"own\" goes from 370 °C to 732 °C without a rate, and quartz turns over at 573 °C: \"White powder\" is to go through that at no more than 150 °C/h. "
            + "Without a rate the kiln goes as fast as it can; a mould that is taken through it too fast cracks, and the metal runs into the cracks. "
            + "Type a rate for that stage on the Schedules sheet.");
    }

    // Printed schedules give no rates, and are known to work.
    [Fact]
    public void Plan_PublishedScheduleAndNoLimit_SaysNothing()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Shop, Wrenmoor.Ring()));

        plan.Ids().ShouldAllBe(id => !id.StartsWith("inversion", StringComparison.Ordinal));
    }

    private static NightPlan Plan(double? limit, Silica? silica, params (double Target, double? Rate, double Hold)[] stages) => NightPlanner.Plan(Wrenmoor.Night(
        Wrenmoor.Shop with
        {
            Kilns = [new Kiln { Name = "Front kiln", CoolsDegreesPerHour = 100 }],
            Investments = [Wrenmoor.Shop.Investments[0] with { Silica = silica, InversionDegreesPerHour = limit }],
            Schedules = [new ShopSchedule { Name = "own", Stages = [.. stages.Select(s => new BurnoutStage(Wrenmoor.Celsius(s.Target), s.Rate, Duration.FromHours(s.Hold)))] }],
        },
        Wrenmoor.Ring()));
}
