namespace CastBook.Planning.Clock;

/// <summary>A kiln load and the parts of its night.</summary>
/// <param name="Load">The load.</param>
/// <param name="Before">From the set moulds to the loaded kiln.</param>
/// <param name="Burnout">The stages.</param>
/// <param name="Pours">Pours and quenches.</param>
internal sealed record LoadParts(KilnLoad Load, NightPart Before, NightPart Burnout, NightPart Pours)
{
    /// <summary>Whether the loaded kiln may wait for its timer: only a cold one does.</summary>
    public bool MayWait => Load.IsLoadedCold;

    /// <summary>When the pours begin, in minutes.</summary>
    /// <param name="before">When the work before the kiln begins, in minutes.</param>
    /// <param name="timer">How many minutes the loaded kiln waits.</param>
    public double PourAt(double before, double timer) => before + Before.Minutes + timer + Burnout.Minutes;
}
