using System.Reflection;

namespace CastBook.Cli.Tests.Words;

/// <summary>What answers, explanations and sheets say stands in the Words folders of their projects.</summary>
public sealed class BookWordsTests
{
    // Files that hold words of machines, of whoever keeps the book, or of nobody.
    private static readonly Dictionary<string, string> Others = new(StringComparer.Ordinal)
    {
        ["AnswerMaker.cs"] = "values of --json",
        ["ClockAnswers.cs"] = "values of --json",
        ["MetalUnits.cs"] = "signs of units, and keys of the record",
        ["Examples.cs"] = "rows of an invented shop",
        ["DemoNight.cs"] = "the demo night of an invented shop",
        ["TemplateMaker.cs"] = "the page beside the templates, of Markdown",
        ["CellWriter.cs"] = "a fault of the program's own",
        ["RowOf.cs"] = "a fault of the program's own",
        ["SettingsEdit.cs"] = "a fault of the program's own",
        ["LanguageWords.cs"] = "faults of a file of words",
        ["AnswerField.cs"] = "keys of answers",
        ["ShopSheet.cs"] = "headings by which columns are read",
        ["AnswerWords.cs"] = "words by which answers are read",
        ["ShopWords.cs"] = "words by which answers are read",
        ["WeekdayWords.cs"] = "words by which days are read",
        ["CellUnit.cs"] = "words by which units are read",
        ["CellWords.cs"] = "words by which cells are read",
        ["CountWord.cs"] = "words by which counts are read",
        ["Estimate.cs"] = "words by which estimates are read",
        ["HourText.cs"] = "words by which hours are read",
        ["QuestionForm.cs"] = "names of columns and choices",
        ["MaterialWords.cs"] = "words by which materials are read",
        ["MetalClay.cs"] = "words by which metal clay is read",
        ["GraphiteWords.cs"] = "words by which graphite is read",
        ["ExampleName.cs"] = "the sign by which examples are read",
        ["PieceField.cs"] = "keys of cells",
        ["ShopField.cs"] = "keys of cells",
        ["SettingName.cs"] = "names of settings",
        ["SettingGuide.cs"] = "names of settings and choices; its sentences have a test of their own",
        ["ShopUnits.cs"] = "signs of units",
        ["WrittenLength.cs"] = "signs of units",
        ["WrittenMass.cs"] = "signs of units",
        ["WrittenVolume.cs"] = "signs of units",
    };

    // Names of columns and choices, by which sheets are read again, of sheets and of charts, of units, of limits and of elements; what is looked for in names.
    private static readonly HashSet<string> Names =
    [
        "Setting", "Value", "Unit", "What it is for", "Shop", "Read me", "load", "planned", "waxed", "invested", "in kiln", "poured",
        "Rated for", "Made of", "Per tree", "Water per 100", "Water rinse", "Stones in", "Keep in flask", "Leave out", "Poured on", "high temperature",
        "pattern", "finished metal", "piece alone", "gates too", "vacuum perforated", "vacuum solid", "spin", "gravity", "troy oz", "US fl oz",
        "g", "kg", "ml", "min", "(per g)", "(per ozt)", "part megabytes", "book megabytes", "times packed",
        "Alloys", "Flasks", "Crucibles", "Kilns", "Materials", "Investments", "Schedules", "Kind", "Working time", "Powder density", "Set at least",
        "stones", "resin", "wax", "fine", "ordinary", "heavy", "round", "Ag", "Au", "Ni", "Pd", "Pt",
        "SCRAP", "RED", "ROSE", "GOLD", "SILVER", "PLATINUM", "PALLADIUM", "STAINLESSSTEEL", "RESIN", "WAX", "CASTABLE", "PRINTED",
    ];

    // Alloys by name, with where their numbers come from, and the words by which names are read.
    private static readonly HashSet<string> Tables =
    [
        "Metals/AlloyWordTable.cs", "Metals/CopperAlloys.cs", "Metals/GoldAlloys.cs", "Metals/NamedAlloys.cs", "Metals/NumberSource.cs", "Metals/PlatinumAlloys.cs",
        "Metals/RedGoldAlloys.cs", "Metals/SilverAlloys.cs", "Metals/WhiteGoldAlloys.cs",
    ];

    private static readonly Dictionary<string, Assembly> Assemblies = new(StringComparer.Ordinal)
    {
        ["CastBook.Planning"] = typeof(Planning.NightPlan).Assembly,
        ["CastBook.Workbooks"] = typeof(Workbooks.Reports.Summary).Assembly,
        ["CastBook.Templates"] = typeof(Templates.StarterTexts).Assembly,
    };

    [Theory]
    [InlineData("CastBook.Workbooks", "Reports", "Explaining", "Columns", "Undoing", "Clearing", "Drawing", "KilnLogs", "Text", "Sharing", "Settings",
        "Adopting", "Files", "Xml", "Writing", "Reading", "Reading/Grid", "Reading/Headings", "Reading/Package", "Reading/Pieces", "Reading/Values")]
    [InlineData("CastBook.Templates", "", "Sheets", "Starters", "Writing")]
    public void Sentences_OfBooks_StandInWordsAlone(string project, params string[] folders) => Outside(project, folders, SaidText.IsSaid).ShouldBeEmpty();

    /// <summary>
    /// The arithmetic says nothing to a caster but where the numbers of its tables come from: what is wrong is a fact, and its sentence stands with
    /// the other words of the project that says it. The text of an exception is for whoever mends the program.
    /// </summary>
    [Fact]
    public void Sentences_OfTheArithmetic_AreNone()
    {
        var sources = SourceFiles.Of("CastBook.Casting");

        sources.Count.ShouldBeGreaterThan(60);
        Tables.ShouldBeSubsetOf(sources.Keys);
        sources.Where(s => !Tables.Contains(s.Key)).SelectMany(s => SourceLiterals.Of(s.Value)
            .Where(l => SaidText.IsSaid(l.Text) && !s.Value.Split('\n')[l.Line - 1].Contains("Exception(", StringComparison.Ordinal)).Select(l => $"{s.Key}, line {l.Line}: {l.Text}"))
            .ShouldBeEmpty();
    }

    /// <summary>What settings are for; the names of settings and the signs of units are names.</summary>
    [Fact]
    public void Sentences_OfSettings_StandInWordsAlone() => Literals("CastBook.Planning", ["Shops"])
        .Where(l => l.File == "SettingGuide.cs" && SaidText.IsSaid(l.Text) && !IsName(l.Text)).ShouldBeEmpty();

    /// <summary>In accounts and in what is put into the sentences of findings a word is enough; the sentences themselves are the catalogue.</summary>
    [Fact]
    public void Words_OfPlanning_StandInWordsAlone() =>
        Outside("CastBook.Planning", [.. SourceFiles.Of("CastBook.Planning").Keys.Select(SourceFiles.FolderOf).Distinct()], SaidText.HasWord).ShouldBeEmpty();

    /// <summary>On our own sheets a word is enough: a heading, a label, a name in a drawing.</summary>
    [Fact]
    public void Words_OfOurSheets_StandInWordsAlone() => Outside("CastBook.Workbooks", ["Sheets"], SaidText.HasWord).ShouldBeEmpty();

    [Theory]
    [InlineData("CastBook.Planning", 350)]
    [InlineData("CastBook.Workbooks", 350)]
    [InlineData("CastBook.Templates", 120)]
    public void Messages_OfBooks_AreAllSaid(string project, int atLeast)
    {
        var code = string.Join('\n', SourceFiles.Of(project).Values);
        var messages = SaidText.MessagesOf(TypesOf(project));

        messages.Count.ShouldBeGreaterThan(atLeast);
        messages.Where(m => !SaidText.Says(code, m)).ShouldBeEmpty();
    }

    /// <summary>A table of words would be built at every start, for the one or two that are said.</summary>
    [Theory]
    [InlineData("CastBook.Planning")]
    [InlineData("CastBook.Workbooks")]
    [InlineData("CastBook.Templates")]
    public void Words_OfBooks_HoldNothing(string project) =>
        TypesOf(project).Where(t => t.GetFields(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static).Length > 0).ShouldBeEmpty();

    [Fact]
    public void Exceptions_AreOfFilesThatAreThere() =>
        Others.Keys.ShouldBeSubsetOf(Assemblies.Keys.SelectMany(project => SourceFiles.Of(project).Keys.Select(Path.GetFileName)!));

    [Theory]
    [InlineData("Remarks", true)]
    [InlineData("Flask (", true)]
    [InlineData("ddd d MMM HH:mm", false)]
    [InlineData("#,##0", false)]
    public void HasWord_OneIsEnough_ButNoFormat(string text, bool expected) => SaidText.HasWord(text).ShouldBe(expected);

    private static IEnumerable<string> Outside(string project, string[] folders, Func<string, bool> isText)
    {
        var literals = Literals(project, folders).ToList();
        literals.Select(l => l.File).Distinct().Count().ShouldBeGreaterThan(10);
        return literals.Where(l => !Others.ContainsKey(l.File) && !l.File.StartsWith("Catalogue.", StringComparison.Ordinal) && isText(l.Text) && !IsName(l.Text)).Select(l => $"{l.File}, line {l.Line}: {l.Text}");
    }

    private static IEnumerable<(string File, int Line, string Text)> Literals(string project, string[] folders) =>
        SourceFiles.Of(project).Where(s => folders.Contains(SourceFiles.FolderOf(s.Key)))
            .SelectMany(s => SourceLiterals.Of(s.Value).Select(l => (Path.GetFileName(s.Key), l.Line, l.Text)));

    // A bug is told to whoever mends it.
    private static bool IsName(string text) => Names.Contains(text.Trim()) || text.StartsWith("Bug in CastBook:", StringComparison.Ordinal);

    private static IEnumerable<Type> TypesOf(string project) => Assemblies[project].GetTypes().Where(t => t.Namespace == $"{project}.Words" && !t.IsNested);
}
