namespace CastBook.Planning.Packing;

/// <summary>How many steps one problem is worth: bounded by work and not by time, so that the same book gives the same plan.</summary>
/// <param name="Search">Steps to search for a better plan.</param>
/// <param name="Fewest">Steps to prove how few flasks do.</param>
/// <param name="Proof">Steps for each other part of the proof.</param>
/// <param name="Choices">Steps to look which choice of few flasks takes everything.</param>
/// <param name="Values">Steps to fill flasks over and over with pieces of other worth.</param>
internal readonly record struct PackWork(long Search, long Fewest, long Proof, long Choices, long Values)
{
    /// <summary>Steps to look again at choices that neither a look nor a proof decided.</summary>
    public long HardChoices { get; init; }

    /// <summary>More pieces than this are many: how few flasks do is what can be proved of them.</summary>
    public const long Many = 160;

    // A thousand million steps take about a second.
    private const long LeastSearch = 100_000_000;
    private const long SearchForEach = 20_000_000;
    private const long MostSearch = 3_000_000_000;
    private const long LeastProof = 300_000_000;
    private const long ProofForEach = 20_000_000;
    private const long MostProof = 4_000_000_000;

    // Ways to hang few flasks grow faster than their pieces; of many pieces no look at every way ends.
    private const long ChoicesForEachTwo = 400_000;
    private const long MostChoices = 1_000_000_000;

    // What short looks leave of so few pieces is hard, whether or not all may be cast beside each other.
    private const long MostOfHard = 64;
    private const long LeastHardChoices = 3_000_000_000;
    private const long ChoicesForEachFour = 300;
    private const long ChoicesOfMany = 100_000_000_000;

    private const long SearchOfMany = 1_000_000_000;
    private const long SearchOfManyKinds = 1_500_000_000;
    private const long FewestOfMany = 3_000_000_000;
    private const long ProofOfMany = 1_000_000_000;
    private const long ValuesOfManyKinds = 6_000_000_000;

    private const long LeastBrief = 2_000_000;
    private const long BriefForEach = 40_000;
    private const long MostBrief = 100_000_000;
    private const long BriefProof = 50_000_000;
    private const long BriefChoices = 20_000_000;
    private const long BriefValues = 100_000_000;

    /// <summary>As much as helps while somebody waits.</summary>
    /// <param name="pieces">How many pieces there are.</param>
    /// <param name="isOfManyKinds">Whether they are of more kinds than a master ends for, so that the work goes into the search.</param>
    public static PackWork Full(long pieces, bool isOfManyKinds)
    {
        if (pieces > Many)
        {
            return isOfManyKinds
                ? new(SearchOfManyKinds, 0, 0, 0, ValuesOfManyKinds)
                : new(SearchOfMany, FewestOfMany, ProofOfMany, ChoicesOfMany / pieces, 0);
        }

        var proof = Math.Clamp(pieces * ProofForEach, LeastProof, MostProof);
        return new(Math.Min(MostSearch, LeastSearch + (pieces * SearchForEach)), proof, proof, Math.Min(MostChoices, pieces * pieces * ChoicesForEachTwo), 0)
        {
            HardChoices = pieces <= MostOfHard ? Math.Max(LeastHardChoices, pieces * pieces * pieces * pieces * ChoicesForEachFour) : 0,
        };
    }

    /// <summary>A look at one of many problems.</summary>
    /// <param name="pieces">How many pieces there are.</param>
    /// <param name="isOfManyKinds">Whether they are of more kinds than a master ends for.</param>
    public static PackWork Brief(long pieces, bool isOfManyKinds)
    {
        var proof = isOfManyKinds ? 0 : BriefProof;
        return new(Math.Min(MostBrief, LeastBrief + (pieces * BriefForEach)), proof, proof, BriefChoices, isOfManyKinds ? BriefValues : 0);
    }
}
