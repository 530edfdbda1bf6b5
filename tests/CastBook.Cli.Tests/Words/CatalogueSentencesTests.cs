using System.Text.RegularExpressions;
using CastBook.Planning.Findings;

namespace CastBook.Cli.Tests.Words;

/// <summary>
/// The values of a finding stand in its sentences by their order, and two that were exchanged would compile: "took 4 h instead of 2 h" would
/// send a shop the wrong way. So each sentence with two values or more stands whole in some test, where a person wrote what it must say.
/// </summary>
public sealed partial class CatalogueSentencesTests
{
    private static readonly Lazy<string> Texts = new(() =>
        string.Join('\n', SourceFiles.OfTests().SelectMany(SourceLiterals.WholeTexts).Select(t => Unbraced(t).ReplaceLineEndings(" "))));

    [Fact]
    public void Sentences_OfTwoValuesOrMore_StandWholeInSomeTest()
    {
        var sentences = Catalogue.All.SelectMany(k => new[] { k.Seen, k.Why, k.Remedy }.Where(s => Values(s) > 1).Select(s => (k.Id, Sentence: s))).ToList();

        sentences.Count.ShouldBeGreaterThan(200);
        sentences.Where(s => !Says(Texts.Value, s.Sentence)).Select(s => $"{s.Id}: {s.Sentence}").ShouldBeEmpty();
    }

    [Theory]
    [InlineData("Load 2 takes 3 h.", true)]
    [InlineData("Seen: Load  takes  h. Why", true)]
    [InlineData("Load 2 takes 3 h", false)]
    [InlineData("Load 2 needs 3 h.", false)]
    [InlineData("Load 2 takes\n3 h.", false)]
    public void Says_NothingLessThanTheWholeSentence(string texts, bool expected) => Says(texts, "Load {0} takes {1} h.").ShouldBe(expected);

    [Theory]
    [InlineData("Text(\"Load 2 takes \" // so long\n    + $\"{hours} h.\", \"other\")", "Load 2 takes  h.", "other")]
    [InlineData("Text($\"a {(b ? \"c\" : \"d\")} e\" + $\"{f}g\")", "a  eg")]
    [InlineData("Text(\"say \\\"a\\\"\", @\"b \"\"c\"\"\")", "say \"a\"", "b \"c\"")]
    public void WholeTexts_JoinWhatAPlusJoins(string source, params string[] expected) => SourceLiterals.WholeTexts(source).ShouldBe(expected);

    private static int Values(string sentence) => Value().Matches(sentence).Select(m => m.Value).Distinct().Count();

    private static bool Says(string texts, string sentence)
    {
        var between = Value().Split(sentence).Select(s => Regex.Escape(Unbraced(s)));
        return Regex.IsMatch(texts, string.Join(".*?", between.SkipWhile(s => s.Length == 0)));
    }

    // Braces of formats and of interpolated texts stand double.
    private static string Unbraced(string text) => text.Replace("{{", "{", StringComparison.Ordinal).Replace("}}", "}", StringComparison.Ordinal);

    [GeneratedRegex(@"(?<!\{)\{\d\}")]
    private static partial Regex Value();
}
