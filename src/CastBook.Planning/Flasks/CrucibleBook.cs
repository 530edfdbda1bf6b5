using CastBook.Casting.Trees;
using CastBook.Planning.Findings;
using CastBook.Planning.Metals;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>What the shop's crucibles take.</summary>
internal sealed class CrucibleBook
{
    private readonly List<(Crucible Row, Volume Usable)> rows = [];
    private readonly AlloyBook alloys;
    private readonly Volume? fromSetting;

    /// <summary>Reads the shop's crucibles.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="alloys">Knows what metal names mean.</param>
    /// <param name="ask">Whether questions are worth asking: some piece could otherwise be planned.</param>
    /// <param name="findings">Takes what is found.</param>
    public CrucibleBook(Shop shop, AlloyBook alloys, bool ask, FindingList findings)
    {
        this.alloys = alloys;
        var said = ask ? findings : new FindingList(findings.Units);
        var before = said.All.Count;
        foreach (var crucible in shop.Crucibles.Where(c => c.Owned is null or > 0 && c.Unreadable.Count == 0))
        {
            if (Brim(crucible, said) is { } brim)
            {
                rows.Add((crucible, CrucibleCapacity.Usable(brim)));
            }
        }

        // The setting speaks only where there is no sheet.
        fromSetting = shop.Crucibles.Count == 0 && shop.Settings.CrucibleHolds is { } holds ? CrucibleCapacity.Usable(holds) : null;
        Open = rows.Count == 0 && fromSetting is null;
        if (Open && said.All.Count == before && !shop.Crucibles.Any(c => c.Unreadable.Count > 0))
        {
            said.Add(Catalogue.CrucibleUnknown.At([Subject.Setting(SettingName.CrucibleHolds), new(SubjectKind.Crucible, "")]));
        }
    }

    /// <summary>True while no crucible is known; then no piece is put into a flask.</summary>
    public bool Open { get; }

    /// <summary>The most melt that one crucible takes of an alloy; nothing when none may hold it.</summary>
    /// <param name="alloy">The alloy.</param>
    public Volume? Largest(KnownAlloy alloy)
    {
        if (fromSetting is not null)
        {
            return NeedsNoGraphite(alloy) ? null : fromSetting;
        }

        var allowed = rows
            .Where(r => !NeedsNoGraphite(alloy) || IsKnownFreeOfGraphite(r.Row))
            .Where(r => r.Row.Alloys.Count == 0 || r.Row.Alloys.Any(name => alloys.Means(name, alloy)))
            .Select(r => r.Usable)
            .ToList();
        return allowed.Count == 0 ? null : allowed.Max();
    }

    /// <summary>Whether an alloy must not be melted in graphite: platinum and palladium alloys.</summary>
    /// <param name="alloy">The alloy.</param>
    public static bool NeedsNoGraphite(KnownAlloy alloy) =>
        alloy.Alloy.Composition?.IsOfPlatinumMetals ?? alloy.NeedsHighTemperatureInvestment;

    // A make that is not said may be graphite.
    private static bool IsKnownFreeOfGraphite(Crucible crucible) => GraphiteWords.IsKnownFree(crucible.MadeOf ?? "");

    private Volume? Brim(Crucible crucible, FindingList findings)
    {
        if (crucible.Holds is { } holds)
        {
            return holds;
        }

        if (crucible.Rated is not { } rated)
        {
            findings.Add(Catalogue.CrucibleSizeMissing.At(
                new Subject(SubjectKind.Crucible, crucible.Name, ShopField.Holds), crucible.Name));
            return null;
        }

        if (!string.IsNullOrWhiteSpace(crucible.RatedFor) && alloys.DensityOf(crucible.RatedFor) is { } density)
        {
            return CrucibleCapacity.FromRating(rated, density);
        }

        var unclear = string.IsNullOrWhiteSpace(crucible.RatedFor)
            ? FlaskFindingWords.RatingOfNoMetal
            : FlaskFindingWords.RatingOfNoOneMetal(crucible.RatedFor.Trim());
        findings.Add(Catalogue.CrucibleRatingUnclear.At(
            new Subject(SubjectKind.Crucible, crucible.Name, ShopField.RatedFor), crucible.Name, findings.Units.Metal.Say(rated), unclear));
        return null;
    }
}
