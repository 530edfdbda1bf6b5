using CastBook.Casting.Names;

namespace CastBook.Casting.Tests.Names;

/// <summary>How far spellings are apart, and which names are like another.</summary>
public sealed class SpellingTests
{
    /// <summary>The textbook's pairs for the edit distance (kitten and sitting, Saturday and Sunday), and its edges.</summary>
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("saturday", "sunday", 3)]
    [InlineData("flaw", "lawn", 2)]
    [InlineData("", "abc", 3)]
    [InlineData("abc", "", 3)]
    [InlineData("same", "same", 0)]
    public void Steps_OfTextbookPairs(string a, string b, int expected) => Spelling.Steps(a, b).ShouldBe(expected);

    [Theory]
    [InlineData("BRONZ", "BRONZE", true)]
    [InlineData("NOTE", "NIGHT", false)]
    [InlineData("BOWLS", "BUTTON", false)]
    public void AreClose_InTwoLettersOfThree_NeverWhenShort(string a, string b, bool expected) => Spelling.AreClose(a, b).ShouldBe(expected);

    [Theory]
    [InlineData("BEL BRONZ", "BELL BRONZE|TIN BRONZE")]
    [InlineData("ARGENTUM BLEND", "")]
    [InlineData("10K PURPLE", "")]
    [InlineData("10K GREN GOLD", "10K GREEN GOLD|18K WHITE GOLD")]
    [InlineData("BEELBRONZE", "BELL BRONZE")]
    public void Nearest_AreLikeInAWordOfLetters_OrAsAWhole(string wanted, string expected)
    {
        string[] known = ["10K GREEN GOLD", "18K WHITE GOLD", "BELL BRONZE", "TIN BRONZE"];

        string.Join('|', Spelling.Nearest([(wanted.Split(' '), known.Select(k => ((IReadOnlyList<string>)k.Split(' '), k)))])).ShouldBe(expected);
    }
}
