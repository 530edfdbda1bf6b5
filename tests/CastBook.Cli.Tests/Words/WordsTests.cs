using System.Reflection;
using System.Text.RegularExpressions;
using CastBook.Cli.Words;

namespace CastBook.Cli.Tests.Words;

/// <summary>What the program says stands in one folder, where a translator finds all of it.</summary>
public sealed partial class WordsTests
{
    private static readonly string Cli = Path.Combine(ReadmeTests.Repository, "src", "CastBook.Cli");

    // Files that hold words of others.
    private static readonly Dictionary<string, string> Others = new(StringComparer.Ordinal)
    {
        ["CompletionCommand.cs"] = "scripts of shells",
        ["ShortcutFile.cs"] = "scripts, command files and entries of desktops",
        ["FolderLook.cs"] = "what programs that keep folders in step add to the names of files",
    };

    private static readonly Lazy<Dictionary<string, string>> Sources = new(() => Directory.EnumerateFiles(Cli, "*.cs", SearchOption.AllDirectories)
        .Where(f => Path.GetRelativePath(Cli, f).Split(Path.DirectorySeparatorChar)[0] is not ("bin" or "obj" or "Words"))
        .ToDictionary(f => Path.GetFileName(f), File.ReadAllText, StringComparer.Ordinal));

    // Words of an answer for machines are never translated.
    private static readonly Dictionary<string, string> Machines = new(StringComparer.Ordinal)
    {
        ["AnswerMaker.cs"] = "values of --json",
        ["ClockAnswers.cs"] = "values of --json",
    };

    private static readonly Lazy<Dictionary<string, string>> AnswerSources = new(() => new[] { "Reports", "Explaining" }
        .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(ReadmeTests.Repository, "src", "CastBook.Workbooks", folder), "*.cs"))
        .ToDictionary(f => Path.GetFileName(f), File.ReadAllText, StringComparer.Ordinal));

    private static readonly List<Type> Messages = [.. typeof(FillWords).Assembly.GetTypes().Where(t => t is { Namespace: "CastBook.Cli.Words", IsNested: false })];

    [Fact]
    public void Sentences_OfTheCommandLine_StandInWordsAlone()
    {
        var outside = Sources.Value.Where(s => !Others.ContainsKey(s.Key))
            .SelectMany(s => SourceLiterals.Of(s.Value).Where(l => IsSaid(l.Text)).Select(l => $"{s.Key}, line {l.Line}: {l.Text}"));

        Sources.Value.Count.ShouldBeGreaterThan(30);
        Others.Keys.ShouldBeSubsetOf(Sources.Value.Keys);
        outside.ShouldBeEmpty();
    }

    /// <summary>So do those of answers and explanations, beside the books.</summary>
    [Fact]
    public void Sentences_OfAnswersAndExplanations_StandInWordsAlone()
    {
        var answers = AnswerSources.Value;
        var outside = answers.Where(s => !Machines.ContainsKey(s.Key))
            .SelectMany(s => SourceLiterals.Of(s.Value).Where(l => IsSaid(l.Text)).Select(l => $"{s.Key}, line {l.Line}: {l.Text}"));
        var code = string.Join('\n', answers.Values);
        var messages = typeof(Workbooks.Reports.Summary).Assembly.GetTypes().Where(t => t is { Namespace: "CastBook.Workbooks.Words", IsNested: false })
            .SelectMany(t => t.GetMembers(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
                .Where(m => m is PropertyInfo or MethodInfo { IsSpecialName: false }).Select(m => $"{t.Name}.{m.Name}")).ToList();

        answers.Count.ShouldBeGreaterThan(10);
        Machines.Keys.ShouldBeSubsetOf(answers.Keys);
        outside.ShouldBeEmpty();
        messages.Count.ShouldBeGreaterThan(40);
        messages.Where(m => !Regex.IsMatch(code, $@"\b{Regex.Escape(m)}\b")).ShouldBeEmpty();
    }

    /// <summary>Each is said somewhere: nobody translates what no one reads.</summary>
    [Fact]
    public void Messages_OfWords_AreAllSaid()
    {
        var code = string.Join('\n', Sources.Value.Values);
        var messages = Messages.SelectMany(t => t.GetMembers(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
            .Where(m => m is PropertyInfo or MethodInfo { IsSpecialName: false }).Select(m => $"{t.Name}.{m.Name}")).Distinct().ToList();

        messages.Count.ShouldBeGreaterThan(150);
        messages.Where(m => !Regex.IsMatch(code, $@"\b{Regex.Escape(m)}\b")).ShouldBeEmpty();
    }

    /// <summary>A table of words would be built at every start, for the one or two that are said.</summary>
    [Fact]
    public void Words_HoldNothing_AndAreMadeWhenSaid()
    {
        Messages.Count.ShouldBeGreaterThan(10);
        Messages.Where(t => t.TypeInitializer is not null || t.GetFields(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static).Length > 0).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("Say(\"no cells here\"); // \"one of these\"", "no cells here")]
    [InlineData("Say($\"{(a ? \"is left alone\" : \"b\")}: two {c:yyyy-MM-dd}\")", "is left alone", "b", ": two ")]
    [InlineData("var c = '\"'; var d = '\\''; /* \"as a note\" */ Say(@\"a \"\"b\"\" c\" + \"d \\\" e\", $\"{{f}}\");", "a \"\"b\"\" c", "d \\\" e", "{{f}}")]
    [InlineData("var c = \"\"\"\n    a \"b\" c\n    \"\"\"; Say(\"\");", "\n    a \"b\" c\n    ", "")]
    public void SourceLiterals_AreFound(string source, params string[] expected) => SourceLiterals.Of(source).Select(l => l.Text).ShouldBe(expected);

    [Theory]
    [InlineData("nothing stands there", true)]
    [InlineData("castbook: it's gone.\\nType", true)]
    [InlineData("two words", true)]
    [InlineData("word", false)]
    [InlineData("yyyy-MM-dd HH:mm:ss", false)]
    [InlineData("Sprue diameter (mm)", false)]
    public void IsSaid_TwoWordsOrMore_ButNoHeading(string text, bool expected) => IsSaid(text).ShouldBe(expected);

    [Theory]
    [InlineData(1, 0, "k.csv: 1 reading, 0 h 30")]
    [InlineData(1200, 1, "k.csv: 1,200 readings, 1 row left out, 0 h 30")]
    [InlineData(2, 3, "k.csv: 2 readings, 3 rows left out, 0 h 30")]
    public void KilnLogRead_Counts_AreInTheRightNumber(int readings, int leftOut, string expected) =>
        KilnLogWords.Read("k.csv", readings, "", leftOut, KilnLogWords.Takes(0, 30)).ShouldBe(expected);

    [Fact]
    public void NoSuchLoad_OfOneLoad_SaysThatNothingNeedsToBeChosen() =>
        KilnLogWords.NoSuchLoad(2, 1).ShouldBe("there is no load 2; this night has only load 1. Type --load 1, or leave --load out.");

    [Fact]
    public void Backups_OneOrMore_AreInTheRightNumber()
    {
        RestoreWords.Backups("night.xlsx", 1).ShouldBe("night.xlsx: 1 backup");
        RestoreWords.Backups("night.xlsx", 2).ShouldBe("night.xlsx: 2 backups, the newest first");
    }

    // Two words or more; a heading of a shop file with its unit is a name and not said.
    private static bool IsSaid(string text) =>
        !Heading().IsMatch(text) && text.Replace("\\n", " ", StringComparison.Ordinal).Split(' ').Count(w => Word().IsMatch(w)) > 1;

    [GeneratedRegex(@"^[(\""']*[A-Za-z]+('[a-z]+)?[.,;:!?)\""']*$")]
    private static partial Regex Word();

    [GeneratedRegex(@"^[A-Z][a-z]+( [a-z]+)* \((mm|g|ml|g/cm³)\)$")]
    private static partial Regex Heading();
}
