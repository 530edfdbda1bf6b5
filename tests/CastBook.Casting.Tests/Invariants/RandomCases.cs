namespace CastBook.Casting.Tests.Invariants;

/// <summary>Random cases of an invariant; a failure names the seed and the case.</summary>
internal static class RandomCases
{
    private const int Count = 300;

    /// <summary>Runs a check on many cases.</summary>
    /// <param name="seed">Where the random numbers start.</param>
    /// <param name="check">The check; its second argument is what a failure says.</param>
    public static void Of(int seed, Action<Random, string> check)
    {
        var random = new Random(seed);
        for (var i = 0; i < Count; i++)
        {
            check(random, $"seed {seed}, case {i}");
        }
    }

    /// <summary>A number between two others.</summary>
    public static double Between(this Random random, double least, double most) => least + ((most - least) * random.NextDouble());
}
