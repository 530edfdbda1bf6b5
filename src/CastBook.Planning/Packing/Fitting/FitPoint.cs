namespace CastBook.Planning.Packing.Fitting;

/// <summary>A point of the search from which it goes on.</summary>
/// <param name="Ways">The sectors that were not refuted, the most promising first.</param>
/// <param name="IsAll">Whether they are all that can be part of a way to hang everything.</param>
/// <param name="Chosen">Sectors that are likely to be chosen later.</param>
internal sealed record FitPoint(List<FitWay> Ways, bool IsAll, PooledSector[] Chosen)
{
    /// <summary>Prices that refuted a sector.</summary>
    public List<FitCut> Cuts { get; } = [];
}
