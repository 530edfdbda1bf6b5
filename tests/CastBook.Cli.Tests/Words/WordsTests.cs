using System.Reflection;
using CastBook.Cli.Words;

namespace CastBook.Cli.Tests.Words;

/// <summary>What the program says stands in one folder, where a translator finds all of it.</summary>
public sealed class WordsTests
{
    // Files that hold words of others.
    private static readonly Dictionary<string, string> Others = new(StringComparer.Ordinal)
    {
        ["CompletionCommand.cs"] = "scripts of shells",
        ["ShortcutFile.cs"] = "scripts, command files and entries of desktops",
        ["FolderLook.cs"] = "what programs that keep folders in step add to the names of files",
    };

    private static readonly Lazy<IReadOnlyDictionary<string, string>> Sources = new(() => SourceFiles.Of("CastBook.Cli"));

    private static readonly List<Type> Messages = [.. typeof(FillWords).Assembly.GetTypes().Where(t => t is { Namespace: "CastBook.Cli.Words", IsNested: false })];

    [Fact]
    public void Sentences_OfTheCommandLine_StandInWordsAlone()
    {
        var outside = Sources.Value.Where(s => !Others.ContainsKey(Path.GetFileName(s.Key)))
            .SelectMany(s => SourceLiterals.Of(s.Value).Where(l => SaidText.IsSaid(l.Text)).Select(l => $"{s.Key}, line {l.Line}: {l.Text}"));

        Sources.Value.Count.ShouldBeGreaterThan(30);
        Others.Keys.ShouldBeSubsetOf(Sources.Value.Keys.Select(Path.GetFileName)!);
        outside.ShouldBeEmpty();
    }

    /// <summary>Each is said somewhere: nobody translates what no one reads.</summary>
    [Fact]
    public void Messages_OfWords_AreAllSaid()
    {
        var code = string.Join('\n', Sources.Value.Values);
        var messages = SaidText.MessagesOf(Messages);

        messages.Count.ShouldBeGreaterThan(150);
        messages.Where(m => !SaidText.Says(code, m)).ShouldBeEmpty();
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
    [InlineData("pane xSplit ySplit topLeftCell state", false)]
    [InlineData("SUM AVERAGE", false)]
    [InlineData("CastBook fills it", true)]
    public void IsSaid_TwoWordsOrMore_ButNoHeadingOrMarkup(string text, bool expected) => SaidText.IsSaid(text).ShouldBe(expected);

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
}
