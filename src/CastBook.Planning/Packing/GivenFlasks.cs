namespace CastBook.Planning.Packing;

/// <summary>Flasks of given sizes and settings, and whether all pieces fit into them: asked of one search, then of another too.</summary>
/// <param name="problem">The problem.</param>
/// <param name="flasks">Size and setting of each flask.</param>
/// <param name="stop">Ends every look early.</param>
internal sealed class GivenFlasks(PackProblem problem, IReadOnlyList<(int Size, int Setting)> flasks, CancellationToken stop)
{
    // A list of sectors is worth making for so long a look.
    private const long LeastForList = 20_000_000;

    private FlaskFit? bySectors;
    private ListFit? byList;

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="work">How many steps to spend.</param>
    public FitAnswer Look(long work)
    {
        var answer = (bySectors ??= new FlaskFit(problem, flasks, stop)).Look(work / 2);
        if (answer.Fits is not null || work < LeastForList)
        {
            return answer;
        }

        var listed = (byList ??= new ListFit(problem, flasks, stop)).Look(work - answer.Work);
        return listed with { Work = answer.Work + listed.Work };
    }
}
