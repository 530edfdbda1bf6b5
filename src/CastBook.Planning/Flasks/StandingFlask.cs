namespace CastBook.Planning.Flasks;

/// <summary>A flask of the plan that stands in the book, not yet under way.</summary>
/// <param name="Letter">Its letter.</param>
/// <param name="Size">Its size.</param>
/// <param name="Content">How many of each row hang in it, of those that are still wanted.</param>
/// <param name="HasLost">Whether pieces of it were cancelled since.</param>
internal sealed record StandingFlask(string Letter, UsableSize Size, IReadOnlyDictionary<int, int> Content, bool HasLost)
{
    /// <summary>How many pieces hang in it.</summary>
    public int Pieces => Content.Values.Sum();

    /// <summary>A planned flask as it will stand.</summary>
    /// <param name="letter">Its letter.</param>
    /// <param name="flask">The flask.</param>
    public static StandingFlask Of(string letter, FilledFlask flask) =>
        new(letter, flask.Size, flask.Content.ToDictionary(c => c.Piece.Id, c => c.Count), HasLost: false);

    /// <summary>The flasks of each group of rows that stand in the book, by letter; a letter of several groups is that of the one with most in it.</summary>
    /// <param name="groups">The groups.</param>
    /// <param name="night">The night.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="takenLetters">Letters of trees that are built.</param>
    public static IReadOnlyList<IReadOnlyList<StandingFlask>> Of(
        IReadOnlyList<PieceGroup> groups, Night night, SizeBook sizes, IReadOnlySet<string> takenLetters)
    {
        var sizeOf = new Dictionary<string, UsableSize>(StringComparer.Ordinal);
        foreach (var line in night.Trees)
        {
            var letter = FlaskLetters.Clean(line.Flask);
            if (FlaskLetters.IsLetter(letter) && !takenLetters.Contains(letter) && sizes.Named(line.Size) is { } size)
            {
                sizeOf.TryAdd(letter, size);
            }
        }

        var all = groups.Select(g => Of(g, sizeOf)).ToList();
        var owners = new Dictionary<string, (int Pieces, int Group)>(StringComparer.Ordinal);
        for (var i = 0; i < all.Count; i++)
        {
            foreach (var flask in all[i])
            {
                if (!owners.TryGetValue(flask.Letter, out var owner) || flask.Pieces > owner.Pieces)
                {
                    owners[flask.Letter] = (flask.Pieces, i);
                }
            }
        }

        return [.. all.Select((mine, i) => mine.Where(f => owners[f.Letter].Group == i).ToList())];
    }

    private static List<StandingFlask> Of(PieceGroup group, Dictionary<string, UsableSize> sizeOf)
    {
        var flasks = new SortedDictionary<int, (string Letter, Dictionary<int, int> Content, bool HasLost)>();
        foreach (var piece in group.Pieces)
        {
            var left = piece.Quantity;
            foreach (var share in piece.Metal.Piece.LastFlasks)
            {
                var letter = FlaskLetters.Clean(share.Flask);
                if (!sizeOf.ContainsKey(letter) || share.Quantity <= 0 || (group.Wishes.TryGetValue(piece.Id, out var wish) && wish != letter))
                {
                    continue;
                }

                var count = Math.Min(share.Quantity, left);
                left -= count;
                var (_, content, hasLost) = flasks.TryGetValue(FlaskLetters.Place(letter), out var known) ? known : (letter, [], false);
                content[piece.Id] = content.GetValueOrDefault(piece.Id) + count;
                flasks[FlaskLetters.Place(letter)] = (letter, content, hasLost || count < share.Quantity);
            }
        }

        return [.. flasks.Values.Select(f => new StandingFlask(f.Letter, sizeOf[f.Letter], f.Content, f.HasLost))];
    }
}
