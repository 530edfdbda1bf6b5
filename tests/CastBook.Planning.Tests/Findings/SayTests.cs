using CastBook.Planning.Findings;
using UnitsNet;

namespace CastBook.Planning.Tests.Findings;

public sealed class SayTests
{
    [Theory]
    [InlineData(0.04, "0.0 ml")]
    [InlineData(99.94, "99.9 ml")]
    [InlineData(99.96, "100 ml")]
    [InlineData(1234.5, "1,235 ml")]
    public void Millilitres_ShowWhatAMeasureShows(double millilitres, string said) => Say.Millilitres(Volume.FromMilliliters(millilitres)).ShouldBe(said);

    [Fact]
    public void Choice_ReadsAsPeopleSayIt()
    {
        Say.Choice(["a"]).ShouldBe("a");
        Say.Choice(["a", "b", "c"]).ShouldBe("a, b or c");
        Say.Together(["a", "b"]).ShouldBe("a and b");
    }
}
