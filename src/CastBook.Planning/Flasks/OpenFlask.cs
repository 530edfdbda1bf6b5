using CastBook.Casting.Pouring;
using CastBook.Planning.Metals;

namespace CastBook.Planning.Flasks;

/// <summary>A flask that is being filled.</summary>
/// <param name="Alloy">Its metal.</param>
/// <param name="StonesIn">Whether its pieces have stones set in; they share with nothing else.</param>
/// <param name="Band">The band its pieces must allow.</param>
internal sealed record OpenFlask(KnownAlloy Alloy, bool StonesIn, SectionBand Band)
{
    /// <summary>Its tree.</summary>
    public required TreeBuilder Tree { get; init; }

    /// <summary>The letter that the shop wants for it.</summary>
    public string? Letter { get; init; }
}
