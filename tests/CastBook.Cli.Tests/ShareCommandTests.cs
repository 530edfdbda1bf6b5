namespace CastBook.Cli.Tests;

/// <summary><c>castbook share</c> as a person runs it.</summary>
public sealed class ShareCommandTests : IDisposable
{
    private static readonly string Repository = ReadmeTests.Repository;

    private readonly string folder = Directory.CreateTempSubdirectory().FullName;

    [Fact]
    public void Share_FilledDemoNight_WritesATemplateThatFillKnowsAndSaysWhatItDid()
    {
        var source = Path.Combine(folder, "night.xlsx");
        File.Copy(Path.Combine(Repository, "templates", "casting-night", "filled.xlsx"), source);
        var before = File.ReadAllBytes(source);

        var run = CastBookRun.In(folder, ["share", "night.xlsx", "--out", "ours.xlsx"]);

        run.ExitCode.ShouldBe(0, run.Errors);
        run.Output.ReplaceLineEndings("\n").ShouldBe(
            """
            ours.xlsx: a template made of night.xlsx, which is as it was
            kept  the headings of the list on Pieces
            kept  Flasks (4 rows)
            kept  Crucibles (3 rows)
            kept  Kilns (1 row)
            kept  Alloys (3 rows)
            kept  Materials (3 rows)
            kept  Investments (1 row)
            kept  Schedules (12 rows)
            kept  Shop (47 settings)
            kept  the table Pieces
            kept  column widths, formats, frozen headings, drop-down lists and the set-up of pages
            left out  2 rows of text above the headings
            left out  32 rows of pieces
            left out  5 rows of a shop sheet with stock, prices or other text
            left out  2 document property sheets
            read these headings through, only you know what they mean: "Bench note"

            """.ReplaceLineEndings("\n"));
        File.ReadAllBytes(source).ShouldBe(before);
        CastBookRun.In(folder, ["fill", "ours.xlsx"]).Errors.TrimEnd().ShouldBe(
            "castbook: The list on sheet Pieces has headings in row 4 but no pieces under them. Nothing was written. Type at least one piece with its quantity and weight below the headings.");
    }

    [Theory]
    [InlineData("night.xlsx", "ours.xlsm", "castbook: a template has no macros: type a name that ends in .xlsx after --out.")]
    [InlineData("none.xlsx", "ours.xlsx", "castbook: there is no file 'none.xlsx'. Type the workbook's path, in quotes if it has blanks.")]
    [InlineData("list.csv", "ours.xlsx", "castbook: 'list.csv' is a list as text and holds nothing but rows. Fill it, then share the workbook it becomes.")]
    public void Share_WrongNames_SaysWhatToType(string book, string to, string said)
    {
        File.WriteAllText(Path.Combine(folder, "list.csv"), "Piece,Qty\n");
        File.WriteAllText(Path.Combine(folder, "night.xlsx"), "");

        var run = CastBookRun.In(folder, ["share", book, "--out", to]);

        (run.ExitCode, run.Errors.TrimEnd()).ShouldBe((2, said));
    }

    [Fact]
    public void Share_TemplateStandsThere_IsLeftAsItIs()
    {
        File.Copy(Path.Combine(Repository, "templates", "casting-night", "casting-night.xlsx"), Path.Combine(folder, "night.xlsx"));
        File.WriteAllText(Path.Combine(folder, "ours.xlsx"), "mine");

        var run = CastBookRun.In(folder, ["share", "night.xlsx", "--out", "ours.xlsx"]);

        (run.ExitCode, run.Errors.TrimEnd()).ShouldBe(
            (4, "castbook: ours.xlsx stands there already. What is in it would be lost, so nothing was written. Type another name after --out, or move it away."));
        File.ReadAllText(Path.Combine(folder, "ours.xlsx")).ShouldBe("mine");
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
