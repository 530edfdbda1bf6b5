using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning;

/// <summary>A row of the shop's list: a piece to cast, some number of times. A missing value means the cell was empty or unreadable.</summary>
public sealed record Piece
{
    // A long list holds a hundred thousand of these: plain numbers, not a number where missing, and apart what few rows say.
    private readonly double weightGrams = double.NaN;
    private readonly double lengthMm = double.NaN;
    private readonly double widthMm = double.NaN;
    private readonly double thicknessMm = double.NaN;
    private readonly bool isRing;
    private readonly byte weightIsOf;
    private readonly int quantity = Missing;
    private readonly int dueDay = Missing;
    private readonly PieceDetails details = PieceDetails.None;

    private const int Missing = int.MinValue;

    /// <summary>The row's number in the night, from 0, in the order of the list.</summary>
    public required int Id { get; init; }

    /// <summary>The piece's name as written; may be empty.</summary>
    public required string Name { get; init; }

    /// <summary>How many to cast.</summary>
    public int? Quantity
    {
        get => quantity == Missing ? null : quantity;
        init => quantity = value ?? Missing;
    }

    /// <summary>The row's weight; what it is the weight of stands in <see cref="WeightIsOf"/>, else in <see cref="Night.WeightsAreOf"/>.</summary>
    public Mass? Weight
    {
        get => BareQuantity.Mass(weightGrams);
        init => weightGrams = BareQuantity.Of(value);
    }

    /// <summary>What the weight is the weight of, where the row's own list says so and others say something else; unknown to go by the night.</summary>
    public WeightMeaning WeightIsOf
    {
        get => (WeightMeaning)weightIsOf;
        init => weightIsOf = (byte)value;
    }

    /// <summary>Volume of the pattern, where the shop gives it.</summary>
    public Volume? PatternVolume
    {
        get => details.PatternVolume;
        init => details = details.With(details.PatternVolume, value, static (d, v) => d with { PatternVolume = v });
    }

    /// <summary>Metal of one piece by the shop's own word, which stands over what the weight comes to.</summary>
    public Mass? MetalEach
    {
        get => details.MetalEach;
        init => details = details.With(details.MetalEach, value, static (d, v) => d with { MetalEach = v });
    }

    /// <summary>The pattern material as written.</summary>
    public string? Material { get; init; }

    /// <summary>The alloy as written.</summary>
    public string? Alloy { get; init; }

    /// <summary>Outer sizes, where the row has all it needs of them; see <see cref="PieceBox"/>.</summary>
    public PieceBox? Box
    {
        get => double.IsNaN(lengthMm) ? null : new PieceBox(isRing, Length.FromMillimeters(lengthMm), Length.FromMillimeters(widthMm), BareQuantity.Length(thicknessMm));
        init
        {
            isRing = value is { IsRing: true };
            lengthMm = value?.Length.Millimeters ?? double.NaN;
            widthMm = value?.Width.Millimeters ?? double.NaN;
            thicknessMm = BareQuantity.Of(value?.Thickness);
        }
    }

    /// <summary>The finest section.</summary>
    public Length? FinestSection
    {
        get => details.FinestSection;
        init => details = details.With(details.FinestSection, value, static (d, v) => d with { FinestSection = v });
    }

    /// <summary>The heaviest section.</summary>
    public Length? HeaviestSection
    {
        get => details.HeaviestSection;
        init => details = details.With(details.HeaviestSection, value, static (d, v) => d with { HeaviestSection = v });
    }

    /// <summary>The piece's own gates, where the row says anything of them.</summary>
    public PieceGate? Gate
    {
        get => details.Gate;
        init => details = details.With(details.Gate, value, static (d, v) => d with { Gate = v });
    }

    /// <summary>Whether stones are set in the pattern.</summary>
    public bool StonesIn
    {
        get => details.StonesIn;
        init => details = value == details.StonesIn ? details : details with { StonesIn = value };
    }

    /// <summary>Whether stones are set in the pattern, or nobody can read whether they are.</summary>
    public bool MayHaveStones => StonesIn || Unreadable.Contains(Findings.PieceField.StonesIn);

    /// <summary>How many fit a tree, by name of flask size (ordinal, ignoring case); an empty name means any size.</summary>
    public IReadOnlyDictionary<string, int>? PerTree
    {
        get => details.PerTree;
        init => details = details.With(details.PerTree, value, static (d, v) => d with { PerTree = v });
    }

    /// <summary>What was done before the tree, where the row says anything of it.</summary>
    public PiecePrint? Print
    {
        get => details.Print;
        init => details = details.With(details.Print, value, static (d, v) => d with { Print = v });
    }

    /// <summary>When it is due.</summary>
    public DateOnly? Due
    {
        get => dueDay == Missing ? null : DateOnly.FromDayNumber(dueDay);
        init => dueDay = value?.DayNumber ?? Missing;
    }

    /// <summary>The night the row belongs to: a day as <c>2026-12-03</c>, or a name as written.</summary>
    public string? Night { get; init; }

    /// <summary>Whose piece it is, as written.</summary>
    public string? Customer { get; init; }

    /// <summary>Whether the row is marked done.</summary>
    public bool Done { get; init; }

    /// <summary>Whether the shop leaves the row out tonight.</summary>
    public bool LeaveOut { get; init; }

    /// <summary>The flask letter the shop wants it in.</summary>
    public string? KeepInFlask
    {
        get => details.KeepInFlask;
        init => details = details.With(details.KeepInFlask, value, static (d, v) => d with { KeepInFlask = v });
    }

    /// <summary>What a remark in the row speaks of, where it speaks of anything that has a column of its own.</summary>
    public PieceRemark? Remark
    {
        get => details.Remark;
        init => details = details.With(details.Remark, value, static (d, v) => d with { Remark = v });
    }

    /// <summary>Where the last plan put it: what stands in the Flask column of the book as read.</summary>
    public IReadOnlyList<FlaskShare> LastFlasks { get; init; } = [];

    /// <summary>Fields whose cells could not be read and have a finding already (constants of <see cref="Findings.PieceField"/>); nothing more is said of them.</summary>
    public IReadOnlyList<string> Unreadable
    {
        get => details.Unreadable ?? [];
        init => details = details.With(details.Unreadable, value is { Count: > 0 } ? value : null, static (d, v) => d with { Unreadable = v });
    }
}

/// <summary>A piece's outer sizes: the gate stands at one end of the length.</summary>
/// <param name="IsRing">A ring standing in the plane of the trunk; then <paramref name="Length"/> is its outer diameter and <paramref name="Width"/> the band's width.</param>
/// <param name="Length">From the gate outwards.</param>
/// <param name="Width">Across.</param>
/// <param name="Thickness">The third size; for a ring the band's thickness, not needed.</param>
public readonly record struct PieceBox(bool IsRing, Length Length, Length Width, Length? Thickness);

/// <summary>A piece's own gates; what is missing comes from the settings.</summary>
/// <param name="Count">How many gates.</param>
/// <param name="Diameter">Gate diameter.</param>
/// <param name="Length">Gate length.</param>
public sealed record PieceGate(int? Count, Length? Diameter, Length? Length);

/// <summary>What was done to a printed piece before the tree.</summary>
/// <param name="PrintedAt">Resin temperature while printing.</param>
/// <param name="Washed">Time in the wash, all baths together.</param>
/// <param name="Cured">Time of the cure, each side.</param>
public sealed record PiecePrint(Temperature? PrintedAt, Duration? Washed, Duration? Cured)
{
    /// <summary>The longest of several baths; missing where the row gives one number, which counts as one bath.</summary>
    public Duration? LongestBath { get; init; }
}

/// <summary>So many of a row's pieces in one flask.</summary>
/// <param name="Flask">The flask's letter.</param>
/// <param name="Quantity">How many, one or more.</param>
public readonly record struct FlaskShare(string Flask, int Quantity);
