using CastBook.Casting.Heat;
using MathNet.Numerics;

namespace CastBook.Casting.Tests.Heat;

public class ErrorFunctionTests
{
    // Source: the table of the error function in Abramowitz and Stegun, Handbook of Mathematical Functions, table 7.1, digits from memory.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.5, 0.5204998778)]
    [InlineData(1, 0.8427007929)]
    [InlineData(1.5, 0.9661051465)]
    [InlineData(2, 0.9953222650)]
    public void Complement_AgreesWithTheTable(double x, double printed) => (1 - ErrorFunction.Complement(x)).ShouldBe(printed, 1e-10);

    // Another library on both sides of 2, where the series ends and the fraction begins: in the tail each digit counts.
    [Fact]
    public void Complement_AgreesWithAnotherLibrary()
    {
        for (var x = 0.0; x <= 6; x += 0.05)
        {
            var other = SpecialFunctions.Erfc(x);

            ErrorFunction.Complement(x).ShouldBe(other, 1e-9 * other, $"erfc {x}");
        }
    }
}
