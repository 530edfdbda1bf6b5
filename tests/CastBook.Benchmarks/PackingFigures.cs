using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Packing;

namespace CastBook.Benchmarks;

/// <summary>Prints what the search for flasks reaches on invented nights: its time, how often a plan is proved, and how far it may be from the best.</summary>
internal static class PackingFigures
{
    /// <summary>Prints the figures. Times are of all processors together, so that a busy machine changes them little.</summary>
    /// <param name="what">The nights of each kind, few where nothing is said; then the kinds by the beginnings of their names, all where none is named.</param>
    public static void Print(string[] what)
    {
        var nights = what.Length > 0 ? int.Parse(what[0], CultureInfo.InvariantCulture) : 20;
        Warm();
        Named("60 mixed", () => Print("60 mixed", nights, seed => InventedNight.Mixed(60, seed)));
        Named("60 dense", () => Print("60 dense", nights, seed => InventedNight.Dense(60, seed), 2, 10));
        Named("200", () => Print("200", nights / 2, seed => InventedNight.Mixed(200, seed), 2, 5));
        Named("1,000", () => Print("1,000", Math.Min(5, nights / 4), seed => InventedNight.Mixed(1000, seed)));
        Named("5,000", () => Print("5,000", Math.Min(2, nights / 10), seed => InventedNight.Mixed(5000, seed)));
        Named("edits 60", () => EditFigures.Print(60, nights));
        Named("edits 200", () => EditFigures.Print(200, nights));
        Named("rectangles", PrintRectangles);
        foreach (var items in new[] { 120, 250, 500, 1000 })
        {
            Named($"u{items}", () => PrintClassic($"u{items}", nights, seed => ClassicSet.Uniform(items, seed)));
        }

        Named("t60", () => PrintClassic("t60", nights, seed => ClassicSet.Triplets(60, seed)));
        Named("t120", () => PrintClassic("t120", nights / 2, seed => ClassicSet.Triplets(120, seed)));
        Named("t249", () => PrintClassic("t249", nights / 2, seed => ClassicSet.Triplets(249, seed)));

        void Named(string name, Action print)
        {
            if (what.Length < 2 || what.Skip(1).Any(w => name.StartsWith(w, StringComparison.Ordinal)))
            {
                print();
            }
        }
    }

    // The first plans of a process run slowly.
    private static void Warm()
    {
        for (var seed = 1; seed <= 5; seed++)
        {
            NightPlanner.Plan(InventedNight.Mixed(60, seed));
        }
    }

    // As long as the search takes; then ended after some seconds.
    private static void Print(string name, int nights, Func<int, Night> make, params int[] seconds)
    {
        Print(name, nights, make, () => new SearchTime());
        foreach (var most in seconds)
        {
            Print($"{name}, ended after {most} s", nights, make, () => new SearchTime(TimeSpan.FromSeconds(most)));
        }
    }

    private static void Print(string name, int nights, Func<int, Night> make, Func<SearchTime> started)
    {
        var times = new List<double>();
        var (count, investment, more, cost) = (0, 0, 0.0, 0.0);
        for (var seed = 1; seed <= nights; seed++)
        {
            using var watch = started();
            var plan = NightPlanner.Plan(make(seed), new PlanSearch(watch.Stop, watch));
            times.Add(watch.Milliseconds);
            count += plan.Bound.ProvedFewest ? 1 : 0;
            investment += plan.Bound.ProvedLeastInvestment ? 1 : 0;
            more += (plan.Flasks.Count / (double)plan.Bound.LeastFlasks) - 1;
            cost += Over(plan);
        }

        if (nights > 0)
        {
            times.Sort();
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{name,-9} {nights,4} nights  median {times[nights / 2],7:#,##0} ms  longest {times[^1],7:#,##0} ms  fewest flasks proved {100.0 * count / nights:0} %, least investment too {100.0 * investment / nights:0} %, flasks over the bound {100 * more / nights:0.0} %, cost where as few are proved {100 * cost / Math.Max(1, count):0.00} % on average"));
        }
    }

    private static void PrintClassic(string name, int sets, Func<int, PackProblem> make)
    {
        var (times, proved) = (new List<double>(), 0);
        for (var seed = 1; seed <= sets; seed++)
        {
            using var watch = new SearchTime();
            watch.Report(true);
            var answer = PackSolver.Solve(make(seed), 1, inBrief: false, CancellationToken.None);
            watch.Report(false);
            times.Add(watch.Milliseconds);
            proved += answer.IsCheapest ? 1 : 0;
        }

        if (sets > 0)
        {
            times.Sort();
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{name,-9} {sets,4} sets    median {times[sets / 2],7:#,##0} ms  longest {times[^1],7:#,##0} ms  fewest flasks proved {100.0 * proved / sets:0} %"));
        }
    }

    // Each set as published and lying on its side.
    private static void PrintRectangles()
    {
        var (times, proved, asFew, fewer) = (new List<double>(), 0, 0, 0);
        for (var i = 0; i < 2 * RectangleSet.Count; i++)
        {
            using var watch = new SearchTime();
            watch.Report(true);
            var answer = PackSolver.Solve(RectangleSet.Of(i / 2, lying: i % 2 == 1), 1, inBrief: false, CancellationToken.None);
            watch.Report(false);
            times.Add(watch.Milliseconds);
            proved += answer.IsCheapest ? 1 : 0;
            asFew += answer.Plan.Flasks.Count == RectangleSet.Optimum(i / 2) ? 1 : 0;
            fewer += answer.Plan.Flasks.Count < RectangleSet.Optimum(i / 2) ? 1 : 0;
        }

        times.Sort();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"rectangles {times.Count,3} sets   median {times[times.Count / 2],7:#,##0} ms  longest {times[^1],7:#,##0} ms  fewest in sectors proved {100.0 * proved / times.Count:0} %, as few as placed freely {asFew}, fewer {fewer}"));
    }

    // Of nights whose number of flasks is proved: how much more they may cost than the best.
    private static double Over(NightPlan plan)
    {
        var over = plan.Bound is { ProvedFewest: true, InvestmentOver: { } more } ? more.Milliliters : 0;
        return over / (EditFigures.Cost(plan) - over);
    }
}
