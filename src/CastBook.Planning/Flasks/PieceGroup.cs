using CastBook.Planning.Metals;

namespace CastBook.Planning.Flasks;

/// <summary>Rows that may share flasks as far as metal and stones go.</summary>
/// <param name="Alloy">Their metal.</param>
/// <param name="StonesIn">Whether they have stones set in; they share with nothing else.</param>
/// <param name="Pieces">The rows, in the order of the list.</param>
/// <param name="Wishes">The letters that the shop wants, by row.</param>
internal sealed record PieceGroup(
    KnownAlloy Alloy, bool StonesIn, IReadOnlyList<TreePiece> Pieces, IReadOnlyDictionary<int, string> Wishes);
