using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Metals;
using CastBook.Planning.Words;

namespace CastBook.Planning.Explaining;

/// <summary>Numbers of an alloy with where each comes from: the shop's row where it has one, else the built-in tables.</summary>
internal static class AlloyInputs
{
    /// <summary>Its density.</summary>
    /// <param name="alloy">An alloy with a density.</param>
    public static AccountInput Density(KnownAlloy alloy)
    {
        var (name, value) = (AccountWords.DensityOf(alloy.Name), Figures.Dense(alloy.Density!.Value));
        return alloy.Row is { Alloy: { Density: null, Composition: not null } }
            ? new(name, value, new Subject(SubjectKind.Alloy, alloy.Name, ShopField.Composition), AccountWords.FromComposition)
            : Of(name, value, alloy, ShopField.Density, alloy.Row?.Alloy.Density is not null, alloy.Alloy.Sources.Density);
    }

    /// <summary>A number of it.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">Its value.</param>
    /// <param name="alloy">The alloy.</param>
    /// <param name="field">The field, a constant of <see cref="ShopField"/>.</param>
    /// <param name="typed">Whether the shop has typed it.</param>
    /// <param name="source">Its source where the shop has not.</param>
    public static AccountInput Of(string name, string value, KnownAlloy alloy, string field, bool typed, NumberSource? source) => typed
        ? AccountInput.By(name, value, new Subject(SubjectKind.Alloy, alloy.Row!.Alloy.Name, field))
        : AccountInput.BuiltIn(name, value, source?.Words ?? AccountWords.SourceNotNoted);
}
