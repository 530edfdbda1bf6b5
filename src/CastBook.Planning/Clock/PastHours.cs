using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Whether a night's hours lie before the day it is.</summary>
/// <param name="night">The night.</param>
/// <param name="findings">Takes what is found.</param>
internal sealed class PastHours(Night night, FindingList findings)
{
    /// <summary>Looks at a night of which nothing is said to be done.</summary>
    /// <param name="clock">The clock.</param>
    public void Look(NightClock clock)
    {
        if (night.Today is not { } today || night.Clock is not { } question || clock.Steps.Count == 0)
        {
            return;
        }

        var (first, last) = (clock.Shown(Duration.Zero)!.Value, clock.Shown(clock.Takes)!.Value);
        var asked = TimeZoneInfo.ConvertTime(question.At, question.Zone).DateTime;
        if (DateOnly.FromDateTime(last) < today)
        {
            var setting = question.IsPour ? SettingName.PourAt : SettingName.StartAt;
            findings.Add(Catalogue.HourIsPast.At(Subject.Setting(setting), setting, ClockWords.Typed(asked), ClockWords.DayAndHour(last)));
        }
        else if (question.IsPour && DateOnly.FromDateTime(first) < today)
        {
            var late = today.DayNumber - DateOnly.FromDateTime(first).DayNumber;
            findings.Add(Catalogue.FirstStepIsPast.At(
                Subject.Setting(SettingName.PourAt), ClockWords.DayAndHour(asked), ClockWords.DayAndHour(first), ClockWords.Typed(asked.AddDays(late))));
        }
    }
}
