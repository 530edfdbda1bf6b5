using UnitsNet;

namespace CastBook.Planning;

/// <summary>What only some rows say of their piece, held apart so that the others need no room for it.</summary>
internal sealed record PieceDetails
{
    private readonly double volumeMillilitres = double.NaN;
    private readonly double metalGrams = double.NaN;
    private readonly double finestSectionMm = double.NaN;
    private readonly double heaviestSectionMm = double.NaN;
    private readonly double gateDiameterMm = double.NaN;
    private readonly double gateLengthMm = double.NaN;
    private readonly int gates = Missing;
    private readonly bool hasGate;

    private const int Missing = int.MinValue;

    /// <summary>Nothing.</summary>
    public static PieceDetails None { get; } = new();

    /// <inheritdoc cref="Piece.PatternVolume"/>
    public Volume? PatternVolume { get => BareQuantity.Volume(volumeMillilitres); init => volumeMillilitres = BareQuantity.Of(value); }

    /// <inheritdoc cref="Piece.MetalEach"/>
    public Mass? MetalEach { get => BareQuantity.Mass(metalGrams); init => metalGrams = BareQuantity.Of(value); }

    /// <inheritdoc cref="Piece.FinestSection"/>
    public Length? FinestSection { get => BareQuantity.Length(finestSectionMm); init => finestSectionMm = BareQuantity.Of(value); }

    /// <inheritdoc cref="Piece.HeaviestSection"/>
    public Length? HeaviestSection { get => BareQuantity.Length(heaviestSectionMm); init => heaviestSectionMm = BareQuantity.Of(value); }

    /// <inheritdoc cref="Piece.StonesIn"/>
    public bool StonesIn { get; init; }

    /// <inheritdoc cref="Piece.Gate"/>
    public PieceGate? Gate
    {
        get => hasGate ? new PieceGate(gates == Missing ? null : gates, BareQuantity.Length(gateDiameterMm), BareQuantity.Length(gateLengthMm)) : null;
        init
        {
            hasGate = value is not null;
            gates = value?.Count ?? Missing;
            gateDiameterMm = BareQuantity.Of(value?.Diameter);
            gateLengthMm = BareQuantity.Of(value?.Length);
        }
    }

    /// <inheritdoc cref="Piece.PerTree"/>
    public IReadOnlyDictionary<string, int>? PerTree { get; init; }

    /// <inheritdoc cref="Piece.Print"/>
    public PiecePrint? Print { get; init; }

    /// <inheritdoc cref="Piece.KeepInFlask"/>
    public string? KeepInFlask { get; init; }

    /// <inheritdoc cref="Piece.Remark"/>
    public PieceRemark? Remark { get; init; }

    /// <inheritdoc cref="Piece.Unreadable"/>
    public IReadOnlyList<string>? Unreadable { get; init; }

    /// <summary>The details with another value; the same ones where there was none before and is none now.</summary>
    /// <param name="before">The value that stands.</param>
    /// <param name="value">The new value.</param>
    /// <param name="change">Sets it.</param>
    public PieceDetails With<T>(T before, T value, Func<PieceDetails, T, PieceDetails> change) =>
        before is null && value is null ? this : change(this, value);
}
