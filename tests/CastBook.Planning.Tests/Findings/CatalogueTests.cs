using CastBook.Planning.Findings;

namespace CastBook.Planning.Tests.Findings;

public sealed class CatalogueTests
{
    [Fact]
    public void All_Ids_AreUniqueWords()
    {
        Catalogue.All.Select(k => k.Id).ShouldBeUnique();
        Catalogue.All.ShouldAllBe(k => k.Id.All(c => char.IsAsciiLetterLower(c) || c == '-'));
    }

    [Fact]
    public void All_Texts_AreSentencesThatSayWhatToDo()
    {
        foreach (var kind in Catalogue.All)
        {
            // What ends with a placeholder is given its full stop with the value.
            string[] texts = [kind.Seen, kind.Why, kind.Remedy];
            texts.ShouldAllBe(t => t.Length == 0 || t.EndsWith('}') || t.EndsWith('.'), kind.Id);
            kind.Seen.ShouldNotBeEmpty(kind.Id);
            (kind.Severity == Severity.Note || kind.Remedy.Length > 0).ShouldBeTrue(kind.Id);
        }
    }
}
