using CastBook.Casting.Alloying;
using CastBook.Casting.Metals;
using CastBook.Casting.Tests.Published;
using UnitsNet;

namespace CastBook.Casting.Tests.Alloying;

public class MakeAlloyTests
{
    private static readonly Composition Yellow = Composition.Of("Au 585 Ag 260 Cu 155");

    [Fact]
    public void FineMetals_AgreeWithPublishedRecipes()
    {
        foreach (var row in PublishedTable.Rows("alloying-fine-metals.csv", 4))
        {
            var printed = PublishedNumber.Parse(row[3]);

            var recipe = MakeAlloy.Compute(Composition.Of(row[0]), Mass.FromGrams(PublishedNumber.Parse(row[1]).Value), []);

            recipe.StillToAdd.Single(part => part.Symbol == row[2]).Mass.Grams.ShouldBe(printed.Value, printed.Tolerance);
            recipe.FromStock.ShouldBeEmpty();
        }
    }

    // The karat chart again: what one unit of gold with copper takes to become another carat. Raising, the copper at hand is what
    // is kept; lowering, the gold.
    [Fact]
    public void Compute_GoldWithCopper_AgreesWithPrintedChart()
    {
        foreach (var row in PublishedTable.Rows("karat-factors.csv", 14))
        {
            var from = PublishedNumber.Parse(row[0]).Value;
            for (var to = 10; to <= 22; to++)
            {
                var printed = PublishedNumber.Parse(row[to - 9]);
                var total = to >= from ? (24 - from) / (24 - to) : from / to;

                var recipe = MakeAlloy.Compute(Carats(to), Mass.FromGrams(total), [new(Carats(from), Mass.FromGrams(1))]);

                recipe.FromStock[0].Grams.ShouldBe(1, 1e-9, $"{from} to {to}");
                recipe.StillToAdd.Sum(part => part.Mass.Grams).ShouldBe(printed.Value, printed.Tolerance, $"{from} to {to}");
                recipe.StillToAdd.Where(part => part.Symbol != (to >= from ? "Au" : "Cu")).ShouldBeEmpty($"{from} to {to}");
            }
        }
    }

    // By hand: 100 g hold 58.5 Au, 26 Ag, 15.5 Cu. Of 18 k 750/125/125 the gold allows 78 g (58.5 / 0.75); that brings 9.75 g of
    // silver and as much copper, and leaves 16.25 g of silver and 5.75 g of copper to add.
    [Fact]
    public void Compute_RicherAlloyInStock_IsLoweredWithFineMetals()
    {
        var recipe = MakeAlloy.Compute(Yellow, Mass.FromGrams(100), [Stock("Au 750 Ag 125 Cu 125", 200)]);

        recipe.FromStock.ShouldHaveSingleItem().Grams.ShouldBe(78, 1e-9);
        recipe.StillToAdd.Select(part => part.Symbol).ShouldBe(["Ag", "Cu"]);
        recipe.StillToAdd[0].Mass.Grams.ShouldBe(16.25, 1e-9);
        recipe.StillToAdd[1].Mass.Grams.ShouldBe(5.75, 1e-9);
    }

    // By hand: of 9 k 375/425/200 the silver allows 26 / 0.425 = 61.176 g, the copper 77.5 g; only 40 g are there. They bring
    // 15 Au, 17 Ag, 8 Cu. Then fine gold 43.5 of the 50 in stock, and 9 g of silver and 7.5 g of copper are still to add.
    [Fact]
    public void Compute_PoorerAlloyInStock_IsRaisedWithFineGold()
    {
        var recipe = MakeAlloy.Compute(Yellow, Mass.FromGrams(100), [Stock("Au 375 Ag 425 Cu 200", 40), Stock("Au 1000", 50)]);

        recipe.FromStock.Select(mass => mass.Grams).ShouldBe([40, 43.5], 1e-9);
        recipe.StillToAdd.Select(part => Math.Round(part.Mass.Grams, 9)).ShouldBe([9, 7.5]);
    }

    // By hand: 50 g of 9 k bring 18.75 Au, 21.25 Ag, 10 Cu; what is left, 39.75 Au, 4.75 Ag, 5.5 Cu, takes 38 g of 18 k by its
    // silver (4.75 / 0.125): 28.5 Au, 4.75 Ag, 4.75 Cu. Then 11.25 g of gold and 0.75 g of copper.
    [Fact]
    public void Compute_PoorerAndRicherAlloy_AreUsedInTheOrderGiven()
    {
        var recipe = MakeAlloy.Compute(Yellow, Mass.FromGrams(100), [Stock("Au 375 Ag 425 Cu 200", 50), Stock("Au 750 Ag 125 Cu 125", 90)]);

        recipe.FromStock.Select(mass => mass.Grams).ShouldBe([50, 38], 1e-9);
        recipe.StillToAdd.Select(part => (part.Symbol, Math.Round(part.Mass.Grams, 9))).ShouldBe([("Au", 11.25), ("Cu", 0.75)]);
    }

    [Fact]
    public void Compute_EnoughOfTheAlloyItself_AddsNothing()
    {
        var recipe = MakeAlloy.Compute(Yellow, Mass.FromGrams(33), [Stock("Au 585 Ag 260 Cu 155", 40)]);

        recipe.FromStock.ShouldHaveSingleItem().Grams.ShouldBe(33, 1e-9);
        recipe.StillToAdd.ShouldBeEmpty();
    }

    // Dust of the arithmetic grows with the mass; none of it is to be bought.
    [Fact]
    public void Compute_EnoughOfTheAlloyItselfInAnyAmount_AddsNothing()
    {
        const int Seed = 585;
        var random = new Random(Seed);
        for (var i = 0; i < 1000; i++)
        {
            var grams = Math.Pow(10, 6 * random.NextDouble());

            MakeAlloy.Compute(Yellow, Mass.FromGrams(grams), [Stock("Au 585 Ag 260 Cu 155", 2e6)]).StillToAdd.ShouldBeEmpty($"seed {Seed}, case {i}");
        }
    }

    [Fact]
    public void Compute_StockWithAForeignElement_IsLeftAlone()
    {
        var recipe = MakeAlloy.Compute(Yellow, Mass.FromGrams(10), [Stock("Au 750 Ag 120 Cu 125 Zn 5", 40), Stock("Zn 1000", 40)]);

        recipe.FromStock.ShouldBe([Mass.Zero, Mass.Zero]);
        recipe.StillToAdd.Sum(part => part.Mass.Grams).ShouldBe(10, 1e-9);
    }

    // The printed composition of this bronze adds up to 998: the recipe must still make all of the metal asked for.
    [Fact]
    public void Compute_PartsThatAddUpToLess_MakeTheWholeMass()
    {
        var recipe = MakeAlloy.Compute(Composition.Of("Cu 875 Sn 83 Zn 40"), Mass.FromGrams(499), []);

        recipe.StillToAdd.Select(part => Math.Round(part.Mass.Grams, 9)).ShouldBe([437.5, 41.5, 20]);
    }

    [Fact]
    public void Compute_NothingWanted_TakesNothing()
    {
        var recipe = MakeAlloy.Compute(Yellow, Mass.Zero, [Stock("Au 1000", 5)]);

        recipe.FromStock.ShouldBe([Mass.Zero]);
        recipe.StillToAdd.ShouldBeEmpty();
    }

    [Fact]
    public void Compute_NegativeMass_IsRefused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => MakeAlloy.Compute(Yellow, Mass.FromGrams(-1), []));
        Should.Throw<ArgumentOutOfRangeException>(() => MakeAlloy.Compute(Yellow, Mass.FromGrams(1), [Stock("Au 1000", -1)]));
    }

    [Fact]
    public void Compute_RandomStock_LosesNothingAndReachesTheComposition()
    {
        const int Seed = 20250;
        var random = new Random(Seed);
        for (var i = 0; i < 300; i++)
        {
            var wanted = RandomAlloy(random);
            var total = 1 + (500 * random.NextDouble());
            var stock = Enumerable.Range(0, random.Next(4)).Select(_ => new MetalInStock(RandomAlloy(random), Mass.FromGrams(300 * random.NextDouble()))).ToList();

            var recipe = MakeAlloy.Compute(wanted, Mass.FromGrams(total), stock);

            var says = $"seed {Seed}, case {i}";
            foreach (var symbol in (string[])["Au", "Ag", "Cu"])
            {
                var inCrucible = recipe.StillToAdd.Where(part => part.Symbol == symbol).Sum(part => part.Mass.Grams)
                    + stock.Select((metal, at) => recipe.FromStock[at].Grams * Fineness.Of(metal.Composition, symbol).DecimalFractions).Sum();
                inCrucible.ShouldBe(total * Fineness.Of(wanted, symbol).DecimalFractions, 1e-6, says);
            }

            recipe.FromStock.Where((mass, at) => mass > stock[at].InStock || mass < Mass.Zero).ShouldBeEmpty(says);
        }
    }

    private static Composition Carats(double carats) =>
        Composition.Of(FormattableString.Invariant($"Au {1000 * carats / 24:R} Cu {1000 - (1000 * carats / 24):R}"));

    private static MetalInStock Stock(string composition, double grams) => new(Composition.Of(composition), Mass.FromGrams(grams));

    private static Composition RandomAlloy(Random random)
    {
        var gold = random.Next(1, 900);
        var silver = random.Next(0, 1000 - gold);
        return Composition.Of($"Au {gold} Ag {silver} Cu {1000 - gold - silver}");
    }
}
