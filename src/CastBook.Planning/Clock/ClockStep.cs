using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>A step of the night: when it begins, how long it takes, and whether it takes a person.</summary>
public sealed record ClockStep
{
    /// <summary>What is done.</summary>
    public required ClockStepKind Kind { get; init; }

    /// <summary>When it begins, from the first step of the night on.</summary>
    public required Duration Begins { get; init; }

    /// <summary>How long it takes.</summary>
    public required Duration Takes { get; init; }

    /// <summary>When it ends, from the first step of the night on.</summary>
    public Duration Ends => Begins + Takes;

    /// <summary>Whether somebody must be there.</summary>
    public bool Hands { get; init; }

    /// <summary>Whether it takes two people.</summary>
    public bool TwoPeople { get; init; }

    /// <summary>Whether somebody stays with it although it runs by itself; other work goes on meanwhile.</summary>
    public bool Watched { get; init; }

    /// <summary>Whether somebody must be in the shop.</summary>
    public bool Attended => Hands || Watched;

    /// <summary>Whether it falls into hours in which nobody is there.</summary>
    public bool IsOutside { get; init; }

    /// <summary>The flasks it is about, by letter.</summary>
    public IReadOnlyList<string> Flasks { get; init; } = [];

    /// <summary>The mix it is about, <see cref="MixPlan.Number"/>.</summary>
    public int? Mix { get; init; }

    /// <summary>The kiln load it is about, <see cref="KilnLoad.Number"/>.</summary>
    public int? Load { get; init; }

    /// <summary>The kiln temperature it goes to.</summary>
    public Temperature? Target { get; init; }

    /// <summary>When the kiln has reached it, from the step's begin on; missing where the way is within the hold.</summary>
    public Duration? Arrives { get; init; }

    /// <summary>How long the kiln is held, once it is there, as its programme says.</summary>
    public Duration? Hold { get; init; }

    /// <summary>Which stage of its load's burnout it is, and of how many, where another one would have the same words; else missing.</summary>
    public (int Number, int Of)? Turn { get; init; }

    /// <summary>How long after its pour a flask may be quenched.</summary>
    public Duration? Wait { get; init; }

    /// <summary>Whether it was done: its times are what really happened, as far as the shop typed it.</summary>
    public bool IsDone { get; init; }

    /// <summary>The same step at another time.</summary>
    /// <param name="by">By how much later.</param>
    internal ClockStep Later(Duration by) => this with { Begins = Begins + by };
}

/// <summary>What is done in a step of the night.</summary>
public enum ClockStepKind
{
    /// <summary>Powder and water are weighed out.</summary>
    Weigh,

    /// <summary>Powder goes into the water and is mixed.</summary>
    Mix,

    /// <summary>The bowl stands under vacuum.</summary>
    BowlVacuum,

    /// <summary>The flasks are filled.</summary>
    Fill,

    /// <summary>The filled flasks stand under vacuum.</summary>
    FlaskVacuum,

    /// <summary>Bowl and tools are cleaned.</summary>
    CleanUp,

    /// <summary>The moulds set.</summary>
    Set,

    /// <summary>The kiln is switched on, to be hot when it is loaded.</summary>
    KilnOn,

    /// <summary>Base off, rim cleaned, letter scratched in.</summary>
    BaseOff,

    /// <summary>Wax is steamed out.</summary>
    Steam,

    /// <summary>The kiln is loaded.</summary>
    LoadKiln,

    /// <summary>The loaded kiln waits for its timer.</summary>
    Timer,

    /// <summary>A stage of the burnout.</summary>
    Stage,

    /// <summary>The kiln falls to a flask temperature and is held there.</summary>
    Fall,

    /// <summary>Metal is melted and a flask poured; the flask is full at the end.</summary>
    Pour,

    /// <summary>A flask is quenched.</summary>
    Quench,

    /// <summary>A flask cools by itself, because it must not be quenched or its wait is not known.</summary>
    CoolAlone,
}
