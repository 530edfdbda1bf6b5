namespace CastBook.Planning.Packing.Fitting;

/// <summary>Flasks of given sizes and settings, and whether all pieces fit into them: asked of two searches in turn.</summary>
/// <param name="problem">The problem.</param>
/// <param name="flasks">Size and setting of each flask.</param>
/// <param name="stop">Ends every look early.</param>
internal sealed class GivenFlasks(PackProblem problem, IReadOnlyList<(int Size, int Setting)> flasks, CancellationToken stop)
{
    // Ways of cutting trees are worth looking at for no shorter looks; then each search has half of the work. Sector by sector all is found
    // soon or not at all, so that what is more goes into the other.
    private const long LeastForWidths = 10_000_000;
    private const long MostForSectors = 150_000_000;

    private FlaskFit? bySectors;
    private WidthFit? byWidths;

    /// <summary>Looks whether everything fits; what earlier looks refuted is not looked at again.</summary>
    /// <param name="work">How many steps to spend.</param>
    public FitAnswer Look(long work)
    {
        var answer = (bySectors ??= new FlaskFit(problem, flasks, stop)).Look(work < LeastForWidths ? work : Math.Min(work / 2, MostForSectors));
        if (answer.Fits is not null || work < LeastForWidths)
        {
            return answer;
        }

        var cut = (byWidths ??= new WidthFit(problem, flasks, stop)).Look(work - answer.Work);
        return cut with { Work = answer.Work + cut.Work };
    }
}
