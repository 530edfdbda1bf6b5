using System.Text.Json;
using Json.Schema;

namespace CastBook.Cli.Tests;

public sealed class FillCommandTests : IDisposable
{
    private const string Book = "09_sheetjs_export.xlsx";

    private readonly string folder = Directory.CreateTempSubdirectory("castbook-test-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Fill_InPlace_AnswersOnTheOutputOnly()
    {
        var before = Place(Book, "night one.xlsx");

        var run = Run("fill", "night one.xlsx");

        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        run.Output.ShouldStartWith("night one.xlsx: 4 rows read, ");
        run.Output.TrimEnd().Split('\n')[^1].ShouldStartWith($"filled in place; the book as it was: {Path.Combine(".castbook", "night one ")}");
        Bytes("night one.xlsx").ShouldNotBe(before);
        File.ReadAllBytes(Directory.GetFiles(Path.Combine(folder, ".castbook"), "*.xlsx").ShouldHaveSingleItem()).ShouldBe(before);

        Run("fill", "night one.xlsx").Output.TrimEnd().Split('\n')[^1].ShouldBe("nothing had changed, so the file was left as it is");
    }

    [Fact]
    public void Fill_BarePathAndStrict_EndsWithOneWhereSomethingSaysStop()
    {
        var before = Place(Book);

        var run = Run(Book, "--strict", "--dry-run");

        (run.ExitCode, run.Errors).ShouldBe((1, ""));
        run.Output.ShouldContain("\nstop  Export!C5 ");
        run.Output.TrimEnd().ShouldEndWith("dry run: nothing was written");
        Bytes(Book).ShouldBe(before);
        Files.ShouldBe([Book]);
    }

    [Fact]
    public void Fill_Json_PrintsTheAnswerAndNothingElse()
    {
        Place(Book);

        var run = Run("fill", Book, "--json", "--out", "filled.xlsx");

        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        using var answer = JsonDocument.Parse(run.Output);
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "fill-answer.schema.json")));
        schema.Evaluate(answer.RootElement).IsValid.ShouldBeTrue();
        Files.ShouldBe([Book, "filled.xlsx"], ignoreOrder: true);
    }

    [Fact]
    public void Fill_MetalInHand_AsksForNoMetalAndMarksWhatWaits()
    {
        File.Copy(ReadmeTests.DemoNight, Path.Combine(folder, "night.xlsx"));
        var all = Run("fill", "night.xlsx", "--dry-run");

        var run = Run("fill", "night.xlsx", "--dry-run", "--metal-in-hand");

        all.Output.ShouldContain("14k yellow 174 g (have 38.0 g: buy 136 g)");
        run.Output.ShouldContain("14k yellow pieces 49.7 g (have 38.0 g), ");
        run.Output.ShouldNotContain(" in stock. Buy ");
        Run("fill", "night.xlsx", "--dry-run", "--metal-in-hand", "--json").Output.ShouldContain("10 pieces wait for 14k yellow: 38.0 g in stock, and what is planned takes 0.0 g.");
    }

    [Theory]
    [InlineData("castbook: 'tonight' is no day and hour; type it like \"2026-11-25 20:00\".", "fill", Book, "--start", "tonight")]
    [InlineData("castbook: --start and --pour-at are two ways to say the same; give one of them.", "fill", Book, "--start", "2026-11-25 20:00", "--pour-at", "2026-11-26 09:00")]
    [InlineData("castbook: there is no file 'gone.xlsx'. Type the workbook's path, in quotes if it has blanks.", "fill", "gone.xlsx")]
    [InlineData("castbook: there is no command 'gone', and no file of that name. The commands are fill, explain, watch, kiln-log, status, restore, share, shortcut, new, adopt, clear-examples, completion.", "gone")]
    [InlineData("castbook: there is no folder for 'nowhere/out.xlsx'. Make the folder first, or type another path after --out.", "fill", Book, "--out", "nowhere/out.xlsx")]
    [InlineData("castbook: '.' is no file. Type the path of the filled workbook after --out.", "fill", Book, "--out", ".")]
    [InlineData("castbook: 'out.xlsm' must end in .xlsx, as the workbook does.", "fill", Book, "--out", "out.xlsm")]
    [InlineData("castbook: there is no option '--wrong' here.", "fill", Book, "--wrong")]
    [InlineData("castbook: there is no option '--nigt' here.", "fill", "--nigt", "Friday", Book)]
    [InlineData("castbook: 'list.xlsx' is a word too many. A path with blanks stands in quotes: \"class list.xlsx\".", "fill", "class", "list.xlsx")]
    [InlineData("castbook: 'Friday' is a word too many.", "fill", Book, "Friday")]
    [InlineData("castbook: BOOK is missing. The workbook (.xlsx, .xlsm), or a list as text (.csv, .tsv, .txt).", "fill")]
    [InlineData("castbook: 'x' is no whole number.", "restore", Book, "x")]
    [InlineData("castbook: 'x' is no whole number.", "kiln-log", Book, "log.csv", "--load", "x")]
    [InlineData("castbook: 'x' is no whole number.", "watch", ".", "--every", "x")]
    [InlineData("castbook: 'feet' is none of the words that may stand there; type one of metric, us.", "new", "night", "new.xlsx", "--units", "feet")]
    [InlineData("castbook: 'tcsh' is none of the words that may stand there; type one of bash, fish, pwsh, zsh.", "completion", "tcsh")]
    [InlineData("castbook: nothing stands after --night. Plan this night, written as in the Night column.", "fill", Book, "--night")]
    [InlineData("castbook: --out is missing. Write the template here; no file may stand there yet.", "share", Book)]
    [InlineData("castbook: --out stands there more than once; give it once.", "fill", Book, "--out", "a.xlsx", "--out", "b.xlsx")]
    public void Fill_CommandIsWrong_EndsWithTwo(string error, params string[] arguments)
    {
        var before = Place(Book);

        var run = Run(arguments);

        (run.ExitCode, run.Output).ShouldBe((2, ""));
        run.Errors.Split('\n')[0].TrimEnd().ShouldBe(error);
        run.Errors.TrimEnd().Split('\n').ShouldAllBe(l => l.StartsWith("castbook: ", StringComparison.Ordinal));
        Bytes(Book).ShouldBe(before);
        Files.ShouldBe([Book]);
    }

    [Theory]
    [InlineData("12/24/26", "--start")]
    [InlineData("24/12/26", "--pour-at")]
    public void Fill_HourAskedInDigits_IsLeftToTheBook(string due, string option)
    {
        File.WriteAllText(Path.Combine(folder, "list.csv"), $"Piece,Qty,Weight (g),Metal,Due\nOtter,1,2.1,deoxidised sterling,{due}\n");

        var run = Run("fill", "list.csv", "--json", option, "12/4/26 6 PM");

        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        Files.ShouldContain("list.xlsx");
        Run("explain", "list.xlsx", option, "12/4/26 6 PM").ExitCode.ShouldBe(0);
    }

    [Fact]
    public void Fill_HourAskedOfTwoDays_EndsWithTwoAndWritesNothing()
    {
        File.WriteAllText(Path.Combine(folder, "list.csv"), "Piece,Qty,Weight (g),Metal,Due\nOtter,1,2.1,deoxidised sterling,12/4/26\n");

        var run = Run("fill", "list.csv", "--start", "12/4/26 6 PM");

        (run.ExitCode, run.Output).ShouldBe((2, ""));
        run.Errors.TrimEnd().ShouldBe("castbook: '12/4/26 6 PM' may be 2026-04-12 18:00 or 2026-12-04 18:00; type the one that is meant, year first as here.");
        Files.ShouldBe(["list.csv"]);
    }

    [Fact]
    public void Fill_NoWorkbook_EndsWithThree()
    {
        const string Locked = "15_password_fern.xlsx";
        var before = Place(Locked);

        var run = Run("fill", Locked);

        (run.ExitCode, run.Output).ShouldBe((3, ""));
        run.Errors.ShouldStartWith("castbook: ");
        run.Errors.ShouldContain("password");
        run.Errors.TrimEnd().ShouldNotContain("\n");
        Bytes(Locked).ShouldBe(before);
        Files.ShouldBe([Locked]);
    }

    [Fact]
    public void Fill_BookIsOpen_EndsWithFour()
    {
        var before = Place(Book);
        File.WriteAllText(Path.Combine(folder, $".~lock.{Book}#"), "Bench,host,1");

        var run = Run("fill", Book);

        (run.ExitCode, run.Output).ShouldBe((4, ""));
        run.Errors.ShouldStartWith($"castbook: {Book} is open; Bench has it. ");
        Bytes(Book).ShouldBe(before);
        Files.Count().ShouldBe(2);
    }

    [Fact]
    public void Fill_UnderAnotherCultureAndTimeZone_GivesTheSameBytes()
    {
        Place(Book);

        // Both are called night.xlsx, as the name stands in the titles.
        Directory.CreateDirectory(Path.Combine(folder, "a"));
        Directory.CreateDirectory(Path.Combine(folder, "b"));
        var plain = CastBookRun.In(folder, ["fill", Book, "--out", "a/night.xlsx"], "LC_ALL=C", "TZ=UTC");
        var german = CastBookRun.In(folder, ["fill", Book, "--out", "b/night.xlsx"], "LC_ALL=de_DE.UTF-8", "TZ=Pacific/Auckland");

        german.Output.ShouldBe(plain.Output.Replace("a/night", "b/night", StringComparison.Ordinal));
        Bytes("b/night.xlsx").ShouldBe(Bytes("a/night.xlsx"));
    }

    [Fact]
    public void Fill_ListAsText_MakesAWorkbookBesideItOnce()
    {
        File.WriteAllText(Path.Combine(folder, "list.csv"), "Piece;Qty;Wax weight (g);Alloy\nOar pin;5;1,33;tin bronze\n");

        var run = Run("list.csv");
        (run.ExitCode, run.Errors).ShouldBe((0, ""));
        run.Output.ShouldStartWith("list.xlsx: 1 row read, ");
        run.Output.TrimEnd().ShouldEndWith("filled: list.xlsx");
        Files.ShouldBe(["list.csv", "list.xlsx"], ignoreOrder: true);

        Run("list.csv").ExitCode.ShouldBe(4);
        var wrong = Run("list.csv", "--out", "list.ods");
        (wrong.ExitCode, wrong.Errors.Trim()).ShouldBe((2, "castbook: 'list.ods' must end in .xlsx, as the workbook does."));
    }

    [Fact]
    public void Fill_NightAskedFor_IsPlanned()
    {
        File.WriteAllText(Path.Combine(folder, "list.csv"), "Piece;Qty;Wax weight (g);Alloy;Night\nOar pin;5;1,33;tin bronze;2026-12-03\nHeron pin;1;1,4;tin bronze;2026-12-10\n");

        Run("list.csv", "--dry-run", "--night", "2026-12-10").Output.ShouldContain("1 of other nights");
    }

    [Fact]
    public void Help_EveryOption_IsExplainedWithAnExample()
    {
        var top = Run("--help");
        (top.ExitCode, top.Errors).ShouldBe((0, ""));
        top.Output.ShouldContain("\n  fill ");
        Run().Output.ShouldBe(top.Output);

        var help = Run("fill", "--help");
        (help.ExitCode, help.Errors).ShouldBe((0, ""));
        foreach (var word in (string[])["BOOK", "--out <PATH>", "--night <NIGHT>", "--dry-run", "--json", "--strict", "Example: castbook fill harbour-night.xlsx"])
        {
            help.Output.ShouldContain(word);
        }
    }

    private IEnumerable<string> Files => Directory.GetFileSystemEntries(folder).Select(p => Path.GetFileName(p));

    private CastBookRun Run(params string[] arguments) => CastBookRun.In(folder, arguments);

    private byte[] Place(string book, string? name = null)
    {
        var path = Path.Combine(folder, name ?? book);
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Books", book), path);
        return File.ReadAllBytes(path);
    }

    private byte[] Bytes(string name) => File.ReadAllBytes(Path.Combine(folder, name));
}
