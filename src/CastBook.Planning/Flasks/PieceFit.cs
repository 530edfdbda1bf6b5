using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>Says of each row whether one piece of it fits some flask of the shop at all, and if not, why.</summary>
internal sealed class PieceFit(SizeBook sizes, FlaskRoom room, CrucibleBook crucibles, Settings settings, FindingList findings)
{
    // Steeper ones first: the flatter a piece lies along the trunk, the more trunk it takes.
    private static readonly double[] AnglesToTry = [60, 55, 50, 45, 40, 35, 30, 25, 20];

    /// <summary>Whether one piece fits a flask that the shop owns; if not, a finding says why.</summary>
    /// <param name="piece">The row.</param>
    public bool Fits(TreePiece piece)
    {
        var owned = sizes.Sizes.Where(s => s.Owned > 0).ToList();
        if (owned.Count == 0)
        {
            // Every size has a finding of its own.
            return false;
        }

        var by = owned.Where(piece.FitsIn).ToList();
        if (by.Count == 0)
        {
            findings.Add(TooLarge(piece, owned));
            return false;
        }

        if (crucibles.Largest(piece.Alloy) is not { } usable)
        {
            var kind = CrucibleBook.NeedsNoGraphite(piece.Alloy) ? Catalogue.CrucibleOfGraphite : Catalogue.NoCrucibleForAlloy;
            findings.Add(kind.At(
                [new Subject(SubjectKind.Alloy, piece.Alloy.Name), Subject.Piece(piece.Id, PieceField.Alloy)], piece.Alloy.Name));
            return false;
        }

        if (by.Any(s => room.Ml(s, piece.Alloy) >= piece.MetalMl))
        {
            return true;
        }

        var pourable = by.Where(s => room.ByCrucibleMl(s, piece.Alloy) >= piece.MetalMl).ToList();
        findings.Add(pourable.Count == 0 ? TooHeavy(piece, by, usable) : CupTooSmall(piece, pourable[^1]));
        return false;
    }

    private Finding TooLarge(TreePiece piece, List<UsableSize> owned)
    {
        var largest = owned.OrderByDescending(s => s.Inside).ThenBy(s => s.Index).First();
        var subject = Subject.Piece(piece.Id, PieceField.Length);
        if (piece.Shapes is null)
        {
            return Catalogue.PieceFitsNoFlask.At(
                Subject.Piece(piece.Id, PieceField.PerTree), Say.Name(piece.Metal.Piece),
                PieceFitWords.PerTreeNamesNone,
                PieceFitWords.PerTreeDecides,
                "");
        }

        var shape = piece.Shapes[largest.Index];
        var (name, wayOut) = (Say.Name(piece.Metal.Piece), WayOut(piece.Metal.Piece, owned));
        if (shape.OutMm > largest.ReachMm)
        {
            return Catalogue.PieceFitsNoFlask.At(
                subject, name,
                PieceFitWords.ReachesOut(Millimetres(shape.OutMm), largest.Size.Name, Millimetres(largest.ReachMm)),
                PieceFitWords.WallStays(Millimetres(largest.WallMm)), wayOut);
        }

        return Catalogue.PieceFitsNoFlask.At(
            subject, name,
            PieceFitWords.NeedsTrunk(Millimetres(shape.AlongMm), largest.Size.Name, Millimetres(largest.RodMm)),
            PieceFitWords.RestOfHeight, wayOut);
    }

    // What else would make room for it, each sentence with a blank behind it.
    private string WayOut(Piece piece, List<UsableSize> owned)
    {
        var box = piece.Box!.Value;
        var unheard = new FindingList(findings.Units);
        var rules = new HangingRules(settings, unheard);
        var text = "";
        if (!box.IsRing && Taking(box with { Length = box.Width, Width = box.Length }, piece, rules, owned) is { } turned)
        {
            text = PieceFitWords.OnLongSide(turned.Size.Name);
        }

        if (text.Length == 0 && owned.Find(s => StandsIn(box, rules.StubsMm(piece).Min(), s)) is { } upright)
        {
            text += PieceFitWords.Upright(upright.Size.Name);
        }

        foreach (var degrees in AnglesToTry)
        {
            var tilted = new HangingRules(settings with { GateAngle = Angle.FromDegrees(degrees) }, unheard);
            if (Taking(box, piece, tilted, owned) is { } by)
            {
                return text + PieceFitWords.Tilted(SentenceWords.Degrees(Say.Plain(degrees)), by.Size.Name);
            }
        }

        return text;
    }

    // A large piece is often cast so: on one gate over the button, its length up the middle of the flask.
    private static bool StandsIn(PieceBox box, double stubMm, UsableSize size)
    {
        var (across, through) = (box.Width.Millimeters, box.IsRing ? box.Length.Millimeters : (box.Thickness ?? box.Width).Millimeters);
        return stubMm + box.Length.Millimeters <= size.RodMm && double.Hypot(across, through) / 2 <= size.ReachMm;
    }

    private static UsableSize? Taking(PieceBox box, Piece piece, HangingRules rules, List<UsableSize> owned) =>
        owned.Find(s => PieceShape.Of(box, rules.StubsMm(piece), rules, s).Fits);

    private Finding TooHeavy(TreePiece piece, List<UsableSize> by, Volume usable)
    {
        // The size with the smallest trunk asks least of the crucible.
        var size = by.OrderBy(s => s.Trunk).ThenBy(s => s.Index).First();
        var charge = room.Charge(size, piece.Alloy, piece.MetalMl);
        return Catalogue.PieceOverCrucible.At(
            Subject.Piece(piece.Id), Say.Name(piece.Metal.Piece), findings.Units.Metal.Say(charge),
            findings.Units.Water.SayFinely(charge / piece.Alloy.Density!.Value), piece.Alloy.Name, findings.Units.Water.SayFinely(usable));
    }

    private Finding CupTooSmall(TreePiece piece, UsableSize size) =>
        Catalogue.CupTooSmall.At(
            [new Subject(SubjectKind.FlaskSize, size.Size.Name, ShopField.Cup), Subject.Piece(piece.Id)], size.Size.Name,
            findings.Units.Water.SayFinely(size.Size.Cup!.Value),
            findings.Units.Water.SayFinely(room.Button(size, piece.MetalMl)));

    private string Millimetres(double mm) => findings.Units.Length.Say(Length.FromMillimeters(mm));
}
