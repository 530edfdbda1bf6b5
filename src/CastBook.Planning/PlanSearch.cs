namespace CastBook.Planning;

/// <summary>How the search for flasks is watched and ended early.</summary>
/// <param name="Stop">Ends the search with the best plan so far; a finding says so.</param>
/// <param name="Running">Takes true when the search begins and false when it is over; null for nobody.</param>
public sealed record PlanSearch(CancellationToken Stop, IProgress<bool>? Running)
{
    /// <summary>Nobody watches.</summary>
    public static PlanSearch Unwatched { get; } = new(CancellationToken.None, null);
}
