using CastBook.Planning.Clock;
using CastBook.Planning.Findings;
using CastBook.Planning.Metals;
using CastBook.Planning.Words;

namespace CastBook.Planning.Flasks;

/// <summary>Finds the flasks that are under way and what hangs in them, from the last plan's Flask column.</summary>
internal sealed class BuiltTrees(Night night, IReadOnlyList<PieceMetal?> metals, SizeBook sizes, FindingList findings)
{
    private readonly Dictionary<int, List<FlaskShare>> shares = [];

    /// <summary>How many of each row hang in built trees, by row and letter.</summary>
    public IReadOnlyDictionary<int, List<FlaskShare>> Shares => shares;

    /// <summary>Letters that are taken by lines of the Trees sheet, history included.</summary>
    public IReadOnlySet<string> Letters { get; } =
        Of(night).Select(t => FlaskLetters.Clean(t.Flask)).ToHashSet(StringComparer.Ordinal);

    /// <summary>The built trees, in the order of the Trees sheet.</summary>
    public IReadOnlyList<BuiltTree> Find()
    {
        var lines = new Dictionary<string, TreeInHand>(StringComparer.Ordinal);
        foreach (var line in Of(night))
        {
            lines.TryAdd(FlaskLetters.Clean(line.Flask), line);
        }

        var content = lines.Keys.ToDictionary(l => l, _ => new List<(PieceMetal, int)>(), StringComparer.Ordinal);
        foreach (var metal in MetalOfPieces.Asked(metals))
        {
            Collect(metal, content);
        }

        return [.. lines.Select(l => Build(l.Key, l.Value, content[l.Key])).OfType<BuiltTree>()];
    }

    /// <summary>The lines of trees under way that have no flask in the plan.</summary>
    /// <param name="night">The night.</param>
    /// <param name="flasks">The flasks of the plan.</param>
    public static IReadOnlyList<TreeInHand> Without(Night night, IReadOnlyList<FlaskPlan> flasks)
    {
        var letters = flasks.Select(f => f.Letter).ToHashSet(StringComparer.Ordinal);
        return [.. Of(night).Where(t => !letters.Contains(FlaskLetters.Clean(t.Flask)))];
    }

    // A tree whose flask was filled by the clock stands in its investment, whatever its line says.
    private static IEnumerable<TreeInHand> Of(Night night)
    {
        var done = (night.Done?.Steps ?? []).SelectMany(s => ClockWords.FlasksIn(s.Step)).ToHashSet(StringComparer.Ordinal);
        return night.Trees.Where(t => t.Flask.Trim().Length > 0 && (t.State > FlaskState.Planned || IsWeighed(t) || done.Contains(FlaskLetters.Clean(t.Flask))));
    }

    private static bool IsWeighed(TreeInHand line) => line is { Base: not null, TreeOnBase: not null };

    private void Collect(PieceMetal metal, Dictionary<string, List<(PieceMetal, int)>> content)
    {
        var piece = metal.Piece;
        var left = piece.Quantity ?? int.MaxValue;
        var hanging = 0;
        foreach (var share in piece.LastFlasks)
        {
            var letter = FlaskLetters.Clean(share.Flask);
            if (!content.TryGetValue(letter, out var pieces) || share.Quantity <= 0)
            {
                continue;
            }

            hanging += share.Quantity;
            var count = Math.Min(share.Quantity, left);
            if (count > 0)
            {
                left -= count;
                pieces.Add((metal, count));
                if (!shares.TryGetValue(piece.Id, out var mine))
                {
                    shares[piece.Id] = mine = [];
                }

                mine.Add(new(letter, count));
            }
        }

        if (piece.Quantity is { } quantity && hanging > quantity)
        {
            findings.Add(Catalogue.FrozenQuantityDiffers.At(
                Subject.Piece(piece.Id, PieceField.Quantity), Say.Count(hanging), Say.Name(piece), Say.Count(quantity)));
        }
    }

    private BuiltTree? Build(string letter, TreeInHand line, List<(PieceMetal Metal, int Count)> pieces)
    {
        var state = line.State > FlaskState.Planned ? line.State : FlaskState.Waxed;
        var tree = new BuiltTree(letter, state, line, pieces);
        if (pieces.Count == 0)
        {
            // A poured flask whose rows are all done is history, not a fault.
            if (state < FlaskState.Poured)
            {
                findings.Add(Catalogue.FrozenFlaskEmpty.At(Subject.Flask(letter), letter));
            }

            return state < FlaskState.Poured ? tree with { Size = sizes.Named(line.Size) } : null;
        }

        if (line.State == FlaskState.Planned)
        {
            findings.Add((IsWeighed(line) ? Catalogue.TreeWeighedCountsAsWaxed : Catalogue.FlaskDoneCountsAsWaxed).At(Subject.Flask(letter, ShopField.State), letter));
        }

        return tree with { Size = SizeOf(letter, line), Alloy = AlloyOf(letter, pieces) };
    }

    private UsableSize? SizeOf(string letter, TreeInHand line)
    {
        var size = sizes.Named(line.Size);
        var isRow = night.Shop.FlaskSizes.Any(s => string.Equals(s.Name.Trim(), line.Size?.Trim(), StringComparison.OrdinalIgnoreCase));
        if (size is null && !isRow)
        {
            var said = string.IsNullOrWhiteSpace(line.Size) ? FlaskFindingWords.SizeNotSaid : FlaskFindingWords.SizeNotOnSheet(line.Size.Trim());
            findings.Add(Catalogue.FrozenFlaskSizeUnknown.At(Subject.Flask(letter, ShopField.Size), letter, said));
        }

        return size;
    }

    private KnownAlloy? AlloyOf(string letter, List<(PieceMetal Metal, int Count)> pieces)
    {
        var alloys = pieces.Select(p => p.Metal.Alloy.Known).Distinct().ToList();
        if (alloys.OfType<KnownAlloy>().Count() > 1)
        {
            var subjects = pieces.Select(p => Subject.Piece(p.Metal.Piece.Id, PieceField.Alloy));
            findings.Add(Catalogue.AlloysMixedInFlask.At(
                [Subject.Flask(letter), .. subjects], letter, Say.Together([.. alloys.OfType<KnownAlloy>().Select(a => a.Name)])));
        }

        return alloys.Count == 1 ? alloys[0] : null;
    }
}
