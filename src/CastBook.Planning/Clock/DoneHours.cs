namespace CastBook.Planning.Clock;

/// <summary>What the shop typed on its clock: when steps were done, and what hour it is.</summary>
/// <param name="Steps">The steps with an hour.</param>
/// <param name="Now">The hour it is, before which nothing that is not done can begin; missing where nobody typed it.</param>
public sealed record DoneHours(IReadOnlyList<DoneStep> Steps, TypedHour? Now);

/// <summary>A step that was done.</summary>
/// <param name="Step">The step in the words of <see cref="ClockWords.Of(ClockStep)"/>.</param>
/// <param name="Hour">When it ended.</param>
public sealed record DoneStep(string Step, TypedHour Hour);

/// <summary>An hour as typed; without its day it is the one nearest to the plan.</summary>
/// <param name="Day">The day, where it was typed.</param>
/// <param name="Hour">The hour.</param>
public readonly record struct TypedHour(DateOnly? Day, TimeOnly Hour);
