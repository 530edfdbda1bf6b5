using CastBook.Planning.Shops;

namespace CastBook.Planning.Tests.Flasks;

public sealed class FlaskLimitTests
{
    [Fact]
    public void Limit_AllOfTheMetalInOneFlask_IsNothing() =>
        Limits(Wrenmoor.Night(Wrenmoor.Stud(3))).ShouldBe([FlaskLimit.Nothing]);

    // Room for 36; 40 are asked for. What is full by share is full round the trunk; in the other there is room.
    [Fact]
    public void Limit_MoreThanATreeTakes_IsTheTurn() =>
        Limits(Wrenmoor.Night(Shop(4, 0), PerTree(40))).ShouldBe([FlaskLimit.Turn, FlaskLimit.HasRoom], ignoreOrder: true);

    // 100 g of pieces beside trunk, gate, button and loss: 2 × 45, and the third elsewhere; the space is for twenty.
    [Fact]
    public void Limit_HeavyPieces_IsTheCrucible()
    {
        var piece = Wrenmoor.Ring(3) with { Weight = UnitsNet.Mass.FromGrams(45 / 10.4 * 0.95) };
        var shop = Wrenmoor.Shop with
        {
            FlaskSizes = [Wrenmoor.Small with { Cup = null }],
            Crucibles = [new Crucible { Name = "Graphite 1", Holds = Wrenmoor.Ml(((100 / 10.4) + 3.18 + 0.15) * 1.2 * 1.01 / 0.8) }],
        };

        Limits(Wrenmoor.Night(shop, piece)).ShouldBe([FlaskLimit.Crucible, FlaskLimit.HasRoom], ignoreOrder: true);
    }

    // The button is a fifth of pieces and tree and fills a cup of 3.5 ml to four fifths at 14 ml: trunk 3.2 and two pieces of 4.4.
    [Fact]
    public void Limit_HeavyPiecesUnderASmallCup_IsTheCup()
    {
        var piece = Wrenmoor.Ring(3) with { Weight = UnitsNet.Mass.FromGrams(45 / 10.4 * 0.95) };
        var shop = Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Small with { Cup = Wrenmoor.Ml(3.5) }] };

        Limits(Wrenmoor.Night(shop, piece)).ShouldContain(FlaskLimit.Cup);
    }

    [Fact]
    public void Limit_OtherPiecesNeedAnotherFlaskTemperature_IsTheTemperature() =>
        Limits(Wrenmoor.Night(Sections(6, 9), Sections(0.5, 0.7))).ShouldBe([FlaskLimit.Temperature, FlaskLimit.Temperature]);

    // Ten would do with a small flask, but another metal has the only one.
    [Fact]
    public void Limit_SmallerFlasksAllInUse_IsTheNumberOwned() =>
        Limits(Wrenmoor.Night(Shop(1, 1), PerTree(10), PerTree(10) with { Alloy = "Bell bronze" })).ShouldBe([FlaskLimit.Owned, FlaskLimit.Nothing], ignoreOrder: true);

    // A search that is ended at once still gives a plan, and says so.
    [Fact]
    public void Plan_SearchStopped_GivesTheBestSoFarAndSaysSo()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var running = new Heard();

        var plan = NightPlanner.Plan(Packing.InventedNight.Of(60, 1), new PlanSearch(stop.Token, running));

        plan.Pieces.ShouldAllBe(p => p.Status == PieceStatus.Planned);
        plan.The("search-stopped").Text().ShouldBe(
            "The search for flasks was stopped before its end. The flasks are the best found by then; fewer or smaller ones may do. Fill again and let it end.");
        running.All.ShouldBe([true, false]);
    }

    private static IEnumerable<FlaskLimit> Limits(Night night) => NightPlanner.Plan(night).Flasks.Select(f => f.Limit!.Value);

    private static Shop Shop(int large, int small) => Wrenmoor.Shop with
    {
        FlaskSizes = [Wrenmoor.Size("large", 100, 150, large) with { Cup = null }, Wrenmoor.Size("small", 75, 100, small) with { Cup = null }],
    };

    private static Piece PerTree(int quantity) => Wrenmoor.Ring(quantity) with
    {
        Box = null,
        PerTree = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase) { ["large"] = 36, ["small"] = 10 },
    };

    private static Piece Sections(double finest, double heaviest) => Wrenmoor.Stud() with
    {
        FinestSection = Wrenmoor.Mm(finest),
        HeaviestSection = Wrenmoor.Mm(heaviest),
    };

    private sealed class Heard : IProgress<bool>
    {
        public List<bool> All { get; } = [];

        public void Report(bool value) => All.Add(value);
    }
}
