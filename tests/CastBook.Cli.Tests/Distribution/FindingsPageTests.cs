using CastBook.Planning.Findings;

namespace CastBook.Cli.Tests.Distribution;

/// <summary>The page of all findings is that of the catalogue.</summary>
public sealed class FindingsPageTests
{
    /// <summary>With <c>CASTBOOK_WRITE=1</c> the page is written anew.</summary>
    [Fact]
    public void Page_IsThatOfTheCatalogue()
    {
        var made = FindingsPage.Make();
        if (Environment.GetEnvironmentVariable("CASTBOOK_WRITE") == "1")
        {
            File.WriteAllText(FindingsPage.Path, made);
        }

        File.ReadAllText(FindingsPage.Path).ReplaceLineEndings("\n").ShouldBe(
            made, "after a change of wording run this test once with CASTBOOK_WRITE=1, which writes the page anew");
    }

    [Fact]
    public void Page_TellsOfEveryFinding()
    {
        var page = File.ReadAllText(FindingsPage.Path);

        Catalogue.All.Where(k => !page.Contains($"| `{k.Id}` |", StringComparison.Ordinal)).ShouldBeEmpty();
        page.ShouldNotContain("{0}");
    }
}
