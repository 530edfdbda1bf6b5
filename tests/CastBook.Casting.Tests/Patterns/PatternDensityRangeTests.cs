using CastBook.Casting.Patterns;

namespace CastBook.Casting.Tests.Patterns;

public class PatternDensityRangeTests
{
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
