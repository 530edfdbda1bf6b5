using UnitsNet;

namespace CastBook.Planning;

/// <summary>A row's answer.</summary>
public sealed record PiecePlan
{
    // Plain numbers, not a number where missing: a long list has one of these for each row.
    private readonly double metalGrams = double.NaN;
    private readonly double workedOutGrams = double.NaN;
    private readonly double burnoutHours = double.NaN;

    /// <summary>The row, <see cref="Piece.Id"/>.</summary>
    public required int Id { get; init; }

    /// <summary>What became of it.</summary>
    public required PieceStatus Status { get; init; }

    /// <summary>Whether the row is that of a night still to come, so that what an earlier plan made of it no longer holds.</summary>
    public bool IsToCome { get; init; }

    /// <summary>Metal of one piece without gates; missing where it cannot be known.</summary>
    public Mass? MetalEach
    {
        get => double.IsNaN(metalGrams) ? null : Mass.FromGrams(metalGrams);
        init => metalGrams = value?.Grams ?? double.NaN;
    }

    /// <summary>What CastBook makes of the row's weight or volume, where <see cref="MetalEach"/> is the shop's own word.</summary>
    public Mass? MetalWorkedOut
    {
        get => double.IsNaN(workedOutGrams) ? null : Mass.FromGrams(workedOutGrams);
        init => workedOutGrams = value?.Grams ?? double.NaN;
    }

    /// <summary>Where it is; a built tree whose numbers are unknown is named here but not in <see cref="NightPlan.Flasks"/>.</summary>
    public IReadOnlyList<FlaskShare> Flasks { get; init; } = [];

    /// <summary>The longest burnout among its flasks.</summary>
    public Duration? Burnout
    {
        get => double.IsNaN(burnoutHours) ? null : Duration.FromHours(burnoutHours);
        init => burnoutHours = value?.Hours ?? double.NaN;
    }
}
