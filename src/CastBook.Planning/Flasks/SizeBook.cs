using CastBook.Casting.Investing;
using CastBook.Casting.Pouring;
using CastBook.Casting.Trees;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>Which flask sizes can be planned with.</summary>
/// <param name="Sizes">The sizes with all that a tree needs, in the shop's order; some may be owned none times.</param>
/// <param name="Open">True while a question about flasks or the way of casting keeps every piece out.</param>
internal sealed record SizeBook(IReadOnlyList<UsableSize> Sizes, bool Open)
{
    /// <summary>The usable size of a name, or nothing.</summary>
    /// <param name="name">The name as written.</param>
    public UsableSize? Named(string? name) => name is null
        ? null
        : Sizes.FirstOrDefault(s => string.Equals(s.Size.Name.Trim(), name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>Reads the shop's sizes.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="ask">Whether questions are worth asking: some piece could otherwise be planned.</param>
    /// <param name="findings">Takes what is found.</param>
    public static SizeBook Of(Shop shop, bool ask, FindingList findings)
    {
        var said = ask ? findings : new FindingList(findings.Units);
        var noneOwned = !shop.FlaskSizes.Any(s => s.Owned >= 1);
        if (noneOwned && !shop.FlaskSizes.Any(s => s.CannotRead(ShopField.Owned)))
        {
            said.Add(Catalogue.FlasksNotKnown.At(new Subject(SubjectKind.FlaskSize, "")));
        }

        var noMethod = shop.FlaskSizes.Count == 0
            ? shop.Settings.CastingMethod is null
            : shop.FlaskSizes.Any(s => s.Method is null && !s.CannotRead(ShopField.Method) && shop.Settings.CastingMethod is null);
        if (noMethod)
        {
            said.Add(Catalogue.CastingMethodUnknown.At(Subject.Setting(SettingName.CastingMethod)));
        }

        var sizes = new List<UsableSize>();
        foreach (var size in shop.FlaskSizes)
        {
            if (IsComplete(size, noneOwned, said)
                && (size.Method ?? shop.Settings.CastingMethod) is { } method
                && Measure(size, method, sizes.Count, size.Owned >= 1 ? said : new FindingList(findings.Units)) is { } usable)
            {
                sizes.Add(usable);
            }
        }

        if (sizes.Find(s => s.Method == CastingMethod.Gravity && s.Size.Owned >= 1)?.Size is { } poured)
        {
            said.Add(Catalogue.PouredByGravity.At(poured.Method is null ? Subject.Setting(SettingName.CastingMethod) : About(poured, ShopField.Method)));
        }

        return new(sizes, noneOwned || noMethod);
    }

    private static bool IsComplete(FlaskSize size, bool noneOwned, FindingList findings)
    {
        // No tree is planned by measures of which one is a guess. What cannot be read has its finding.
        if (size.Unreadable.Count > 0)
        {
            return false;
        }

        // Where no size is owned at all, one question says so; a size owned none times needs no measures.
        if (size.Owned is null && !noneOwned)
        {
            findings.Add(Missing(size, ShopField.Owned, FlaskFindingWords.NumberOwned));
        }

        var missing = new List<(string Field, string Words)>();
        Want(size.InsideDiameter is not null, ShopField.InsideDiameter, FlaskFindingWords.InsideDiameter);
        Want(size.Height is not null, ShopField.Height, FlaskFindingWords.Height);
        Want(size.SprueDiameter is not null, ShopField.SprueDiameter, FlaskFindingWords.SprueDiameter);
        Want(size.BaseHeight is not null, ShopField.BaseHeight, FlaskFindingWords.BaseHeight);
        if (size.Owned >= 1)
        {
            missing.ForEach(m => findings.Add(Missing(size, m.Field, m.Words)));
        }

        return missing.Count == 0;

        void Want(bool there, string field, string words)
        {
            if (!there)
            {
                missing.Add((field, words));
            }
        }
    }

    private static UsableSize? Measure(FlaskSize size, CastingMethod method, int index, FindingList findings)
    {
        if (Above(size, method, findings) is not { } above)
        {
            return null;
        }

        var diameter = size.InsideDiameter!.Value;
        var sprue = size.SprueDiameter!.Value;
        var wall = size.ToWall ?? WallClearance.Usual;
        if (wall < WallClearance.Least)
        {
            findings.Add(Catalogue.ToWallTooSmall.At(
                About(size, ShopField.ToWall), size.Name, findings.Units.Length.Say(wall), findings.Units.Length.Say(WallClearance.Least)));
        }

        var rod = size.Height!.Value - above - size.BaseHeight!.Value;
        var round = (diameter / 2) - wall - (sprue / 2);
        if (rod <= Length.Zero || round <= Length.Zero)
        {
            var lacking = rod <= Length.Zero
                ? FlaskFindingWords.NoHeight(findings.Units.Length.Say(size.Height.Value), findings.Units.Length.Say(size.BaseHeight.Value), findings.Units.Length.Say(above))
                : FlaskFindingWords.NoWidth(findings.Units.Length.Say(diameter), findings.Units.Length.Say(wall), findings.Units.Length.Say(sprue));
            findings.Add(Catalogue.FlaskSizeTooSmall.At(
                About(size, rod <= Length.Zero ? ShopField.Height : ShopField.InsideDiameter), size.Name, lacking));
            return null;
        }

        var inside = size.Holds ?? FlaskVolume.Compute(diameter, size.Height.Value);
        return new UsableSize(size, index, inside, TrunkVolume.Compute(sprue, rod))
        {
            Method = method,
            TrunkRadiusMm = sprue.Millimeters / 2,
            ReachMm = (diameter / 2).Millimeters - wall.Millimeters,
            RodMm = rod.Millimeters,
            WallMm = wall.Millimeters,
        };
    }

    private static Length? Above(FlaskSize size, CastingMethod method, FindingList findings)
    {
        var rule = TopClearance.Compute(method, size.InsideDiameter!.Value);
        if (size.AboveTree is not { } own)
        {
            return rule;
        }

        if (own < TopClearance.Least)
        {
            findings.Add(Catalogue.AboveTreeTooSmall.At(About(size, ShopField.AboveTree), size.Name, findings.Units.Length.Say(own)));
            return null;
        }

        // By gravity the rule is a bound that nobody needs to keep.
        if (own < rule && method != CastingMethod.Gravity)
        {
            findings.Add(Catalogue.AboveTreeUnderRule.At(
                About(size, ShopField.AboveTree), size.Name, findings.Units.Length.Say(own), findings.Units.Length.Say(rule)));
        }

        return own;
    }

    private static Finding Missing(FlaskSize size, string field, string words) =>
        Catalogue.FlaskSizeIncomplete.At(About(size, field), size.Name, words, FlaskFindingWords.HeadingOf(words));

    private static Subject About(FlaskSize size, string field) => new(SubjectKind.FlaskSize, size.Name, field);
}
