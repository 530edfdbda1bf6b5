using CastBook.Casting.Names;
using CastBook.Casting.Patterns;

namespace CastBook.Planning.Patterns;

/// <summary>
/// What the words of a pattern material's name mean, in English, German, French, Spanish, Italian and Portuguese. To teach
/// another one, add it to the line that means the same.
/// </summary>
internal static class MaterialWords
{
    private static readonly TradeWords Table = new(
        """
        = de, di, da, do, d, del, della, para, per, pour, for, à, a, al, the, of
        wax = waxes, wachs, cire, cires, cera, ceras, cere
        resin = resins, harz, kunstharz, résine, résines, resina, resinas, resine
        castable = giess, calcinable, calcinavel, calcinabile, fundible, fundível, colable, calcinables
        castable resin = gießharz, castresin
        wax resin = wachsharz
        injection = injected, inject, injecter, inyección, inyectada, iniezione, injeção, injetada
        injection wax = spritzwachs, injektionswachs
        carving = carved, carve, hand carved, sculpter, sculptée, sculpture, tallar, tallada, intaglio, scolpire, esculpir, escultura
        carving wax = schnitzwachs, modellierwachs, feilwachs, wachs geschnitzt
        printed = print, printing, 3d print, 3d printed, gedruckt, druck, imprimée, imprimé, impresa, impreso, stampata, impressa
        """);

    /// <summary>The words of a name, in the order written, each once.</summary>
    /// <param name="name">A name as written.</param>
    public static IReadOnlyList<string> Of(string name) => Table.Of(name);

    /// <summary>The same text for names that mean the same, whatever the order of their words.</summary>
    /// <param name="name">A name as written.</param>
    public static string Key(string name)
    {
        var words = Of(name).ToArray();
        Array.Sort(words, StringComparer.Ordinal);
        return string.Join(' ', words);
    }

    /// <summary>Wax or resin, where the name says so.</summary>
    /// <param name="name">A name as written.</param>
    public static PatternKind? KindIn(string name)
    {
        var words = Of(name);

        // "Wax resin" is a resin that is filled with wax: it decomposes, it does not melt out. "Castable wax" may be such a resin by another name.
        return words.Contains("RESIN") ? PatternKind.Resin : words.Contains("WAX") && !words.Contains("CASTABLE") ? PatternKind.Wax : null;
    }
}
