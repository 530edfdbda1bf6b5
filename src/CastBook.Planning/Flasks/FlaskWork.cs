using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Planning.Metals;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>A flask whose content is settled and whose sums are to be worked out.</summary>
/// <param name="Letter">Its letter.</param>
/// <param name="Size">Its size.</param>
/// <param name="Alloy">Its alloy, with a density.</param>
/// <param name="State">How far it has come.</param>
/// <param name="Rows">What hangs in it, in the order of the list.</param>
internal sealed record FlaskWork(string Letter, UsableSize Size, KnownAlloy Alloy, FlaskState State, IReadOnlyList<HungRow> Rows)
{
    /// <summary>Its line of the Trees sheet, if it is under way.</summary>
    public TreeInHand? Line { get; init; }

    /// <summary>What limits it; nothing for a tree that is built.</summary>
    public FlaskLimit? Limit { get; init; }

    /// <summary>Its tree, sector by sector.</summary>
    public IReadOnlyList<TreeColumn> Columns { get; init; } = [];

    /// <summary>Volume of the pieces without gates.</summary>
    public Volume Pieces => Sum(r => r.Volume);

    /// <summary>Estimated volume of pieces, gates and trunk.</summary>
    public Volume Tree => Pieces + Sum(r => r.Gates) + Size.Trunk;

    /// <summary>Resin where there is any resin, or anything that is not known to be wax.</summary>
    public PatternKind Kind => Rows.Any(r => r.Metal.Material.Kind != PatternKind.Wax) ? PatternKind.Resin : PatternKind.Wax;

    /// <summary>Whether stones are in it.</summary>
    public bool StonesIn => Rows.Any(r => r.Metal.Piece.MayHaveStones);

    /// <summary>The bands that all of its pieces allow; the ordinary one where a built tree has none.</summary>
    public (SectionBand Coldest, SectionBand Hottest) Bands
    {
        get
        {
            var (coldest, hottest) = (Rows.Max(r => r.Coldest), Rows.Min(r => r.Hottest));
            return coldest <= hottest ? (coldest, hottest) : (SectionBand.Ordinary, SectionBand.Ordinary);
        }
    }

    private Volume Sum(Func<HungRow, Volume> part) => Rows.Aggregate(Volume.Zero, (sum, row) => sum + part(row));
}
