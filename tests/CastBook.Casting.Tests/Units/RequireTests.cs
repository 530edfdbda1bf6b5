using CastBook.Casting.Units;
using UnitsNet;

namespace CastBook.Casting.Tests.Units;

public class RequireTests
{
    [Fact]
    public void NotNegative_BelowZero_NamesTheArgument()
    {
        var pattern = Mass.FromGrams(-1);

        Should.Throw<ArgumentOutOfRangeException>(() => Require.NotNegative(pattern)).ParamName.ShouldBe("pattern");
    }

    [Fact]
    public void NotNegative_Zero_Passes() => Should.NotThrow(() => Require.NotNegative(Mass.Zero));

    [Fact]
    public void Positive_Zero_NamesTheArgument()
    {
        var alloy = Density.Zero;

        Should.Throw<ArgumentOutOfRangeException>(() => Require.Positive(alloy)).ParamName.ShouldBe("alloy");
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Guards_NotFinite_Throw(double number)
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Require.Positive(number));
        Should.Throw<ArgumentOutOfRangeException>(() => Require.NotNegative(number));
    }
}
