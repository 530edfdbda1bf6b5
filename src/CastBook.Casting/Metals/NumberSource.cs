namespace CastBook.Casting.Metals;

/// <summary>Where a number of the built-in tables comes from, in words that a caster may read.</summary>
/// <param name="Kind">How well it is known.</param>
/// <param name="Words">Where it comes from, such as <c>published data sheet</c>.</param>
/// <param name="Others">What other sources say, and why this one is used; missing where nobody disagrees.</param>
public sealed record NumberSource(SourceKind Kind, string Words, string? Others = null)
{
    /// <summary>By definition or by name.</summary>
    public static NumberSource Exact { get; } = new(SourceKind.Exact, "exact");

    /// <summary>By the rule of mixtures.</summary>
    public static NumberSource MixingRule { get; } = new(SourceKind.Rule, "worked out from the composition");

    /// <summary>A number that somebody printed.</summary>
    /// <param name="what">What it is printed in, such as <c>data sheet</c>; no supplier's name.</param>
    public static NumberSource Published(string what) => new(SourceKind.Published, "published " + what);

    /// <summary>What casters usually do.</summary>
    public static NumberSource CommonPractice { get; } = new(SourceKind.CommonPractice, "common practice");

    /// <summary>A number from memory.</summary>
    public static NumberSource Memory { get; } = new(SourceKind.Memory, "from memory, to be checked");

    /// <summary>The same source, with what others say.</summary>
    /// <param name="others">The range, and the reason for the number used.</param>
    public NumberSource But(string others) => this with { Others = others };
}
