using UnitsNet;

namespace CastBook.Planning;

/// <summary>A row's answer; small and put together anew when it is asked for, so that a long list leaves nothing to collect.</summary>
public readonly record struct PiecePlan
{
    private readonly double metalGrams = double.NaN;
    private readonly PiecePlacing placing = PiecePlacing.None;

    /// <summary>Nothing known yet.</summary>
    public PiecePlan()
    {
    }

    /// <summary>What only rows in flasks have.</summary>
    internal PiecePlacing Placing { get => placing; init => placing = value; }

    /// <summary>The row, <see cref="Piece.Id"/>.</summary>
    public required int Id { get; init; }

    /// <summary>What became of it.</summary>
    public required PieceStatus Status { get; init; }

    /// <summary>Whether the row is that of a night still to come, so that what an earlier plan made of it no longer holds.</summary>
    public bool IsToCome { get; init; }

    /// <summary>Metal of one piece without gates; missing where it cannot be known.</summary>
    public Mass? MetalEach
    {
        get => BareQuantity.Mass(metalGrams);
        init => metalGrams = BareQuantity.Of(value);
    }

    /// <summary>What CastBook makes of the row's weight or volume, where <see cref="MetalEach"/> is the shop's own word.</summary>
    public Mass? MetalWorkedOut
    {
        get => placing.MetalWorkedOut;
        init => placing = value is null && placing.MetalWorkedOut is null ? placing : placing with { MetalWorkedOut = value };
    }

    /// <summary>Where it is; a built tree whose numbers are unknown is named here but not in <see cref="NightPlan.Flasks"/>.</summary>
    public IReadOnlyList<FlaskShare> Flasks
    {
        get => placing.Flasks;
        init => placing = value is { Count: 0 } && placing.Flasks.Count == 0 ? placing : placing with { Flasks = value };
    }

    /// <summary>The longest burnout among its flasks.</summary>
    public Duration? Burnout
    {
        get => placing.Burnout;
        init => placing = value is null && placing.Burnout is null ? placing : placing with { Burnout = value };
    }
}

/// <summary>What only rows in flasks have of a row's answer.</summary>
internal sealed record PiecePlacing
{
    /// <summary>In no flask.</summary>
    public static PiecePlacing None { get; } = new();

    /// <inheritdoc cref="PiecePlan.Flasks"/>
    public IReadOnlyList<FlaskShare> Flasks { get; init; } = [];

    /// <inheritdoc cref="PiecePlan.Burnout"/>
    public Duration? Burnout { get; init; }

    /// <inheritdoc cref="PiecePlan.MetalWorkedOut"/>
    public Mass? MetalWorkedOut { get; init; }
}
