using CastBook.Planning.Metals;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>How much metal the tree of a flask size may take in an alloy, by crucible and by cup.</summary>
internal sealed class FlaskRoom(ChargeRules charges, CrucibleBook crucibles)
{
    private readonly Dictionary<(int Size, string Alloy), double> known = [];

    /// <summary>Metal of pieces and gates that fits, in millilitres; none or less means that nothing does.</summary>
    /// <param name="size">The flask size.</param>
    /// <param name="alloy">An alloy with a density.</param>
    public double Ml(UsableSize size, KnownAlloy alloy)
    {
        if (!known.TryGetValue((size.Index, alloy.Name), out var room))
        {
            known[(size.Index, alloy.Name)] = room = Math.Min(ByCrucibleMl(size, alloy), ByCupMl(size));
        }

        return room;
    }

    /// <summary>What the largest crucible for the alloy leaves for pieces and gates, in millilitres.</summary>
    /// <param name="size">The flask size.</param>
    /// <param name="alloy">An alloy with a density.</param>
    public double ByCrucibleMl(UsableSize size, KnownAlloy alloy) => crucibles.Largest(alloy) is { } usable
        ? (charges.MostFor(usable, alloy) - size.Trunk).Milliliters
        : 0;

    /// <summary>What the cup leaves for pieces and gates, in millilitres; anything where the cup is not known.</summary>
    /// <param name="size">The flask size.</param>
    public double ByCupMl(UsableSize size) => size.Size.Cup is { } cup
        ? (charges.MostForCup(cup) - size.Trunk).Milliliters
        : double.MaxValue;

    /// <summary>The charge of a tree with so much metal of pieces and gates.</summary>
    /// <param name="size">The flask size.</param>
    /// <param name="alloy">An alloy with a density.</param>
    /// <param name="piecesMl">Metal of pieces and gates, in millilitres.</param>
    public Mass Charge(UsableSize size, KnownAlloy alloy, double piecesMl) =>
        charges.ChargeOf(size.Trunk + Volume.FromMilliliters(piecesMl), alloy);

    /// <summary>The button of a tree with so much metal of pieces and gates.</summary>
    /// <param name="size">The flask size.</param>
    /// <param name="piecesMl">Metal of pieces and gates, in millilitres.</param>
    public Volume Button(UsableSize size, double piecesMl) =>
        charges.ButtonOf(size.Trunk + Volume.FromMilliliters(piecesMl));
}
