using CastBook.Casting.Trees;
using UnitsNet;

namespace CastBook.Casting.Tests.Trees;

public class ChargeTests
{
    // By hand: (310 + 95 + 82.3) × 1.01 = 492.173, so 493 g on a scale of 1 g and 495 g on one of 5 g.
    // Loss forgotten would give 488; loss as a division, 487.3 / 0.99 = 492.22, is told apart at 0.01 g.
    [Theory]
    [InlineData(1, 493)]
    [InlineData(5, 495)]
    [InlineData(0.01, 492.18)]
    public void Compute_HandWorked_RoundsUp(double stepGrams, double expectedGrams) =>
        Compute(310, 95, 82.3, 1, stepGrams).ShouldBe(expectedGrams, 1e-9);

    [Fact]
    public void Compute_WholeSum_StaysWhole() => Compute(0.1, 0.2, 99.7, 0, 1).ShouldBe(100);

    [Fact]
    public void Compute_Nothing_IsZero() => Compute(0, 0, 0, 1, 1).ShouldBe(0);

    [Fact]
    public void Compute_AnyMasses_IsNeverShortAndLessThanAStepMore()
    {
        var random = new Random(31);
        for (var i = 0; i < 1000; i++)
        {
            var pieces = random.NextDouble() * 900;
            var charge = Compute(pieces, 20, 10, 1, 0.5);

            charge.ShouldBeInRange(((pieces + 30) * 1.01) - 1e-6, ((pieces + 30) * 1.01) + 0.5, $"seed 31, case {i}");
        }
    }

    [Theory]
    [InlineData(-1, 0, 0, 1, 1, "pieces")]
    [InlineData(0, -1, 0, 1, 1, "tree")]
    [InlineData(0, 0, -1, 1, 1, "button")]
    [InlineData(0, 0, 0, -1, 1, "meltLoss")]
    [InlineData(0, 0, 0, 1, 0, "step")]
    public void Compute_OutOfRange_NamesTheArgument(double pieces, double tree, double button, double loss, double step, string argument) =>
        Should.Throw<ArgumentOutOfRangeException>(() => Compute(pieces, tree, button, loss, step)).ParamName.ShouldBe(argument);

    private static double Compute(double pieces, double tree, double button, double lossPercent, double step) =>
        Charge.Compute(Mass.FromGrams(pieces), Mass.FromGrams(tree), Mass.FromGrams(button), Ratio.FromPercent(lossPercent), Mass.FromGrams(step)).Grams;
}
