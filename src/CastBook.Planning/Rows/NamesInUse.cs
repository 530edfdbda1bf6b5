using CastBook.Casting.Metals;
using CastBook.Planning.Metals;
using CastBook.Planning.Patterns;
using CastBook.Planning.Shops;

namespace CastBook.Planning.Rows;

/// <summary>The alloys and materials that a list names and the shop has no line of: each once, however it is written.</summary>
public static class NamesInUse
{
    /// <summary>The alloys, as first written.</summary>
    /// <param name="pieces">The rows of the list.</param>
    /// <param name="shop">The shop.</param>
    public static IReadOnlyList<string> Alloys(IEnumerable<Piece> pieces, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return Without(pieces.Select(p => p.Alloy), shop.Alloys.SelectMany(a => a.Alloy.OtherNames.Prepend(a.Alloy.Name)), AlloyWords.Key);
    }

    /// <summary>The names that several alloys share, and which these are, whatever the shop has answered; its own alloys settle a name that was not.</summary>
    /// <param name="names">Names of alloys as written.</param>
    /// <param name="shop">The shop.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static IReadOnlyList<SharedName> Shared(IEnumerable<string?> names, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(shop);
        var unanswered = shop with { Settings = shop.Settings with { AlloyMeanings = new Dictionary<string, string>() } };
        var (answers, open, asBefore) = (new AlloyMeanings(shop), new AlloyMeanings(unanswered), new AlloyMeanings(unanswered with { Alloys = [] }));
        var shared = new List<SharedName>();
        foreach (var name in Without(names, [], AlloyWords.Key))
        {
            // The line of the alloy that was answered is no reason not to ask again.
            var meaning = (answers.Answer(name) is null ? open : asBefore).Of(name);
            var choices = meaning.Row is { Alloy: { Density: null, Composition: null } bare } ? BuiltInAlloys.Named(bare.Name) : meaning.Choices;
            if (choices.Count > 1)
            {
                shared.Add(new SharedName(name, [.. choices.Select(c => c.Name.Trim())]));
            }
        }

        return shared;
    }

    /// <summary>The pattern materials, as first written.</summary>
    /// <param name="pieces">The rows of the list.</param>
    /// <param name="shop">The shop.</param>
    public static IReadOnlyList<string> Materials(IEnumerable<Piece> pieces, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        List<string> known = [.. shop.Materials.Select(m => m.Name)];
        return [.. Without(pieces.Select(p => p.Material), known, MaterialWords.Key).Where(m => !IsTakenAs(m, known))];
    }

    /// <summary>Whether a material is taken as one that the shop has: the only one that says all it says, as "castable resin" does of "resin". A line of its own would part the two.</summary>
    /// <param name="material">The material as the list says it.</param>
    /// <param name="known">The materials of the shop.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static bool IsTakenAs(string material, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(material);
        ArgumentNullException.ThrowIfNull(known);
        var words = MaterialWords.Of(material);
        return words.Count > 0 && known.Count(k => words.All(MaterialWords.Of(k).Contains)) == 1;
    }

    // Two lines of one meaning would make each of its names a question.
    private static List<string> Without(IEnumerable<string?> written, IEnumerable<string> known, Func<string, string> key)
    {
        string Meant(string name) => key(name) is { Length: > 0 } words ? words : name.Trim().ToUpperInvariant();
        var seen = known.Select(Meant).ToHashSet(StringComparer.Ordinal);
        var names = new List<string>();
        foreach (var name in written.OfType<string>().Where(n => !string.IsNullOrWhiteSpace(n)))
        {
            if (seen.Add(Meant(name)))
            {
                names.Add(name.Trim());
            }
        }

        return names;
    }
}

/// <summary>A name that several alloys share.</summary>
/// <param name="Name">The name as first written.</param>
/// <param name="Alloys">The alloys by their own names.</param>
public sealed record SharedName(string Name, IReadOnlyList<string> Alloys);
