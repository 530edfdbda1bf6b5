using Xunit.Abstractions;

namespace CastBook.Casting.Tests.Published;

public class PublishedNumberTests(ITestOutputHelper output)
{
    private static readonly string[] Files = Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Published"), "*.csv");

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

    // What somebody printed, compared with what we compute: the karat charts are long, so the rest must be enough by itself.
    [Fact]
    public void OutsideValues_OfAllFiles_AreAtLeastOneHundredAndFiftyWithoutTheKaratCharts()
    {
        var counts = Files.ToDictionary(file => Path.GetFileName(file), file => PublishedTable.OutsideValues(Path.GetFileName(file)));
        foreach (var (file, count) in counts)
        {
            count.ShouldBeGreaterThan(0, file);
            output.WriteLine($"{count,4} {file}");
        }

        output.WriteLine($"{counts.Values.Sum(),4} outside values in all");
        counts.Where(pair => !pair.Key.StartsWith("karat-factors", StringComparison.Ordinal)).Sum(pair => pair.Value).ShouldBeGreaterThanOrEqualTo(150);
    }

    [Fact]
    public void Files_OfThisFolder_NameTheirSource()
    {
        var files = Files;

        files.Length.ShouldBeGreaterThan(5);
        foreach (var file in files)
        {
            File.ReadLines(file).First().ShouldStartWith("# source: ", customMessage: file);
        }
    }
}
