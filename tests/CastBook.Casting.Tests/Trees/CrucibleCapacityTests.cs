using CastBook.Casting.Metals;
using CastBook.Casting.Trees;
using UnitsNet;

namespace CastBook.Casting.Tests.Trees;

public class CrucibleCapacityTests
{
    // By hand: 1000 / 19.3 = 51.81 ml; × 10.36 = 536.8 g of sterling. Taking the rating as any metal would give 1000 g.
    [Fact]
    public void FromRating_OneKilogramOfGold_HoldsHalfOfItInSterling()
    {
        var brim = CrucibleCapacity.FromRating(Mass.FromKilograms(1), Density.FromGramsPerCubicCentimeter(19.3));

        brim.Milliliters.ShouldBe(52, 0.5);
        (brim * Density.FromGramsPerCubicCentimeter(10.36)).Grams.ShouldBe(537, 0.5);
    }

    [Fact]
    public void FromRating_ElementGold_HoldsFiftyTwoMilliliters()
    {
        Elements.TryGet("Au", out var gold).ShouldBeTrue();

        CrucibleCapacity.FromRating(Mass.FromKilograms(1), gold!.Density).Milliliters.ShouldBe(52, 0.5);
    }

    [Fact]
    public void Usable_FiftyTwoMilliliters_LeavesAFifthFree() =>
        CrucibleCapacity.Usable(Volume.FromMilliliters(52)).Milliliters.ShouldBe(41.6, 1e-9);

    [Fact]
    public void Capacity_OutOfRange_Throws()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => CrucibleCapacity.Usable(Volume.FromMilliliters(-1))).ParamName.ShouldBe("holds");
        Should.Throw<ArgumentOutOfRangeException>(() => CrucibleCapacity.FromRating(Mass.FromGrams(1), Density.Zero)).ParamName.ShouldBe("metal");
    }
}
