using CastBook.Planning.Flasks;

namespace CastBook.Planning.Tests.Flasks;

public sealed class FlaskLettersTests
{
    [Theory]
    [InlineData(0, "A")]
    [InlineData(25, "Z")]
    [InlineData(26, "AA")]
    [InlineData(51, "AZ")]
    [InlineData(52, "BA")]
    [InlineData(702, "AAA")]
    public void At_CountsOnPastZ(int place, string letter)
    {
        FlaskLetters.At(place).ShouldBe(letter);
        FlaskLetters.Place(letter).ShouldBe(place);
    }

    [Fact]
    public void Free_SkipsWhatIsTaken() =>
        FlaskLetters.Free(new HashSet<string> { "A", "C" }).Take(3).ShouldBe(["B", "D", "E"]);
}
