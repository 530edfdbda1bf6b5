using CastBook.Casting.Patterns;
using CastBook.Planning.Burning;
using CastBook.Planning.Findings;
using CastBook.Planning.Investing;
using CastBook.Planning.Patterns;
using CastBook.Planning.Pouring;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>Works out what a flask takes: metal, powder, water, burnout, temperatures, quench.</summary>
internal sealed class FlaskSums(
    ChargeRules charges,
    CrucibleBook crucibles,
    HangingRules hanging,
    WeighedTrees weighings,
    PowderChoice powder,
    BurnoutChoice burnouts,
    PourAnswers pours,
    Assumptions assumed,
    FindingList findings)
{
    private const double FarApart = 0.10;

    // A trunk that ends with its last gate would leave a sharp corner there.
    private const double AboveLastGateMm = 5;

    // The share of a charge that is worth cutting a trunk for.
    private const double MuchTrunk = 0.10;

    /// <summary>The flask's answer.</summary>
    /// <param name="work">A flask whose content is settled.</param>
    public FlaskPlan Compute(FlaskWork work)
    {
        Note(work);
        var density = work.Alloy.Density!.Value;
        var weighed = weighings.VolumeOf(work);
        var tree = weighed ?? work.Tree;
        var pieces = work.Pieces * density;
        var charge = charges.ChargeOf(tree, work.Alloy);
        if (work.Line is not null)
        {
            Compare(work, weighed, pieces, charge);
        }

        if (weighed is null && work.State == FlaskState.Planned && IsHung(work))
        {
            NoteTrunk(work, charge);
        }

        var mix = powder.For(work.Size, work.Kind, tree);
        var burnout = burnouts.For(work.Letter, work.Size, work.Kind, work.StonesIn);
        var (coldest, hottest) = work.Bands;
        var metalTemperature = pours.Metal(work.Alloy, work.Size.Method);
        var flaskTemperature = pours.Flask(work.Alloy, coldest, hottest);
        return new FlaskPlan
        {
            Letter = work.Letter,
            Size = work.Size.Size,
            Method = work.Size.Method,
            Alloy = work.Alloy.Name,
            State = work.State,
            Pieces = [.. work.Rows.Select(r => new PieceShare(r.Metal.Piece.Id, r.Count))],
            Columns = work.Columns,
            Limit = work.Limit,
            AboveTree = work.Size.Above,
            ToWall = Length.FromMillimeters(work.Size.WallMm),
            PiecesMetal = pieces,
            TreeMetal = UnitMath.Max(Mass.Zero, (tree * density) - pieces),
            Button = charges.ButtonOf(tree) * density,
            Charge = charge,
            Tree = tree,
            Weighed = weighed is not null,
            Powder = mix?.Powder,
            Water = mix?.Water,
            Fill = mix?.Fill,
            Burnout = burnout?.Total,
            Program = burnout,
            IsWax = work.Kind == PatternKind.Wax,
            Schedule = burnout?.Name,
            MetalTemperature = metalTemperature,
            FlaskTemperature = flaskTemperature,
            QuenchAfter = work.StonesIn ? null : pours.Quench(work.Alloy, work.Size),
            NoQuench = work.StonesIn,
        };
    }

    private void Note(FlaskWork work)
    {
        charges.Note(work.Alloy, assumed);
        foreach (var row in work.Rows)
        {
            if (work.Line is null)
            {
                hanging.Note(row.Metal.Piece, assumed);
            }

            if (row.Metal.Material.Kind is null)
            {
                NoteKind(row.Metal.Material);
            }
        }

        var size = work.Size.Size;
        if (size.Cup is null)
        {
            assumed.Once("cup-size " + size.Name, () => Catalogue.CupMissing.At(
                new Subject(SubjectKind.FlaskSize, size.Name, ShopField.Cup), size.Name));
        }
    }

    // The charge counts the whole trunk: one that is left long must not run the mould short of metal.
    private void NoteTrunk(FlaskWork work, Mass charge)
    {
        var above = charge - ChargeWithTrunkCut(work);
        if (above > charge * MuchTrunk)
        {
            var (length, metal) = (findings.Units.Length, findings.Units.Metal);
            findings.Add(Catalogue.TrunkLong.At(
                Subject.Flask(work.Letter), work.Letter, length.Say(Length.FromMillimeters(work.Size.RodMm)),
                length.Say(Length.FromMillimeters(TrunkInUseMm(work))), metal.Say(above), metal.Say(charge)));
        }
    }

    private Mass ChargeWithTrunkCut(FlaskWork work) =>
        charges.ChargeOf(work.Tree - (work.Size.Trunk * (1 - (TrunkInUseMm(work) / work.Size.RodMm))), work.Alloy);

    // Nothing is sure of a trunk while it is not known where on it everything hangs.
    private static double TrunkInUseMm(FlaskWork work) => IsHung(work)
        ? Math.Min(work.Columns.SelectMany(c => c.Places).Max(p => p.Height.Millimeters) + AboveLastGateMm, work.Size.RodMm)
        : 0;

    private static bool IsHung(FlaskWork work) => work.Columns.Sum(c => c.Places.Count) == work.Rows.Sum(r => r.Count);

    private void NoteKind(KnownMaterial material)
    {
        var (subject, where) = material.AskTheSetting
            ? (Subject.Setting(SettingName.PatternMaterial), MaterialFindingWords.PatternMaterialOnShop)
            : (new Subject(SubjectKind.Material, material.Name, ShopField.Kind), MaterialFindingWords.KindOnMaterials);
        assumed.Once("kind-of " + material.Name, () => Catalogue.AssumedResin.At(subject, material.Said, where));
    }

    private void Compare(FlaskWork work, Volume? weighed, Mass pieces, Mass charge)
    {
        if (weighed is { } volume)
        {
            CompareWeighing(work, volume * work.Alloy.Density!.Value, pieces, charge);
        }

        if (work.State == FlaskState.Poured)
        {
            return;
        }

        var melt = charge / work.Alloy.Density!.Value;
        if (crucibles.Largest(work.Alloy) is { } usable && melt > usable * (1 + PieceShape.Dust))
        {
            findings.Add(Catalogue.ChargeOverCrucible.At(
                Subject.Flask(work.Letter), work.Letter, findings.Units.Metal.Say(charge), findings.Units.Water.SayFinely(melt), work.Alloy.Name, findings.Units.Water.SayFinely(usable)));
        }

        var button = charges.ButtonOf(weighed ?? work.Tree);
        if (work.Size.Size.Cup is { } cup && !ChargeRules.Fits(button, cup))
        {
            findings.Add(Catalogue.ButtonOverCup.At(
                Subject.Flask(work.Letter), work.Letter, findings.Units.Water.SayFinely(button), findings.Units.Water.SayFinely(cup)));
        }
    }

    // One fault, one finding: a tree lighter than its pieces is not also said to differ.
    private void CompareWeighing(FlaskWork work, Mass tree, Mass pieces, Mass charge)
    {
        var subject = Subject.Flask(work.Letter, ShopField.TreeOnBase);
        var estimate = charges.ChargeOf(work.Tree, work.Alloy);
        var least = ChargeWithTrunkCut(work);
        var lighter = work.Line is { OfItWax: null, Base: { } alone, TreeOnBase: { } onBase }
            && work.Rows.All(r => r.Metal.PatternMass is not null)
            && onBase - alone < work.Rows.Aggregate(Mass.Zero, (sum, r) => sum + (r.Metal.PatternMass!.Value * r.Count));
        if (lighter)
        {
            return;
        }

        if (tree < pieces * (1 - PieceShape.Dust))
        {
            findings.Add(Catalogue.WeighedBelowPieces.At(subject, work.Letter, findings.Units.Metal.Say(tree), findings.Units.Metal.Say(pieces)));
        }
        else if (charge > estimate * (1 + FarApart) || charge < least * (1 - FarApart))
        {
            findings.Add(Catalogue.WeighedTreeDiffers.At(subject, work.Letter, findings.Units.Metal.Say(charge), findings.Units.Metal.Say(estimate)));
        }
    }
}
