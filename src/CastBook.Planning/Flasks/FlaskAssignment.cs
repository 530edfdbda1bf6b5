using CastBook.Planning.Findings;

namespace CastBook.Planning.Flasks;

/// <summary>Which pieces share a flask.</summary>
/// <param name="Flasks">The flasks and their letters, by alloy and order of opening.</param>
/// <param name="LeastFlasks">The fewest flasks that any plan of the same pieces needs.</param>
/// <param name="AllPlaced">Whether every piece that fits a flask at all is in one.</param>
internal sealed record FlaskAssignment(IReadOnlyList<(string Letter, FilledFlask Flask)> Flasks, int LeastFlasks, bool AllPlaced)
{
    /// <summary>Whether it is proved that no plan takes fewer flasks, nor less investment in as many.</summary>
    public bool IsCheapest { get; private init; }

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
        var groups = Groups(pieces, KeepWishes.Of(pieces, takenLetters, findings)).ToList();
        var (answers, areShort) = Pack([.. groups.Select(g => new GroupPacking(g, sizes.Sizes, room))], free, CancellationToken.None);
        var (least, allPlaced, cheapest) = (0, true, !areShort);
        for (var i = 0; i < groups.Count; i++)
        {
            least += answers[i].LeastFlasks;
            cheapest &= answers[i].IsCheapest;
            allPlaced &= Report(groups[i], answers[i], findings);
        }

        return new(Lettered([.. answers.SelectMany(a => a.Flasks)], takenLetters), least, allPlaced) { IsCheapest = cheapest };
    }

    // Each group is packed as if it were alone, side by side. Where they then want more flasks than there are, each in turn takes
    // of what the ones before it left.
    private static (GroupAnswer[] Answers, bool AreShort) Pack(GroupPacking[] groups, int[] free, CancellationToken stop)
    {
        var answers = new GroupAnswer[groups.Length];
        if (groups.Length == 1)
        {
            answers[0] = groups[0].Pack(free, stop);
            return (answers, false);
        }

        Parallel.For(0, groups.Length, i => answers[i] = groups[i].Pack(free, stop));
        if (!free.Where((count, size) => answers.Sum(a => a.Used(size)) > count).Any())
        {
            return (answers, false);
        }

        int[] left = [.. free];
        for (var i = 0; i < groups.Length; i++)
        {
            // Of all flasks there are, not of what others left, which is what the bound is about.
            var least = answers[i].LeastFlasks;
            answers[i] = groups[i].Pack(left, stop) with { LeastFlasks = least };
            left = [.. left.Select((count, size) => count - answers[i].Used(size))];
        }

        return (answers, true);
    }

    private static IEnumerable<PieceGroup> Groups(IReadOnlyList<TreePiece> pieces, IReadOnlyDictionary<int, string> wishes) =>
        pieces.GroupBy(p => (p.Alloy, p.StonesIn))
            .OrderBy(g => g.Key.Alloy.Order).ThenBy(g => g.Key.StonesIn)
            .Select(g => new PieceGroup(
                g.Key.Alloy, g.Key.StonesIn, [.. g],
                g.Where(p => wishes.ContainsKey(p.Id)).ToDictionary(p => p.Id, p => wishes[p.Id])));

    private static bool Report(PieceGroup group, GroupAnswer answer, FindingList findings)
    {
        foreach (var piece in group.Pieces.Where(p => answer.WishesUnmet.ContainsKey(p.Id)))
        {
            findings.Add(KeepWishes.Refused(
                piece, answer.WishesUnmet[piece.Id], group.Wishes[piece.Id], "There is no room for them in it."));
        }

        var waiting = group.Pieces.Where(p => answer.Left[p.Id] > 0).ToList();
        if (waiting.Count == 0)
        {
            return true;
        }

        findings.Add(Catalogue.NoFlaskLeft.At(
            [.. waiting.Select(p => Subject.Piece(p.Id))],
            Say.Count(waiting.Sum(p => (long)answer.Left[p.Id]), "piece", "pieces"),
            group.Alloy.Name + (group.StonesIn ? " with stones in" : "")));
        return false;
    }

    private static List<(string, FilledFlask)> Lettered(IReadOnlyList<FilledFlask> flasks, IReadOnlySet<string> takenLetters)
    {
        var taken = takenLetters.Concat(flasks.Select(f => f.Letter).OfType<string>()).ToHashSet(StringComparer.Ordinal);
        using var next = FlaskLetters.Free(taken).GetEnumerator();
        var lettered = new List<(string, FilledFlask)>();
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
