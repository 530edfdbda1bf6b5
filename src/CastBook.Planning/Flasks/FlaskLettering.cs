using CastBook.Planning.Packing.Staying;

namespace CastBook.Planning.Flasks;

/// <summary>Gives each flask its letter: the one the shop wants, the one it stood under, or a new one.</summary>
internal static class FlaskLettering
{
    // More than all flasks of a night can differ by in size.
    private const long OnePiece = 100_000;

    /// <summary>Letters the flasks.</summary>
    /// <param name="flasks">The flasks, in the order in which new letters are given.</param>
    /// <param name="standing">The flasks that stand in the book.</param>
    /// <param name="takenLetters">Letters that are not free.</param>
    public static IReadOnlyList<(string Letter, FilledFlask Flask)> Of(
        IReadOnlyList<FilledFlask> flasks, IReadOnlyList<StandingFlask> standing, IReadOnlySet<string> takenLetters)
    {
        var letters = flasks.Select(f => f.Letter).ToArray();
        var taken = takenLetters.Concat(letters.OfType<string>()).ToHashSet(StringComparer.Ordinal);
        Match(flasks, [.. standing.Where(s => !taken.Contains(s.Letter))], letters);

        // A letter that has just become free may still stand on a card of the night before.
        taken.UnionWith(standing.Select(s => s.Letter));
        using var next = FlaskLetters.Free(taken).GetEnumerator();
        var lettered = new List<(string, FilledFlask)>(flasks.Count);
        for (var i = 0; i < letters.Length; i++)
        {
            lettered.Add((letters[i] ?? Next(), flasks[i]));
        }

        return lettered;

        string Next()
        {
            next.MoveNext();
            return next.Current;
        }
    }

    /// <summary>How many pieces are in another flask than they stood in.</summary>
    /// <param name="lettered">The flasks.</param>
    /// <param name="standing">The flasks that stand in the book.</param>
    public static int Moved(IReadOnlyList<(string Letter, FilledFlask Flask)> lettered, IReadOnlyList<StandingFlask> standing)
    {
        var moved = 0;
        foreach (var old in standing)
        {
            var now = lettered.FirstOrDefault(f => f.Letter == old.Letter).Flask;
            moved += old.Pieces - (now is null ? 0 : Common(now, old));
        }

        return moved;
    }

    // So that fewest pieces are under another letter; of as few, so that most flasks are what they were.
    private static void Match(IReadOnlyList<FilledFlask> flasks, List<StandingFlask> standing, string?[] letters)
    {
        int[] open = [.. Enumerable.Range(0, flasks.Count).Where(i => letters[i] is null)];
        var pairs = BestPairs.Of(open.Length, standing.Count, (i, j) => Likeness(flasks[open[i]], standing[j]));
        for (var i = 0; i < open.Length; i++)
        {
            letters[open[i]] = pairs[i] < 0 ? null : standing[pairs[i]].Letter;
        }
    }

    private static long Likeness(FilledFlask flask, StandingFlask standing)
    {
        var common = Common(flask, standing);
        var isWhole = common == standing.Pieces && common == flask.Content.Sum(c => c.Count);
        return common == 0 ? 0 : (common * OnePiece) + (isWhole ? 2 : 0) + (flask.Size == standing.Size ? 1 : 0);
    }

    private static int Common(FilledFlask flask, StandingFlask standing) =>
        flask.Content.Sum(c => Math.Min(c.Count, standing.Content.GetValueOrDefault(c.Piece.Id)));
}
