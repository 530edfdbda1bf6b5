using CastBook.Planning.Findings;
using UnitsNet;

namespace CastBook.Planning.Tests.Findings;

public sealed class SayTests
{
    [Theory]
    [InlineData(0.04, "0.0 g")]
    [InlineData(99.94, "99.9 g")]
    [InlineData(99.96, "100 g")]
    [InlineData(1234.5, "1,235 g")]
    public void Grams_ShowWhatAScaleShows(double grams, string said) => Say.Grams(Mass.FromGrams(grams)).ShouldBe(said);

    [Fact]
    public void Choice_ReadsAsPeopleSayIt()
    {
        Say.Choice(["a"]).ShouldBe("a");
        Say.Choice(["a", "b", "c"]).ShouldBe("a, b or c");
        Say.Together(["a", "b"]).ShouldBe("a and b");
    }
}
