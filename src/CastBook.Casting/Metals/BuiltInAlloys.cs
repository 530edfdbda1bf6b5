namespace CastBook.Casting.Metals;

/// <summary>
/// The alloys that are known without the shop's own sheet. What is not known of them from a source is missing,
/// and is to be asked for.
/// </summary>
/// <remarks>
/// <para><b>Valid for</b> the composition given. A fineness mark, a colour or a carat number alone names
/// several alloys.</para>
/// <para><b>Source.</b> Beside each number in the tables of this folder.</para>
/// </remarks>
public static class BuiltInAlloys
{
    /// <summary>All of them: silver, gold, copper alloys, platinum and palladium, then those known by name only.</summary>
    public static IReadOnlyList<Alloy> All { get; } =
        [
        .. SilverAlloys.All, .. GoldAlloys.All, .. RedGoldAlloys.All, .. WhiteGoldAlloys.All,
        .. CopperAlloys.All, .. PlatinumAlloys.All, .. NamedAlloys.All,
    ];

    // After All: static fields are set in the order written.
    private static readonly Dictionary<string, List<Alloy>> ByKey = Index();

    /// <summary>The alloys that a name may mean, in any of the trade's languages and in any order of its words.</summary>
    /// <param name="name">A name, a mark or a standard's designation.</param>
    /// <returns>One alloy; several when the name is ambiguous; none when it is unknown.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is missing.</exception>
    public static IReadOnlyList<Alloy> Named(string name)
    {
        ArgumentNullException.ThrowIfNull(name);

        return ByKey.TryGetValue(AlloyWords.Key(name), out var alloys) ? alloys : [];
    }

    // Of alloys that share a name those come first that are known well enough to be poured: they are the usual ones.
    private static Dictionary<string, List<Alloy>> Index()
    {
        var index = Names();
        foreach (var alloys in index.Values)
        {
            if (alloys.Count > 1)
            {
                var usual = alloys.FindAll(a => a.MetalTemperature is not null);
                alloys.RemoveAll(a => a.MetalTemperature is not null);
                alloys.InsertRange(0, usual);
            }
        }

        return index;
    }

    private static Dictionary<string, List<Alloy>> Names()
    {
        var index = new Dictionary<string, List<Alloy>>(StringComparer.Ordinal);
        // Most names stand at several alloys, and a key takes long to find while the program is still cold.
        var keys = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var alloy in All)
        {
            foreach (var name in alloy.OtherNames.Prepend(alloy.Name))
            {
                if (!keys.TryGetValue(name, out var key))
                {
                    keys[name] = key = AlloyWords.Key(name);
                }

                if (!index.TryGetValue(key, out var alloys))
                {
                    index[key] = alloys = [];
                }

                if (!alloys.Contains(alloy))
                {
                    alloys.Add(alloy);
                }
            }
        }

        return index;
    }
}
