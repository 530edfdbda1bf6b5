namespace CastBook.Planning.Shops;

/// <summary>Hours of a day in which somebody is there.</summary>
/// <param name="From">When they begin.</param>
/// <param name="Until">When they end; on the next day where that is no later than the begin.</param>
public readonly record struct OpenHours(TimeOnly From, TimeOnly Until);
