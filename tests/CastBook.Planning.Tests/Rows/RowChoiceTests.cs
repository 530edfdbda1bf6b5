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
        plan.The("rows-done").Text().ShouldBe("Left alone: 1 row marked done. Clear \"Done\" or their status to plan them again.");
        plan.The("rows-left-out").Text().ShouldBe("Left alone: 2 rows marked to be left out. Clear \"Leave out\" or their status to plan them.");
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
            + "Type the night to plan as \"Night\" on the Shop sheet, written as in the Night column, or fill with --night.");
        plan.Flasks.ShouldBeEmpty();
        plan.Pieces.ShouldAllBe(p => p.Status == PieceStatus.NotPlanned && p.MetalEach.HasValue);
    }

    [Theory]
    [InlineData("2026-11-20", "2026-12-03")]
    [InlineData("2026-12-03", "2026-12-03")]
    [InlineData("2026-12-04", "2026-12-10")]
    public void Of_NightsThatAreDays_PlansTheNext(string today, string expected)
    {
        var plan = NightPlanner.Plan(OnDays(today, "2026-12-10", "2026-12-03", "2026-11-05"));

        plan.Pieces.Single(p => p.Status == PieceStatus.Planned).Id.ShouldBe(expected == "2026-12-10" ? 0 : 1);
        plan.The("night-by-date").Text().ShouldBe(
            $"The night planned is {expected}, the next by date of \"2026-11-05\", \"2026-12-03\" and \"2026-12-10\". "
            + "To plan another, type it as \"Night\" on the Shop sheet, or fill with --night.");
    }

    // Nothing of the day itself may get into the plan: the book would change from day to day.
    [Fact]
    public void Of_AnotherDayButTheSameNight_GivesTheSamePlan()
    {
        var texts = new[] { "2026-11-20", "2026-12-02" }
            .Select(today => string.Join('\n', NightPlanner.Plan(OnDays(today, "2026-12-10", "2026-12-03")).Findings.Select(f => f.Text())));

        texts.Distinct().ShouldHaveSingleItem();
    }

    [Theory]
    [InlineData(null, "2026-12-03", "2026-12-10")]
    [InlineData("2026-12-11", "2026-12-03", "2026-12-10")]
    [InlineData("2026-12-01", "2026-12-03", "Friday")]
    public void Of_NightsWithoutANextDay_Asks(string? today, params string[] nights) =>
        NightPlanner.Plan(OnDays(today, nights)).Stops().ShouldBe(["night-not-chosen"]);

    [Fact]
    public void Of_NightsOfDoneRows_AreNotAsked()
    {
        var night = OnDays("2026-12-11", "2026-12-03", "2026-12-10");
        var plan = NightPlanner.Plan(night with { Pieces = [night.Pieces[0] with { Done = true }, night.Pieces[1]] });

        plan.Pieces.Select(p => p.Status).ShouldBe([PieceStatus.Done, PieceStatus.Planned]);
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
        plan.The("night-without-rows").Text().ShouldBe(
            "No row that is still to be cast belongs to the night \"9 Dec\" that was asked for. Nothing was written, and the plan in the book is left as it was. "
            + "The nights of the list are \"1 Dec\": type one of them as \"Night\" on the Shop sheet or after --night, or leave it blank.");
        plan.Pieces[0].Status.ShouldBe(PieceStatus.OtherNight);
    }

    [Fact]
    public void Of_NightChosenButColumnUnused_PlansAllRowsAndSaysSo()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(WithNight("9 Dec"), Wrenmoor.Ring()));

        plan.Pieces[0].Status.ShouldBe(PieceStatus.Planned);
        plan.The("night-without-column").Text().ShouldBe(
            "The night \"9 Dec\" was asked for, but no row names a night. So all rows were planned. Add a column \"Night\" and type the night of each row, or ask for none.");
    }

    // A tree that is built hangs where it hangs, whatever night its row is moved to.
    [Theory]
    [InlineData("2026-12-10", FlaskState.Planned, true)]
    [InlineData("2026-12-10", FlaskState.Waxed, false)]
    [InlineData("2026-12-01", FlaskState.Planned, false)]
    [InlineData("second", FlaskState.Planned, false)]
    public void Of_RowOfALaterDay_IsToComeUnlessItsTreeIsBuilt(string night, FlaskState state, bool isToCome)
    {
        var asked = Wrenmoor.Night(
            WithNight("2026-12-03"), Wrenmoor.Ring() with { Night = "2026-12-03" }, Wrenmoor.Ring() with { Night = night, LastFlasks = [new FlaskShare("B", 1)] });

        var plan = NightPlanner.Plan(asked with { Trees = [new TreeInHand("B", null, null, null, null, state)] });

        plan.Pieces[0].IsToCome.ShouldBeFalse();
        plan.Pieces[1].Status.ShouldBe(PieceStatus.OtherNight);
        plan.Pieces[1].IsToCome.ShouldBe(isToCome);
    }

    private static Night OnDays(string? today, params string[] nights) =>
        Wrenmoor.Night([.. nights.Select(n => Wrenmoor.Ring() with { Night = n })]) with
        {
            Today = today is null ? null : DateOnly.Parse(today, System.Globalization.CultureInfo.InvariantCulture),
        };

    private static Shop WithNight(string night) => Wrenmoor.Shop with { Settings = Wrenmoor.Answered with { Night = night } };
}
