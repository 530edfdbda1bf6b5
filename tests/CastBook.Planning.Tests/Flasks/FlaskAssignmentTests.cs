using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests.Flasks;

public sealed class FlaskAssignmentTests
{
    [Fact]
    public void Of_TwoAlloys_NeverShareAFlask()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Stud(3), Wrenmoor.Stud(2) with { Alloy = "Bell bronze" }));

        plan.Flasks.Select(f => (f.Letter, f.Alloy)).ShouldBe([("A", "Bench silver"), ("B", "Bell bronze")]);
        plan.Bound.ShouldBe(new PlanBound(2, ProvedFewest: true) { ProvedLeastInvestment = true });
    }

    // Five rows whose bands are heavy, heavy to ordinary, ordinary to fine, fine and any: heavy and fine can never share, and two
    // temperatures serve all.
    [Fact]
    public void Of_SectionsThatShareNoBand_TakeTwoFlasks()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(
            Sections(6, 9), Sections(2, 6), Sections(1, 2), Sections(0.5, 2), Wrenmoor.Stud()));

        plan.Flasks.Count.ShouldBe(2);
        plan.Flasks.ShouldAllBe(f => !(f.Pieces.Any(p => p.PieceId == 0) && f.Pieces.Any(p => p.PieceId == 3)));
        plan.Flasks.Single(f => f.Count(0) > 0).FlaskTemperature!.Value.DegreesCelsius.ShouldBe(450, 1e-9);
        plan.Flasks.Single(f => f.Count(3) > 0).FlaskTemperature!.Value.DegreesCelsius.ShouldBe(590, 1e-9);
        plan.Bound.ShouldBe(new PlanBound(2, ProvedFewest: true) { ProvedLeastInvestment = true });
    }

    // A large flask takes 36, a small one 10; one large and three small are owned. Fewest flasks first, then least investment.
    [Theory]
    [InlineData(36, "large")]
    [InlineData(10, "small")]
    [InlineData(20, "large")]
    [InlineData(37, "large+small")]
    [InlineData(47, "large+small+small")]
    [InlineData(67, "large+small+small+small")]
    public void Of_TwoSizes_TakesFewestThenSmallest(int rings, string sizes)
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(LargeAndSmall, PerTree(rings)));

        string.Join('+', plan.Flasks.Select(f => f.Size.Name)).ShouldBe(sizes);
        plan.Pieces[0].Flasks.Sum(f => f.Quantity).ShouldBe(Math.Min(rings, 66));
        plan.Flasks.ShouldAllBe(f => f.Columns.Count == 0);
    }

    // Of 20 rings two small flasks hold 884 ml of investment together, the large one 1178.
    [Theory]
    [InlineData(Wish.Flasks, Wish.Metal, "large", true)]
    [InlineData(Wish.Investment, Wish.Flasks, "small+small", false)]
    [InlineData(Wish.Investment, Wish.Metal, "small+small", false)]
    public void Of_OrderOfWishes_DecidesWhatIsSaved(Wish first, Wish second, string sizes, bool fewest)
    {
        Wish[] order = [first, second, .. Enum.GetValues<Wish>().Except([first, second])];
        var plan = NightPlanner.Plan(Wrenmoor.Night(LargeAndSmall with { Settings = Wrenmoor.Answered with { OrderOfWishes = order } }, PerTree(20)));

        string.Join('+', plan.Flasks.Select(f => f.Size.Name)).ShouldBe(sizes);
        (plan.Bound.ProvedFewest, plan.Bound.ProvedLeastInvestment).ShouldBe((fewest, !fewest));
    }

    // One long trunk is less metal than two of more than half its length.
    [Fact]
    public void Of_MetalFirst_TakesTheShortestTrunks()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(
            LargeAndSmall with { Settings = Wrenmoor.Answered with { OrderOfWishes = [Wish.Metal, Wish.Investment, Wish.Flasks] } }, PerTree(20)));

        plan.Flasks.ShouldHaveSingleItem().Size.Name.ShouldBe("large");
    }

    [Fact]
    public void Of_MoreThanAllFlasksTake_SaysHowManyWait()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(LargeAndSmall, PerTree(60), PerTree(9)));

        plan.The("no-flask-left").Text().ShouldBe(
            "3 pieces of Bench silver found no flask. All flasks that could take them are used tonight. "
            + "Leave something out, cast it another night, or raise \"Owned\" on the Flasks sheet.");
        plan.The("no-flask-left").Subjects.ShouldBe([Subject.Piece(1)]);
        plan.Pieces.Select(p => p.Status).ShouldBe([PieceStatus.Planned, PieceStatus.PartlyPlanned]);
        plan.Bound.ProvedFewest.ShouldBeFalse();
        plan.Metal[0].Pieces!.Value.Grams.ShouldBe(69 * 20.8, 1e-6);
    }

    // The crucible leaves room for 100 g of pieces beside trunk, gate, button and loss; space is for twenty. 3 × 45 = 135 g.
    [Fact]
    public void Of_HeavyPieces_AreSplitByTheCrucible()
    {
        var piece = Wrenmoor.Ring(3) with { Weight = Mass.FromGrams(45 / 10.4 * 0.95) };
        var holds = ((100 / 10.4) + 3.18 + 0.15) * 1.2 * 1.01 / 0.8;

        var plan = NightPlanner.Plan(Wrenmoor.Night(WithCrucible(holds), piece));

        plan.Flasks.Select(f => f.Count(0)).ShouldBe([2, 1]);
        plan.Bound.ShouldBe(new PlanBound(2, ProvedFewest: true) { ProvedLeastInvestment = true });
    }

    // By hand: 2 ml + 0.05 gate + 3.18 trunk + 1.5 of the least button = 6.73 ml, × 10.4 × 1.01 = 70.7, up to 71 g or 6.8 ml;
    // four fifths of 7 ml are 5.6.
    [Fact]
    public void Of_PieceOverTheCrucible_StopsWithBothNumbers()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(WithCrucible(7), Wrenmoor.Ring(2), Wrenmoor.Stud()));

        plan.The("piece-over-crucible").Text().ShouldBe(
            "One piece of \"Signet\" alone needs a charge of 71.0 g, which is 6.8 ml. The largest crucible for Bench silver takes 5.6 ml of melt, "
            + "filled to four fifths. Cast it elsewhere, or add a larger crucible to the Crucibles sheet.");
        plan.Pieces.Select(p => p.Status).ShouldBe([PieceStatus.NotPlanned, PieceStatus.Planned]);
    }

    // The same in fluid ounces of 29.57 ml: 6.83 and 5.6 ml.
    [Fact]
    public void Of_PieceOverTheCrucible_SaysVolumesInTheShopsUnit()
    {
        var shop = WithCrucible(7);

        var plan = NightPlanner.Plan(Wrenmoor.Night(shop with { Settings = shop.Settings with { WaterIn = WrittenVolume.UsFluidOunce } }, Wrenmoor.Ring(2)));

        plan.The("piece-over-crucible").Text().ShouldStartWith(
            "One piece of \"Signet\" alone needs a charge of 71.0 g, which is 0.23 US fl oz. The largest crucible for Bench silver takes 0.19 US fl oz of melt, ");
    }

    // A flask with stones in must not be quenched and is burnt out cooler: a cell that nobody can read is no "no".
    [Fact]
    public void Of_StonesThatNobodyCanRead_IsInNoFlask()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Stud(), Wrenmoor.Stud() with { Unreadable = [PieceField.StonesIn] }));

        plan.Pieces.Select(p => p.Status).ShouldBe([PieceStatus.Planned, PieceStatus.NotPlanned]);
        plan.Flasks.SelectMany(f => f.Pieces).ShouldAllBe(p => p.PieceId == 0);
    }

    [Fact]
    public void Of_StonesThatNobodyCanReadInABuiltTree_AreNotQuenched()
    {
        var night = Wrenmoor.Night(Wrenmoor.Stud() with { Unreadable = [PieceField.StonesIn], LastFlasks = [new("A", 1)] });

        var flask = NightPlanner.Plan(night with { Trees = [new TreeInHand("A", "75 × 100", null, null, null, FlaskState.Waxed)] }).Flasks.ShouldHaveSingleItem();

        flask.NoQuench.ShouldBeTrue();
        flask.QuenchAfter.ShouldBeNull();
    }

    [Fact]
    public void Of_StonesIn_ShareOnlyWithStonesIn()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Stud(), Wrenmoor.Stud() with { StonesIn = true }, Wrenmoor.Stud() with { StonesIn = true }));

        plan.Flasks.Select(f => f.Pieces.Select(p => p.PieceId).ToArray()).ShouldBe([[0], [1, 2]]);
        plan.Flasks.Select(f => f.NoQuench).ShouldBe([false, true]);
        plan.Flasks[1].QuenchAfter.ShouldBeNull();
    }

    [Fact]
    public void Of_KeepInFlask_GivesThatLetterAndFillsItUp()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(Wrenmoor.Stud(), Wrenmoor.Stud(2) with { KeepInFlask = " c" }));

        plan.Flasks.ShouldHaveSingleItem().Letter.ShouldBe("C");
        plan.Pieces[0].Flasks.ShouldBe([new FlaskShare("C", 1)]);
    }

    [Fact]
    public void Of_KeepInFlaskOfAnotherAlloy_ChecksAndPlansElsewhere()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(
            Wrenmoor.Stud() with { KeepInFlask = "B" }, Wrenmoor.Stud(2) with { KeepInFlask = "B", Alloy = "Bell bronze" }));

        plan.Pieces.Select(p => p.Flasks[0].Flask).ShouldBe(["B", "A"]);
        plan.The("keep-in-flask-not-possible").Text().ShouldBe(
            "2 of \"Stud\" cannot go into flask B. That flask is for Bench silver. Change or clear \"Keep in flask\".");
    }

    [Fact]
    public void Of_KeepInFlaskWithoutRoom_SaysHowManyGoElsewhere()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(LargeAndSmall, PerTree(40) with { KeepInFlask = "D" }));

        plan.Pieces[0].Flasks.ShouldBe([new FlaskShare("A", 4), new FlaskShare("D", 36)]);
        plan.The("keep-in-flask-not-possible").Seen.ShouldBe("4 of \"Signet\" cannot go into flask D.");
    }

    [Fact]
    public void Of_PerTreeNamesNoOwnedSize_FitsNoFlask()
    {
        var piece = PerTree(3) with { PerTree = new Dictionary<string, int> { ["huge"] = 12 } };

        NightPlanner.Plan(Wrenmoor.Night(LargeAndSmall, piece)).The("piece-fits-no-flask").Seen
            .ShouldBe("\"Signet\" fits no flask: \"Per tree\" names no flask size that the shop owns.");
    }

    [Fact]
    public void Of_LongPiece_SaysHowMuchTrunkItNeeds()
    {
        // By hand, 90 mm long on a 7 mm gate at 50 degrees under a trunk that ends early: out 4 + 97 × 0.766 + 0.96 = 79.3 mm;
        // on the 4 mm gate at 25 degrees 4 + 94 × 0.423 + 1.36 = 45.1 mm, at 20 degrees 4 + 94 × 0.342 + 1.41 = 37.6 mm.
        var piece = Wrenmoor.Ring() with { Box = new PieceBox(false, Wrenmoor.Mm(90), Wrenmoor.Mm(3), Wrenmoor.Mm(3)) };

        NightPlanner.Plan(Wrenmoor.Night(piece)).The("piece-fits-no-flask").Text().ShouldBe(
            "\"Signet\" fits no flask: it reaches 79.3 mm out from the middle of the trunk, and the largest flask, \"100 × 150\", leaves 42 mm. "
            + "8 mm of investment must stay between piece and wall. Check its sizes: the length runs from the gate outwards. "
            + "Upright and alone it would fit \"100 × 150\": clear its sizes and type \"100 × 150: 1\" as \"Per tree\". "
            + "With 20 degrees as \"Gate angle\" on the Shop sheet it would fit \"100 × 150\". Or add a larger flask to the Flasks sheet.");

        // What it says to type does it: one piece, in that flask.
        NightPlanner.Plan(Wrenmoor.Night(piece with { Box = null, Quantity = 1, PerTree = new Dictionary<string, int> { ["100 × 150"] = 1 } })).Flasks
            .Select(f => (f.Size.Name, f.Pieces.Single().Quantity)).ShouldBe([("100 × 150", 1)]);
    }

    // Gated on its short side 4 + 67 × 0.766 + … = 55 mm out, and 42 are free; on its long side the gate reaches out 4 + 17 × 0.766,
    // and 60 mm across the trunk stand hypot(17, 30) = 35 mm out: less than the 37 mm of the next smaller flask.
    [Fact]
    public void Of_PieceThatFitsTurned_SaysSo()
    {
        var piece = Wrenmoor.Ring() with { Box = new PieceBox(false, Wrenmoor.Mm(60), Wrenmoor.Mm(10), Wrenmoor.Mm(2)) };

        NightPlanner.Plan(Wrenmoor.Night(piece)).The("piece-fits-no-flask").Text().ShouldEndWith(
            "the length runs from the gate outwards. Gated on its long side, with length and width exchanged, it would fit \"90 × 125\". "
            + "With 30 degrees as \"Gate angle\" on the Shop sheet it would fit \"100 × 150\". Or add a larger flask to the Flasks sheet.");
    }

    [Fact]
    public void Of_SizesThatWereNotUnderstood_WaitsForThemWhateverThePerTreeSays()
    {
        var plan = NightPlanner.Plan(Wrenmoor.Night(LargeAndSmall, PerTree(4) with { Unreadable = [PieceField.Sizes] }));

        plan.Flasks.ShouldBeEmpty();
        plan.Pieces[0].Status.ShouldBe(PieceStatus.NotPlanned);
    }

    private static Shop LargeAndSmall => Wrenmoor.Shop with
    {
        FlaskSizes =
        [
            Wrenmoor.Size("large", 100, 150, 1) with { Cup = null },
            Wrenmoor.Size("small", 75, 100, 3) with { Cup = null },
        ],
    };

    // (2.5 / 4)² = 39 %; two gates of 2.5 mm 78 %; one of 5 mm 156 %.
    [Theory]
    [InlineData(1, 2.5, "1 gate of 2.5 mm: 39 % of a round section of 4 mm, the heaviest of the piece. They freeze before the piece is fed, and it shrinks open.")]
    [InlineData(2, 2.5, null)]
    [InlineData(1, 5.0, "1 gate of 5 mm: 156 % of a round section of 4 mm, the heaviest of the piece. They stay liquid longer than the piece and draw metal out of it.")]
    public void Ask_GatesAndTheSectionTheyFeed_AreCompared(int gates, double diameter, string? said)
    {
        var piece = Wrenmoor.Ring() with { HeaviestSection = Wrenmoor.Mm(4), Gate = new PieceGate(gates, Wrenmoor.Mm(diameter), null) };

        var plan = NightPlanner.Plan(Wrenmoor.Night(piece));

        plan.Findings.Where(f => f.Id == "gate-section-off").Select(f => $"{f.Seen} {f.Why}").ShouldBe(said is null ? [] : [said]);
    }

    private static Shop WithCrucible(double ml) => Wrenmoor.Shop with
    {
        FlaskSizes = [Wrenmoor.Small],
        Crucibles = [new Crucible { Name = "Graphite 1", Holds = Wrenmoor.Ml(ml) }],
    };

    private static Piece PerTree(int quantity) => Wrenmoor.Ring(quantity) with
    {
        Box = null,
        PerTree = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase) { ["Large"] = 36, ["small"] = 10 },
    };

    private static Piece Sections(double finest, double heaviest) => Wrenmoor.Stud() with
    {
        FinestSection = Wrenmoor.Mm(finest),
        HeaviestSection = Wrenmoor.Mm(heaviest),
    };
}
