using CastBook.Planning.Clock;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>The flasks of the night, and where each row is.</summary>
internal sealed class PlannedFlasks
{
    private readonly Dictionary<string, FlaskPlan> byLetter;
    private readonly Dictionary<int, List<FlaskShare>> shares = [];
    private readonly IReadOnlyDictionary<int, List<FlaskShare>> built;

    /// <summary>Collects the flasks.</summary>
    /// <param name="flasks">The flasks, in any order.</param>
    /// <param name="bound">What the plan is worth.</param>
    /// <param name="built">Pieces in trees that are under way, by row; they stay there although a tree's numbers may be unknown.</param>
    public PlannedFlasks(
        IEnumerable<FlaskPlan> flasks, PlanBound bound, IReadOnlyDictionary<int, List<FlaskShare>> built)
    {
        Flasks = [.. flasks.OrderBy(f => FlaskLetters.Place(f.Letter)).ThenBy(f => f.Letter, StringComparer.Ordinal)];
        Bound = bound;
        this.built = built;
        byLetter = Flasks.ToDictionary(f => f.Letter, StringComparer.Ordinal);
        foreach (var flask in Flasks)
        {
            foreach (var share in flask.Pieces)
            {
                Add(share.PieceId, new(flask.Letter, share.Quantity));
            }
        }

        foreach (var (piece, all) in built)
        {
            foreach (var share in all.Where(s => !byLetter.ContainsKey(s.Flask)))
            {
                Add(piece, share);
            }
        }
    }

    /// <summary>The flasks, by letter.</summary>
    public IReadOnlyList<FlaskPlan> Flasks { get; }

    /// <summary>The mixes that fill them.</summary>
    public IReadOnlyList<MixPlan> Mixes { get; init; } = [];

    /// <summary>How long their moulds set at least.</summary>
    public Duration? SetAtLeast { get; init; }

    /// <summary>Whether moulds are to set for a time that nobody can read: no hour of the night is known then.</summary>
    public bool IsSetUnread { get; init; }

    /// <summary>What the plan is worth.</summary>
    public PlanBound Bound { get; }

    /// <summary>How the plan differs from the one that stands, or would if it were searched afresh.</summary>
    public PlanChange? Change { get; init; }

    /// <summary>The flasks as settled, before their sums.</summary>
    public IReadOnlyList<FlaskWork> Work { get; init; } = [];

    /// <summary>The same flasks, each with the hours of the kiln load that it is in.</summary>
    /// <param name="loads">The loads.</param>
    public PlannedFlasks InLoads(IReadOnlyList<KilnLoad> loads) =>
        new(Flasks.Select(f => loads.FirstOrDefault(l => l.Flasks.Contains(f.Letter)) is { } load ? f with { Burnout = load.Takes } : f), Bound, built)
        {
            Mixes = Mixes,
            SetAtLeast = SetAtLeast,
            Change = Change,
            Work = Work,
        };

    /// <summary>Where a row is, by letter.</summary>
    /// <param name="pieceId">The row.</param>
    public IReadOnlyList<FlaskShare> SharesOf(int pieceId) => shares.TryGetValue(pieceId, out var mine)
        ? [.. mine.OrderBy(s => FlaskLetters.Place(s.Flask)).ThenBy(s => s.Flask, StringComparer.Ordinal)]
        : [];

    /// <summary>The burnout of a flask, where it is known.</summary>
    /// <param name="letter">The flask's letter.</param>
    public Duration? BurnoutOf(string letter) => byLetter.TryGetValue(letter, out var flask) ? flask.Burnout : null;

    private void Add(int piece, FlaskShare share)
    {
        if (!shares.TryGetValue(piece, out var mine))
        {
            shares[piece] = mine = [];
        }

        mine.Add(share);
    }
}
