using System.Runtime.CompilerServices;
using CastBook.Planning.Floors;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Hangs all pieces in sectors of chosen widths by chance: pieces change places until nothing stands over the ends of the sectors.</summary>
/// <remarks>
/// A change after which more stands over is made as long as that is not much, and less and less in a look. Source of the method: Dueck and
/// Scheuer, Threshold Accepting, 1990. Metal is not looked at.
/// </remarks>
internal sealed class WidthSwapping
{
    // What more may stand over after a change, as a share of the trunk: at first, and at last.
    private const double MostAtFirst = 0.03;
    private const double MostAtLast = 0.001;

    // Of the changes some bring one piece into a sector and none back: so many for each sector, beside one for each piece.
    private const int ForEachSector = 2;

    // A try, and each piece of a sector that is looked at.
    private const int WorkOfTry = 60;
    private const int WorkOfPiece = 6;

    private readonly (SectorType Type, int Width, int[] Ranks)[] sectors;
    private readonly Chance chance = new(1);

    // The item of each piece, and its sector; the pieces of each sector from the button up, and how far they stand over.
    private readonly int[] items;
    private readonly int[] sectorOf;
    private readonly List<int>[] hung;
    private readonly int[] over;
    private readonly bool isPossible = true;

    /// <summary>Hangs every piece in a sector that is wide enough, where it stands over least.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="types">The sizes and settings.</param>
    /// <param name="sectors">The sectors.</param>
    public WidthSwapping(PackProblem problem, SectorType[] types, IReadOnlyList<WidthChoice> sectors)
    {
        int[][] ranks = [.. types.Select(t => problem.Items.Select((_, i) => Array.IndexOf(t.Members, i)).ToArray())];
        this.sectors = [.. sectors.Select(s => (types[s.Type], types[s.Type].Widths[s.Width], ranks[s.Type]))];
        (hung, over) = ([.. sectors.Select(_ => new List<int>())], new int[sectors.Count]);
        items = [.. problem.Items.SelectMany((item, i) => Enumerable.Repeat(i, item.Quantity)).OrderBy(i => Wide(i).Count()).ThenByDescending(i => problem.Spaces[i])];
        sectorOf = new int[items.Length];
        for (var piece = 0; piece < items.Length && isPossible; piece++)
        {
            int[] wide = [.. Wide(items[piece])];
            isPossible = wide.Length > 0;
            if (isPossible)
            {
                Hang(piece, wide.MinBy(s => Over(s, -1, piece) - over[s]));
            }
        }
    }

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>What hangs in each sector, from the button up; nothing in some.</summary>
    public PackCount[][] Content => [.. hung.Select(h => h.GroupBy(p => items[p]).Select(g => new PackCount(g.Key, g.Count())).ToArray())];

    /// <summary>Looks for a way to hang everything; goes on where the last look ended.</summary>
    /// <param name="work">How many steps to spend.</param>
    /// <returns>Whether one was found.</returns>
    public bool Look(long work)
    {
        var (begin, total) = (Work, over.Sum());
        while (isPossible && total > 0 && Work < begin + work)
        {
            var rest = (begin + work - Work) / (double)work;
            total += Try(MostAtLast + ((MostAtFirst - MostAtLast) * rest * rest * rest));
        }

        return isPossible && total == 0;
    }

    // How much more stands over after.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Try(double share)
    {
        Work += WorkOfTry;
        var (piece, place) = (Draw(items.Length), Draw(items.Length + (ForEachSector * sectors.Length)));
        var other = place < items.Length ? place : -1;
        var (from, to) = (sectorOf[piece], other >= 0 ? sectorOf[other] : (place - items.Length) / ForEachSector);
        if (from == to || !IsWide(to, items[piece]) || (other >= 0 && !IsWide(from, items[other])))
        {
            return 0;
        }

        var more = Over(to, other, piece) + Over(from, piece, other) - over[from] - over[to];
        if (more > share * sectors[to].Type.Rod)
        {
            return 0;
        }

        hung[from].Remove(piece);
        over[from] = Over(from, -1, -1);
        hung[to].Remove(other);
        Hang(piece, to);
        if (other >= 0)
        {
            Hang(other, from);
        }

        return more;
    }

    private void Hang(int piece, int sector)
    {
        var (of, ranks) = (hung[sector], sectors[sector].Ranks);
        var at = of.FindIndex(p => ranks[items[p]] > ranks[items[piece]]);
        of.Insert(at < 0 ? of.Count : at, piece);
        (sectorOf[piece], over[sector]) = (sector, Over(sector, -1, -1));
    }

    // How far the pieces of a sector stand over its end with one less and one more, or less than 0 for none.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Over(int sector, int less, int more)
    {
        var (type, _, ranks) = sectors[sector];
        var (of, height, end) = (hung[sector], 0, type.Rod);
        Work += WorkOfPiece * of.Count;
        foreach (var piece in of)
        {
            if (more >= 0 && ranks[items[piece]] >= ranks[items[more]])
            {
                Stand(more);
                more = -1;
            }

            if (piece != less)
            {
                Stand(piece);
            }
        }

        if (more >= 0)
        {
            Stand(more);
        }

        return end - type.Rod;

        void Stand(int piece)
        {
            ref readonly var shape = ref type.Shapes[ranks[items[piece]]];
            height += shape.Pitch;
            end = Math.Max(end, height + shape.Tail);
        }
    }

    private IEnumerable<int> Wide(int item) => Enumerable.Range(0, sectors.Length).Where(s => IsWide(s, item));

    private bool IsWide(int sector, int item)
    {
        var (type, width, ranks) = sectors[sector];
        return ranks[item] >= 0 && type.Shapes[ranks[item]].Theta <= width;
    }

    private int Draw(int below) => (int)(chance.Next() * below);
}
