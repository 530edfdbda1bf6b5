using UnitsNet;

namespace CastBook.Planning.Tests.Rows;

public sealed class PiecePlansTests
{
    [Fact]
    public void Set_AnswersOfAllKinds_AreGivenBack()
    {
        PiecePlan[] answers =
        [
            new()
            {
                Id = 0, Status = PieceStatus.Planned, MetalEach = Mass.FromGrams(23.4), MetalWorkedOut = Mass.FromGrams(22.9),
                Flasks = [new FlaskShare("A", 2), new FlaskShare("B", 1)], Burnout = Duration.FromHours(12),
            },
            new() { Id = 1, Status = PieceStatus.NotPlanned, MetalEach = Mass.FromGrams(1.25) },
            new() { Id = 2, Status = PieceStatus.OtherNight, IsToCome = true },
            new() { Id = 3, Status = PieceStatus.Done },
            new() { Id = 4, Status = PieceStatus.NotPlanned },
        ];
        var plans = new PiecePlans(answers.Length);
        foreach (var answer in answers)
        {
            plans.Set(answer);
        }

        plans.ShouldBe(answers);
        plans.Count.ShouldBe(5);
        plans[2].IsToCome.ShouldBeTrue();
        plans[3].MetalEach.ShouldBeNull();
    }
}
