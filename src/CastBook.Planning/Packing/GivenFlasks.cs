namespace CastBook.Planning.Packing;

/// <summary>Flasks of given sizes and settings, and whether all pieces fit into them: where that is hard, asked of several searches in turn.</summary>
/// <param name="problem">The problem.</param>
/// <param name="flasks">Size and setting of each flask.</param>
/// <param name="isHard">Whether short looks did not decide.</param>
/// <param name="stop">Ends every look early.</param>
internal sealed class GivenFlasks(PackProblem problem, IReadOnlyList<(int Size, int Setting)> flasks, bool isHard, CancellationToken stop)
{
    // What of a look goes into each of two searches, and into the first where that had its share.
    private const int ShareOfEach = 2;
    private const int ShareOfFirst = 4;

    // Ways of cutting trees and lists are worth looking at for no shorter looks.
    private const long LeastForWidths = 10_000_000;

    private FlaskFit? bySectors;
    private WidthFit? byWidths;
    private ListFit? byList;

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="work">How many steps to spend.</param>
    public FitAnswer Look(long work)
    {
        var answer = (bySectors ??= new FlaskFit(problem, flasks, stop)).Look(work < LeastForWidths ? work : work / (isHard ? ShareOfFirst : ShareOfEach));
        if (answer.Fits is null && work >= LeastForWidths)
        {
            answer = Further(answer, (byWidths ??= new WidthFit(problem, flasks, stop)).Look(isHard ? work / ShareOfEach : work - answer.Work));
            if (answer.Fits is null && isHard)
            {
                answer = Further(answer, (byList ??= new ListFit(problem, flasks, stop)).Look(work - answer.Work));
            }
        }

        return answer;
    }

    private static FitAnswer Further(FitAnswer before, FitAnswer answer) => answer with { Work = before.Work + answer.Work };
}
