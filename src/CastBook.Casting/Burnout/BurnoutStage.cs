using UnitsNet;

namespace CastBook.Casting.Burnout;

/// <summary>One stage of a burnout: go to a target, then hold.</summary>
/// <param name="Target">Kiln temperature to reach.</param>
/// <param name="RateDegreesPerHour">Rate in degrees Celsius per hour; missing means the way there is inside the hold, as printed schedules count.</param>
/// <param name="Hold">How long to hold once there (or in all, where no rate is given).</param>
public sealed record BurnoutStage(Temperature Target, double? RateDegreesPerHour, Duration Hold);
