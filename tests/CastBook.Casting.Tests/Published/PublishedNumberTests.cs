namespace CastBook.Casting.Tests.Published;

public class PublishedNumberTests
{
    [Theory]
    [InlineData("1.555 173 84", 1.55517384, 0.000000005)]
    [InlineData("13.33", 13.33, 0.005)]
    [InlineData("90", 90, 0.5)]
    public void Parse_PrintedDigits_SetTheTolerance(string printed, double value, double tolerance)
    {
        var number = PublishedNumber.Parse(printed);

        number.Value.ShouldBe(value);
        number.Tolerance.ShouldBe(tolerance, tolerance * 1e-6);
    }

    [Fact]
    public void Files_OfThisFolder_NameTheirSource()
    {
        var files = Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Published"), "*.csv");

        files.Length.ShouldBeGreaterThan(5);
        foreach (var file in files)
        {
            File.ReadLines(file).First().ShouldStartWith("# source: ", customMessage: file);
        }
    }
}
