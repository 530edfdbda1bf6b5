using CastBook.Casting.Patterns;
using UnitsNet;

namespace CastBook.Casting.Burnout;

/// <summary>The schedules for gypsum-bonded investment that a shop starts from until it types its own.</summary>
/// <remarks>
/// <para><b>Valid for</b> gypsum-bonded powder and flasks up to 105 × 205 mm. Ramps are inside the holds. The
/// last stage is the soak at the temperature of casting; it stands at 538 °C, the flask temperature of plain
/// sterling for ordinary work, until <see cref="BurnoutSchedule.EndingAt"/> sets another.</para>
/// <para><b>Source.</b> Wax: a maker's published sheet of 6, 8 and 12 h. Resin: no open table was found. Two
/// hours more in all (8 and 10 h common practice, 14 h memory), one of them at the stage nearest to 370 °C,
/// where cured resin decomposes (300 to 400 °C, published), and one at the top, where its ash burns. The
/// resin maker's own schedule is to be asked for.</para>
/// </remarks>
public static class ShippedSchedules
{
    private const double DecomposesAtCelsius = 370;
    private const double TopCelsius = 732;
    private const double SoakCelsius = 538;
    private const double ResinExtraHours = 1;

    private static readonly Dictionary<(PatternKind Kind, FlaskClass Class), BurnoutSchedule> Table = Build();

    /// <summary>The shipped schedule.</summary>
    /// <param name="kind">Wax or resin; a flask with both counts as resin.</param>
    /// <param name="flaskClass">Class of the flask.</param>
    /// <returns>The schedule.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The kind or the class is not a known one.</exception>
    public static BurnoutSchedule For(PatternKind kind, FlaskClass flaskClass) =>
        Table.TryGetValue((kind, flaskClass), out var schedule)
            ? schedule
            : throw new ArgumentOutOfRangeException(nameof(kind), (kind, flaskClass), "There is no shipped schedule of this kind and class.");

    private static Dictionary<(PatternKind Kind, FlaskClass Class), BurnoutSchedule> Build()
    {
        // Target in °C, then hours, as printed.
        Dictionary<FlaskClass, BurnoutStage[]> wax = new()
        {
            [FlaskClass.Small] = [Stage(149, 2), Stage(371, 1), Stage(TopCelsius, 2), Stage(SoakCelsius, 1)],
            [FlaskClass.Medium] = [Stage(149, 2), Stage(371, 2), Stage(TopCelsius, 3), Stage(SoakCelsius, 1)],
            [FlaskClass.Large] = [Stage(149, 2), Stage(315, 2), Stage(482, 2), Stage(TopCelsius, 4), Stage(SoakCelsius, 2)],
        };

        var table = new Dictionary<(PatternKind Kind, FlaskClass Class), BurnoutSchedule>();
        foreach (var (flaskClass, stages) in wax)
        {
            table[(PatternKind.Wax, flaskClass)] = Named("wax", stages);
            table[(PatternKind.Resin, flaskClass)] = Named("resin", WithResinHours(stages));
        }

        return table;
    }

    private static BurnoutStage[] WithResinHours(BurnoutStage[] wax)
    {
        var decomposing = wax.MinBy(stage => Math.Abs(stage.Target.DegreesCelsius - DecomposesAtCelsius));
        var top = wax.MaxBy(stage => stage.Target.DegreesCelsius);
        return Array.ConvertAll(
            wax,
            stage => ReferenceEquals(stage, decomposing) || ReferenceEquals(stage, top)
                ? stage with { Hold = Duration.FromHours(stage.Hold.Hours + ResinExtraHours) }
                : stage);
    }

    private static BurnoutSchedule Named(string kind, BurnoutStage[] stages)
    {
        var hours = stages.Sum(stage => stage.Hold.Hours);
        return new BurnoutSchedule(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{kind} {hours:0} h"), null, stages);
    }

    private static BurnoutStage Stage(double celsius, double hours) =>
        new(Temperature.FromDegreesCelsius(celsius), null, Duration.FromHours(hours));
}
