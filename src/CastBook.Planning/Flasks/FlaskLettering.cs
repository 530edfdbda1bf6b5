namespace CastBook.Planning.Flasks;

/// <summary>Gives each flask its letter: the one the shop wants, the one it stood under, or a new one.</summary>
internal static class FlaskLettering
{
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

    // Those with most in common find each other first.
    private static void Match(IReadOnlyList<FilledFlask> flasks, List<StandingFlask> standing, string?[] letters)
    {
        var pairs = new List<(int Likeness, int Flask, int Standing)>();
        for (var i = 0; i < flasks.Count; i++)
        {
            for (var j = 0; j < standing.Count && letters[i] is null; j++)
            {
                if (Common(flasks[i], standing[j]) > 0)
                {
                    pairs.Add((Likeness(flasks[i], standing[j]), i, j));
                }
            }
        }

        var used = new bool[standing.Count];
        foreach (var (_, flask, stood) in pairs.OrderByDescending(p => p.Likeness).ThenBy(p => p.Flask).ThenBy(p => p.Standing))
        {
            if (letters[flask] is null && !used[stood])
            {
                letters[flask] = standing[stood].Letter;
                used[stood] = true;
            }
        }
    }

    private static int Likeness(FilledFlask flask, StandingFlask standing)
    {
        var common = Common(flask, standing);
        var isWhole = common == standing.Pieces && common == flask.Content.Sum(c => c.Count);
        return (common * 4) + (isWhole ? 2 : 0) + (flask.Size == standing.Size ? 1 : 0);
    }

    private static int Common(FilledFlask flask, StandingFlask standing) =>
        flask.Content.Sum(c => Math.Min(c.Count, standing.Content.GetValueOrDefault(c.Piece.Id)));
}
