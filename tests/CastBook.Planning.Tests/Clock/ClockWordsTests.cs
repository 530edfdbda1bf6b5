using CastBook.Planning.Clock;
using UnitsNet;

namespace CastBook.Planning.Tests.Clock;

public sealed class ClockWordsTests
{
    public static TheoryData<ClockStepKind> Kinds => [.. Enum.GetValues<ClockStepKind>()];

    // What is done to a flask holds what is in it; what is done to a mix or a kiln names none, whatever letters its words have.
    [Theory]
    [MemberData(nameof(Kinds))]
    public void FlasksIn_WordsOfAStep_AreThoseOfItsFlasks(ClockStepKind kind)
    {
        var named = kind is ClockStepKind.Fill or ClockStepKind.FlaskVacuum or ClockStepKind.Set or ClockStepKind.BaseOff or ClockStepKind.Steam
            or ClockStepKind.LoadKiln or ClockStepKind.Pour or ClockStepKind.Quench or ClockStepKind.CoolAlone;
        foreach (var target in new Temperature?[] { null, Wrenmoor.Celsius(540) })
        {
            var step = new ClockStep
            {
                Kind = kind,
                Begins = Duration.Zero,
                Takes = Duration.FromMinutes(5),
                Hands = true,
                Load = 1,
                Mix = named ? null : 1,
                Flasks = ["C", "AB"],
                Target = target,
            };

            ClockWords.FlasksIn(ClockWords.Of(step)).ShouldBe(named ? ["C", "AB"] : []);
        }
    }
}
