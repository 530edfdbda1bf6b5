using System.Globalization;

namespace CastBook.Casting.Metals;

/// <summary>
/// An alloy's name with everything taken out that shops write differently: capitals, blanks, points and dashes,
/// <c>ct</c>, <c>kt</c>, carat or karat, and the word gold where a carat number says it already.
/// </summary>
internal static class AlloyKey
{
    /// <summary>The key of a name in the order written: <c>18 ct. Yellow Gold</c> gives <c>18KYELLOW</c>.</summary>
    public static string Of(string name) => string.Concat(Words(name));

    /// <summary>The key of a name whatever its order: <c>yellow gold 18k</c> is the same as <c>18k yellow</c>.</summary>
    public static string Unordered(string name)
    {
        var words = Words(name);
        words.Sort(StringComparer.Ordinal);
        return string.Join(' ', words);
    }

    private static List<string> Words(string name)
    {
        var words = Split(name);
        var carat = false;
        for (var i = 1; i < words.Count; i++)
        {
            if (char.IsDigit(words[i - 1][0]) && words[i] is "K" or "KT" or "CT" or "KARAT" or "CARAT")
            {
                words[i] = "K";
                carat = true;
            }
        }

        if (carat)
        {
            words.RemoveAll(word => word == "GOLD");
        }

        return words;
    }

    private static List<string> Split(string name)
    {
        var words = new List<string>();
        var start = 0;
        for (var i = 1; i <= name.Length; i++)
        {
            if (i == name.Length || Class(name[i]) != Class(name[i - 1]))
            {
                if (Class(name[start]) != CharacterClass.Other)
                {
                    words.Add(name[start..i].ToUpper(CultureInfo.InvariantCulture));
                }

                start = i;
            }
        }

        return words;
    }

    private static CharacterClass Class(char c) =>
        char.IsLetter(c) ? CharacterClass.Letter : char.IsDigit(c) ? CharacterClass.Digit : CharacterClass.Other;

    private enum CharacterClass
    {
        Other,
        Letter,
        Digit,
    }
}
