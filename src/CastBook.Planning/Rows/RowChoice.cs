using CastBook.Planning.Findings;
using CastBook.Planning.Words;

namespace CastBook.Planning.Rows;

/// <summary>Which rows are tonight's.</summary>
/// <param name="Standing">For each row: left out, done, another night's, or not planned yet, which means asked for.</param>
/// <param name="Night">The night that is planned; missing where the rows name none.</param>
/// <param name="NightIsOpen">True while the rows name several nights and none is chosen; then nothing is planned.</param>
internal sealed record RowChoice(IReadOnlyList<PieceStatus> Standing, string? Night, bool NightIsOpen)
{
    /// <summary>Whether a row is asked for tonight.</summary>
    /// <param name="id">The row.</param>
    public bool IsAsked(int id) => Standing[id] == PieceStatus.NotPlanned;

    /// <summary>Sorts the rows and says how many were left alone.</summary>
    /// <param name="night">The night.</param>
    /// <param name="findings">Takes what is found.</param>
    public static RowChoice Of(Night night, FindingList findings)
    {
        var standing = new PieceStatus[night.Pieces.Count];
        foreach (var piece in night.Pieces)
        {
            standing[piece.Id] = piece.LeaveOut ? PieceStatus.LeftOut : piece.Done ? PieceStatus.Done : PieceStatus.NotPlanned;
        }

        var open = night.Pieces.Where(p => standing[p.Id] == PieceStatus.NotPlanned);
        var named = open.Select(p => Key(p.Night)).Where(n => n.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase).ToList();

        Count(findings, Catalogue.RowsLeftOut, standing, PieceStatus.LeftOut, PieceField.LeaveOut);
        Count(findings, Catalogue.RowsDone, standing, PieceStatus.Done, PieceField.Done);
        if (named.Count == 0)
        {
            if (Key(night.Shop.Settings.Night) is { Length: > 0 } wanted)
            {
                findings.Add(Catalogue.NightWithoutColumn.At(Subject.Column(PieceField.Night), wanted));
            }

            return new(standing, Night: null, NightIsOpen: false);
        }

        if (NightChoice.Of(night, named, findings) is not { } chosen)
        {
            return new(standing, Night: null, NightIsOpen: true);
        }

        LeaveOthersAlone(chosen, open, standing, findings);
        return new(standing, chosen, NightIsOpen: false);
    }

    /// <summary>Whether a row's night is a later day than the one planned, so that nothing of an earlier plan holds for it; unless it hangs in a tree that is built.</summary>
    /// <param name="piece">The row.</param>
    /// <param name="trees">The trees in hand.</param>
    public bool IsToCome(Piece piece, IReadOnlyList<TreeInHand> trees) =>
        Standing[piece.Id] == PieceStatus.OtherNight
        && NightChoice.DayOf(piece.Night) is { } day && NightChoice.DayOf(Night) is { } tonight && day > tonight
        && !piece.LastFlasks.Any(share => trees.Any(t => t.State != FlaskState.Planned && string.Equals(t.Flask, share.Flask, StringComparison.OrdinalIgnoreCase)));

    /// <summary>A night's name as it compares.</summary>
    /// <param name="night">As written; may be missing.</param>
    public static string Key(string? night) => night?.Trim() ?? "";

    private static void LeaveOthersAlone(string night, IEnumerable<Piece> open, PieceStatus[] standing, FindingList findings)
    {
        var others = 0;
        var blank = 0;
        foreach (var piece in open.Where(p => !string.Equals(Key(p.Night), night, StringComparison.OrdinalIgnoreCase)))
        {
            standing[piece.Id] = PieceStatus.OtherNight;
            if (Key(piece.Night).Length == 0)
            {
                blank++;
            }
            else
            {
                others++;
            }
        }

        if (others > 0)
        {
            findings.Add(Catalogue.RowsOfOtherNights.At(
                Subject.Column(PieceField.Night), CountWords.Rows(others), night));
        }

        if (blank > 0)
        {
            findings.Add(Catalogue.RowsWithoutNight.At(
                Subject.Column(PieceField.Night), CountWords.Rows(blank), night));
        }
    }

    private static void Count(FindingList findings, FindingKind kind, PieceStatus[] standing, PieceStatus status, string field)
    {
        var count = standing.Count(s => s == status);
        if (count > 0)
        {
            findings.Add(kind.At(Subject.Column(field), CountWords.Rows(count)));
        }
    }
}
