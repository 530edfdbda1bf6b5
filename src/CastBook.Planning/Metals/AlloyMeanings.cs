using CastBook.Casting.Metals;
using CastBook.Casting.Names;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Metals;

/// <summary>
/// What an alloy's name can mean: a row of the shop's sheet by its name, then the shop's answer, then its other names, then the
/// built-in alloys. A name that several built-in alloys share is settled by the shop's sheet where that has one such alloy.
/// </summary>
internal sealed class AlloyMeanings(Shop shop)
{
    /// <summary>What a name can mean.</summary>
    /// <param name="written">The name as written.</param>
    public AlloyMeaning Of(string written)
    {
        if (RowNamed(written) is { } row)
        {
            return AlloyMeaning.Of(row);
        }

        return Answer(written) is not { } answer ? Find(written)
            : RowNamed(answer) is { } meant ? AlloyMeaning.Of(meant)
            : Find(answer);
    }

    /// <summary>The shop's answer to what a name means, given for any spelling of it.</summary>
    /// <param name="written">The name as written.</param>
    public string? Answer(string written)
    {
        var answers = shop.Settings.AlloyMeanings;
        if (!answers.TryGetValue(written.Trim(), out var answer) && answers.Count > 0)
        {
            var key = AlloyWords.Key(written);
            answer = answers.FirstOrDefault(a => AlloyWords.Key(a.Key) == key).Value;
        }

        return string.IsNullOrWhiteSpace(answer) ? null : answer.Trim();
    }

    /// <summary>The one built-in alloy that a row of the shop is, by its name or by the shop's answer.</summary>
    /// <param name="row">The row.</param>
    public Alloy? BuiltInFor(ShopAlloy row)
    {
        var named = BuiltInAlloys.Named(Answer(row.Alloy.Name) ?? row.Alloy.Name);
        return named.Count == 1 ? named[0] : null;
    }

    /// <summary>The names that are like one that nobody knows, at most three; none where nothing is like it.</summary>
    /// <param name="written">The name as written.</param>
    public IReadOnlyList<string> Nearest(string written)
    {
        var known = shop.Alloys.Select(r => r.Alloy).Concat(BuiltInAlloys.All);
        var names = known.SelectMany(a => Names(a).Select(n => (Name: n, Called: a.Name.Trim()))).ToList();

        // By what the words mean, and as they are written: "sterlin" means nothing yet.
        return Spelling.Nearest(
        [
            (AlloyWords.Of(written), names.Select(n => (AlloyWords.Of(n.Name), n.Called))),
            (TradeWords.Split(written), names.Select(n => ((IReadOnlyList<string>)TradeWords.Split(n.Name), n.Called))),
        ]);
    }

    private ShopAlloy? RowNamed(string written) =>
        shop.Alloys.FirstOrDefault(r => string.Equals(r.Alloy.Name.Trim(), written.Trim(), StringComparison.OrdinalIgnoreCase));

    private AlloyMeaning Find(string name)
    {
        var (key, plain) = (AlloyWords.Key(name), Plain(name));
        if (key.Length == 0)
        {
            return AlloyMeaning.Nothing;
        }

        var same = shop.Alloys.Where(r => Names(r.Alloy).Any(n => AlloyWords.Key(n) == key || Plain(n) == plain)).ToList();
        if (same.Count > 0)
        {
            return same.Count == 1 ? AlloyMeaning.Of(same[0]) : Choice(same);
        }

        var named = BuiltInAlloys.Named(name);
        if (named.Count == 0)
        {
            return AlloyMeaning.Nothing;
        }

        var owned = shop.Alloys.Where(r => IsOneOf(r, named, name)).ToList();
        return owned.Count switch
        {
            0 when named.Count == 1 => new(null, named[0], []),
            0 => new(null, null, named),
            1 => AlloyMeaning.Of(owned[0]) with { IsOnlySuch = named.Count > 1 || BuiltInFor(owned[0]) != named[0] },
            _ => Choice(owned),
        };
    }

    private bool IsOneOf(ShopAlloy row, IReadOnlyList<Alloy> named, string name)
    {
        var builtIn = BuiltInFor(row);
        return (builtIn is not null && (named.Contains(builtIn) || SaysAll(builtIn.Name, name)))
            || Names(row.Alloy).Any(n => SaysAll(n, name));
    }

    private AlloyMeaning Choice(List<ShopAlloy> rows) =>
        new(null, null, [.. rows.Select(r => r.Alloy with { Density = r.Alloy.Density ?? BuiltInFor(r)?.Density })]);

    // A "bell bronze" says all that "bronze" says.
    private static bool SaysAll(string name, string family)
    {
        var words = AlloyWords.Of(name);
        return AlloyWords.Of(family).All(words.Contains);
    }

    private static IEnumerable<string> Names(Alloy alloy) => alloy.OtherNames.Prepend(alloy.Name);

    private static string Plain(string name) => string.Concat(AlloyWords.Of(name));
}

/// <summary>What a name came to: a row of the shop, a built-in alloy, several alloys to choose from, or nothing.</summary>
/// <param name="Row">The shop's row that it means.</param>
/// <param name="BuiltIn">The built-in alloy that it means, where the shop has no row of it.</param>
/// <param name="Choices">The alloys it may mean, where that is open.</param>
internal sealed record AlloyMeaning(ShopAlloy? Row, Alloy? BuiltIn, IReadOnlyList<Alloy> Choices)
{
    /// <summary>A name that nobody knows.</summary>
    public static AlloyMeaning Nothing { get; } = new(null, null, []);

    /// <summary>True when the name fits the row only because the shop's sheet has no other such alloy.</summary>
    public bool IsOnlySuch { get; init; }

    /// <summary>A name that means a row.</summary>
    /// <param name="row">The shop's row.</param>
    public static AlloyMeaning Of(ShopAlloy row) => new(row, null, []);
}
