namespace CastBook.Cli.Tests;

public sealed class NewCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("castbook-new").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void New_BookThatExists_IsLeftAsItIs()
    {
        File.WriteAllText(In("casting-night.xlsx"), "mine");

        var run = CastBookRun.In(folder, ["new"]);

        run.ExitCode.ShouldBe(4);
        run.Errors.Trim().ShouldBe("castbook: 'casting-night.xlsx' exists and was left as it is. Name another file.");
        File.ReadAllText(In("casting-night.xlsx")).ShouldBe("mine");
    }

    [Fact]
    public void New_ABookNameAlone_IsANight()
    {
        var run = CastBookRun.In(folder, ["new", "harbour.xlsx", "--units", "us", "--empty"]);

        run.Output.Trim().ShouldBe("harbour.xlsx: made. Its first sheet says how to use it.", run.Errors);
        Directory.GetFiles(folder).Select(Path.GetFileName).ShouldBe(["harbour.xlsx"]);
    }

    [Theory]
    [InlineData("castbook: 'nights' is no kind of book; the kinds are night, list, shop, results.", "new", "nights")]
    [InlineData("castbook: 'a.csv' must end in .xlsx.", "new", "list", "a.csv")]
    public void New_WrongWords_AreExplained(string said, params string[] words)
    {
        var run = CastBookRun.In(folder, words);

        run.ExitCode.ShouldBe(2);
        run.Errors.Trim().ShouldBe(said);
        Directory.GetFiles(folder).ShouldBeEmpty();
    }

    [Fact]
    public void New_ShopFileThenList_TheListUsesTheShopFile()
    {
        CastBookRun.In(folder, ["new", "shop"]).Output.ReplaceLineEndings("\n").ShouldBe(
            "shop.xlsx: made. Its first sheet says how to use it.\ncastbook.json: made. The books beside it use the shop file from now on.\n");
        CastBookRun.In(folder, ["new", "list"]).ExitCode.ShouldBe(0);

        var fill = CastBookRun.In(folder, ["fill", "pieces.xlsx"]);

        fill.ExitCode.ShouldBe(0, fill.Errors);
        fill.Output.ShouldNotContain("Nothing says how the shop casts", Case.Sensitive, "each flask of the shop file says it");
        fill.Output.ShouldNotContain("has no flask that the shop owns");
    }

    [Fact]
    public void New_ShopFileBesideSettings_LeavesThemAndSaysWhatToAdd()
    {
        File.WriteAllText(In("castbook.json"), "{}");

        CastBookRun.In(folder, ["new", "shop", "our shop.xlsx"]).Output.ShouldEndWith(
            "To have the books beside it use it, put \"shop\": \"our shop.xlsx\" into castbook.json." + Environment.NewLine);
        File.ReadAllText(In("castbook.json")).ShouldBe("{}");
    }

    [Fact]
    public void ClearExamples_SaysWhatItTookAndWhatItLeft()
    {
        CastBookRun.In(folder, ["new", "results"]);

        var run = CastBookRun.In(folder, ["clear-examples", "results.xlsx"]);

        run.Output.ShouldStartWith("results.xlsx: example rows taken out: Results 3" + Environment.NewLine + "the book as it was: .castbook/results ");
        CastBookRun.In(folder, ["clear-examples", "results.xlsx"]).Output.Trim().ShouldBe("results.xlsx: no example rows to take out");
    }

    private string In(string name) => Path.Combine(folder, name);
}
