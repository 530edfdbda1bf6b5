using System.Text.Json;
using Json.Schema;

namespace CastBook.Cli.Tests;

public sealed class ExplainCommandTests : IDisposable
{
    private const string Book = "09_sheetjs_export.xlsx";

    private readonly string folder = Directory.CreateTempSubdirectory("castbook-explain-").FullName;

    public ExplainCommandTests() => File.Copy(Path.Combine(AppContext.BaseDirectory, "Books", Book), Path.Combine(folder, Book));

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Explain_Cell_TellsItAndWritesNothing()
    {
        var before = File.ReadAllBytes(Path.Combine(folder, Book));

        var run = Run("explain", Book, "Export!C2");

        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        run.Output.ShouldStartWith("Export!C2  ");
        run.Output.ShouldContain("\nIt is yours; CastBook reads it as the weight. Worked out in this row: ");
        File.ReadAllBytes(Path.Combine(folder, Book)).ShouldBe(before);
        Directory.GetFileSystemEntries(folder).Length.ShouldBe(1);
    }

    [Fact]
    public void Explain_HourWithAStart_CountsFromIt()
    {
        File.Copy(Path.Combine(ReadmeTests.Repository, "templates", "wrenmoor-night", "wrenmoor-night.xlsx"), Path.Combine(folder, "demo.xlsx"));

        Run("explain", "demo.xlsx", "Clock!B5", "--start", "2026-12-03 19:15").Output.ShouldContain("Weigh out mix 1, from = 19:15: ");
    }

    [Fact]
    public void Explain_BookOfQuestions_SaysThatNothingIsWorkedOut() => Run("explain", Book).Output.TrimEnd()
        .ShouldBe("No number is worked out in this book as it stands. Fill it: its sheet Checks then asks for what is missing.");

    [Fact]
    public void Explain_Json_IsWhatTheSchemaSays()
    {
        var run = Run("explain", Book, "--json");

        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        using var answer = JsonDocument.Parse(run.Output);
        JsonSchema.FromText(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "explain-answer.schema.json"))).Evaluate(answer.RootElement).IsValid.ShouldBeTrue();
    }

    [Theory]
    [InlineData("castbook: there is no file 'gone.xlsx'. Type the workbook's path, in quotes if it has blanks.", "gone.xlsx")]
    [InlineData("castbook: 'list.csv' is a list as text and has no cells. Fill it, then ask about list.xlsx.", "list.csv")]
    [InlineData("castbook: 'C' is no cell. Type the sheet, an exclamation mark and the cell, such as \"Export!C2\".", Book, "C")]
    [InlineData("castbook: there is no option '--dry-run' here.", Book, "C2", "--dry-run")]
    [InlineData("castbook: 'soon' is no day and hour; type it like \"2026-11-25 20:00\".", Book, "C2", "--start", "soon")]
    [InlineData("castbook: BOOK is missing. The workbook (.xlsx or .xlsm). It is only read.")]
    public void Explain_CommandIsWrong_EndsWithTwo(string error, params string[] arguments)
    {
        File.WriteAllText(Path.Combine(folder, "list.csv"), "Piece,Qty\n");

        var run = Run(["explain", .. arguments]);

        (run.ExitCode, run.Output).ShouldBe((2, ""));
        run.Errors.Split('\n')[0].TrimEnd().ShouldBe(error);
        if (arguments is [] or [_, _, _])
        {
            run.Errors.TrimEnd().ShouldEndWith("castbook: see castbook explain --help");
        }
    }

    [Fact]
    public void Help_FitsAScreenAndHasAnExample()
    {
        var help = Run("explain", "--help");

        (help.ExitCode, help.Errors).ShouldBe((0, ""));
        help.Output.ShouldContain("Example: castbook explain harbour-night.xlsx \"Night plan!E5\"");
        help.Output.Split('\n').Length.ShouldBeLessThan(25);
        Run("--help").Output.ShouldContain("\n  explain ");
    }

    private CastBookRun Run(params string[] arguments) => CastBookRun.In(folder, arguments);
}
