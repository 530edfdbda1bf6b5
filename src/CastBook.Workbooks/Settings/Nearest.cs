using CastBook.Casting.Names;

namespace CastBook.Workbooks.Settings;

/// <summary>The known name that a misspelt one most likely means.</summary>
internal static class Nearest
{
    /// <summary>The nearest of some names, by the least number of letters to change, put in or leave out.</summary>
    public static string To(string typed, IEnumerable<string> known) =>
        known.MinBy(k => Spelling.Steps(ShopWords.Key(typed), ShopWords.Key(k))) ?? "";

    /// <summary>A name that differs in a letter of three at most; null where none is that near, or the words are short.</summary>
    public static string? Close(string typed, IEnumerable<string> known) => known.FirstOrDefault(k => Spelling.AreClose(ShopWords.Key(typed), ShopWords.Key(k)));
}
