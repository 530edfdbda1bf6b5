using CastBook.Casting.Patterns;
using CastBook.Casting.Pouring;
using CastBook.Planning.Packing;

namespace CastBook.Planning.Flasks;

/// <summary>A group of rows in whole numbers: what takes room is rounded up, what gives room is rounded down.</summary>
internal sealed class GroupNumbers
{
    // Metal is counted in hundredths of a microlitre, far finer than any scale.
    private const double UnitsPerMl = 100_000;

    private readonly PieceGroup group;
    private readonly IReadOnlyList<UsableSize> sizes;
    private readonly FlaskRoom room;
    private readonly List<DateOnly> dates;
    private readonly FlaskCost cost;
    private readonly List<string> letters;
    private readonly long[] roomUnits;

    /// <summary>Prepares a group.</summary>
    /// <param name="group">The rows; each fits some size alone.</param>
    /// <param name="sizes">The sizes.</param>
    /// <param name="room">What a tree may take.</param>
    /// <param name="dates">The days on which anything of the night is due, soonest first.</param>
    /// <param name="cost">What a flask costs by the order of wishes.</param>
    public GroupNumbers(PieceGroup group, IReadOnlyList<UsableSize> sizes, FlaskRoom room, List<DateOnly> dates, FlaskCost cost)
    {
        (this.group, this.sizes, this.room, this.dates, this.cost) = (group, sizes, room, dates, cost);
        letters = [.. group.Wishes.Values.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

        // Looked up once, so that groups can be packed side by side.
        roomUnits = [.. sizes.Select(s => Units(room.Ml(s, group.Alloy)))];
    }

    /// <summary>The rows as they are asked for, each with the flask it must be in, or less than 0.</summary>
    public List<(TreePiece Piece, int Count, int Pin)> Pieces() =>
        [.. group.Pieces.Select(p => (p, p.Quantity, group.Wishes.TryGetValue(p.Id, out var letter) ? letters.IndexOf(letter) : -1))];

    /// <summary>The letter that the shop wants for a flask, where it wants one.</summary>
    /// <param name="flask">The flask.</param>
    public string? LetterOf(PackedFlask flask) => flask.Pin >= 0 ? letters[flask.Pin] : null;

    /// <summary>The pieces and the flasks there are, as a problem.</summary>
    /// <param name="pieces">The pieces, with the flask each must be in, or less than 0.</param>
    /// <param name="free">How many of each size are free.</param>
    public PackProblem Problem(List<(TreePiece Piece, int Count, int Pin)> pieces, IReadOnlyList<int> free)
    {
        var items = pieces.Select(p => new PackItem(p.Count, MetalOf(p.Piece), [.. sizes.Select(s => Shape(p.Piece, s))])
        {
            Lowest = (int)p.Piece.Coldest,
            Highest = (int)p.Piece.Hottest,
            Pin = p.Pin,
            Section = SectionOf(p.Piece.Metal.Piece),
            Sort = p.Piece.Kind == PatternKind.Resin ? 1 : 0,
            Urgency = p.Piece.Metal.Piece.Due is { } due ? Math.Max(1, PackItem.MostUrgent - dates.IndexOf(due)) : 0,
        });
        var flasks = sizes.Select(s => new PackSize(s.Rod, roomUnits[s.Index], cost.Of(s), free[s.Index]));
        return new PackProblem([.. items], [.. flasks]);
    }

    /// <summary>The metal of a tree's button, in the unit of <see cref="PackItem.Metal"/>.</summary>
    /// <param name="size">The size's place.</param>
    /// <param name="metal">Metal of pieces and gates, in the same unit.</param>
    public long Button(int size, long metal) => Units(room.Button(sizes[size], metal / UnitsPerMl).Milliliters);

    /// <summary>Flasks that stand, with the pieces that are left of those in them.</summary>
    /// <param name="pieces">The pieces as they were packed.</param>
    /// <param name="standing">The flasks.</param>
    public IReadOnlyList<PackedFlask> Homes(IReadOnlyList<(TreePiece Piece, int Count, int Pin)> pieces, IReadOnlyList<StandingFlask> standing)
    {
        var left = pieces.Select(p => p.Count).ToArray();
        return [.. standing.Select(f => Home(f, pieces, left))];
    }

    // A row may have been packed as two, one of them pinned.
    private PackedFlask Home(StandingFlask flask, IReadOnlyList<(TreePiece Piece, int Count, int Pin)> pieces, int[] left)
    {
        var pin = letters.IndexOf(flask.Letter);
        var content = new SortedDictionary<int, int>();
        foreach (var (id, count) in flask.Content)
        {
            var more = count;
            for (var i = 0; i < pieces.Count && more > 0; i++)
            {
                if (pieces[i].Piece.Id == id && (pieces[i].Pin < 0 || pieces[i].Pin == pin) && left[i] > 0)
                {
                    content[i] = Math.Min(more, left[i]);
                    left[i] -= content[i];
                    more -= content[i];
                }
            }
        }

        return new PackedFlask(flask.Size.Index, [.. content.Select(c => new PackCount(c.Key, c.Value))], []) { Pin = pin };
    }

    // The heaviest section decides how a piece freezes; of a ring its band is one. The third size of other pieces is none, as they may be hollow.
    // What is thicker than the heavy band begins is all alike.
    private static int SectionOf(Piece piece) => (int)Math.Round(Math.Min(
        (piece.HeaviestSection ?? piece.FinestSection ?? (piece.Box is { IsRing: true } ring ? ring.Thickness : null))?.Millimeters ?? 0, SectionBands.HeavyAbove.Millimeters) * 100);

    private static PackShape Shape(TreePiece piece, UsableSize size)
    {
        if (!piece.FitsIn(size))
        {
            return PackShape.None;
        }

        if (piece.Shapes is null)
        {
            return new PackShape(0, 0, 0, PackShape.Whole / piece.PerTree[size.Index]);
        }

        var shape = piece.Shapes[size.Index];
        return new PackShape(shape.Theta, shape.Pitch, shape.Tail, 0);
    }

    private static long MetalOf(TreePiece piece) =>
        (long)Math.Min(PackProblem.AnyMetal, Math.Ceiling((piece.MetalMl * UnitsPerMl) - PieceShape.Dust));

    private static long Units(double ml) => ml <= 0 ? 0 : (long)Math.Min(PackProblem.AnyMetal, Math.Floor((ml * UnitsPerMl * (1 + PieceShape.Dust)) + PieceShape.Dust));
}
