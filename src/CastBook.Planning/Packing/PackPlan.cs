namespace CastBook.Planning.Packing;

/// <summary>Flasks and what is left out of them.</summary>
internal sealed class PackPlan
{
    private PackPlan(PackProblem problem, List<PackedFlask> flasks, int[] left, int[] free)
    {
        (Problem, Flasks, Left, Free) = (problem, flasks, left, free);
    }

    /// <summary>The problem.</summary>
    public PackProblem Problem { get; }

    /// <summary>The flasks.</summary>
    public List<PackedFlask> Flasks { get; }

    /// <summary>How many of each piece are in no flask.</summary>
    public int[] Left { get; }

    /// <summary>How many of each size are free.</summary>
    public int[] Free { get; }

    /// <summary>What the pieces without a flask are worth; before everything else.</summary>
    public decimal Lost { get; private set; }

    /// <summary>What the flasks cost.</summary>
    public long Cost { get; private set; }

    /// <summary>Nothing placed yet.</summary>
    /// <param name="problem">The problem.</param>
    public static PackPlan Empty(PackProblem problem)
    {
        var plan = new PackPlan(
            problem, [], [.. problem.Items.Select(i => i.Quantity)], [.. problem.Sizes.Select(s => s.Free)]);
        for (var i = 0; i < plan.Left.Length; i++)
        {
            plan.Lost += plan.Left[i] * problem.Loss(i);
        }

        return plan;
    }

    /// <summary>A copy.</summary>
    public PackPlan Copy() => new(Problem, [.. Flasks], [.. Left], [.. Free]) { Lost = Lost, Cost = Cost };

    /// <summary>Adds a flask.</summary>
    /// <param name="flask">The flask; what hangs in it is left and its size is free.</param>
    public void Add(PackedFlask flask)
    {
        Flasks.Add(flask);
        Book(flask, 1);
    }

    /// <summary>Takes a flask away.</summary>
    /// <param name="at">Its place.</param>
    public void RemoveAt(int at)
    {
        Book(Flasks[at], -1);
        Flasks.RemoveAt(at);
    }

    /// <summary>Whether this plan is better than another: more placed, then cheaper.</summary>
    /// <param name="other">The other.</param>
    public bool IsBetterThan(PackPlan other) => Lost != other.Lost ? Lost < other.Lost : Cost < other.Cost;

    /// <summary>Whether pieces wait for the flask of a pin.</summary>
    /// <param name="pin">The pin.</param>
    public bool IsWanted(int pin)
    {
        if (Flasks.Exists(f => f.Pin == pin))
        {
            return false;
        }

        for (var i = 0; i < Left.Length; i++)
        {
            if (Left[i] > 0 && Problem.Items[i].Pin == pin)
            {
                return true;
            }
        }

        return false;
    }

    private void Book(PackedFlask flask, int sign)
    {
        Free[flask.Size] -= sign;
        Cost += sign * Problem.Sizes[flask.Size].Cost;
        foreach (var (item, count) in flask.Content)
        {
            Left[item] -= sign * count;
            Lost -= sign * count * Problem.Loss(item);
        }
    }
}
