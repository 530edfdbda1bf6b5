using CastBook.Planning.Findings;

namespace CastBook.Planning.Flasks;

/// <summary>Which pieces share a flask.</summary>
/// <param name="Flasks">The flasks and their letters, by alloy and order of opening.</param>
/// <param name="LeastFlasks">The fewest flasks that any plan of the same pieces needs.</param>
/// <param name="AllPlaced">Whether every piece that fits a flask at all is in one.</param>
internal sealed record FlaskAssignment(IReadOnlyList<(string Letter, OpenFlask Flask)> Flasks, int LeastFlasks, bool AllPlaced)
{
    /// <summary>No flasks.</summary>
    public static FlaskAssignment None { get; } = new([], 0, AllPlaced: true);

    /// <summary>Assigns pieces to flasks.</summary>
    /// <param name="pieces">The rows; each fits some size alone.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="room">What a tree may take.</param>
    /// <param name="built">The flasks that are under way.</param>
    /// <param name="takenLetters">Letters that are not free.</param>
    /// <param name="findings">Takes what is found.</param>
    public static FlaskAssignment Of(
        IReadOnlyList<TreePiece> pieces, SizeBook sizes, FlaskRoom room, IReadOnlyList<BuiltTree> built,
        IReadOnlySet<string> takenLetters, FindingList findings)
    {
        var free = sizes.Sizes.Select(s => Math.Max(0, s.Owned - built.Count(b => b.Size == s))).ToArray();
        var wishes = KeepWishes.Of(pieces, takenLetters, findings);
        Weigh(pieces, sizes.Sizes, room);
        var open = new List<OpenFlask>();
        var (least, allPlaced) = (0, true);
        foreach (var group in Groups(pieces, wishes))
        {
            var filling = GroupFilling.Best(group, sizes.Sizes, room, free);
            free = [.. filling.Free];
            open.AddRange(filling.Flasks);
            least += FlaskBound.For(group, sizes.Sizes, room);
            allPlaced &= Report(group, filling, findings);
        }

        var smaller = SmallerFlasks.For(open, sizes.Sizes, room, free);
        return new(Lettered(smaller, takenLetters), least, allPlaced);
    }

    private static IEnumerable<PieceGroup> Groups(IReadOnlyList<TreePiece> pieces, IReadOnlyDictionary<int, string> wishes) =>
        pieces.GroupBy(p => (p.Alloy, p.StonesIn))
            .OrderBy(g => g.Key.Alloy.Order).ThenBy(g => g.Key.StonesIn)
            .Select(g => new PieceGroup(
                g.Key.Alloy, g.Key.StonesIn, [.. g],
                g.Where(p => wishes.ContainsKey(p.Id)).ToDictionary(p => p.Id, p => wishes[p.Id])));

    // What one piece takes of the flask that suits it best, of space or of metal.
    private static void Weigh(IReadOnlyList<TreePiece> pieces, IReadOnlyList<UsableSize> sizes, FlaskRoom room)
    {
        foreach (var piece in pieces)
        {
            piece.Weight = sizes
                .Where(s => s.Owned > 0 && piece.FitsIn(s) && room.Ml(s, piece.Alloy) >= piece.MetalMl)
                .Min(s => Math.Max(piece.Share(s), piece.MetalMl / room.Ml(s, piece.Alloy)));
        }
    }

    private static bool Report(PieceGroup group, GroupFilling filling, FindingList findings)
    {
        foreach (var piece in group.Pieces.Where(p => filling.WishesUnmet.ContainsKey(p.Id)))
        {
            findings.Add(KeepWishes.Refused(
                piece, filling.WishesUnmet[piece.Id], group.Wishes[piece.Id], "There is no room for them in it."));
        }

        var waiting = group.Pieces.Where(p => filling.Left[p.Id] > 0).ToList();
        if (waiting.Count == 0)
        {
            return true;
        }

        findings.Add(Catalogue.NoFlaskLeft.At(
            [.. waiting.Select(p => Subject.Piece(p.Id))],
            Say.Count(waiting.Sum(p => (long)filling.Left[p.Id]), "piece", "pieces"),
            group.Alloy.Name + (group.StonesIn ? " with stones in" : "")));
        return false;
    }

    private static List<(string, OpenFlask)> Lettered(List<OpenFlask> flasks, IReadOnlySet<string> takenLetters)
    {
        var taken = takenLetters.Concat(flasks.Select(f => f.Letter).OfType<string>()).ToHashSet(StringComparer.Ordinal);
        using var next = FlaskLetters.Free(taken).GetEnumerator();
        var lettered = new List<(string, OpenFlask)>();
        foreach (var flask in flasks)
        {
            lettered.Add((flask.Letter ?? Next(), flask));
        }

        return lettered;

        string Next()
        {
            next.MoveNext();
            return next.Current;
        }
    }
}
