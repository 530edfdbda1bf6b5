using CastBook.Planning.Findings;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>A burnout as it was run, beside its programme.</summary>
public sealed record LoggedBurnout
{
    /// <summary>The load whose programme it was.</summary>
    public required KilnLoad Load { get; init; }

    /// <summary>The stages of the programme.</summary>
    public required IReadOnlyList<LoggedStage> Stages { get; init; }

    /// <summary>Kiln and core by the log, from the begin of the burnout on.</summary>
    public required IReadOnlyList<KilnMoment> Course { get; init; }

    /// <summary>What is wrong with it.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>A stage of a programme, and what became of it.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Target">Kiln temperature it asks for.</param>
/// <param name="Asked">How long it asks for.</param>
/// <param name="Outcome">What became of it.</param>
/// <param name="Held">How long it was held, as the programme counts.</param>
/// <param name="Nearest">The kiln temperature that came nearest to the target.</param>
/// <param name="Core">The core of the slowest mould when the kiln left the stage, by estimate; missing where it is not in the log.</param>
public sealed record LoggedStage(int Number, Temperature Target, Duration Asked, StageOutcome Outcome, Duration Held, Temperature Nearest, CoreSpan? Core)
{
    /// <summary>What is missing of it.</summary>
    public Duration Missing => Duration.FromMinutes(Math.Max(0, (Asked - Held).Minutes));
}

/// <summary>What became of a stage.</summary>
public enum StageOutcome
{
    /// <summary>It was held as long as asked.</summary>
    Held,

    /// <summary>It was held, and not long enough.</summary>
    TooShort,

    /// <summary>The kiln did not come to its temperature.</summary>
    NotReached,

    /// <summary>The log ends before it, or within it.</summary>
    NotInLog,
}
