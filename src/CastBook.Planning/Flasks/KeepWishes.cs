using CastBook.Planning.Findings;
using CastBook.Planning.Words;

namespace CastBook.Planning.Flasks;

/// <summary>Sorts out which rows can have the flask letter that the shop wants for them.</summary>
internal static class KeepWishes
{
    /// <summary>The wishes that can be tried, by row; each of the others has a check.</summary>
    /// <param name="pieces">The rows to plan.</param>
    /// <param name="builtLetters">Letters of trees that are built.</param>
    /// <param name="findings">Takes what is found.</param>
    public static IReadOnlyDictionary<int, string> Of(
        IReadOnlyList<TreePiece> pieces, IReadOnlySet<string> builtLetters, FindingList findings)
    {
        var wishes = new Dictionary<int, string>();
        var owners = new Dictionary<string, TreePiece>(StringComparer.Ordinal);
        foreach (var piece in pieces.Where(p => !string.IsNullOrWhiteSpace(p.Metal.Piece.KeepInFlask)))
        {
            var letter = FlaskLetters.Clean(piece.Metal.Piece.KeepInFlask!);
            if (!FlaskLetters.IsLetter(letter))
            {
                findings.Add(Refused(piece, piece.Quantity, letter, FlaskFindingWords.NoLetter(letter)));
            }
            else if (builtLetters.Contains(letter))
            {
                findings.Add(Refused(piece, piece.Quantity, letter, FlaskFindingWords.TreeBuilt));
            }
            else if (!owners.TryAdd(letter, piece) && (owners[letter].Alloy != piece.Alloy || owners[letter].StonesIn != piece.StonesIn))
            {
                findings.Add(Refused(piece, piece.Quantity, letter, owners[letter].Alloy != piece.Alloy
                    ? FlaskFindingWords.FlaskOfAlloy(owners[letter].Alloy.Name)
                    : FlaskFindingWords.StonesApart));
            }
            else
            {
                wishes[piece.Id] = letter;
            }
        }

        return wishes;
    }

    /// <summary>The check that so many of a row could not have their flask.</summary>
    /// <param name="piece">The row.</param>
    /// <param name="count">How many.</param>
    /// <param name="letter">The letter.</param>
    /// <param name="why">Why not, one sentence.</param>
    public static Finding Refused(TreePiece piece, int count, string letter, string why) =>
        Catalogue.KeepInFlaskNotPossible.At(
            Subject.Piece(piece.Id, PieceField.KeepInFlask), Say.Count(count), Say.Name(piece.Metal.Piece), letter, why);
}
