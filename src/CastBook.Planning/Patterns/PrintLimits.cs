using CastBook.Planning.Findings;

namespace CastBook.Planning.Patterns;

/// <summary>Compares what was done to a printed piece with what its material wants.</summary>
internal static class PrintLimits
{
    /// <summary>Adds a check for each step that is outside the material's limits.</summary>
    /// <param name="piece">The row.</param>
    /// <param name="material">Its material.</param>
    /// <param name="findings">Takes what is found.</param>
    public static void Compare(Piece piece, KnownMaterial material, FindingList findings)
    {
        if (piece.Print is not { } print || material.Row is not { } row)
        {
            return;
        }

        if (print.PrintedAt is { } at && row.PrintAtLeast is { } least && at < least)
        {
            findings.Add(Catalogue.PrintedTooCold.At(
                Subject.Piece(piece.Id, PieceField.PrintedAt), findings.Units.Temperature.Say(at), material.Said, findings.Units.Temperature.Say(least)));
        }

        if (print.Washed is { } washed && row.WashAtMost is { } most && washed > most)
        {
            findings.Add(Catalogue.WashedTooLong.At(
                Subject.Piece(piece.Id, PieceField.Washed), Say.Minutes(washed), material.Said, Say.Minutes(most)));
        }

        if ((print.LongestBath ?? print.Washed) is { } bath && row.BathAtMost is { } each && bath > each)
        {
            findings.Add(Catalogue.BathTooLong.At(
                Subject.Piece(piece.Id, PieceField.Washed), Say.Minutes(bath), material.Said, Say.Minutes(each)));
        }

        if (print.Cured is { } cured && row.CureEachSide is { } wanted && cured < wanted)
        {
            findings.Add(Catalogue.CuredTooShort.At(
                Subject.Piece(piece.Id, PieceField.Cured), Say.Minutes(cured), material.Said, Say.Minutes(wanted)));
        }
    }
}
