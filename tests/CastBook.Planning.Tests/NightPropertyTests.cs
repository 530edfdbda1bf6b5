using System.Globalization;
using CastBook.Casting.Trees;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Tests;

/// <summary>What holds for every night, tried on invented ones.</summary>
public sealed class NightPropertyTests
{
    private static readonly string[] Alloys = ["Bench silver", "Bell bronze"];

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    public static TheoryData<int> FewSeeds => [.. Enumerable.Range(61, 12)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Plan_AnyNight_LosesNothingAndOverfillsNothing(int seed)
    {
        var night = Invent(seed);

        var plan = NightPlanner.Plan(night);

        NothingLost(night, plan);
        NothingOverfilled(night, plan);
        MixesHold(night, plan);
        plan.Bound.LeastFlasks.ShouldBeLessThanOrEqualTo(
            plan.Ids().Contains("no-flask-left") ? int.MaxValue : plan.Flasks.Count, $"seed {seed}");
    }

    // Two alloys are planned side by side; whichever is first must not matter.
    [Theory]
    [MemberData(nameof(FewSeeds))]
    public void Plan_AnyNight_IsTheSameAgain(int seed) =>
        Written(NightPlanner.Plan(Invent(seed))).ShouldBe(Written(NightPlanner.Plan(Invent(seed))));

    private static void NothingLost(Night night, NightPlan plan)
    {
        var spoken = plan.Findings.Where(f => f.Severity == Severity.Stop)
            .SelectMany(f => f.Subjects).Where(s => s.Kind == SubjectKind.Piece).Select(s => int.Parse(s.Key, CultureInfo.InvariantCulture))
            .ToHashSet();
        foreach (var piece in night.Pieces)
        {
            var answer = plan.Pieces[piece.Id];
            var placed = answer.Flasks.Sum(f => f.Quantity);
            placed.ShouldBe(plan.Flasks.Sum(f => f.Count(piece.Id)));
            placed.ShouldBeLessThanOrEqualTo(piece.Quantity!.Value);
            (placed == piece.Quantity || spoken.Contains(piece.Id)).ShouldBeTrue($"row {piece.Id}: {placed} of {piece.Quantity}");
        }
    }

    private static void NothingOverfilled(Night night, NightPlan plan)
    {
        foreach (var flask in plan.Flasks)
        {
            var density = night.Shop.Alloys.Single(a => a.Alloy.Name == flask.Alloy).Alloy.Density!.Value;
            flask.Pieces.ShouldAllBe(p => night.Pieces[p.PieceId].Alloy == flask.Alloy);
            flask.Charge.ShouldBeGreaterThanOrEqualTo((flask.PiecesMetal + flask.TreeMetal + flask.Button) * (1 - 1e-9));
            (flask.Charge / density).Milliliters.ShouldBeLessThanOrEqualTo(
                CrucibleCapacity.Usable(night.Shop.Crucibles[0].Holds!.Value).Milliliters * (1 + 1e-9));
            (flask.Button / density).Milliliters.ShouldBeLessThanOrEqualTo(flask.Size.Cup!.Value.Milliliters * 0.8 * (1 + 1e-9));
            flask.Columns.SelectMany(c => c.Pieces).GroupBy(p => p.PieceId).ToDictionary(g => g.Key, g => g.Sum(p => p.Quantity))
                .ShouldBe(flask.Pieces.ToDictionary(p => p.PieceId, p => p.Quantity), ignoreOrder: true);
            flask.Pieces.Select(p => night.Pieces[p.PieceId].StonesIn).Distinct().Count().ShouldBe(1);
        }

        foreach (var used in plan.Flasks.GroupBy(f => f.Size.Name))
        {
            used.Count().ShouldBeLessThanOrEqualTo(night.Shop.FlaskSizes.Single(s => s.Name == used.Key).Owned!.Value);
        }

        plan.Flasks.Select(f => f.Letter).ShouldBeUnique();
    }

    private static void MixesHold(Night night, NightPlan plan)
    {
        var settings = night.Shop.Settings;
        plan.Mixes.SelectMany(m => m.Flasks).ShouldBeUnique();
        plan.Mixes.SelectMany(m => m.Flasks).Concat(OverBowl(plan)).Order(StringComparer.Ordinal)
            .ShouldBe(plan.Flasks.Where(f => f.Powder is not null).Select(f => f.Letter).Order(StringComparer.Ordinal));
        foreach (var mix in plan.Mixes)
        {
            var flasks = plan.Flasks.Where(f => mix.Flasks.Contains(f.Letter)).ToList();
            mix.Slurry.ShouldBeLessThanOrEqualTo(settings.MixingBowl!.Value * settings.BowlFill!.Value.DecimalFractions * (1 + 1e-9));
            (mix.Takes + settings.GlossOffMargin!.Value).Minutes.ShouldBeLessThanOrEqualTo(mix.GlossOff.Minutes + 1e-6);
            mix.Powder.Grams.ShouldBeLessThanOrEqualTo(flasks.Sum(f => f.Powder!.Value.Grams) + 1e-9);
            flasks.ShouldAllBe(f => Math.Abs((f.Water!.Value.Milliliters / f.Powder!.Value.Grams) - (mix.Water.Milliliters / mix.Powder.Grams)) < 1e-9);
        }
    }

    private static IEnumerable<string> OverBowl(NightPlan plan) =>
        plan.Findings.Where(f => f.Id == "flask-over-bowl").SelectMany(f => f.Subjects).Select(s => s.Key);

    private static Night Invent(int seed)
    {
        var random = new Random(seed);
        var pieces = Enumerable.Range(0, random.Next(1, 18)).Select(_ => Invent(random)).ToArray();
        var shop = Wrenmoor.Shop with
        {
            Crucibles = [new Crucible { Name = "Graphite 3", Holds = Wrenmoor.Ml(random.Next(15, 200)) }],
            Settings = Wrenmoor.Answered with { MixingBowl = Wrenmoor.Ml(random.Next(1500, 6000)) },
        };
        return Wrenmoor.Night(shop, pieces);
    }

    private static Piece Invent(Random random)
    {
        var isRing = random.Next(2) == 0;
        var length = 5 + (random.NextDouble() * 40);
        return Wrenmoor.Ring(random.Next(1, 12)) with
        {
            Weight = Mass.FromGrams(0.1 + (random.NextDouble() * 3)),
            Alloy = Alloys[random.Next(2)],
            StonesIn = random.Next(12) == 0,
            FinestSection = random.Next(3) == 0 ? Wrenmoor.Mm(0.5 + random.NextDouble()) : null,
            HeaviestSection = random.Next(3) == 0 ? Wrenmoor.Mm(2 + (random.NextDouble() * 8)) : null,
            Box = new PieceBox(isRing, Wrenmoor.Mm(length), Wrenmoor.Mm(2 + (random.NextDouble() * 15)), Wrenmoor.Mm(1 + (random.NextDouble() * 10))),
        };
    }

    private static string Written(NightPlan plan) => string.Join('\n', plan.Flasks
        .Select(f => $"{f.Letter} {f.Size.Name} {f.Charge.Grams:R} {string.Join(',', f.Columns.Select(c => string.Join('+', c.Pieces)))}")
        .Concat(plan.Findings.Select(f => f.Text())));
}
