using CastBook.Planning.Findings;

namespace CastBook.Planning.Tests.Rows;

public sealed class ExampleRowsTests
{
    [Fact]
    public void Plan_OwnPieceBesideAnExampleOfTheShop_IsAStop()
    {
        var finding = Plan("Otter ring").The("examples-in-use");

        finding.Severity.ShouldBe(Severity.Stop);
        finding.Text().ShouldBe(
            "Pieces of your own are planned while lines called \"Example: …\" still stand there: Materials 1. "
            + "Their temperatures, schedules and powder are an invented shop's and nobody's data sheet: nothing may be poured by them. "
            + "Type your own in their place from your makers' data sheets, or run castbook clear-examples on the book.");
    }

    [Fact]
    public void Plan_ExamplesAlone_AreACheck()
    {
        var plan = Plan("Example: otter ring");

        plan.The("examples-left").Severity.ShouldBe(Severity.Check);
        plan.Ids().ShouldNotContain("examples-in-use");
    }

    private static NightPlan Plan(string name) => NightPlanner.Plan(Wrenmoor.Night(
        Wrenmoor.Shop with { Materials = [.. Wrenmoor.Shop.Materials, Wrenmoor.Wax with { Name = "Example: wax" }] },
        Wrenmoor.Ring() with { Name = name }));
}
