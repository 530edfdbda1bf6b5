using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Planning.Patterns;
using CastBook.Planning.Words;

namespace CastBook.Planning.Rows;

/// <summary>Holds what remarks speak of against what was read for their rows: one finding for each kind of word.</summary>
internal static class RemarkChecks
{
    private const int MostQuoted = 3;
    private const int LongestQuote = 40;

    /// <summary>Compares the rows that are asked for.</summary>
    /// <param name="night">The night.</param>
    /// <param name="isAsked">Tells whether a row is asked for.</param>
    /// <param name="materials">The pattern materials.</param>
    /// <param name="findings">Takes what is found.</param>
    public static void Find(Night night, Func<int, bool> isAsked, MaterialBook materials, FindingList findings)
    {
        var remarked = night.Pieces.Where(p => p.Remark is not null && isAsked(p.Id)).ToList();
        if (remarked.Count == 0)
        {
            return;
        }

        bool Says(Piece piece, RemarkTopics topic) => (piece.Remark!.Topics & topic) != RemarkTopics.None;
        Compare(Catalogue.RemarksSpeakOfResin, PieceField.Material, p => Says(p, RemarkTopics.Resin) && !Says(p, RemarkTopics.Wax) && !MaySayResin(p, materials.Of(p)));
        Compare(Catalogue.RemarksSpeakOfWax, PieceField.Material, p => Says(p, RemarkTopics.Wax) && !Says(p, RemarkTopics.Resin) && materials.Of(p).Kind == PatternKind.Resin);
        Compare(Catalogue.RemarksSpeakOfStones, PieceField.StonesIn, p => Says(p, RemarkTopics.Stones) && !p.StonesIn);
        Compare(Catalogue.RemarksSayDone, PieceField.Piece, p => Says(p, RemarkTopics.Done));
        Compare(Catalogue.RemarksSayHold, PieceField.Piece, p => Says(p, RemarkTopics.Hold));
        Compare(Catalogue.RemarksSpeakOfSeveral, PieceField.Quantity, p => p.Remark!.Pieces > (p.Quantity ?? 0));

        void Compare(FindingKind kind, string field, Func<Piece, bool> differs)
        {
            if (remarked.Where(differs).ToList() is { Count: > 0 } rows)
            {
                findings.Add(kind.At([.. rows.Select(p => Subject.Piece(p.Id, field))], rows[0].Remark!.Column, Quoted(rows)));
            }
        }
    }

    // A print may be of wax, and a name that tells neither wax nor resin is the shop's own word in its own column.
    private static bool MaySayResin(Piece piece, KnownMaterial material) => material switch
    {
        { Kind: PatternKind.Wax } => piece.Material is { } written && MaterialWords.Of(written).Contains("PRINTED"),
        { Kind: null, Name: "" } => false,
        _ => true,
    };

    private static string Quoted(List<Piece> rows)
    {
        var texts = rows.Select(p => p.Remark!.Text).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        return Say.Together(
        [
            .. texts.Take(MostQuoted).Select(t => $"\"{(t.Length > LongestQuote ? t[..LongestQuote] + "…" : t)}\""),
            .. texts.Count > MostQuoted ? [SentenceWords.More(Say.Count(texts.Count - MostQuoted))] : Array.Empty<string>(),
        ]);
    }
}
