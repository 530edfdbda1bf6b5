using CastBook.Casting.Patterns;
using UnitsNet;

namespace CastBook.Casting.Tests.Patterns;

public class PatternDensityRangeTests
{
    // Nothing that is printed or injected floats like cork or sinks like glass.
    [Theory]
    [InlineData(0.59, false)]
    [InlineData(0.6, true)]
    [InlineData(1.0, true)]
    [InlineData(2.0, true)]
    [InlineData(2.01, false)]
    public void IsPossible_Density_OrNot(double gramsPerMl, bool possible) =>
        PatternDensityRange.IsPossible(Density.FromGramsPerCubicCentimeter(gramsPerMl)).ShouldBe(possible);

    // Sources: stullercloud.com list, wax 1.00 by convention; ganoksin.com Orchid threads 15741 and 27807, wax 0.95 to 0.98.
    [Theory]
    [InlineData(1.00)]
    [InlineData(0.98)]
    [InlineData(0.95)]
    public void For_Wax_HoldsPublishedValues(double printed)
    {
        var (least, most) = PatternDensityRange.For(PatternKind.Wax);

        printed.ShouldBeInRange(least.GramsPerCubicCentimeter - 1e-9, most.GramsPerCubicCentimeter + 1e-9);
    }

    [Fact]
    public void For_WaxAndResin_DoNotOverlap() =>
        PatternDensityRange.For(PatternKind.Wax).Most.ShouldBeLessThan(PatternDensityRange.For(PatternKind.Resin).Least);

    [Fact]
    public void Any_Span_HoldsBoth()
    {
        PatternDensityRange.Any.Least.GramsPerCubicCentimeter.ShouldBe(0.92, 1e-12);
        PatternDensityRange.Any.Most.GramsPerCubicCentimeter.ShouldBe(1.20, 1e-12);
    }

    [Fact]
    public void For_UnknownKind_Throws() =>
        Should.Throw<ArgumentOutOfRangeException>(() => PatternDensityRange.For((PatternKind)9));
}
