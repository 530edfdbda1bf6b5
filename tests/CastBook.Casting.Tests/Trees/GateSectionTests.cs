using CastBook.Casting.Trees;
using UnitsNet;

namespace CastBook.Casting.Tests.Trees;

public sealed class GateSectionTests
{
    // By hand: (3 / 4)² = 0.5625; two of them 1.125. Swapped, 4 mm into 3 would be 1.78.
    [Theory]
    [InlineData(1, 3, 4, 56.25)]
    [InlineData(2, 3, 4, 112.5)]
    [InlineData(1, 4, 3, 177.7777777)]
    [InlineData(0, 3, 4, 0)]
    public void Compute_Gates_AreSquaresOfDiameters(int gates, double diameterMm, double sectionMm, double percent) =>
        GateSection.Compute(gates, Length.FromMillimeters(diameterMm), Length.FromMillimeters(sectionMm)).Percent.ShouldBe(percent, 1e-6);

    // A published article on sprue systems: feed sprues of 70 to 150 % of the section at the attachment.
    [Fact]
    public void Range_AsPublished()
    {
        GateSection.Least.Percent.ShouldBe(70, 1e-9);
        GateSection.Most.Percent.ShouldBe(150, 1e-9);
    }

    [Fact]
    public void Compute_OutOfRange_IsRefused()
    {
        var mm = Length.FromMillimeters(1);
        Should.Throw<ArgumentOutOfRangeException>(() => GateSection.Compute(-1, mm, mm)).ParamName.ShouldBe("gates");
        Should.Throw<ArgumentOutOfRangeException>(() => GateSection.Compute(1, -mm, mm)).ParamName.ShouldBe("diameter");
        Should.Throw<ArgumentOutOfRangeException>(() => GateSection.Compute(1, mm, Length.Zero)).ParamName.ShouldBe("section");
    }
}
