using CastBook.Casting.Patterns;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Patterns;

/// <summary>The pattern material of a row, as far as it is known.</summary>
/// <param name="Name">Its name; empty when nobody names it.</param>
/// <param name="Kind">Wax or resin, when known.</param>
/// <param name="Density">Its density, when known.</param>
/// <param name="Row">The row of the Materials sheet, if there is one.</param>
/// <param name="AskTheSetting">True when the answer belongs to the Shop sheet and not to the Materials sheet.</param>
internal sealed record KnownMaterial(string Name, PatternKind? Kind, Density? Density, Material? Row, bool AskTheSetting)
{
    /// <summary>The shop's materials that the name may mean, where that is open.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>The shop's names nearest to one that neither its sheet nor the trade knows.</summary>
    public IReadOnlyList<string> Nearest { get; init; } = [];

    /// <summary>The name in the list, where it fits the row only because the shop's sheet has no other such material.</summary>
    public string? TakenFrom { get; init; }

    /// <summary>What the shop gives as its density and no pattern material can have; not used.</summary>
    public Density? Impossible { get; init; }

    /// <summary>The name as a text says it.</summary>
    public string Said => Name.Length == 0 ? MaterialFindingWords.Unnamed : $"\"{Name}\"";

    /// <summary>The densities such a material can have.</summary>
    public (Density Least, Density Most) Range => Density is { } d
        ? (d, d)
        : Kind is { } kind ? PatternDensityRange.For(kind) : PatternDensityRange.Any;
}
