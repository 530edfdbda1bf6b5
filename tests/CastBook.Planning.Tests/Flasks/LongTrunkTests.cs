using CastBook.Planning.Findings;
using UnitsNet;

namespace CastBook.Planning.Tests.Flasks;

public sealed class LongTrunkTests
{
    // By hand: the gate stands at 4 mm, so 54.2 mm of 8 mm trunk are 2.72 ml. Stud 0.2, gate 0.05 and trunk 3.18 ml with the least button
    // of 1.5 ml are 4.93 ml × 10.4 × 1.01 = 51.75, up to 52 g; without the 2.72 ml 23.1, up to 24 g.
    [Fact]
    public void Compute_OneStud_SaysWhatCuttingTheTrunkSaves()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Stud()));

        plan.The("trunk-long").Text().ShouldBe(
            "The trunk of flask A is 63.3 mm long; its last gate needs 9 mm of that. Of the charge of 52.0 g, 28.0 g would fill the rest. "
            + "Cut the trunk there, weigh the tree and type it on the Trees sheet: the charge follows the weighing.");
        plan.The("trunk-long").Severity.ShouldBe(Severity.Note);
    }

    [Fact]
    public void Compute_FullTree_SaysNothing()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring(200)));

        plan.Flasks.ShouldNotBeEmpty();
        plan.Ids().Count(id => id == "trunk-long").ShouldBeLessThan(plan.Flasks.Count);
    }

    // The tree that was cut and weighed is what the note asked for, and no reason for a check.
    [Fact]
    public void Compare_TreeWithItsTrunkCut_IsNoCheck()
    {
        var night = Wrenmoor.Night(Wrenmoor.Stud());
        var flask = NightPlanner.Plan(night).Flasks[0];
        var cut = new TreeInHand(flask.Letter, flask.Size.Name, Mass.FromGrams(100), Mass.FromGrams(101.1), null, FlaskState.Waxed);

        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Stud() with { LastFlasks = [new(flask.Letter, 1)] }) with { Trees = [cut] });

        plan.Flasks[0].Weighed.ShouldBeTrue();
        plan.Flasks[0].Charge.ShouldBeLessThan(flask.Charge * 0.9);
        plan.Ids().ShouldNotContain("weighed-tree-differs");
        plan.Ids().ShouldNotContain("trunk-long");
    }
}
