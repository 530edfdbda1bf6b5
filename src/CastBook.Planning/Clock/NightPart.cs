using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Steps that follow each other without a gap: only the whole part is moved.</summary>
/// <param name="Steps">The steps, counted from the part's begin.</param>
internal record NightPart(IReadOnlyList<ClockStep> Steps)
{
    /// <summary>How many minutes it takes.</summary>
    public double Minutes { get; } = Steps.Count == 0 ? 0 : Steps.Max(s => s.Ends.Minutes);

    /// <summary>The steps that take a person.</summary>
    public IReadOnlyList<ClockStep> Hands { get; } = [.. Steps.Where(s => s.Hands)];

    /// <summary>The steps for which somebody must be in the shop.</summary>
    public IReadOnlyList<ClockStep> Attended { get; } = [.. Steps.Where(s => s.Attended)];

    /// <summary>The steps of the part when it begins later.</summary>
    /// <param name="minutes">When it begins.</param>
    public IEnumerable<ClockStep> At(double minutes) => Steps.Select(s => s.Later(Duration.FromMinutes(minutes)));
}
