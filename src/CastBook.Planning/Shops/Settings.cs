using CastBook.Casting.Pouring;
using CastBook.Planning.Clock;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>The shop's answers and choices. A missing value means the shop has not said; see <see cref="SettingName"/> for each.</summary>
public sealed record Settings
{
    /// <summary>What the weights mean, where a heading does not say.</summary>
    public WeightMeaning WeightsAreOf { get; init; }

    /// <summary>Whether the weights are those of pieces with their gates on; missing counts as the piece alone.</summary>
    public bool? WeightsIncludeGates { get; init; }

    /// <summary>Share of a pattern's weight that is supports, cut off before the tree.</summary>
    public Ratio? SupportsShare { get; init; }

    /// <summary>Whether metal is corrected by castings that were weighed; missing counts as no.</summary>
    public bool? LearnFromCastings { get; init; }

    /// <summary>How many to cast of each row of a list without a column for the quantity.</summary>
    public int? QuantityWhereNone { get; init; }

    /// <summary>The alloy of every row of a list without a column for the alloy.</summary>
    public string? AlloyWhereNone { get; init; }

    /// <summary>Material of rows that name none.</summary>
    public string? PatternMaterial { get; init; }

    /// <summary>Density of that material.</summary>
    public Density? PatternDensity { get; init; }

    /// <summary>Density of the wax that trunks and gates are built of.</summary>
    public Density? SprueWaxDensity { get; init; }

    /// <summary>How the shop casts.</summary>
    public CastingMethod? CastingMethod { get; init; }

    /// <summary>The crucible, when there is no Crucibles sheet.</summary>
    public Volume? CrucibleHolds { get; init; }

    /// <summary>The powder in use.</summary>
    public string? Investment { get; init; }

    /// <summary>The least button as a share of pieces and tree.</summary>
    public Ratio? ButtonShare { get; init; }

    /// <summary>The least button.</summary>
    public Volume? ButtonAtLeast { get; init; }

    /// <summary>Metal lost in melting.</summary>
    public Ratio? MeltLoss { get; init; }

    /// <summary>The least share of fresh metal in a melt.</summary>
    public Ratio? FreshAtLeast { get; init; }

    /// <summary>What a plan is to save, first things first, each once; missing for the usual order, that of <see cref="Wish"/>.</summary>
    public IReadOnlyList<Wish>? OrderOfWishes { get; init; }

    /// <summary>What becomes of a plan that stands in the book already.</summary>
    public Stability WhenLittleChanged { get; init; }

    /// <summary>The unit in which the shop buys metal.</summary>
    public WrittenMass? MetalBoughtIn { get; init; }

    /// <summary>The unit in which metal is written.</summary>
    public WrittenMass? MetalIn { get; init; }

    /// <summary>The unit in which powder is written.</summary>
    public WrittenMass? PowderIn { get; init; }

    /// <summary>The unit in which water and slurry are written.</summary>
    public WrittenVolume? WaterIn { get; init; }

    /// <summary>The scale in which temperatures are written.</summary>
    public WrittenTemperature? TemperaturesIn { get; init; }

    /// <summary>The unit in which lengths are written.</summary>
    public WrittenLength? LengthsIn { get; init; }

    /// <summary>All of these, the usual ones where the shop names none.</summary>
    public ShopUnits Units => ShopUnits.Of(this);

    /// <summary>Charges are rounded up to this step.</summary>
    public Mass? ChargeStep { get; init; }

    /// <summary>Powder is rounded up to this step.</summary>
    public Mass? PowderStep { get; init; }

    /// <summary>The bowl that investment is mixed in, to the brim.</summary>
    public Volume? MixingBowl { get; init; }

    /// <summary>How full the bowl may be.</summary>
    public Ratio? BowlFill { get; init; }

    /// <summary>Mixing powder into water.</summary>
    public Duration? MixingTakes { get; init; }

    /// <summary>The bowl under vacuum.</summary>
    public Duration? BowlVacuum { get; init; }

    /// <summary>Pouring the slurry into one flask.</summary>
    public Duration? FlaskFilling { get; init; }

    /// <summary>The filled flasks of a mix under vacuum.</summary>
    public Duration? FlaskVacuum { get; init; }

    /// <summary>How long before gloss-off a mix must rest.</summary>
    public Duration? GlossOffMargin { get; init; }

    /// <summary>Steam before the kiln.</summary>
    public Duration? SteamDewax { get; init; }

    /// <summary>Whether moulds that wait for the kiln are bagged damp; missing counts as no.</summary>
    public bool? KeptDamp { get; init; }

    /// <summary>Weighing out powder and water of a mix.</summary>
    public Duration? WeighingTakes { get; init; }

    /// <summary>Cleaning bowl and tools after a mix.</summary>
    public Duration? CleanUpTakes { get; init; }

    /// <summary>Base off, rim cleaned and letter scratched in, of one flask.</summary>
    public Duration? BaseOffTakes { get; init; }

    /// <summary>Loading the kiln.</summary>
    public Duration? LoadingTakes { get; init; }

    /// <summary>Melting and pouring one flask.</summary>
    public Duration? PouringTakes { get; init; }

    /// <summary>Quenching one flask.</summary>
    public Duration? QuenchingTakes { get; init; }

    /// <summary>From which hour somebody is there.</summary>
    public TimeOnly? AtWorkFrom { get; init; }

    /// <summary>Until which hour somebody is there.</summary>
    public TimeOnly? AtWorkUntil { get; init; }

    /// <summary>The hours in which somebody is there, where they have a break or differ by day; they win over those that are the same every day.</summary>
    public WeekHours? HoursOfWork { get; init; }

    /// <summary>Days of the week on which nobody is there.</summary>
    public IReadOnlyList<DayOfWeek> ClosedOn { get; init; } = [];

    /// <summary>Days by date on which nobody is there.</summary>
    public IReadOnlyList<DaysAway> Away { get; init; } = [];

    /// <summary>Steps that take two people.</summary>
    public IReadOnlyList<ClockStepKind> TwoPeopleFor { get; init; } = [];

    /// <summary>From which hour a second person is there.</summary>
    public TimeOnly? SecondFrom { get; init; }

    /// <summary>Until which hour a second person is there.</summary>
    public TimeOnly? SecondUntil { get; init; }

    /// <summary>Steps that run by themselves and are not left alone.</summary>
    public IReadOnlyList<ClockStepKind> StayWith { get; init; } = [];

    /// <summary>Which flasks stand in the kiln together, load by load, by letter; empty where the planner chooses.</summary>
    public IReadOnlyList<IReadOnlyList<string>> KilnLoads { get; init; } = [];

    /// <summary>How near the core of a mould must be to its kiln when a hold ends.</summary>
    public TemperatureDelta? CoreTolerance { get; init; }

    /// <summary>When the first powder is weighed: a day and an hour, or an hour of the night that is asked for.</summary>
    public string? StartAt { get; init; }

    /// <summary>When the first flask is to be poured: a day and an hour.</summary>
    public string? PourAt { get; init; }

    /// <summary>The least gap between flasks in the kiln, and to its wall.</summary>
    public Length? GapInKiln { get; init; }

    /// <summary>The least gap between two pieces.</summary>
    public Length? GapBetweenPieces { get; init; }

    /// <summary>Gate length where a piece names none.</summary>
    public Length? GateLength { get; init; }

    /// <summary>Gate diameter where a piece names none.</summary>
    public Length? GateDiameter { get; init; }

    /// <summary>Angle between trunk and pieces.</summary>
    public Angle? GateAngle { get; init; }

    /// <summary>The night to plan, as <see cref="Piece.Night"/> writes it.</summary>
    public string? Night { get; init; }

    /// <summary>Which sheets of pieces are filled, as the shop writes it; only the workbook side knows sheets.</summary>
    public string? SheetsToFill { get; init; }

    /// <summary>What ambiguous alloy names mean, by the name the rows use (ordinal, ignoring case).</summary>
    public IReadOnlyDictionary<string, string> AlloyMeanings { get; init; } =
        new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
}

/// <summary>What the weight of a row is the weight of. Confusing the two is a 9- to 16-fold error.</summary>
public enum WeightMeaning
{
    /// <summary>Nobody has said.</summary>
    Unknown,

    /// <summary>The pattern as it will be sprued: printed or wax, supports off.</summary>
    Pattern,

    /// <summary>The finished metal of an earlier casting in the same alloy.</summary>
    FinishedMetal,
}
