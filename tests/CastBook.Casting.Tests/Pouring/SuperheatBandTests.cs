using CastBook.Casting.Metals;
using CastBook.Casting.Pouring;

namespace CastBook.Casting.Tests.Pouring;

public class SuperheatBandTests
{
    // Source: stuller.com, general casting tips for carat golds: 100 to 200 °F vacuum, 50 to 125 °F centrifugal.
    // As temperatures instead of differences, 100 °F would be 38 °C.
    [Theory]
    [InlineData(CastingMethod.VacuumPerforated, 55.6, 111.1)]
    [InlineData(CastingMethod.VacuumSolid, 55.6, 111.1)]
    [InlineData(CastingMethod.Spin, 27.8, 69.4)]
    public void Band_AgreesWithSupplierTable(CastingMethod method, double least, double most)
    {
        var band = SuperheatBand.For(method);

        band.Least.DegreesCelsius.ShouldBe(least, 0.05);
        band.Most.DegreesCelsius.ShouldBe(most, 0.05);
    }

    [Fact]
    public void Band_OfVacuum_HoldsPlainSterling()
    {
        var sterling = BuiltInAlloys.Named("sterling without deoxidant")[0];
        var superheat = sterling.MetalTemperature!.Value - sterling.Liquidus!.Value;
        var (least, most) = SuperheatBand.For(CastingMethod.VacuumPerforated);

        superheat.ShouldBeInRange(least, most);
    }

    [Fact]
    public void For_UnknownMethod_Throws() =>
        Should.Throw<ArgumentOutOfRangeException>(() => SuperheatBand.For((CastingMethod)9)).ParamName.ShouldBe("method");
}
