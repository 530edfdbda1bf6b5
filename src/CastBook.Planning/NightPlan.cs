using CastBook.Casting.Burnout;
using CastBook.Casting.Pouring;
using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Investing;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning;

/// <summary>What is answered.</summary>
public sealed record NightPlan
{
    /// <summary>A line for each row asked, in the same order.</summary>
    public required IReadOnlyList<PiecePlan> Pieces { get; init; }

    /// <summary>The flasks, by letter.</summary>
    public required IReadOnlyList<FlaskPlan> Flasks { get; init; }

    /// <summary>
    /// Lines of the Trees sheet that are under way but have no entry in <see cref="Flasks"/>, because their pieces, size or
    /// alloy are not known. Their lines must be kept, and rows may still name their letters.
    /// </summary>
    public IReadOnlyList<TreeInHand> TreesWithoutNumbers { get; init; } = [];

    /// <summary>The mixes of investment, in the order in which they are made; empty while no bowl is known.</summary>
    public IReadOnlyList<MixPlan> Mixes { get; init; } = [];

    /// <summary>The kiln loads and the night hour by hour; missing where nothing is planned.</summary>
    public NightClock? Clock { get; init; }

    /// <summary>How long the moulds set at least, from the last pour; missing where nothing is planned.</summary>
    public Duration? SetAtLeast { get; init; }

    /// <summary>Metal by alloy, in the order the alloys first appear in the list.</summary>
    public required IReadOnlyList<MetalPlan> Metal { get; init; }

    /// <summary>What the plan is worth.</summary>
    public required PlanBound Bound { get; init; }

    /// <summary>How the plan differs from the one that stands in the book, or would if it were searched afresh; missing where that makes no difference.</summary>
    public PlanChange? Change { get; init; }

    /// <summary>Whether the search for flasks was stopped before its end, so that these are the best found by then.</summary>
    public bool SearchStopped => Findings.Any(f => f.Id == Catalogue.SearchStopped.Id);

    /// <summary>Everything to stop for, check or note, repeats folded, stops first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>What became of a row.</summary>
public enum PieceStatus
{
    /// <summary>All of it is in flasks.</summary>
    Planned,

    /// <summary>Some of it is in flasks; a finding says why not all.</summary>
    PartlyPlanned,

    /// <summary>None of it is in a flask; a finding says why.</summary>
    NotPlanned,

    /// <summary>Left out by the shop.</summary>
    LeftOut,

    /// <summary>Another night's.</summary>
    OtherNight,

    /// <summary>Marked done.</summary>
    Done,
}

/// <summary>So many of a row's pieces.</summary>
/// <param name="PieceId">The row.</param>
/// <param name="Quantity">How many.</param>
public readonly record struct PieceShare(int PieceId, int Quantity);

/// <summary>A sector of the tree: pieces one above the other along the trunk, from the button up.</summary>
/// <param name="Pieces">From the button up.</param>
public sealed record TreeColumn(IReadOnlyList<PieceShare> Pieces)
{
    /// <summary>Its middle, round the trunk from the middle of the first one.</summary>
    public required Angle Middle { get; init; }

    /// <summary>How much of the turn it takes.</summary>
    public required Angle Width { get; init; }

    /// <summary>Each piece where it hangs, from the button up.</summary>
    public required IReadOnlyList<HungPiece> Places { get; init; }
}

/// <summary>A flask's answer: what hangs in it and what it takes.</summary>
public sealed record FlaskPlan
{
    /// <summary>The letter to scratch into the mould: A, B … Z, AA …</summary>
    public required string Letter { get; init; }

    /// <summary>Its size.</summary>
    public required FlaskSize Size { get; init; }

    /// <summary>How it is cast.</summary>
    public required CastingMethod Method { get; init; }

    /// <summary>Its alloy, by the shop's name.</summary>
    public required string Alloy { get; init; }

    /// <summary>How far it has come.</summary>
    public required FlaskState State { get; init; }

    /// <summary>What hangs in it, in the order of the list.</summary>
    public required IReadOnlyList<PieceShare> Pieces { get; init; }

    /// <summary>The tree column by column; empty where sizes are unknown or the tree is already built.</summary>
    public IReadOnlyList<TreeColumn> Columns { get; init; } = [];

    /// <summary>What limits it; missing for a tree that is built already.</summary>
    public FlaskLimit? Limit { get; init; }

    /// <summary>What is kept free above the tree.</summary>
    public required Length AboveTree { get; init; }

    /// <summary>What is kept free to the wall.</summary>
    public required Length ToWall { get; init; }

    /// <summary>Metal of the pieces.</summary>
    public required Mass PiecesMetal { get; init; }

    /// <summary>Metal of trunk and gates.</summary>
    public required Mass TreeMetal { get; init; }

    /// <summary>Metal of the button.</summary>
    public required Mass Button { get; init; }

    /// <summary>Metal to weigh out: pieces, tree and button with the melt loss, rounded up.</summary>
    public required Mass Charge { get; init; }

    /// <summary>Volume of pieces, gates and trunk: of the weighed tree where there is one, else as estimated.</summary>
    internal Volume Tree { get; init; }

    /// <summary>Whether the charge comes from the weighed tree and not from the estimate.</summary>
    public required bool Weighed { get; init; }

    /// <summary>Investment powder, mixed for this flask alone; missing where it cannot be known.</summary>
    public Mass? Powder { get; init; }

    /// <summary>Water for it.</summary>
    public Volume? Water { get; init; }

    /// <summary>The mix it is filled from, <see cref="MixPlan.Number"/>; missing where none is planned.</summary>
    public int? Mix { get; init; }

    /// <summary>What its mould needs of a mix.</summary>
    internal FlaskFill? Fill { get; init; }

    /// <summary>From loading to the first pour of its kiln load, the fall to flask temperature and its hold included; of a flask in no load its own schedule.</summary>
    public Duration? Burnout { get; init; }

    /// <summary>The schedule it runs alone.</summary>
    internal BurnoutSchedule? Program { get; init; }

    /// <summary>Whether all in it is wax.</summary>
    internal bool IsWax { get; init; }

    /// <summary>Name of the schedule it runs.</summary>
    public string? Schedule { get; init; }

    /// <summary>Metal temperature to pour at; missing is asked for.</summary>
    public Temperature? MetalTemperature { get; init; }

    /// <summary>Flask temperature to pour into; missing is asked for.</summary>
    public Temperature? FlaskTemperature { get; init; }

    /// <summary>Wait before the quench; missing is asked for. Always with "and only when the button shows no red in shade".</summary>
    public Duration? QuenchAfter { get; init; }

    /// <summary>Whether it must not be quenched at all (stones in).</summary>
    public bool NoQuench { get; init; }
}

/// <summary>Metal of one alloy for the night.</summary>
public sealed record MetalPlan
{
    /// <summary>The alloy, by the shop's name.</summary>
    public required string Alloy { get; init; }

    /// <summary>Metal of all pieces asked for tonight, planned or not; missing while any of it is unknown.</summary>
    public Mass? Pieces { get; init; }

    /// <summary>The least the pieces can take, while it is unknown.</summary>
    public Mass? PiecesLeast { get; init; }

    /// <summary>The most the pieces can take, while it is unknown.</summary>
    public Mass? PiecesMost { get; init; }

    /// <summary>What the pieces take if the weights are of finished metal, while nobody has said; the least and most are then those of patterns.</summary>
    public Mass? PiecesIfFinished { get; init; }

    /// <summary>The charges of its flasks not yet poured; missing where nothing is planned.</summary>
    public Mass? Charges { get; init; }

    /// <summary>Fresh metal in stock.</summary>
    public Mass? Fresh { get; init; }

    /// <summary>Clean re-melt in stock.</summary>
    public Mass? Remelt { get; init; }

    /// <summary>Fresh metal to buy, so that each melt has its least share of fresh metal; missing where stock or charges are unknown.</summary>
    public Mass? Buy { get; init; }

    /// <summary>The least share of fresh metal in each melt.</summary>
    public Ratio? FreshAtLeast { get; init; }

    /// <summary>What to weigh out for each of its flasks not yet poured, by letter; empty where stock or charges are unknown.</summary>
    public IReadOnlyList<MeltPortion> Portions { get; init; } = [];
}

/// <summary>What to weigh out for one flask's melt.</summary>
/// <param name="Flask">The flask's letter.</param>
/// <param name="Charge">The whole melt.</param>
/// <param name="Fresh">Of it fresh metal; missing where the drawer has not enough for this flask.</param>
/// <param name="Remelt">Of it re-melt.</param>
/// <param name="MadeUp">Other metals that make up the rest; together they are of the alloy's composition.</param>
public sealed record MeltPortion(string Flask, Mass Charge, Mass? Fresh, Mass? Remelt, IReadOnlyList<StockPart> MadeUp);

/// <summary>So much of a metal in the drawer.</summary>
/// <param name="Metal">Its name on the Alloys sheet.</param>
/// <param name="Mass">How much.</param>
public sealed record StockPart(string Metal, Mass Mass);

/// <summary>What the plan is worth.</summary>
/// <param name="LeastFlasks">The fewest flasks any plan of the same pieces could need, certified for trees of columns and the way each piece hangs in each size.</param>
/// <param name="ProvedFewest">Whether this plan needs no more than that and places everything that can be placed; within the same bounds.</param>
public sealed record PlanBound(int LeastFlasks, bool ProvedFewest)
{
    /// <summary>
    /// Whether no plan fills less investment, or none of as few flasks where the shop wishes for fewest flasks first; the way each
    /// piece hangs in each size taken as given.
    /// </summary>
    public bool ProvedLeastInvestment { get; init; }

    /// <summary>How much more flask is filled at most than by the best plan of as few; missing where that is proved to be none or is not known.</summary>
    public Volume? InvestmentOver { get; init; }

    /// <summary>Whether no plan of the same pieces takes fewer kiln loads; missing where the shop wishes for fewest flasks and least investment before them.</summary>
    public bool? ProvedFewestLoads { get; init; }
}
