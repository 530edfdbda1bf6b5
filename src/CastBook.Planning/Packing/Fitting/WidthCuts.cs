using System.Numerics;
using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Ways of valuing pieces, and what sectors of each width can be worth by each at most: sectors worth less than all pieces do not hold them.</summary>
/// <remarks>The numbers of all ways lie side by side, so that all are asked at once. What is worth as much as all pieces is worth enough: more is not counted.</remarks>
internal sealed class WidthCuts
{
    // Ways that are kept.
    private const int Most = 320;
    private const int Few = 16;

    private readonly SectorType[] types;
    private readonly FitTree[] trees;
    private readonly int[] all;

    // Where the widths of each size and setting begin.
    private readonly int[] begins;
    private readonly int places;
    private int room = Few;
    private int count;
    private int next;

    // By size, setting and width, by the angle there is for narrower sectors beside it, then by way: what all can be worth.
    private int[] with;

    // By size, setting and width: what such a sector can be worth; by tree: what all trees after it can be worth.
    private int[] bests;
    private int[] after;

    // By how many sectors were chosen: what is wanting.
    private int[] wants;

    /// <summary>Starts with no ways.</summary>
    /// <param name="types">The sizes and settings, priced once; takes the prices.</param>
    /// <param name="trees">The trees, all empty.</param>
    /// <param name="all">How many of each piece there are.</param>
    public WidthCuts(SectorType[] types, FitTree[] trees, int[] all)
    {
        (this.types, this.trees, this.all) = (types, trees, all);
        begins = new int[types.Length];
        for (var t = 0; t < types.Length; t++)
        {
            (begins[t], places) = (places, places + types[t].Widths.Count);
        }

        (with, bests, after, wants) = (Rows(places * (PackShape.Turn + 1)), Rows(places), Rows(trees.Length), Rows((trees.Length * PackShape.Turn) + 1));
    }

    /// <summary>How many ways there are.</summary>
    public int Count => count;

    /// <summary>Adds a way; where there are many, in place of another.</summary>
    /// <param name="values">What each piece is worth; all together less than 2^30.</param>
    /// <param name="chosen">The sectors that are chosen.</param>
    public void Add(int[] values, IReadOnlyList<WidthChoice> chosen)
    {
        if (count == room && room < Most)
        {
            Grow();
        }

        var way = count < room ? count++ : next = (next + 1) % Most;
        var total = 0;
        for (var i = 0; i < all.Length; i++)
        {
            total += all[i] * values[i];
        }

        foreach (var type in types)
        {
            type.Price(all, values, 0, PackShape.Turn);
        }

        for (var t = 0; t < types.Length; t++)
        {
            AddWidths(t, way, total);
        }

        for (var i = trees.Length - 2; i >= 0; i--)
        {
            after[(i * room) + way] = (int)Math.Min(total, after[((i + 1) * room) + way] + types[trees[i + 1].Type].Turn(PackShape.Turn));
        }

        wants[way] = total;
        for (var i = 0; i < chosen.Count; i++)
        {
            Choose(i, chosen[i]);
        }
    }

    /// <summary>Takes note of a sector that was chosen.</summary>
    /// <param name="before">How many were chosen before.</param>
    /// <param name="sector">The sector.</param>
    public void Choose(int before, WidthChoice sector)
    {
        var want = wants.AsSpan(before * room, count);
        var best = bests.AsSpan(Place(sector) * room, count);
        var then = wants.AsSpan((before + 1) * room, count);
        for (var c = 0; c < then.Length; c++)
        {
            then[c] = Math.Max(0, want[c] - best[c]);
        }
    }

    /// <summary>Whether one more sector leaves too little, however the rest is cut into sectors that are no wider.</summary>
    /// <param name="before">How many were chosen before.</param>
    /// <param name="sector">The sector.</param>
    /// <param name="rest">The angle that its tree has left then.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool Refutes(int before, WidthChoice sector, int rest)
    {
        ref var want = ref wants[before * room];
        ref var here = ref with[((Place(sector) * (PackShape.Turn + 1)) + rest) * room];
        ref var later = ref after[sector.Tree * room];
        for (var c = 0; c < count; c += Vector<int>.Count)
        {
            var worth = Vector.LoadUnsafe(ref here, (nuint)c) + Vector.LoadUnsafe(ref later, (nuint)c);
            if (Vector.LessThanAny(worth, Vector.LoadUnsafe(ref want, (nuint)c)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether the sectors chosen are too few.</summary>
    /// <param name="chosen">How many they are.</param>
    public bool Refutes(int chosen) => wants.AsSpan(chosen * room, count).ContainsAnyExcept(0);

    private int Place(WidthChoice sector) => begins[sector.Type] + sector.Width;

    private void AddWidths(int type, int way, int total)
    {
        var (widths, narrower) = (types[type].Widths, new int[PackShape.Turn + 1]);
        for (var w = 0; w < widths.Count; w++)
        {
            var (best, place) = (Math.Min(total, types[type].Best(w)), begins[type] + w);
            bests[(place * room) + way] = best;
            for (var angle = 0; angle <= PackShape.Turn; angle++)
            {
                narrower[angle] = angle < widths[w] ? narrower[angle] : Math.Min(total, Math.Max(narrower[angle], narrower[angle - widths[w]] + best));
                with[(((place * (PackShape.Turn + 1)) + angle) * room) + way] = Math.Min(total, narrower[angle] + best);
            }
        }
    }

    // Places of ways that there are not yet want nothing.
    private int[] Rows(int rows) => new int[rows * room];

    private void Grow()
    {
        var before = room;
        room = Math.Min(Most, room * 2);
        (with, bests, after, wants) = (Wider(with), Wider(bests), Wider(after), Wider(wants));

        int[] Wider(int[] rows)
        {
            var wider = new int[rows.Length / before * room];
            for (var r = 0; r < rows.Length / before; r++)
            {
                rows.AsSpan(r * before, before).CopyTo(wider.AsSpan(r * room));
            }

            return wider;
        }
    }
}

/// <summary>A sector of which only the width is chosen.</summary>
/// <param name="Tree">Its tree.</param>
/// <param name="Type">The place of the tree's size and setting.</param>
/// <param name="Width">The place of the width.</param>
internal readonly record struct WidthChoice(int Tree, int Type, int Width);
