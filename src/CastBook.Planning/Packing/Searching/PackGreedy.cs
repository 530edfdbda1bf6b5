using CastBook.Planning.Floors;

namespace CastBook.Planning.Packing.Searching;

/// <summary>Fills one flask after the other, each time the one that takes most for what it costs.</summary>
internal sealed class PackGreedy(PackProblem problem, TreeFilling filling)
{
    private static readonly (int Size, int Width)[] Measures = [(0, 0), (1, 0), (2, 0), (3, 0), (0, 1), (1, 1), (1, 2), (2, 2)];

    // Many pieces fill flasks well by any measure, and each look at them takes long.
    private const int ManyItems = 400;

    /// <summary>The best of several starts.</summary>
    public PackPlan Best()
    {
        PackPlan? best = null;
        var measures = problem.Items.Length > ManyItems ? Measures.AsSpan(1, 2) : Measures;
        foreach (var (size, width) in measures)
        {
            var plan = PackPlan.Empty(problem);
            Fill(plan, Values(size, width, urgent: false));
            if (plan.Lost > 0)
            {
                var sooner = PackPlan.Empty(problem);
                Fill(sooner, Values(size, width, urgent: true));
                plan = sooner.IsBetterThan(plan) ? sooner : plan;
            }

            best = best is null || plan.IsBetterThan(best) ? plan : best;
        }

        return best!;
    }

    /// <summary>What pieces are worth, by each measure in turn.</summary>
    public IEnumerable<long[]> Measured()
    {
        foreach (var (size, width) in Measures)
        {
            yield return Values(size, width, urgent: false);
        }
    }

    /// <summary>Measures changed a little here and there, always the same.</summary>
    /// <param name="most">How many.</param>
    public IEnumerable<long[]> Perturbed(int most)
    {
        var chance = new Chance(0);
        for (var i = 0; i < most; i++)
        {
            var (size, width) = Measures[i % Measures.Length];
            yield return Perturbed(Values(size, width, urgent: false), chance);
        }
    }

    /// <summary>Changes values by up to a quarter.</summary>
    /// <param name="values">The values.</param>
    /// <param name="chance">What to change them by.</param>
    public static long[] Perturbed(long[] values, Chance chance)
    {
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = Math.Max(1, values[i] * (75 + (int)(chance.Next() * 51)) / 100);
        }

        return values;
    }

    /// <summary>Fills flasks until nothing is left that fits one.</summary>
    /// <param name="plan">What is there already.</param>
    /// <param name="values">What each piece is worth.</param>
    /// <param name="dearest">Gives up when the plan would cost as much.</param>
    public void Fill(PackPlan plan, long[] values, long dearest = long.MaxValue)
    {
        for (var pin = 0; pin < problem.Pins; pin++)
        {
            if (plan.IsWanted(pin) && Next(plan, values, pin) is { } pinned)
            {
                plan.Add(pinned);
            }
        }

        while (plan.Lost > 0 && plan.Cost < dearest && Next(plan, values, -1) is { } flask)
        {
            plan.Add(flask);
        }
    }

    /// <summary>What pieces are worth by a measure: the share of a flask to a power, times the angle to a power.</summary>
    /// <param name="quarters">Quarters by which the power of the share is more than one.</param>
    /// <param name="width">Quarters of the power of the angle.</param>
    /// <param name="urgent">Whether what is wanted sooner comes first.</param>
    public long[] Values(int quarters, int width, bool urgent)
    {
        var values = new long[problem.Items.Length];
        for (var i = 0; i < values.Length; i++)
        {
            var item = problem.Items[i];
            var share = problem.Weights[i] / 1e6;
            var theta = item.Shapes.Where(s => s.HasSector).Select(s => s.Theta).DefaultIfEmpty(PackShape.Turn).Min() / (double)PackShape.Turn;
            var value = share * Quarters(share, quarters) * Quarters(theta, width) * 1e6;
            values[i] = Math.Max(1, (long)value) << (urgent ? item.Urgency * 2 : 0);
        }

        return values;
    }

    /// <summary>The flask settings at which something that is left can be cast; one where one suits all.</summary>
    /// <param name="left">How many of each piece are left.</param>
    public List<int> SettingsFor(int[] left)
    {
        var (lowest, highest) = (int.MinValue, int.MaxValue);
        for (var i = 0; i < left.Length; i++)
        {
            if (left[i] > 0)
            {
                lowest = Math.Max(lowest, problem.Items[i].Lowest);
                highest = Math.Min(highest, problem.Items[i].Highest);
            }
        }

        return lowest <= highest ? [highest] : [.. problem.Settings];
    }

    private PackedFlask? Next(PackPlan plan, long[] values, int pin)
    {
        PackedFlask? best = null;
        var most = 0.0;
        var settings = pin < 0 ? SettingsFor(plan.Left) : [.. problem.Settings];
        for (var size = 0; size < problem.Sizes.Length; size++)
        {
            foreach (var setting in settings)
            {
                if (plan.Free[size] > 0 && filling.Fill(size, setting, pin, plan.Left, values) is { } filled
                    && filled.Value / (double)problem.Sizes[size].Cost > most)
                {
                    (best, most) = (filled.Flask, filled.Value / (double)problem.Sizes[size].Cost);
                }
            }
        }

        return best;
    }

    // Square roots are the same on every machine; powers are not.
    private static double Quarters(double x, int quarters) => quarters switch
    {
        0 => 1,
        1 => Math.Sqrt(Math.Sqrt(x)),
        2 => Math.Sqrt(x),
        _ => Math.Sqrt(x) * Math.Sqrt(Math.Sqrt(x)),
    };
}
