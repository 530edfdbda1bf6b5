using CastBook.Casting.Metals;

namespace CastBook.Casting.Tests.Metals;

public class FinenessTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(14, 583.3333333333333)]
    [InlineData(18, 750)]
    [InlineData(24, 1000)]
    public void FromCarats_Carats_GivesTheShare(double carats, double perMille) =>
        Fineness.FromCarats(carats).PartsPerThousand.ShouldBe(perMille, 1e-9);

    [Fact]
    public void FromCarats_OutsideTheScale_IsRefused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Fineness.FromCarats(-1));
        Should.Throw<ArgumentOutOfRangeException>(() => Fineness.FromCarats(24.1));
    }

    // By hand: 875 of 998. Taking the parts as they stand would give 875.
    [Fact]
    public void Of_PartsThatAddUpToLess_IsTheShareOfTheWhole()
    {
        Fineness.Of(Composition.Of("Cu 875 Sn 83 Zn 40"), "Cu").PartsPerThousand.ShouldBe(876.754, 0.0005);
        Fineness.Of(Composition.Of("Cu 875 Sn 83 Zn 40"), "Au").PartsPerThousand.ShouldBe(0);
    }
}
