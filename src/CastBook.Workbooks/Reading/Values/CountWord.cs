namespace CastBook.Workbooks.Reading.Values;

/// <summary>Words behind a quantity: pieces, pairs and dozens, in English, German, French, Spanish, Italian and Portuguese.</summary>
internal static class CountWord
{
    private const int Pair = 2;
    private const int Dozen = 12;

    private static readonly Dictionary<string, int> Times = Table();

    /// <summary>How many pieces one of what the word names is; false where the word is none.</summary>
    /// <param name="word">The word, such as <c>pcs</c> or <c>pr</c>.</param>
    /// <param name="times">1 for pieces, 2 for pairs, 12 for dozens.</param>
    public static bool TryParse(ReadOnlySpan<char> word, out int times) =>
        Times.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(word.Trim(". "), out times);

    /// <summary>What counting so takes for granted.</summary>
    public static NumberAssumptions Assumed(int times) => times switch
    {
        Pair => NumberAssumptions.Pairs,
        Dozen => NumberAssumptions.Dozens,
        _ => NumberAssumptions.None,
    };

    private static Dictionary<string, int> Table()
    {
        var table = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        void Add(int times, string words)
        {
            foreach (var word in words.Split(' '))
            {
                table[word] = times;
            }
        }

        Add(1, "x × pc pcs piece pieces ea each off no nos unit units st stk stck stück stücke pce pces pièce pièces pz pzs pza pzas pieza piezas ud uds pezzo pezzi pç pçs pcas peça peças un");
        Add(Pair, "pr prs pair pairs paar paire paires par pares paio paia coppia coppie");
        Add(Dozen, "dz doz dozen dozens dtz dtzd dutzend douzaine douzaines docena docenas dozzina dozzine dúzia dúzias");
        return table;
    }
}
