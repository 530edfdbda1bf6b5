using CastBook.Casting.Burnout;
using CastBook.Casting.Patterns;
using CastBook.Casting.Tests.Published;

namespace CastBook.Casting.Tests.Burnout;

public class ShippedSchedulesTests
{
    public static TheoryData<string, string, string, string> Sheet => PublishedTable.Four("burnout-cycles.csv");

    [Theory]
    [MemberData(nameof(Sheet))]
    public void Wax_AgreesWithPublishedSheet(string flaskClass, string totalHours, string hours, string targets)
    {
        var schedule = ShippedSchedules.For(PatternKind.Wax, Enum.Parse<FlaskClass>(flaskClass));

        schedule.Stages.Select(stage => stage.Hold.Hours).ShouldBe(Numbers(hours));
        schedule.Stages.SkipLast(1).Select(stage => Math.Round(stage.Target.DegreesCelsius, 6)).ShouldBe(Numbers(targets).SkipLast(1));
        schedule.Stages.ShouldAllBe(stage => stage.RateDegreesPerHour == null);
        schedule.Total.Hours.ShouldBe(PublishedNumber.Parse(totalHours).Value, 1e-9);
    }

    // The printed sheet also gives Fahrenheit: 300, 600, 700, 900 and 1350 °F, each to the nearest degree Celsius or the next.
    [Fact]
    public void Wax_Targets_AreTheSheetsFahrenheit()
    {
        int[] printed = [300, 600, 700, 900, 1350];
        var targets = Enum.GetValues<FlaskClass>().SelectMany(c => ShippedSchedules.For(PatternKind.Wax, c).Stages.SkipLast(1));

        targets.ShouldAllBe(stage => printed.Any(f => Math.Abs(((f - 32) / 1.8) - stage.Target.DegreesCelsius) < 1));
    }

    [Theory]
    [InlineData(PatternKind.Wax, FlaskClass.Small, "wax 6 h")]
    [InlineData(PatternKind.Resin, FlaskClass.Large, "resin 14 h")]
    public void Name_TellsThePatternAndTheHours(PatternKind kind, FlaskClass flaskClass, string name) =>
        ShippedSchedules.For(kind, flaskClass).Name.ShouldBe(name);

    [Theory]
    [InlineData(FlaskClass.Small, 8)]
    [InlineData(FlaskClass.Medium, 10)]
    [InlineData(FlaskClass.Large, 14)]
    public void Resin_Hours_GoToDecompositionAndTop(FlaskClass flaskClass, double totalHours)
    {
        var wax = ShippedSchedules.For(PatternKind.Wax, flaskClass);
        var resin = ShippedSchedules.For(PatternKind.Resin, flaskClass);

        resin.Total.Hours.ShouldBe(totalHours, 1e-9);
        resin.Top.ShouldBe(wax.Top);
        for (var i = 0; i < wax.Stages.Count; i++)
        {
            var celsius = wax.Stages[i].Target.DegreesCelsius;
            var longer = resin.Stages[i].Hold.Hours - wax.Stages[i].Hold.Hours;

            resin.Stages[i].Target.ShouldBe(wax.Stages[i].Target);
            longer.ShouldBe(celsius is > 300 and < 400 || celsius > 700 ? 1 : 0, 1e-9);
        }
    }

    [Fact]
    public void For_AnyKindAndClass_StaysWithinTheUsualTop()
    {
        foreach (var kind in Enum.GetValues<PatternKind>())
        {
            foreach (var flaskClass in Enum.GetValues<FlaskClass>())
            {
                ShippedSchedules.For(kind, flaskClass).Top.DegreesCelsius.ShouldBe(KilnLimits.GypsumUsualTop.DegreesCelsius, 1e-9);
            }
        }
    }

    [Fact]
    public void For_UnknownClass_Throws() =>
        Should.Throw<ArgumentOutOfRangeException>(() => ShippedSchedules.For(PatternKind.Wax, (FlaskClass)9));

    private static IEnumerable<double> Numbers(string list) => list.Split(' ').Select(n => PublishedNumber.Parse(n).Value);
}
