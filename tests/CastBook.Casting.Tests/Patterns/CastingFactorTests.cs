using CastBook.Casting.Patterns;
using UnitsNet;

namespace CastBook.Casting.Tests.Patterns;

public class CastingFactorTests
{
    // By hand, and heavy castings count for more: 9.7 + 58.8 of 10 + 60 is 0.97857, between 0.97 and 0.98.
    [Fact]
    public void Compute_Castings_WeighsHeavyOnesMore()
    {
        var learnt = CastingFactor.Compute([Casting(10, 9.7), Casting(60, 58.8)]);

        learnt.Factor.DecimalFractions.ShouldBe(68.5 / 70, 1e-12);
        learnt.Lowest.DecimalFractions.ShouldBe(0.97, 1e-12);
        learnt.Highest.DecimalFractions.ShouldBe(0.98, 1e-12);
        learnt.Castings.ShouldBe(2);
        learnt.IsEnough.ShouldBeFalse();
        learnt.IsSound.ShouldBeTrue();
    }

    [Theory]
    [InlineData(2, false)]
    [InlineData(3, true)]
    [InlineData(4, true)]
    public void IsEnough_FromThreeOn(int castings, bool enough) =>
        CastingFactor.Compute([.. Enumerable.Repeat(Casting(10, 9.7), castings)]).IsEnough.ShouldBe(enough);

    [Theory]
    [InlineData(0.899, false)]
    [InlineData(0.90, true)]
    [InlineData(1.10, true)]
    [InlineData(1.101, false)]
    public void IsSound_FactorNearOne_OrNot(double factor, bool sound) =>
        CastingFactor.Compute([Casting(1, factor), Casting(1, factor), Casting(1, factor)]).IsSound.ShouldBe(sound);

    // Two of 1.00 and one beside: the mean moves by a third of what it is off.
    [Theory]
    [InlineData(0.93, true)]
    [InlineData(0.92, false)]
    [InlineData(1.07, true)]
    [InlineData(1.09, false)]
    public void IsSound_OneApart_OrNot(double other, bool sound) =>
        CastingFactor.Compute([Casting(1, 1), Casting(1, 1), Casting(1, other)]).IsSound.ShouldBe(sound);

    // Five percent below and five above one: just as far as they may be.
    [Fact]
    public void IsSound_JustAsFarApartAsMayBe_IsSound() => CastingFactor.Compute([Casting(1, 0.95), Casting(1, 1.05)]).IsSound.ShouldBeTrue();

    [Fact]
    public void Compute_NoCasting_Refuses() =>
        Should.Throw<ArgumentException>(() => CastingFactor.Compute([])).Message.ShouldStartWith("Nothing can be learnt from no casting.");

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    [InlineData(-1, 1)]
    public void Compute_MassNotPositive_Refuses(double reckoned, double weighed) =>
        Should.Throw<ArgumentOutOfRangeException>(() => CastingFactor.Compute([Casting(reckoned, weighed)]));

    private static (Mass Reckoned, Mass Weighed) Casting(double reckoned, double weighed) => (Mass.FromGrams(reckoned), Mass.FromGrams(weighed));
}
