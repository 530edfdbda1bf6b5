using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Tests.Reading.Headings;

public sealed class LanguageWordsTests
{
    private static readonly string[] Languages = ["English", "German", "French", "Spanish", "Italian", "Portuguese"];

    private static readonly string[] SmallWordLines = ["each", "link", "inUnit", "count", "other", "otherDay", "otherLength", "counted", "remarks", "remark resin", "remark wax", "remark stones", "remark 2", "remark 3", "remark without", "remark done", "remark hold", "namesMaterial"];

    [Fact]
    public void All_Languages_AreLoaded() => LanguageWords.All.Select(l => l.Language).ShouldBe(Languages);

    [Fact]
    public void All_EveryLanguage_HasWordsForEveryField()
    {
        var missing =
            from language in LanguageWords.All
            from field in HeadingWords.Piece.Select(f => f.Field).Concat(SmallWordLines)
            where !language.Lines.Any(l => l.About == field && l.Words.Count > 0)
            select $"{language.Language}: {field}";

        missing.ShouldBeEmpty();
    }

    [Fact]
    public void All_EveryLine_IsAboutSomethingKnown()
    {
        var known = HeadingWords.Piece.Select(f => f.Field).Concat(SmallWordLines).ToHashSet();
        var unknown =
            from language in LanguageWords.All
            from line in language.Lines
            where !known.Contains(line.About) && !(line.About.StartsWith("unit ", StringComparison.Ordinal) && CellUnit.TryParse(line.About.AsSpan(5), out _))
            select $"{language.Language}: {line.About}";

        unknown.ShouldBeEmpty();
    }

    // Heights and diameters are two sizes on purpose: which one is left decides.
    [Fact]
    public void All_WordsOfOneLanguage_MeanOneFieldAtOneRank()
    {
        var claims =
            from language in LanguageWords.All
            from line in language.Lines
            where HeadingWords.Piece.Any(f => f.Field == line.About)
            where !(line.About is PieceField.Length or PieceField.Width or PieceField.Thickness && line.Rank >= 3)
            from word in line.Words
            group (line.About, word) by (language.Language, Key: WordKey.Of(word), line.Rank, Unit: line.NeedsUnit ? HeadingWords.DimensionOf(line.About).ToString() : "");

        claims.Where(c => c.DistinctBy(w => w.About).Count() > 1).Select(c => $"{c.Key.Language} {c.Key.Rank}: {string.Join(", ", c)}").ShouldBeEmpty();
    }

    [Theory]
    [InlineData("piece", "\"piece\" has no colon.")]
    [InlineData("piece sure: pin", "\"piece sure\" says \"sure\" of its words, which means nothing.")]
    public void Parse_LineThatCannotBeRead_SaysWhich(string line, string said)
    {
        using var text = new StringReader(line);

        Should.Throw<FormatException>(() => LanguageWords.Parse("Test", text)).Message.ShouldBe(said);
    }

    [Theory]
    [InlineData("Qté", "qte")]
    [InlineData("N° pièces", "no pieces")]
    [InlineData("N.º de piezas", "n piezas")]
    [InlineData("stückZahl", "stuck zahl")]
    [InlineData("Diamètre d'attaque", "attaque diametre")]
    [InlineData("Ø Anguss", "anguss ø")]
    public void Of_TextAsWritten_GivesOneKey(string text, string key) => WordKey.Of(text).ShouldBe(key);
}
