using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Investing;

/// <summary>How long moulds set before they may go on: the powder's own time, or the usual one.</summary>
internal static class SetTime
{
    // Published accounts run from 1 to 2 hours; 2 errs towards a mould that holds.
    private static readonly Duration Usual = Duration.FromHours(2);

    // Nobody publishes less.
    private static readonly Duration Least = Duration.FromHours(1);

    /// <summary>The least set, counted from the last pour of the load; missing where the shop says one that nobody can read.</summary>
    /// <param name="powder">The powder in use.</param>
    /// <param name="assumed">Takes the note where the usual time stands in.</param>
    /// <param name="findings">Takes what is found.</param>
    public static Duration? Of(PowderChoice powder, Assumptions assumed, FindingList findings)
    {
        if (IsUnread(powder))
        {
            return null;
        }

        var subject = new Subject(SubjectKind.Investment, powder.Row?.Name ?? "", ShopField.SetAtLeast);
        if (powder.Row?.SetAtLeast is not { } own)
        {
            assumed.Once("investment-set", () => Catalogue.AssumedPowder.At(
                subject, powder.Row?.Name ?? PowderFindingWords.UnnamedTitle, PowderFindingWords.TwoHoursOfSet, "Set at least"));
            return Usual;
        }

        if (own < Least)
        {
            findings.Add(Catalogue.SetTooShort.At(subject, powder.Row.Name, Say.Minutes(own)));
        }

        return own;
    }

    /// <summary>Whether the shop says a time that nobody can read, so that no hour after the mixes is known. Who read it has said so.</summary>
    /// <param name="powder">The powder in use.</param>
    public static bool IsUnread(PowderChoice powder) => powder.Row?.CannotRead(ShopField.SetAtLeast) == true;
}
