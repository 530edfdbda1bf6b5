using System.Text;

namespace CastBook.Casting.Names;

/// <summary>Writes Latin letters in plain capitals without accents. By hand: the runtime's own folding is loaded slowly.</summary>
internal static class Folding
{
    private const string Accented = "ÀÁÂÃÄÅÇÈÉÊËÌÍÎÏÑÒÓÔÕÖØÙÚÛÜÝŸŠŽ";
    private const string Plain = "AAAAAACEEEEIIIINOOOOOOUUUUYYSZ";

    /// <summary>The word in plain capitals; <c>ß</c> is two letters, as in <c>Weissgold</c>.</summary>
    /// <param name="word">A word.</param>
    public static string Of(string word)
    {
        var folded = new StringBuilder(word.Length + 1);
        foreach (var c in word)
        {
            var capital = char.ToUpperInvariant(c);
            if (char.IsAscii(capital))
            {
                folded.Append(capital);
            }
            else if (capital is 'ß' or 'ẞ')
            {
                folded.Append("SS");
            }
            else if (!char.IsBetween(capital, '\u0300', '\u036F'))
            {
                var at = Accented.IndexOf(capital, StringComparison.Ordinal);
                folded.Append(at < 0 ? capital : Plain[at]);
            }
        }

        return folded.ToString();
    }
}
