using CastBook.Casting.Metals;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>An alloy of tonight: the shop's row and the built-in data put together.</summary>
/// <param name="Name">The shop's name for it.</param>
/// <param name="Alloy">What is known of it; the shop's values win.</param>
/// <param name="Row">The shop's row, if it has one.</param>
/// <param name="Order">Order of first appearance in the list.</param>
internal sealed record KnownAlloy(string Name, Alloy Alloy, ShopAlloy? Row, int Order)
{
    /// <summary>Density; missing has a finding.</summary>
    public Density? Density => Alloy.Density;

    /// <summary>A density that was given and that it cannot have, and why not; not used.</summary>
    public (Density Density, string Why)? Impossible { get; init; }

    /// <summary>Whether it is a red gold by name: one that turns brittle when it cools slowly.</summary>
    public bool IsRedGold { get; } = IsRed(Name, Alloy) || IsRed(Alloy.Name, Alloy);

    /// <summary>
    /// Whether gypsum-bonded investment cannot hold it. An alloy of the shop's own is known by its parts, and by its name where it has none: nobody
    /// pours platinum into gypsum because the name was not one of ours.
    /// </summary>
    public bool NeedsHighTemperatureInvestment { get; } =
        Alloy.NeedsHighTemperatureInvestment || (Alloy.Composition?.IsOfPlatinumMetals ?? (IsTooHotForGypsum(Name) || IsTooHotForGypsum(Alloy.Name)));

    /// <summary>True when nothing of it may be cast, for a reason that has a finding.</summary>
    public bool Refused { get; init; }

    /// <summary>By name alone: a night has few alloys, and very many rows ask for theirs.</summary>
    public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);

    // Gold and silver with some platinum or palladium are named for both.
    private static bool IsTooHotForGypsum(string name)
    {
        var words = AlloyWords.Of(name);
        return words.Any(w => w is "PLATINUM" or "PALLADIUM" or "STAINLESSSTEEL") && !words.Any(w => w is "GOLD" or "SILVER" or "925" || AlloyWords.IsCarats(w));
    }

    private static bool IsRed(string name, Alloy alloy)
    {
        var words = AlloyWords.Of(name);
        return (words.Contains("RED") || words.Contains("ROSE"))
            && (alloy.Composition is { } parts ? parts.PerMille("Au") > 0 : words.Any(w => w == "GOLD" || AlloyWords.IsCarats(w)));
    }
}

/// <summary>What a written alloy name came to.</summary>
/// <param name="Known">The alloy, when the name means one.</param>
/// <param name="Least">The least density it can have, while the name is not settled.</param>
/// <param name="Most">The greatest density it can have, while the name is not settled.</param>
internal sealed record AlloyAnswer(KnownAlloy? Known, Density? Least, Density? Most)
{
    /// <summary>True when the name has several meanings and the shop has only to choose.</summary>
    public bool IsQuestion { get; init; }

    /// <summary>A name that says nothing.</summary>
    public static AlloyAnswer Nothing { get; } = new(null, null, null);
}
