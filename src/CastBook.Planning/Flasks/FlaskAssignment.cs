using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>Which pieces share a flask.</summary>
/// <param name="Flasks">The flasks and their letters, by alloy and order of opening.</param>
/// <param name="LeastFlasks">The fewest flasks that any plan of the same pieces needs.</param>
/// <param name="AllPlaced">Whether every piece that fits a flask at all is in one.</param>
internal sealed record FlaskAssignment(IReadOnlyList<(string Letter, FilledFlask Flask)> Flasks, int LeastFlasks, bool AllPlaced)
{
    /// <summary>Whether it is proved that no plan fills less investment; in as few flasks, where flasks are wished for first.</summary>
    public bool IsLeastInvestment { get; private init; }

    /// <summary>How much more investment it fills at most than any plan of as few flasks, where that is what is wished for next.</summary>
    public Volume? InvestmentOver { get; private init; }

    /// <summary>Whether it is proved that no plan takes fewer kiln loads; missing where flasks and investment come before them.</summary>
    public bool? IsFewestLoads { get; private init; }

    /// <summary>How the plan differs from the one that stands, or would if it were searched afresh.</summary>
    public PlanChange? Change { get; private init; }

    /// <summary>No flasks.</summary>
    public static FlaskAssignment None { get; } = new([], 0, AllPlaced: true);

    /// <summary>Assigns pieces to flasks.</summary>
    /// <param name="night">The night.</param>
    /// <param name="pieces">The rows; each fits some size alone.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="room">What a tree may take.</param>
    /// <param name="kiln">What flasks ask of the kiln.</param>
    /// <param name="built">The flasks that are under way.</param>
    /// <param name="takenLetters">Letters that are not free.</param>
    /// <param name="findings">Takes what is found.</param>
    /// <param name="search">Watches the search and may end it early.</param>
    public static FlaskAssignment Of(
        Night night, IReadOnlyList<TreePiece> pieces, SizeBook sizes, FlaskRoom room, KilnNeeds kiln, IReadOnlyList<BuiltTree> built,
        IReadOnlySet<string> takenLetters, FindingList findings, PlanSearch search)
    {
        var free = sizes.Sizes.Select(s => Math.Max(0, s.Owned - built.Count(b => b.Size == s))).ToArray();
        var groups = Groups(pieces, KeepWishes.Of(pieces, takenLetters, findings)).ToList();
        if (groups.Count == 0)
        {
            return None;
        }

        var dates = pieces.Select(p => p.Metal.Piece.Due).OfType<DateOnly>().Distinct().Order().ToList();
        search.Running?.Report(true);
        var cost = new FlaskCost(night.Shop.Settings.OrderOfWishes ?? FlaskCost.Usual);
        var worth = new NightWorth(cost, kiln);
        var packings = groups.ConvertAll(g => new GroupPacking(g, sizes.Sizes, room, dates, cost));
        var shared = new FlaskSharing(packings, free, search.Stop).Share();
        var standing = StandingFlask.Of(groups, night, sizes, takenLetters);
        var afresh = new KilnChoice(packings, free, cost, kiln, search.Stop).Better(shared.Answers);

        // What stands in the book is not moved for the sake of thicknesses.
        afresh = standing.Any(s => s.Count > 0) ? afresh : Alike(packings, afresh, free, search.Stop);
        var chosen = Replanning.Choose(packings, afresh, standing, free, worth, takenLetters, night.Shop.Settings.WhenLittleChanged, search.Stop);
        search.Running?.Report(false);
        if (search.Stop.IsCancellationRequested)
        {
            findings.Add(Catalogue.SearchStopped.At(Subject.Book));
        }

        var allPlaced = true;
        for (var i = 0; i < groups.Count; i++)
        {
            allPlaced &= Report(groups[i], chosen.Answers[i], findings);
        }

        if (chosen.Change is { IsKept: true } change)
        {
            findings.Add(Catalogue.PiecesKeptInFlasks.At(Subject.Setting(SettingName.WhenLittleChanged), change.Words(findings.Units.Water)));
        }

        var result = shared with { Answers = chosen.Answers };
        return new(chosen.Flasks, shared.LeastFlasks, allPlaced)
        {
            IsLeastInvestment = cost.RanksInvestment && (result.IsCheapest || (shared.IsCheapest && Inside(chosen.Answers) == Inside(shared.Answers))),
            InvestmentOver = cost.IsFlasksThenInvestment ? Volume.FromMilliliters(cost.Ml(result.Over)) : null,
            IsFewestLoads = cost.RanksKilnFirst ? kiln.IsFewest(worth.Kiln(chosen.Answers), packings.Select(p => p.StonesIn)) : null,
            Change = chosen.Change,
        };
    }

    private static GroupAnswer[] Alike(List<GroupPacking> packings, GroupAnswer[] answers, int[] free, CancellationToken stop) =>
    [
        .. answers.Select((answer, i) => packings[i].Alike(answer, [.. free.Select((count, size) => count - answers.Where(a => a != answer).Sum(a => a.Used(size)))], stop)),
    ];

    // As many flasks that hold as much are as good, whatever else is wished for.
    private static (int Flasks, double Ml) Inside(GroupAnswer[] answers)
    {
        FilledFlask[] all = [.. answers.SelectMany(a => a.Flasks)];
        return (all.Length, Math.Round(all.Sum(f => f.Size.Inside.Milliliters), 6));
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
                piece, answer.WishesUnmet[piece.Id], group.Wishes[piece.Id], FlaskFindingWords.NoRoom));
        }

        var waiting = group.Pieces.Where(p => answer.Left[p.Id] > 0).ToList();
        if (waiting.Count == 0)
        {
            return true;
        }

        findings.Add(Catalogue.NoFlaskLeft.At(
            [.. waiting.Select(p => Subject.Piece(p.Id))],
            CountWords.Pieces(waiting.Sum(p => (long)answer.Left[p.Id])),
            group.StonesIn ? FlaskFindingWords.WithStonesIn(group.Alloy.Name) : group.Alloy.Name));
        return false;
    }
}
