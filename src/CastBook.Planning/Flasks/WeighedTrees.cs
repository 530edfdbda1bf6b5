using CastBook.Casting.Patterns;
using CastBook.Casting.Trees;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>Takes the volume of a built tree from its weighing, wax and patterns apart.</summary>
internal sealed class WeighedTrees(Shop shop, Assumptions assumed, FindingList findings)
{
    // Sprue wax where nobody says otherwise; waxes run from 0.92 to 1.00. Common practice.
    private static readonly Density UsualWax = Density.FromGramsPerCubicCentimeter(0.95);

    /// <summary>The metal volume of a weighed tree, without the button; nothing where the weighing cannot be used, which has a finding if it is there.</summary>
    /// <param name="work">A flask under way.</param>
    public Volume? VolumeOf(FlaskWork work)
    {
        if (work.Line is not { Base: { } alone, TreeOnBase: { } onBase } line)
        {
            return null;
        }

        // By a share of wax that nobody can read the tree may count as all resin, which pours short. Its cell has its finding.
        if (line.CannotRead(ShopField.OfItWax))
        {
            return null;
        }

        var tree = onBase - alone;
        if (tree <= Mass.Zero)
        {
            findings.Add(Catalogue.TreeNotOverBase.At(
                Subject.Flask(work.Letter, ShopField.TreeOnBase), work.Letter, findings.Units.Metal.Say(onBase), findings.Units.Metal.Say(alone)));
            return null;
        }

        if (line.OfItWax > tree)
        {
            findings.Add(Catalogue.WaxOverTree.At(
                Subject.Flask(work.Letter, ShopField.OfItWax), work.Letter, findings.Units.Metal.Say(line.OfItWax.Value), findings.Units.Metal.Say(tree)));
            return null;
        }

        return Parts(work, tree, line.OfItWax);
    }

    private Volume? Parts(FlaskWork work, Mass tree, Mass? said)
    {
        var masses = work.Rows.Select(r => r.Metal.PatternMass * r.Count).ToList();
        var patterns = masses.Aggregate((Mass?)Mass.Zero, (sum, mass) => sum + mass);
        if (patterns is not { } known || known <= Mass.Zero)
        {
            findings.Add(Catalogue.WaxShareUnknown.At(Subject.Flask(work.Letter, ShopField.OfItWax), work.Letter, findings.Units.Metal.Say(tree)));
            return null;
        }

        // What the patterns weigh together over what they displace: each material counts by its share.
        var density = known / work.Pieces;
        if (said is null && known > tree)
        {
            findings.Add(Catalogue.TreeLighterThanPatterns.At(
                Subject.Flask(work.Letter, ShopField.TreeOnBase), work.Letter, findings.Units.Metal.Say(tree), findings.Units.Metal.Say(known)));
            return WeighedTree.MetalVolume(tree, Mass.Zero, SprueWax(needed: false), density);
        }

        if (said is null)
        {
            findings.Add(Catalogue.WaxFromWeighing.At(
                Subject.Flask(work.Letter, ShopField.OfItWax), work.Letter, findings.Units.Metal.Say(tree - known)));
        }

        var wax = said ?? tree - known;
        return WeighedTree.MetalVolume(tree, wax, SprueWax(needed: wax > Mass.Zero), density);
    }

    private Density SprueWax(bool needed)
    {
        if (shop.Settings.SprueWaxDensity is { } own)
        {
            if (PatternDensityRange.IsPossible(own))
            {
                return own;
            }

            assumed.Once("sprue-wax", () => Catalogue.PatternDensityImpossible.At(
                Subject.Setting(SettingName.SprueWaxDensity), MaterialFindingWords.SprueWax, Say.Dense(own), MaterialFindingWords.SprueWaxDensityOnShop));
        }

        var waxes = shop.Materials.Where(m => m.Kind == PatternKind.Wax && (m.Density ?? m.CubeDensity) is not null).ToList();
        if (waxes.Count == 1)
        {
            return (waxes[0].Density ?? waxes[0].CubeDensity)!.Value;
        }

        if (needed)
        {
            assumed.Use(SettingName.SprueWaxDensity, Say.Dense(UsualWax));
        }

        return UsualWax;
    }
}
