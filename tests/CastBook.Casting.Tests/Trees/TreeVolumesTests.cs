using CastBook.Casting.Trees;
using UnitsNet;

namespace CastBook.Casting.Tests.Trees;

public class TreeVolumesTests
{
    // By hand: π/4 × 8² × 50 = 2513.27 mm³. The radius in place of the diameter would give 10053.
    [Fact]
    public void Trunk_HandWorked_GivesItsCylinder() =>
        TrunkVolume.Compute(Mm(8), Mm(50)).CubicMillimeters.ShouldBe(2513.274, 0.001);

    // By hand: 3 × π/4 × 2² × 5 = 47.124 mm³. Length and diameter swapped would give 117.8.
    [Fact]
    public void Gates_HandWorked_GiveThreeCylinders() =>
        GateVolume.Compute(3, Mm(2), Mm(5)).CubicMillimeters.ShouldBe(47.1239, 0.0001);

    [Fact]
    public void Gates_None_TakeNothing() => GateVolume.Compute(0, Mm(2), Mm(5)).CubicMillimeters.ShouldBe(0);

    [Fact]
    public void Volumes_OutOfRange_Throw()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => GateVolume.Compute(-1, Mm(2), Mm(5))).ParamName.ShouldBe("count");
        Should.Throw<ArgumentOutOfRangeException>(() => TrunkVolume.Compute(Mm(-8), Mm(5))).ParamName.ShouldBe("diameter");
        Should.Throw<ArgumentOutOfRangeException>(() => TrunkVolume.Compute(Mm(8), Mm(-5))).ParamName.ShouldBe("length");
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
