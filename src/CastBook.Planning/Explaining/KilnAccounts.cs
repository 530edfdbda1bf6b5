using CastBook.Planning.Clock;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How the numbers of a kiln load's programme came to be.</summary>
/// <param name="clock">The clock.</param>
/// <param name="unit">The scale of temperatures.</param>
internal sealed class KilnAccounts(NightClock clock, WrittenTemperature unit)
{
    private const string Range = "kilns that follow the programme; the maker's data sheet and the shop's own kiln have the last word";
    private const string CoreRange = "a dry mould of gypsum investment, between a slow and a fast case; drying is left out";

    /// <summary>The temperature of a stage.</summary>
    /// <param name="step">The stage; nothing where there is none.</param>
    /// <param name="fahrenheit">Whether in degrees Fahrenheit.</param>
    public Account? Target(ClockStep? step, bool fahrenheit) => step is { Target: { } target } && LoadOf(step) is { } load
        ? new(
            fahrenheit ? "Target in °F" : "Target", step.Kind == ClockStepKind.Fall ? "the flask temperature of what is poured next" : "the schedule's target of this stage; the last is the flask temperature, where that is known",
            "", fahrenheit ? target.DegreesFahrenheit : target.DegreesCelsius, fahrenheit ? "°F" : "°C")
        {
            Rounded = "to a whole degree",
            Inputs = [Schedule(load)],
            ValidFor = Range,
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

        return new(fahrenheit ? "Rate in °F/h" : "Rate", "the schedule's rate of this stage", "", fahrenheit ? rate * 1.8 : rate, fahrenheit ? "°F/h" : "°C/h")
        {
            Rounded = "to a whole degree",
            Inputs = [Schedule(load)],
            ValidFor = Range,
        };
    }

    /// <summary>The hold of a stage.</summary>
    /// <param name="step">The stage.</param>
    public Account? Hold(ClockStep? step) => step is not null && LoadOf(step) is { } load
        ? new("Hold", "the schedule's hold, counted from arrival; where moulds are poured, as long as the slowest core among them needs to follow, if that is longer", "", null, "")
        {
            Inputs = load.Pours.FirstOrDefault(p => step.Kind == ClockStepKind.Fall && p.Temperature?.DegreesCelsius == step.Target?.DegreesCelsius) is { } poured
                ? [Schedule(load), AccountInput.Reckoned("slowest mould", $"flask {load.SlowestOf(poured)}", "the slowest of those that are poured at this temperature")]
                : [Schedule(load)],
            ValidFor = Range,
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
        ? new("Core there after", "from the begin of the stage until the core is within the tolerance of the kiln; not yet, where the stage ends before", "", null, "")
        {
            Rounded = "to five minutes",
            Inputs =
            [
                AccountInput.Reckoned("slowest mould", $"flask {load.Heat.Flask}", "the load's slowest, by its width and height"),
                AccountInput.Reckoned("core tolerance", unit.SayDegrees(load.Heat.ToleranceDegrees), $"\"Core tolerance\" on the Shop sheet, or {unit.Degrees(CoreLag.UsualDegrees)} where it does not say"),
                Schedule(load),
            ],
            ValidFor = CoreRange,
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
            AnswerField.CourseHours => new("Hours", "from loading on, as far as the programme goes", "", moment.After.Hours, "h") { Rounded = "to hundredths", Inputs = [Schedule(found)], ValidFor = Range },
            AnswerField.CourseKiln => new("Kiln", "where the programme has the kiln then", "", moment.Kiln.DegreesCelsius, "°C") { Rounded = "to a whole degree", Inputs = [Schedule(found)], ValidFor = Range },
            AnswerField.CoreSlow => Core(found, moment.Core.Slow, slow: true),
            AnswerField.CoreFast => Core(found, moment.Core.Fast, slow: false),
            _ => null,
        };
    }

    private static Account Core(KilnLoad load, Temperature core, bool slow) =>
        new(slow ? "Core, slow" : "Core, fast", "conduction into the middle of a cylinder that follows the programme", "", core.DegreesCelsius, "°C")
        {
            Rounded = "to a whole degree",
            Inputs = [AccountInput.Reckoned("slowest mould", $"flask {load.Heat.Flask}", "the load's slowest, by its width and height"), Schedule(load)],
            ValidFor = CoreRange,
        };

    private KilnLoad? LoadOf(ClockStep step) => clock.Loads.FirstOrDefault(l => l.Number == step.Load);

    // Its place among the stages and falls of its load, as they stand on the Kiln sheet.
    private int? PlaceOf(ClockStep step)
    {
        var stages = clock.Steps.Where(s => s.Load == step.Load && s.Kind is ClockStepKind.Stage or ClockStepKind.Fall).ToList();
        return stages.IndexOf(step) is >= 0 and var place ? place : null;
    }

    private static AccountInput Schedule(KilnLoad load) => AccountInput.Reckoned("schedule", load.Schedule.Name, "the longest among the load's flasks");
}
