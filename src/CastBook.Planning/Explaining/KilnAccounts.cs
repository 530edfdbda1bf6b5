using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How the numbers of a kiln load's programme came to be.</summary>
/// <param name="clock">The clock.</param>
/// <param name="unit">The scale of temperatures.</param>
internal sealed class KilnAccounts(NightClock clock, WrittenTemperature unit)
{
    /// <summary>The temperature of a stage.</summary>
    /// <param name="step">The stage; nothing where there is none.</param>
    /// <param name="fahrenheit">Whether in degrees Fahrenheit.</param>
    public Account? Target(ClockStep? step, bool fahrenheit) => step is { Target: { } target } && LoadOf(step) is { } load
        ? new(
            KilnAccountWords.Target(fahrenheit), step.Kind == ClockStepKind.Fall ? KilnAccountWords.TargetOfFall : KilnAccountWords.TargetOfStage,
            "", fahrenheit ? target.DegreesFahrenheit : target.DegreesCelsius, fahrenheit ? "°F" : "°C")
        {
            Rounded = AccountWords.ToWholeDegree,
            Inputs = [Schedule(load)],
            ValidFor = KilnAccountWords.ProgrammeHolds,
        }
        : null;

    /// <summary>The rate of a stage.</summary>
    /// <param name="step">The stage.</param>
    /// <param name="fahrenheit">Whether in degrees Fahrenheit.</param>
    public Account? Rate(ClockStep? step, bool fahrenheit)
    {
        if (step is null || LoadOf(step) is not { } load || PlaceOf(step) is not { } place || place >= load.Schedule.Stages.Count
            || load.Schedule.Stages[place].RateDegreesPerHour is not { } rate)
        {
            return null;
        }

        return new(KilnAccountWords.Rate(fahrenheit), KilnAccountWords.RateOfStage, "", fahrenheit ? rate * 1.8 : rate, fahrenheit ? "°F/h" : "°C/h")
        {
            Rounded = AccountWords.ToWholeDegree,
            Inputs = [Schedule(load)],
            ValidFor = KilnAccountWords.ProgrammeHolds,
        };
    }

    /// <summary>The hold of a stage.</summary>
    /// <param name="step">The stage.</param>
    public Account? Hold(ClockStep? step) => step is not null && LoadOf(step) is { } load
        ? new(KilnAccountWords.Hold, KilnAccountWords.HoldOfStage, "", null, "")
        {
            Inputs = load.Pours.FirstOrDefault(p => step.Kind == ClockStepKind.Fall && p.Temperature?.DegreesCelsius == step.Target?.DegreesCelsius) is { } poured
                ? [Schedule(load), AccountInput.Reckoned(AccountWords.SlowestMould, AccountWords.Flask(load.SlowestOf(poured)), KilnAccountWords.SlowestPoured)]
                : [Schedule(load)],
            ValidFor = KilnAccountWords.ProgrammeHolds,
        }
        : null;

    /// <summary>The core at the end of a stage.</summary>
    /// <param name="step">The stage.</param>
    /// <param name="slow">Whether in the slow case.</param>
    public Account? Core(ClockStep? step, bool slow) => step is not null && LoadOf(step) is { } load && PlaceOf(step) is { } place && place < load.Heat.StageEnds.Count
        ? Core(load, slow ? load.Heat.StageEnds[place].Slow : load.Heat.StageEnds[place].Fast, slow)
        : null;

    /// <summary>When the core is near the kiln in a stage.</summary>
    /// <param name="step">The stage.</param>
    public Account? CoreArrives(ClockStep? step) => step is not null && LoadOf(step) is { } load && PlaceOf(step) is { } place && place < load.Heat.Arrivals.Count
        ? new(KilnAccountWords.CoreThereAfter, KilnAccountWords.CoreThereRule, "", null, "")
        {
            Rounded = KilnAccountWords.ToFiveMinutes,
            Inputs =
            [
                AccountInput.Reckoned(AccountWords.SlowestMould, AccountWords.Flask(load.Heat.Flask), KilnAccountWords.SlowestOfLoad),
                AccountInput.Reckoned(KilnAccountWords.CoreTolerance, unit.SayDegrees(load.Heat.ToleranceDegrees), KilnAccountWords.ToleranceOr(unit.Degrees(CoreLag.UsualDegrees))),
                Schedule(load),
            ],
            ValidFor = KilnAccountWords.CoreHolds,
        }
        : null;

    /// <summary>A number of a load's course.</summary>
    /// <param name="load">The load's number.</param>
    /// <param name="place">The moment's place in the course.</param>
    /// <param name="answer">Which number.</param>
    public Account? Course(int load, int place, string answer)
    {
        if (clock.Loads.FirstOrDefault(l => l.Number == load) is not { } found || place >= found.Heat.Course.Count)
        {
            return null;
        }

        var moment = found.Heat.Course[place];
        return answer switch
        {
            AnswerField.CourseHours => new(KilnAccountWords.Hours, KilnAccountWords.HoursRule, "", moment.After.Hours, "h")
            {
                Rounded = KilnAccountWords.ToHundredths,
                Inputs = [Schedule(found)],
                ValidFor = KilnAccountWords.ProgrammeHolds,
            },
            AnswerField.CourseKiln => new(KilnAccountWords.Kiln, KilnAccountWords.KilnRule, "", moment.Kiln.DegreesCelsius, "°C")
            {
                Rounded = AccountWords.ToWholeDegree,
                Inputs = [Schedule(found)],
                ValidFor = KilnAccountWords.ProgrammeHolds,
            },
            AnswerField.CoreSlow => Core(found, moment.Core.Slow, slow: true),
            AnswerField.CoreFast => Core(found, moment.Core.Fast, slow: false),
            _ => null,
        };
    }

    private static Account Core(KilnLoad load, Temperature core, bool slow) =>
        new(KilnAccountWords.Core(slow), KilnAccountWords.CoreRule, "", core.DegreesCelsius, "°C")
        {
            Rounded = AccountWords.ToWholeDegree,
            Inputs = [AccountInput.Reckoned(AccountWords.SlowestMould, AccountWords.Flask(load.Heat.Flask), KilnAccountWords.SlowestOfLoad), Schedule(load)],
            ValidFor = KilnAccountWords.CoreHolds,
        };

    private KilnLoad? LoadOf(ClockStep step) => clock.Loads.FirstOrDefault(l => l.Number == step.Load);

    // Its place among the stages and falls of its load, as they stand on the Kiln sheet.
    private int? PlaceOf(ClockStep step)
    {
        var stages = clock.Steps.Where(s => s.Load == step.Load && s.Kind is ClockStepKind.Stage or ClockStepKind.Fall).ToList();
        return stages.IndexOf(step) is >= 0 and var place ? place : null;
    }

    private static AccountInput Schedule(KilnLoad load) => AccountInput.Reckoned(AccountWords.Schedule, load.Schedule.Name, KilnAccountWords.LongestSchedule);
}
