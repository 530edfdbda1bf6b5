namespace CastBook.Planning.Packing;

/// <summary>Flasks of given sizes and settings, and whether all pieces fit into them: where that is hard, asked of two searches in turn.</summary>
/// <param name="problem">The problem.</param>
/// <param name="flasks">Size and setting of each flask.</param>
/// <param name="isHard">Whether short looks did not decide.</param>
/// <param name="stop">Ends every look early.</param>
internal sealed class GivenFlasks(PackProblem problem, IReadOnlyList<(int Size, int Setting)> flasks, bool isHard, CancellationToken stop)
{
    // Of that the search without a list has had its share.
    private const int ShareWithout = 4;

    // Lists are worth making for no shorter looks.
    private const long LeastForList = 50_000_000;

    private FlaskFit? bySectors;
    private ListFit? byList;

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="work">How many steps to spend.</param>
    public FitAnswer Look(long work)
    {
        var answer = (bySectors ??= new FlaskFit(problem, flasks, stop)).Look(isHard ? work / ShareWithout : work);
        if (answer.Fits is not null || !isHard || work < LeastForList)
        {
            return answer;
        }

        var listed = (byList ??= new ListFit(problem, flasks, stop)).Look(work - answer.Work);
        return listed with { Work = answer.Work + listed.Work };
    }
}
