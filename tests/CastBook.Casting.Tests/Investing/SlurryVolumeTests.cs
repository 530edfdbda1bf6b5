using CastBook.Casting.Investing;
using UnitsNet;

namespace CastBook.Casting.Tests.Investing;

public sealed class SlurryVolumeTests
{
    // By hand: 260 g / 2.6 g/cm³ = 100 ml, and 104 ml of water.
    [Fact]
    public void Compute_PowderAndWater_AddsGrainsAndWater() =>
        SlurryVolume.Compute(Mass.FromGrams(260), Volume.FromMilliliters(104), Density.FromGramsPerCubicCentimeter(2.6)).Milliliters.ShouldBe(204, 1e-9);

    [Fact]
    public void Compute_WhatAVolumeTakes_FillsThatVolume()
    {
        var density = Density.FromGramsPerCubicCentimeter(2.5);
        var mix = PowderAndWater.Compute(Volume.FromMilliliters(800), 38, density, Mass.FromGrams(0.001));

        SlurryVolume.Compute(mix.Powder, mix.Water, density).Milliliters.ShouldBe(800, 0.001);
    }

    [Fact]
    public void Compute_OutOfRange_IsRefused()
    {
        var density = Density.FromGramsPerCubicCentimeter(2.6);
        Should.Throw<ArgumentOutOfRangeException>(() => SlurryVolume.Compute(Mass.FromGrams(-1), Volume.Zero, density)).ParamName.ShouldBe("powder");
        Should.Throw<ArgumentOutOfRangeException>(() => SlurryVolume.Compute(Mass.Zero, Volume.FromMilliliters(-1), density)).ParamName.ShouldBe("water");
        Should.Throw<ArgumentOutOfRangeException>(() => SlurryVolume.Compute(Mass.Zero, Volume.Zero, Density.Zero)).ParamName.ShouldBe("powderDensity");
    }
}
