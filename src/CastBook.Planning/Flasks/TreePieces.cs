using CastBook.Casting.Pouring;
using CastBook.Casting.Trees;
using CastBook.Planning.Findings;
using CastBook.Planning.Metals;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>Turns rows into pieces that can be hung, and says why a row cannot.</summary>
internal sealed class TreePieces(SizeBook sizes, HangingRules rules, FindingList findings)
{
    private static readonly string[] OuterSizes = [PieceField.Length, PieceField.Width, PieceField.Thickness, PieceField.Sizes];

    private static readonly string[] SizeFields = [PieceField.Length, PieceField.Width, PieceField.Thickness, PieceField.Sizes, PieceField.Shape, PieceField.PerTree];

    /// <summary>The row as something to hang, or nothing where a number it needs is not known; that has a finding.</summary>
    /// <param name="metal">The row's metal.</param>
    /// <param name="quantity">How many are to be hung.</param>
    public TreePiece? Of(PieceMetal metal, int quantity)
    {
        var piece = metal.Piece;
        if (quantity <= 0 || metal.VolumeEach is not { } volume || metal.Alloy.Known is not { Density: not null, Refused: false })
        {
            return null;
        }

        // Sizes that stand there and were not understood are not left unlooked at for a number per tree.
        var usable = sizes.Sizes;
        if (OuterSizes.Any(piece.Unreadable.Contains) || (piece.Box is null && !SaysPerTree(piece)))
        {
            return null;
        }

        var stubs = rules.StubsMm(piece);
        var gates = HungRow.GatesOf(piece, rules);
        var (coldest, hottest) = HungRow.BandsOf(piece);
        return new TreePiece
        {
            Metal = metal,
            Quantity = quantity,
            MetalMl = (volume + gates).Milliliters,
            Coldest = coldest,
            Hottest = hottest,
            Shapes = piece.Box is { } box ? [.. usable.Select(s => PieceShape.Of(box, stubs, rules, s))] : null,
            PerTree = [.. usable.Select(s => PerTree(piece, s.Size))],
        };
    }

    /// <summary>Asks for the sizes of a row that says neither sizes nor a number per tree, and looks at its sections.</summary>
    /// <param name="piece">The row.</param>
    public void Ask(Piece piece)
    {
        if (piece.Box is null && piece.PerTree is not { Count: > 0 } && !SizeFields.Any(piece.Unreadable.Contains))
        {
            var kind = SaysPerTree(piece) ? Catalogue.PerTreeOfFlask : Catalogue.SizesOrPerTreeMissing;
            findings.Add(kind.At(Subject.Piece(piece.Id, PieceField.Length)));
        }

        if (SectionBands.Of(piece.FinestSection, piece.HeaviestSection) is null)
        {
            findings.Add(Catalogue.SectionsFarApart.At(
                Subject.Piece(piece.Id, PieceField.FinestSection),
                findings.Units.Length.Say(piece.FinestSection!.Value),
                findings.Units.Length.Say(piece.HeaviestSection!.Value)));
        }

        if (piece.Gate?.Diameter is { } gate && piece.HeaviestSection is { } section)
        {
            CompareGates(piece, gate, section);
        }
    }

    private void CompareGates(Piece piece, Length gate, Length section)
    {
        var count = HangingRules.GatesOf(piece);
        var share = GateSection.Compute(count, gate, section);
        if (share < GateSection.Least || share > GateSection.Most)
        {
            findings.Add(Catalogue.GateSectionOff.At(
                Subject.Piece(piece.Id, PieceField.GateDiameter), CountWords.Gates(count), findings.Units.Length.Say(gate),
                Say.Percent(Ratio.FromPercent(Math.Round(share.Percent))), findings.Units.Length.Say(section),
                share < GateSection.Least ? FlaskFindingWords.GatesTooThin : FlaskFindingWords.GatesTooThick));
        }
    }

    private bool SaysPerTree(Piece piece) =>
        piece.PerTree is { Count: > 0 } || sizes.Sizes.Any(s => s.Size.PerTree > 0);

    private static int PerTree(Piece piece, FlaskSize size)
    {
        if (piece.PerTree is not { Count: > 0 })
        {
            return Math.Max(0, size.PerTree ?? 0);
        }

        var named = piece.PerTree.FirstOrDefault(p => string.Equals(p.Key.Trim(), size.Name.Trim(), StringComparison.OrdinalIgnoreCase));
        return Math.Max(0, named.Key is not null ? named.Value : piece.PerTree.GetValueOrDefault(""));
    }
}
