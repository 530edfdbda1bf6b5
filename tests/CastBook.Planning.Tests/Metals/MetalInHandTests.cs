using UnitsNet;

namespace CastBook.Planning.Tests.Metals;

public sealed class MetalInHandTests
{
    private static readonly DateOnly Friday = new(2026, 12, 4);

    // Three signets take a charge of 118 g; see the planner's tests. One alone takes less than 80.
    [Fact]
    public void Plan_MetalForOneFewer_LeavesOneWaitingAndSaysSo()
    {
        var plan = NightPlanner.Plan(InHand(grams: 110, Wrenmoor.Ring(3)));

        plan.Pieces[0].Status.ShouldBe(PieceStatus.PartlyPlanned);
        plan.Flasks.Single().Pieces.Single().Quantity.ShouldBe(2);
        plan.Flasks.Single().Charge.Grams.ShouldBeLessThanOrEqualTo(110);
        plan.Metal[0].Buy!.Value.ShouldBe(Mass.Zero);
        plan.Ids().ShouldNotContain("metal-short");
        plan.The("waits-for-metal").Text().ShouldBe(
            "1 piece waits for Bench silver: 110 g in stock, and what is planned takes 93.0 g. "
            + "What is due goes first, then what stands higher in the list, then what still fits. "
            + "Buy metal and fill again, or type a day under \"Due\" for what cannot wait.");
    }

    [Fact]
    public void Plan_MetalEnough_IsThePlanWithoutTheQuestion()
    {
        var night = InHand(grams: 118, Wrenmoor.Ring(3));

        var plan = NightPlanner.Plan(night);

        plan.Flasks.Single().Pieces.Single().Quantity.ShouldBe(3);
        plan.Ids().ShouldBe(NightPlanner.Plan(night with { MetalInHandOnly = false }).Ids());
    }

    [Fact]
    public void Plan_PieceThatIsDueBelow_GoesBeforeThoseAbove()
    {
        var plan = NightPlanner.Plan(InHand(grams: 110, Wrenmoor.Ring(2), Wrenmoor.Ring(1) with { Id = 1, Name = "For Friday", Due = Friday }));

        plan.Pieces[1].Status.ShouldBe(PieceStatus.Planned);
        plan.Pieces[0].Status.ShouldBe(PieceStatus.PartlyPlanned);
    }

    [Fact]
    public void Plan_RestOfTheMetal_TakesASmallerPieceFurtherDown()
    {
        var small = Wrenmoor.Ring(1) with { Id = 1, Name = "Small", Weight = Mass.FromGrams(0.3) };
        var withTwo = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring(2))).Flasks.Single().Charge;

        var plan = NightPlanner.Plan(InHand(withTwo.Grams + 6, Wrenmoor.Ring(3), small));

        plan.Pieces[0].Flasks.Sum(f => f.Quantity).ShouldBe(2);
        plan.Pieces[1].Status.ShouldBe(PieceStatus.Planned);
        plan.Metal[0].Buy!.Value.ShouldBe(Mass.Zero);
    }

    [Fact]
    public void Plan_NoMetalAtAll_LetsAllWait()
    {
        var plan = NightPlanner.Plan(InHand(grams: 1, Wrenmoor.Ring(3)));

        plan.Flasks.ShouldBeEmpty();
        plan.Ids().ShouldNotContain("metal-short");
        plan.The("waits-for-metal").Seen.ShouldBe("3 pieces wait for Bench silver: 1.0 g in stock, and what is planned takes 0.0 g.");
    }

    [Fact]
    public void Plan_StockNotSaid_PlansAll()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Ring(3)) with { MetalInHandOnly = true });

        plan.Pieces[0].Status.ShouldBe(PieceStatus.Planned);
    }

    [Fact]
    public void Plan_AnotherAlloyThatIsNotShort_IsPlannedWhole()
    {
        var shop = Wrenmoor.Shop with
        {
            Alloys = [Wrenmoor.Silver with { Fresh = Mass.FromGrams(110) }, Wrenmoor.Bronze with { Fresh = Mass.FromKilograms(2) }],
        };

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop, Wrenmoor.Ring(3), Wrenmoor.Ring(5) with { Id = 1, Alloy = "Bell bronze" }) with { MetalInHandOnly = true });

        plan.Pieces[0].Flasks.Sum(f => f.Quantity).ShouldBe(2);
        plan.Pieces[1].Status.ShouldBe(PieceStatus.Planned);
    }

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void Plan_AnyStock_NeverAsksForMoreThanThereIsAndLeavesNoRoomForTheNextPiece(int seed)
    {
        var random = new Random(seed);
        var rows = Enumerable.Range(0, 12).Select(i => Wrenmoor.Ring(random.Next(1, 6)) with { Id = i, Due = random.Next(3) == 0 ? Friday.AddDays(random.Next(9)) : null }).ToArray();
        var all = NightPlanner.Plan(Wrenmoor.Night(rows));
        var stock = all.Flasks.Sum(f => f.Charge.Grams) * (0.2 + (0.7 * random.NextDouble()));

        var plan = NightPlanner.Plan(InHand(stock, rows));

        plan.Flasks.Sum(f => f.Charge.Grams).ShouldBeLessThanOrEqualTo(stock);
        plan.Flasks.Sum(f => f.Charge.Grams).ShouldBeGreaterThan(stock - 110, $"seed {seed}: a flask more for one piece takes less than 110 g");

        // Alike pieces: nobody waits while somebody who is due later does not.
        var waits = rows.Where(r => plan.Pieces[r.Id].Flasks.Sum(f => f.Quantity) < r.Quantity).Min(r => (r.Due ?? DateOnly.MaxValue, r.Id));
        var goes = rows.Where(r => plan.Pieces[r.Id].Flasks.Count > 0).Max(r => (r.Due ?? DateOnly.MaxValue, r.Id));
        goes.CompareTo(waits).ShouldBeLessThanOrEqualTo(0);
    }

    private static Night InHand(double grams, params Piece[] pieces) =>
        Wrenmoor.Night(Wrenmoor.Shop with { Alloys = [Wrenmoor.Silver with { Fresh = Mass.FromGrams(grams) }] }, pieces) with { MetalInHandOnly = true };
}
