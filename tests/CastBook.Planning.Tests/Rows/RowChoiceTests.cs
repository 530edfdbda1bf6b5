using CastBook.Planning.Shops;

namespace CastBook.Planning.Tests.Rows;

public sealed class RowChoiceTests
{
    [Fact]
    public void Of_DoneAndLeftOutRows_AreLeftAloneWithANoteEach()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Ring(), Wrenmoor.Ring() with { Done = true }, Wrenmoor.Ring() with { Done = true, LeaveOut = true }, Wrenmoor.Ring() with { LeaveOut = true }));

        plan.Pieces.Select(p => p.Status).ShouldBe([PieceStatus.Planned, PieceStatus.Done, PieceStatus.LeftOut, PieceStatus.LeftOut]);
        plan.The("rows-done").Text().ShouldBe("Left alone: 1 row marked done. Clear \"Done\" to plan them again.");
        plan.The("rows-left-out").Text().ShouldBe("Left alone: 2 rows marked to be left out. Clear \"Leave out\" to plan them.");
        plan.Metal[0].Pieces!.Value.Grams.ShouldBe(20.8, 1e-9);
    }

    [Fact]
    public void Of_OneNightNamed_PlansItAndLeavesBlankRowsAlone()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring() with { Night = "1 Dec" }, Wrenmoor.Ring()));

        plan.Pieces.Select(p => p.Status).ShouldBe([PieceStatus.Planned, PieceStatus.OtherNight]);
        plan.The("rows-without-night").Text().ShouldBe(
            "Left alone: 1 row without a night, while \"1 Dec\" is planned. Type the night into the Night column to plan them.");
    }

    [Fact]
    public void Of_SeveralNightsAndNoneChosen_StopsOnceAndStillSaysTheMetalEach()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Ring() with { Night = "1 Dec" }, Wrenmoor.Ring() with { Night = "8 Dec" }, Wrenmoor.Ring()));

        plan.Stops().ShouldBe(["night-not-chosen"]);
        plan.The("night-not-chosen").Text().ShouldBe(
            "The rows belong to several nights: \"1 Dec\" and \"8 Dec\". Nothing goes into a flask until one night is chosen. "
            + "Type the night to plan as \"Night\" on the Shop sheet, written as in the Night column.");
        plan.Flasks.ShouldBeEmpty();
        plan.Pieces.ShouldAllBe(p => p.Status == PieceStatus.NotPlanned && p.MetalEach.HasValue);
    }

    [Fact]
    public void Of_NightChosen_LeavesOthersAlone()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(
            WithNight("8 dec"), Wrenmoor.Ring() with { Night = "1 Dec" }, Wrenmoor.Ring() with { Night = "8 Dec " }));

        plan.Pieces.Select(p => p.Status).ShouldBe([PieceStatus.OtherNight, PieceStatus.Planned]);
        plan.The("rows-of-other-nights").Text().ShouldBe(
            "Left alone: 1 row of another night than \"8 dec\". Change the Night column or \"Night\" on the Shop sheet to plan them.");
    }

    [Fact]
    public void Of_ChosenNightWithoutRows_Stops()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(WithNight("9 Dec"), Wrenmoor.Ring() with { Night = "1 Dec" }));

        plan.Stops().ShouldBe(["night-without-rows"]);
        plan.Pieces[0].Status.ShouldBe(PieceStatus.OtherNight);
    }

    [Fact]
    public void Of_NightChosenButColumnUnused_PlansAllRows() =>
        NightPlanner.Plan(Wrenmoor.Night(WithNight("9 Dec"), Wrenmoor.Ring())).Pieces[0].Status.ShouldBe(PieceStatus.Planned);

    private static Shop WithNight(string night) => Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { Night = night } };
}
