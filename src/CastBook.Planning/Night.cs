using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning;

/// <summary>What is asked: the rows of the shop's list, the shop, and the trees already in hand.</summary>
public sealed record Night
{
    /// <summary>The rows; <see cref="Piece.Id"/> is the index.</summary>
    public required IReadOnlyList<Piece> Pieces { get; init; }

    /// <summary>What the shop owns and has decided.</summary>
    public required Shop Shop { get; init; }

    /// <summary>What the weights are of: as the heading says, else as the Shop sheet says, else unknown.</summary>
    public WeightMeaning WeightsAreOf { get; init; }

    /// <summary>The day it is, by which the next night is chosen where the rows name several days and none is asked for; missing to have it asked.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>The hour from which the night is counted; missing where nobody has said one.</summary>
    public ClockQuestion? Clock { get; init; }

    /// <summary>What the kiln really did; missing where nobody gave its log.</summary>
    public KilnLog? Log { get; init; }

    /// <summary>Whether only what the metal in stock allows is planned; else what is short is bought.</summary>
    public bool MetalInHandOnly { get; init; }

    /// <summary>How many of a row's pieces wait for another night, by row.</summary>
    internal IReadOnlyDictionary<int, int> Waiting { get; init; } = new Dictionary<int, int>();

    /// <summary>What of the night was done, and when; missing where nobody has said.</summary>
    public DoneHours? Done { get; init; }

    /// <summary>The lines of the Trees sheet: flasks of the plan that stands in the book, and those under way.</summary>
    public IReadOnlyList<TreeInHand> Trees { get; init; } = [];
}

/// <summary>How far a flask has come. From <see cref="Waxed"/> on nothing in it is moved.</summary>
public enum FlaskState
{
    /// <summary>On paper only.</summary>
    Planned,

    /// <summary>The tree is built.</summary>
    Waxed,

    /// <summary>The mould is filled.</summary>
    Invested,

    /// <summary>In the kiln.</summary>
    InKiln,

    /// <summary>Poured.</summary>
    Poured,
}

/// <summary>A line of the Trees sheet as the shop left it.</summary>
/// <param name="Flask">The flask's letter.</param>
/// <param name="Size">The flask size's name, as the line says.</param>
/// <param name="Base">The sprue base alone, as weighed.</param>
/// <param name="TreeOnBase">Base with the sprued tree, as weighed.</param>
/// <param name="OfItWax">How much of the tree is sprue wax, where the shop says.</param>
/// <param name="State">How far it has come.</param>
public sealed record TreeInHand(string Flask, string? Size, Mass? Base, Mass? TreeOnBase, Mass? OfItWax, FlaskState State) : Shops.SheetLine;
